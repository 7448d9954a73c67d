using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics;

/// <summary>Measured properties of ice. Ranges are given by their two ends; natural ice spreads by 30 to 50 % besides.</summary>
[SheetValues("measured properties of ice")]
public static class IceValues
{
    private const string Petrovic = "Petrovic, J. Mater. Sci. 38, 2003 (review): −10 to −20 °C";
    private const string Frederking = "Frederking, Svec and Timco, 1988: columnar fresh-water ice, −10 °C, asymmetric four-point bending";
    private const string Gammon = "Gammon and others, J. Glaciol. 29, 1983: −16 °C";

    internal static readonly Dimension Toughness = Dimension.Of(-1, 1, -2) * Dimension.Of(1).Power(1, 2)!.Value;

    /// <summary>Tensile strength, lower end: 0.7 MPa.</summary>
    [Member("f_t", "MPa", "tensile strength, lower end; hardly depends on temperature and rate, falls with grain size")]
    [Source(Petrovic, Standing.Read)]
    public static Pressure TensileStrengthLow => Pressure.FromMegapascals(0.7);

    /// <summary>Tensile strength, upper end: 3.1 MPa.</summary>
    [Member("f_t", "MPa", "tensile strength, upper end")]
    [Source(Petrovic, Standing.Read)]
    public static Pressure TensileStrengthHigh => Pressure.FromMegapascals(3.1);

    /// <summary>Mean tensile strength at −10 °C: 1.43 MPa.</summary>
    [Member("f_t", "MPa", "mean tensile strength at −10 °C")]
    [Source(Petrovic, Standing.FromMemory)]
    public static Pressure TensileStrengthMean => Pressure.FromMegapascals(1.43);

    /// <summary>Compressive strength, lower end: 5 MPa.</summary>
    [Member("f_c", "MPa", "compressive strength, lower end; rises with lower temperature and higher rate")]
    [Source(Petrovic, Standing.Read)]
    public static Pressure CompressiveStrengthLow => Pressure.FromMegapascals(5);

    /// <summary>Compressive strength, upper end: 25 MPa.</summary>
    [Member("f_c", "MPa", "compressive strength, upper end")]
    [Source(Petrovic, Standing.Read)]
    public static Pressure CompressiveStrengthHigh => Pressure.FromMegapascals(25);

    /// <summary>Compressive strength of fresh granular ice at −10 °C and 1e-3 /s: about 10 MPa.</summary>
    [Member("f_c", "MPa", "compressive strength of fresh granular ice at −10 °C and 1e-3 /s, about")]
    [Source("Schulson and Duval, 2009", Standing.FromMemory)]
    public static Pressure CompressiveStrengthGranular => Pressure.FromMegapascals(10);

    /// <summary>Shear strength, mean: 0.6 MPa.</summary>
    [Member("τ", "MPa", "shear strength of columnar fresh-water ice at −10 °C, mean")]
    [Source(Frederking, Standing.Read)]
    public static Pressure ShearStrengthMean => Pressure.FromMegapascals(0.6);

    /// <summary>Shear strength with reduced stress concentrations: 1.1 MPa.</summary>
    [Member("τ", "MPa", "shear strength of columnar fresh-water ice at −10 °C, stress concentrations reduced")]
    [Source(Frederking, Standing.Read)]
    public static Pressure ShearStrengthSmooth => Pressure.FromMegapascals(1.1);

    /// <summary>Fracture toughness, lower end: 50 kPa·m^0.5.</summary>
    [Member("K_Ic", "kPa·m^0.5", "fracture toughness, lower end")]
    [Source(Petrovic, Standing.Read)]
    public static Quantity FractureToughnessLow => Quantity.FromSi(50e3, Toughness);

    /// <summary>Fracture toughness, upper end: 150 kPa·m^0.5.</summary>
    [Member("K_Ic", "kPa·m^0.5", "fracture toughness, upper end")]
    [Source(Petrovic, Standing.Read)]
    public static Quantity FractureToughnessHigh => Quantity.FromSi(150e3, Toughness);

    /// <summary>Weibull modulus of strength: about 5.</summary>
    [Member("m", "", "Weibull modulus of strength, about")]
    [Source(Petrovic, Standing.Read)]
    public static double WeibullModulus => 5;

    /// <summary>Crushing strength parallel to the sheet over that normal to it, clear lake ice: about 0.75.</summary>
    [Member("", "", "crushing strength parallel to the sheet over that normal to it, clear lake ice, about; snow ice is isotropic")]
    [Source("Butkovich, SIPRE Research Report 11", Standing.Read)]
    public static double CrushingAnisotropy => 0.75;

    /// <summary>Elastic modulus of isotropic polycrystalline ice at −16 °C, at an instant: 9.33 GPa.</summary>
    [Member("E", "GPa", "elastic modulus of isotropic polycrystalline ice at −16 °C, at an instant; 1 GPa and less over seconds to minutes")]
    [Source(Gammon + ", as usually quoted", Standing.FromMemory)]
    public static Pressure ElasticModulus => Pressure.FromGigapascals(9.33);

    /// <summary>Shear modulus of isotropic polycrystalline ice at −16 °C: 3.52 GPa.</summary>
    [Member("G", "GPa", "shear modulus of isotropic polycrystalline ice at −16 °C")]
    [Source(Gammon + ", as usually quoted", Standing.FromMemory)]
    public static Pressure ShearModulus => Pressure.FromGigapascals(3.52);

    /// <summary>Poisson's ratio of isotropic polycrystalline ice at −16 °C: 0.325.</summary>
    [Member("ν", "", "Poisson's ratio of isotropic polycrystalline ice at −16 °C")]
    [Source(Gammon + ", as usually quoted", Standing.FromMemory)]
    public static double PoissonRatio => 0.325;

    /// <summary>Density at 0 °C: 917 kg/m³.</summary>
    [Member("ρ", "kg/m³", "density at 0 °C")]
    [Source("Handbook value", Standing.FromMemory)]
    public static Density Density => Density.FromKilogramsPerCubicMeter(917);

    /// <summary>Stiffness of the single crystal, c11: 13.929 GPa.</summary>
    [Member("c_11", "GPa", "stiffness of the single crystal at −16 °C")]
    [Source(Gammon, Standing.Read)]
    public static Pressure C11 => Pressure.FromGigapascals(13.929);

    /// <summary>Stiffness of the single crystal, c12: 7.082 GPa.</summary>
    [Member("c_12", "GPa", "stiffness of the single crystal at −16 °C")]
    [Source(Gammon, Standing.Read)]
    public static Pressure C12 => Pressure.FromGigapascals(7.082);

    /// <summary>Stiffness of the single crystal, c13: 5.765 GPa.</summary>
    [Member("c_13", "GPa", "stiffness of the single crystal at −16 °C")]
    [Source(Gammon, Standing.Read)]
    public static Pressure C13 => Pressure.FromGigapascals(5.765);

    /// <summary>Stiffness of the single crystal, c33: 15.010 GPa.</summary>
    [Member("c_33", "GPa", "stiffness of the single crystal along its axis at −16 °C")]
    [Source(Gammon, Standing.Read)]
    public static Pressure C33 => Pressure.FromGigapascals(15.010);

    /// <summary>Stiffness of the single crystal, c44: 3.014 GPa.</summary>
    [Member("c_44", "GPa", "shear stiffness of the single crystal at −16 °C")]
    [Source(Gammon, Standing.Read)]
    public static Pressure C44 => Pressure.FromGigapascals(3.014);
}
