using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>Ready materials, minimum and typical kept apart. Cold makes steel and aluminium tubes slightly stronger, not weaker.</summary>
[SheetValues("ready materials, minimum and typical kept apart")]
public static class Materials
{
    /// <summary>Steel 4130, normalised tube or sheet: minimum yield 75 ksi, ultimate 95 ksi.</summary>
    [Member("", "", "steel 4130, normalised tube or sheet: minimum values")]
    [Source("MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed in open tables", Standing.SecondHand)]
    public static Material Steel4130Normalised { get; } = new()
    {
        Name = "steel 4130, normalised tube or sheet", Basis = MaterialBasis.Minimum,
        YieldStrength = Ksi(75), UltimateStrength = Ksi(95), ShearStrength = Ksi(57), ElasticModulus = Ksi(29000), Density = Density.FromPoundsPerCubicInch(0.284), ElongationLow = 0.2, ElongationHigh = 0.25,
    };

    /// <summary>Steel 4130, normalised, typical, lower figure: typical yield 435 MPa, ultimate 670 MPa.</summary>
    [Member("", "", "steel 4130, normalised, typical, lower figure: typical values")]
    [Source("Typical data-sheet values, 435 to 460 / 670 MPa, as transcribed", Standing.SecondHand)]
    [Source("MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed in open tables: elastic modulus and density", Standing.SecondHand)]
    public static Material Steel4130NormalisedTypicalLow { get; } = new()
    {
        Name = "steel 4130, normalised, typical, lower figure", Basis = MaterialBasis.Typical,
        YieldStrength = Pressure.FromMegapascals(435), UltimateStrength = Pressure.FromMegapascals(670), ElasticModulus = Ksi(29000), Density = Density.FromPoundsPerCubicInch(0.284), ElongationLow = 0.2, ElongationHigh = 0.25,
    };

    /// <summary>Steel 4130, normalised, typical, upper figure: typical yield 460 MPa, ultimate 670 MPa.</summary>
    [Member("", "", "steel 4130, normalised, typical, upper figure: typical values")]
    [Source("Typical data-sheet values, 435 to 460 / 670 MPa, as transcribed", Standing.SecondHand)]
    [Source("MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed in open tables: elastic modulus and density", Standing.SecondHand)]
    public static Material Steel4130NormalisedTypicalHigh { get; } = new()
    {
        Name = "steel 4130, normalised, typical, upper figure", Basis = MaterialBasis.Typical,
        YieldStrength = Pressure.FromMegapascals(460), UltimateStrength = Pressure.FromMegapascals(670), ElasticModulus = Ksi(29000), Density = Density.FromPoundsPerCubicInch(0.284), ElongationLow = 0.2, ElongationHigh = 0.25,
    };

    /// <summary>Steel 4130, heat treated to 125 ksi: minimum yield 112 ksi, ultimate 125 ksi.</summary>
    [Member("", "", "steel 4130, heat treated to 125 ksi: minimum values")]
    [Source("MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed in open tables", Standing.SecondHand)]
    public static Material Steel4130Treated125 { get; } = new()
    {
        Name = "steel 4130, heat treated to 125 ksi", Basis = MaterialBasis.Minimum,
        YieldStrength = Ksi(112), UltimateStrength = Ksi(125), ShearStrength = Ksi(75), ElasticModulus = Ksi(29000), Density = Density.FromPoundsPerCubicInch(0.284),
    };

    /// <summary>Steel 4130, heat treated to 150 ksi: minimum yield 132 ksi, ultimate 150 ksi.</summary>
    [Member("", "", "steel 4130, heat treated to 150 ksi: minimum values")]
    [Source("MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed in open tables", Standing.SecondHand)]
    public static Material Steel4130Treated150 { get; } = new()
    {
        Name = "steel 4130, heat treated to 150 ksi", Basis = MaterialBasis.Minimum,
        YieldStrength = Ksi(132), UltimateStrength = Ksi(150), ShearStrength = Ksi(90), ElasticModulus = Ksi(29000), Density = Density.FromPoundsPerCubicInch(0.284),
    };

    /// <summary>Stainless steel 17-4PH, H1025: minimum yield 145 ksi, ultimate 155 ksi.</summary>
    [Member("", "", "stainless steel 17-4PH, H1025: minimum values")]
    [Source("MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed in open tables", Standing.SecondHand)]
    public static Material Stainless17_4H1025 { get; } = new()
    {
        Name = "stainless steel 17-4PH, H1025", Basis = MaterialBasis.Minimum,
        YieldStrength = Ksi(145), UltimateStrength = Ksi(155), ShearStrength = Ksi(93), ElasticModulus = Ksi(28500), Density = Density.FromPoundsPerCubicInch(0.282),
    };

