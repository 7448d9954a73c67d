using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics;

/// <summary>How stiffness, strength, melting and creep of ice go with temperature, volume, grain and pressure.</summary>
public static class IceProperties
{
    private const string Topic = "Ice";
    private const string CreepSource = "Cuffey and Paterson, 2010, creep parameters at −10, −5 and 0 °C; straight line of the logarithm between them is ours";
    private const double ModulusSlope = 1.418e-3;

    private static readonly Dimension CreepDimension = Dimension.Of(3, -3, 5);

    /// <summary>Elastic modulus of polycrystalline ice at a temperature and at an instant, in Pa: E(−16 °C)·(1 − a·T)/(1 + 16·a), a = 1.418e-3 /°C.</summary>
    /// <exception cref="DomainException">The temperature is above 0 °C or absurdly low.</exception>
    [Callable(Topic, "How stiff is ice at a temperature, at an instant?", Assumes = "Isotropic polycrystal, E(−16 °C) = 9.33 GPa, no creep.", NotFor = "Loads that last: over seconds to minutes the modulus falls to 1 GPa and less.")]
    [Let("celsius", "temperature - 273.15", "K")]
    [Formula("9.33e9*(1 - 1.418e-3*celsius)/(1 + 16*1.418e-3)", Symbol = "E")]
    [Source("Gammon and others, J. Glaciol. 29, 1983, as usually quoted, with its temperature law", Standing.FromMemory)]
    [Example("IceElasticModulus(-10 °C)", "9.252381 GPa")]
    public static Pressure IceElasticModulus(
        [Parameter("T", "°C", "temperature of the ice", AtLeast = -100, AtMost = 0, UsualFrom = -40, UsualTo = 0)] Temperature temperature)
    {
        double celsius = Celsius(temperature, -100);
        return Pressure.FromPascals(9.33e9 * (1 - (ModulusSlope * celsius)) / (1 + (16 * ModulusSlope)));
    }

    /// <summary>Strength of a volume over that of a reference volume, by the weakest link: (V_ref/V)^(1/m).</summary>
    /// <exception cref="DomainException">A value is not positive or absurd.</exception>
    [Callable(Topic, "How much weaker is a larger volume of ice?", Assumes = "Weakest link, evenly stressed volumes.", NotFor = "Crushing under confinement.")]
    [Formula("Pow(referenceVolume/volume, 1/weibullModulus)", Symbol = "σ/σ_ref")]
    [Source("Petrovic, J. Mater. Sci. 38, 2003: Weibull modulus about 5", Standing.Read)]
    [Example("IceSizeEffect(1000 cm³, 1 cm³, 5)", "0.2511886")]
    public static double IceSizeEffect(
        [Parameter("V", "cm³", "the stressed volume", Above = 0, AtMost = 1e12)] Volume volume,
        [Parameter("V_ref", "cm³", "the volume whose strength is known", Above = 0, AtMost = 1e12)] Volume referenceVolume,
        [Parameter("m", "", "Weibull modulus, about 5", Above = 0, AtMost = 100, UsualFrom = 3, UsualTo = 12)] double weibullModulus)
    {
        Scale cubicCentimetre = new("cm³", 1e-6);
        double ratio = Admit.Positive(referenceVolume.CubicMeters, 1e12, cubicCentimetre, nameof(referenceVolume)) / Admit.Positive(volume.CubicMeters, 1e12, cubicCentimetre, nameof(volume));
        return Math.Pow(ratio, 1 / Admit.Positive(weibullModulus, 100, Scale.None, nameof(weibullModulus)));
    }

    /// <summary>Tensile stress that starts cracks in granular ice, in Pa: 0.6 MPa + 0.02 MPa·m^0.5/√d.</summary>
    /// <exception cref="DomainException">The grain is not positive or absurd.</exception>
    [Callable(Topic, "At which tensile stress do cracks start in granular ice?", Assumes = "Granular ice, brittle.", NotFor = "Columnar ice or ice with voids.")]
    [Formula("0.6e6 + 0.02e6/Sqrt(grainSize)", Symbol = "σ_N")]
    [Source("Currier and Schulson, 1982; Schulson and Duval, 2009", Standing.FromMemory)]
    [Example("IceCrackStartStress(1 mm)", "1.232456 MPa")]
    public static Pressure IceCrackStartStress([Parameter("d", "mm", "grain size", Above = 0, AtMost = Most.Millimetres, UsualFrom = 1, UsualTo = 10)] Length grainSize) =>
        Pressure.FromPascals(0.6e6 + (0.02e6 / Math.Sqrt(Grain(grainSize))));

