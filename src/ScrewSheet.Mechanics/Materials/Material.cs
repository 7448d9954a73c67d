using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>What a material's values stand for: minimum and typical values differ by up to 15 %.</summary>
[SheetOption("what a material's values stand for")]
public enum MaterialBasis
{
    /// <summary>Values the delivered material is at least to have.</summary>
    Minimum,

    /// <summary>Values usually found; half of the specimens lie below.</summary>
    Typical,

    /// <summary>Values a design code lays down.</summary>
    Design,
}

/// <summary>Strength, stiffness and density of a material, with what the values stand for. Where one is not known, asking for it is refused.</summary>
[SheetRecord("strength, stiffness and density of a material, minimum or typical")]
public sealed record Material
{
    private readonly double? yield, ultimate, shear, modulus, density, least, most;

    /// <summary>The material and its condition.</summary>
    [Member("", "", "the material and its condition")]
    public string Name { get; init; } = "unnamed material";

    /// <summary>What the values stand for.</summary>
    [Member("", "", "what the values stand for: minimum, typical or design")]
    public MaterialBasis Basis { get; init; }

    /// <summary>Yield strength in tension.</summary>
    /// <exception cref="DomainException">It is not known, or not above zero.</exception>
    [Member("f_y", "MPa", "yield strength in tension, 0.2 % proof where there is no yield point")]
    public Pressure YieldStrength { get => Stress(yield, "yield strength"); init => yield = Positive(value.Megapascals, "MPa", nameof(YieldStrength)); }

    /// <summary>Ultimate tensile strength.</summary>
    /// <exception cref="DomainException">It is not known, or not above zero.</exception>
    [Member("f_u", "MPa", "ultimate tensile strength")]
    public Pressure UltimateStrength { get => Stress(ultimate, "ultimate strength"); init => ultimate = Positive(value.Megapascals, "MPa", nameof(UltimateStrength)); }

    /// <summary>Ultimate shear strength.</summary>
    /// <exception cref="DomainException">It is not known, or not above zero.</exception>
    [Member("f_su", "MPa", "ultimate shear strength")]
    public Pressure ShearStrength { get => Stress(shear, "shear strength"); init => shear = Positive(value.Megapascals, "MPa", nameof(ShearStrength)); }

    /// <summary>Elastic modulus.</summary>
    /// <exception cref="DomainException">It is not known, or not above zero.</exception>
    [Member("E", "GPa", "elastic modulus")]
    public Pressure ElasticModulus { get => Stress(modulus, "elastic modulus"); init => modulus = Positive(value.Megapascals, "MPa", nameof(ElasticModulus)); }

    /// <summary>Density.</summary>
    /// <exception cref="DomainException">It is not known, or not above zero.</exception>
    [Member("ρ", "kg/m³", "density")]
    public Density Density { get => Density.FromKilogramsPerCubicMeter(Known(density, "density")); init => density = Positive(value.KilogramsPerCubicMeter, "kg/m³", nameof(Density)); }

    /// <summary>Elongation at fracture, lower end of what is usual.</summary>
    /// <exception cref="DomainException">It is not known, or not above zero.</exception>
    [Member("A", "", "elongation at fracture, lower end of what is usual; notches, welds and crimps lower it further")]
    [Source("Usual data-sheet figures", Standing.FromMemory)]
    public double ElongationLow { get => Known(least, "elongation"); init => least = Positive(value, "", nameof(ElongationLow)); }

    /// <summary>Elongation at fracture, upper end of what is usual.</summary>
    /// <exception cref="DomainException">It is not known, or not above zero.</exception>
    [Member("A", "", "elongation at fracture, upper end of what is usual")]
    [Source("Usual data-sheet figures", Standing.FromMemory)]
    public double ElongationHigh { get => Known(most, "elongation"); init => most = Positive(value, "", nameof(ElongationHigh)); }

    private static double Positive(double value, string unit, string member) => Require.AtMost(Require.Above(value, 0, unit, member), 1e7, unit, member);

    private Pressure Stress(double? megapascals, string what) => Pressure.FromMegapascals(Known(megapascals, what));

    private double Known(double? value, string what) =>
        value ?? throw new DomainException($"The {what} of {Name} is not given here: write the value of your source as a given, or with 'with' on the material.");
}
