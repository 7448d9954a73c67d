using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics;

/// <summary>Breakout of a cone of ice at the surface, by analogy with concrete. No calibration for ice exists.</summary>
public static class ConeBreakout
{
    private const string Topic = "Surface cone (analogue)";
    private const string Analogue = "Analogue: a concrete model carried over to ice, for which no calibration exists.";
    private const string NotFor = "A capacity of the placement: breaking out at 1 to 4 kN is a normal first stage, after which lever arm and thread decide.";
    private const string Depth = "depth of the cone's tip below the face";
    private const string HalfCone = "National guides' school, laboratory page: under a radial load the ice fails first as a half cone";
    private const double MostMillimetres = 10000;

    internal const double MostToughness = 1e6;

    /// <summary>Analogue: tensile strength times the projected area of a 45° cone, in N: f_t·π·h².</summary>
    /// <exception cref="DomainException">A value is not positive or absurd.</exception>
    [Callable(Topic, "What would a full 45° cone of ice carry, by analogy?", Assumes = "Even tension over the projected area of a point cone at 45°.", NotFor = NotFor)]
    [Formula("pi*tensileStrength*depth*depth", Symbol = "N")]
    [CautionWhen("true", Analogue)]
    [Source("plastic tensile cone, derived here", Standing.Derived)]
    [Example("IceConeAnalogue(1 MPa, 40 mm)", "5.026548 kN")]
    public static Force IceConeAnalogue(
        [Parameter("f_t", "MPa", "tensile strength of the ice", Above = 0, AtMost = Most.Megapascals, UsualFrom = 0.7, UsualTo = 3.1)] Pressure tensileStrength,
        [Parameter("h", "mm", Depth, Above = 0, AtMost = MostMillimetres, UsualFrom = 20, UsualTo = 100)] Length depth) =>
        Force.FromNewtons(Math.PI * Tension(tensileStrength) * Squared(depth));

    /// <summary>Analogue: half of a 45° cone, as is seen under a radial load, in N: f_t·π·h²/2.</summary>
    /// <exception cref="DomainException">A value is not positive or absurd.</exception>
    [Callable(Topic, "What would the half cone under a radially loaded body carry, by analogy?", Assumes = "Even tension over half the projected area of a point cone at 45°.", NotFor = NotFor)]
    [Formula("pi*tensileStrength*depth*depth/2", Symbol = "N")]
    [CautionWhen("true", Analogue)]
    [Source("plastic tensile cone, derived here", Standing.Derived)]
    [Source(HalfCone, Standing.Read)]
    [Example("IceHalfConeAnalogue(1 MPa, 40 mm)", "2.513274 kN")]
    public static Force IceHalfConeAnalogue(
        [Parameter("f_t", "MPa", "tensile strength of the ice", Above = 0, AtMost = Most.Megapascals, UsualFrom = 0.7, UsualTo = 3.1)] Pressure tensileStrength,
        [Parameter("h", "mm", Depth, Above = 0, AtMost = MostMillimetres, UsualFrom = 20, UsualTo = 100)] Length depth) =>
        Force.FromNewtons(Math.PI * Tension(tensileStrength) * Squared(depth) / 2);

    /// <summary>Analogue: tensile strength times the 35° pyramid area of concrete capacity design, in N: 9·f_t·h².</summary>
    /// <exception cref="DomainException">A value is not positive or absurd.</exception>
    [Callable(Topic, "What would a 35° breakout body of ice carry, by analogy?", Assumes = "Even tension over the area 9 h².", NotFor = NotFor)]
    [Formula("9*tensileStrength*depth*depth", Symbol = "N")]
    [CautionWhen("true", Analogue)]
    [Source("Fuchs, Eligehausen and Breen, 1995 (concrete capacity design): 35° cone, area 9 h²", Standing.FromMemory)]
    [Example("IceCcdAnalogue(1 MPa, 40 mm)", "14.4000 kN")]
    public static Force IceCcdAnalogue(
        [Parameter("f_t", "MPa", "tensile strength of the ice", Above = 0, AtMost = Most.Megapascals, UsualFrom = 0.7, UsualTo = 3.1)] Pressure tensileStrength,
        [Parameter("h", "mm", Depth, Above = 0, AtMost = MostMillimetres, UsualFrom = 20, UsualTo = 100)] Length depth) =>
        Force.FromNewtons(9 * Tension(tensileStrength) * Squared(depth));

    /// <summary>Analogue: fracture form with its size effect, in N: 2.1·K_Ic·h^1.5.</summary>
    /// <exception cref="DomainException">A value is not positive or absurd, or the toughness has another dimension.</exception>
    [Callable(Topic, "What would a cone of ice carry by its fracture toughness, by analogy?", Assumes = "Linear elastic fracture; √(E·G_F) of concrete read as K_Ic of ice.", NotFor = NotFor)]
    [Formula("2.1*fractureToughness*Pow(depth, 1.5)", Symbol = "N")]
    [CautionWhen("true", Analogue)]
    [Source("Eligehausen and Sawade, 1989: N = 2.1 √(E G_F) h^1.5 for concrete", Standing.FromMemory)]
    [Example("IceFractureAnalogue(100 kPa·m^0.5, 40 mm)", "1.680000 kN")]
    public static Force IceFractureAnalogue(
        [Parameter("K_Ic", "kPa·m^0.5", "fracture toughness of the ice", Above = 0, AtMost = MostToughness, UsualFrom = 50, UsualTo = 150)] Quantity fractureToughness,
        [Parameter("h", "mm", Depth, Above = 0, AtMost = MostMillimetres, UsualFrom = 20, UsualTo = 100)] Length depth)
    {
        if (fractureToughness.Dimension != IceValues.Toughness) throw new DomainException("fractureToughness must be in kPa·m^0.5: a stress times the root of a length.", nameof(fractureToughness));
        double toughness = Admit.Positive(fractureToughness.Si, MostToughness, new Scale("kPa·m^0.5", 1e3), nameof(fractureToughness));
        double deep = Deep(depth);
        return Force.FromNewtons(2.1 * toughness * deep * Math.Sqrt(deep));
    }

    private static double Tension(Pressure tensileStrength) => Admit.Positive(tensileStrength.Pascals, Most.Megapascals, Scale.Megapascal, nameof(tensileStrength));

    private static double Deep(Length depth) => Admit.Positive(depth.Meters, MostMillimetres, Scale.Millimetre, nameof(depth));

    private static double Squared(Length depth) => Deep(depth) * depth.Meters;
}