    /// <summary>Tensile stress that drives cracks through granular ice, in Pa: 0.044 MPa·m^0.5/√d.</summary>
    /// <exception cref="DomainException">The grain is not positive or absurd.</exception>
    [Callable(Topic, "At which tensile stress do cracks run through granular ice?", Assumes = "Granular ice, brittle; cracks as long as a grain.", NotFor = "Columnar ice or ice with voids.")]
    [Formula("0.044e6/Sqrt(grainSize)", Symbol = "σ_P")]
    [Source("Currier and Schulson, 1982; Schulson and Duval, 2009", Standing.FromMemory)]
    [Example("IceCrackGrowthStress(1 mm)", "1.391402 MPa")]
    public static Pressure IceCrackGrowthStress([Parameter("d", "mm", "grain size", Above = 0, AtMost = Most.Millimetres, UsualFrom = 1, UsualTo = 10)] Length grainSize) =>
        Pressure.FromPascals(0.044e6 / Math.Sqrt(Grain(grainSize)));

    /// <summary>How far pressure lowers the melting temperature, in K: 7.42e-8 K/Pa.</summary>
    /// <exception cref="DomainException">The pressure is negative or absurd.</exception>
    [Callable(Topic, "How far does pressure lower the melting temperature of ice?", NotFor = "Cold ice: under 10 MPa it is 0.7 K, which matters at −1 °C but not at −10 °C.")]
    [Formula("7.42e-8*pressure", Symbol = "ΔT")]
    [Source("Handbook value, −7.42e-8 K/Pa", Standing.FromMemory)]
    [Example("IceMeltingDepression(10 MPa)", "0.742000 K")]
    public static TemperatureDelta IceMeltingDepression([Parameter("p", "MPa", "pressure", AtLeast = 0, AtMost = 200, UsualTo = 30)] Pressure pressure) =>
        TemperatureDelta.FromKelvins(7.42e-8 * Admit.Between(pressure.Pascals, 0, 200, Scale.Megapascal, nameof(pressure)));

    /// <summary>Creep parameter A of Glen's flow law with exponent 3, in 1/(s·Pa³), between the values at −10, −5 and 0 °C.</summary>
    /// <exception cref="DomainException">The temperature is not between −10 and 0 °C.</exception>
    [Callable(Topic, "How fast does ice creep at a temperature (Glen's parameter A, exponent 3)?", Assumes = "Straight line of the logarithm between −10, −5 and 0 °C.", NotFor = "Colder ice than −10 °C: no value is given here; and loads shorter than hours.")]
    [NoFormula("straight line of ln A between 3.5e-25 at −10 °C, 9.3e-25 at −5 °C and 2.4e-24 at 0 °C")]
    [Source(CreepSource, Standing.FromMemory)]
    [Example("IceCreepParameter(-10 °C)", "3.50000e-25 m³·s^5/kg^3")]
    [return: InUnit("m³·s^5/kg^3")]
    public static Quantity IceCreepParameter([Parameter("T", "°C", "temperature of the ice", AtLeast = -10, AtMost = 0)] Temperature temperature) =>
        Quantity.FromSi(Creep(temperature), CreepDimension);

    /// <summary>Effective creep rate of ice under an effective shear stress, in 1/s: A·τ³.</summary>
    /// <exception cref="DomainException">The temperature is not between −10 and 0 °C, or the stress is negative or absurd.</exception>
    [Callable(Topic, "How fast does ice creep under a shear stress?", Assumes = "Secondary creep, exponent 3; effective stress and rate as in Glen's flow law.", NotFor = "Falls and short pulls, which break ice rather than let it creep.")]
    [NoFormula("creep parameter A at the temperature, times the stress cubed")]
    [Source(CreepSource, Standing.FromMemory)]
    [Example("IceCreepRate(-10 °C, 0.1 MPa)", "3.50000e-10 1/s")]
    public static Frequency IceCreepRate(
        [Parameter("T", "°C", "temperature of the ice", AtLeast = -10, AtMost = 0)] Temperature temperature,
        [Parameter("τ", "MPa", "effective shear stress", AtLeast = 0, AtMost = 1000, UsualTo = 0.5)] Pressure stress)
    {
        double pascals = Admit.Between(stress.Pascals, 0, 1000, Scale.Megapascal, nameof(stress));
        return Frequency.FromHertz(Creep(temperature) * pascals * pascals * pascals);
    }

    private static double Creep(Temperature temperature)
    {
        double celsius = Celsius(temperature, -10);
        double warm = Math.Log(9.3e-25), share = (celsius + 5) / 5;
        return Math.Exp(share >= 0 ? warm + (share * (Math.Log(2.4e-24) - warm)) : warm + (share * (warm - Math.Log(3.5e-25))));
    }

    private static double Celsius(Temperature temperature, double least)
    {
        double celsius = temperature.DegreesCelsius;
        // a kelvin value such as 273.15 does not come back as exactly 0 °C
        const double slack = 1e-9;
        if (celsius >= least - slack && celsius <= slack) return Math.Clamp(celsius, least, 0);
        Require.AtLeast(celsius, least, "°C", nameof(temperature));
        return Require.AtMost(celsius, 0, "°C", nameof(temperature));
    }

    private static double Grain(Length grainSize) => Admit.Positive(grainSize.Meters, Most.Millimetres, Scale.Millimetre, nameof(grainSize));
}