    /// <summary>Stainless steel 304 (1.4301): minimum yield 210 MPa, ultimate 520 MPa.</summary>
    [Member("", "", "stainless steel 304 (1.4301): minimum values")]
    [Source("EN 10088, 1.4301: yield 210 to 230 MPa, the lower given", Standing.FromMemory)]
    public static Material Stainless304 { get; } = new()
    {
        Name = "stainless steel 304 (1.4301)", Basis = MaterialBasis.Minimum,
        YieldStrength = Pressure.FromMegapascals(210), UltimateStrength = Pressure.FromMegapascals(520), ElasticModulus = Pressure.FromGigapascals(200), Density = Density.FromKilogramsPerCubicMeter(7900),
    };

    /// <summary>Structural steel S235, up to 40 mm: minimum yield 235 MPa, ultimate 360 MPa.</summary>
    [Member("", "", "structural steel S235, up to 40 mm: minimum values")]
    [Source("EN 1993-1-1, Table 3.1", Standing.FromMemory)]
    public static Material SteelS235 { get; } = new()
    {
        Name = "structural steel S235, up to 40 mm", Basis = MaterialBasis.Minimum,
        YieldStrength = Pressure.FromMegapascals(235), UltimateStrength = Pressure.FromMegapascals(360),
    };

    /// <summary>Structural steel S355, up to 40 mm: minimum yield 355 MPa, ultimate 490 MPa.</summary>
    [Member("", "", "structural steel S355, up to 40 mm: minimum values")]
    [Source("EN 1993-1-1, Table 3.1", Standing.FromMemory)]
    public static Material SteelS355 { get; } = new()
    {
        Name = "structural steel S355, up to 40 mm", Basis = MaterialBasis.Minimum,
        YieldStrength = Pressure.FromMegapascals(355), UltimateStrength = Pressure.FromMegapascals(490),
    };

    /// <summary>Aluminium 6061-T6: minimum yield 35 ksi, ultimate 42 ksi.</summary>
    [Member("", "", "aluminium 6061-T6: minimum values")]
    [Source("MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed in open tables", Standing.SecondHand)]
    public static Material Aluminium6061T6 { get; } = new()
    {
        Name = "aluminium 6061-T6", Basis = MaterialBasis.Minimum,
        YieldStrength = Ksi(35), UltimateStrength = Ksi(42), ShearStrength = Ksi(25), ElasticModulus = Ksi(10000), Density = Density.FromPoundsPerCubicInch(0.098), ElongationLow = 0.08, ElongationHigh = 0.12,
    };

    /// <summary>Aluminium 6061-T6, typical: typical yield 276 MPa, ultimate 310 MPa.</summary>
    [Member("", "", "aluminium 6061-T6, typical: typical values")]
    [Source("Typical data-sheet values, 276 / 310 MPa, E 68.9 GPa, as transcribed", Standing.SecondHand)]
    [Source("MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed in open tables: density", Standing.SecondHand)]
    public static Material Aluminium6061T6Typical { get; } = new()
    {
        Name = "aluminium 6061-T6, typical", Basis = MaterialBasis.Typical,
        YieldStrength = Pressure.FromMegapascals(276), UltimateStrength = Pressure.FromMegapascals(310), ElasticModulus = Pressure.FromGigapascals(68.9), Density = Density.FromPoundsPerCubicInch(0.098), ElongationLow = 0.08, ElongationHigh = 0.12,
    };

    /// <summary>Aluminium 6061-T6, design value: design yield 240 MPa.</summary>
    [Member("", "", "aluminium 6061-T6, design value: design values")]
    [Source("EN 1999-1-1, as transcribed", Standing.SecondHand)]
    public static Material Aluminium6061T6Design { get; } = new()
    {
        Name = "aluminium 6061-T6, design value", Basis = MaterialBasis.Design,
        YieldStrength = Pressure.FromMegapascals(240),
    };

    /// <summary>Aluminium 7075-T6 sheet: minimum yield 67 ksi, ultimate 77 ksi.</summary>
    [Member("", "", "aluminium 7075-T6 sheet: minimum values")]
    [Source("MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed in open tables", Standing.SecondHand)]
    public static Material Aluminium7075T6 { get; } = new()
    {
        Name = "aluminium 7075-T6 sheet", Basis = MaterialBasis.Minimum,
        YieldStrength = Ksi(67), UltimateStrength = Ksi(77), ShearStrength = Ksi(46), ElasticModulus = Ksi(10400), Density = Density.FromPoundsPerCubicInch(0.101), ElongationLow = 0.05, ElongationHigh = 0.11,
    };

    /// <summary>Titanium Ti-6Al-4V, annealed: minimum yield 120 ksi, ultimate 130 ksi.</summary>
    [Member("", "", "titanium Ti-6Al-4V, annealed: minimum values")]
    [Source("MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed in open tables", Standing.SecondHand)]
    public static Material Titanium6Al4V { get; } = new()
    {
        Name = "titanium Ti-6Al-4V, annealed", Basis = MaterialBasis.Minimum,
        YieldStrength = Ksi(120), UltimateStrength = Ksi(130), ShearStrength = Ksi(78), ElasticModulus = Ksi(16000), Density = Density.FromPoundsPerCubicInch(0.16),
    };

    private static Pressure Ksi(double value) => Pressure.FromKilopoundsForcePerSquareInch(value);
}
