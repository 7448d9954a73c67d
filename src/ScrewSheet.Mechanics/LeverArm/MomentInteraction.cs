using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>How much of the plastic moment is left beside a pull and a shear force.</summary>
public static class MomentInteraction
{
    internal const double CodeExponent = 1.7, AnnexFactor = 1.04;
    private const string Topic = "Lever arm";
    private const string CodeRule = "EN 1993-1-1:2005, 6.2.9.1, rule for circular hollow sections";
    private const string Shear = "EN 1993-1-1:2005, 6.2.8, equation 6.29";
    private const string RatioMeaning = "magnitude of the load along the body over what the section holds, |N|/N_pl";

    /// <summary>Part of the plastic moment left beside a pull, a number: cos(π n/2); exact for a thin wall, n from 0 to 1.</summary>
    /// <exception cref="DomainException">The ratio is not from 0 to 1.</exception>
    [Callable(Topic, "The part of the plastic moment left beside a pull, exact for a thin wall.", Assumes = "Rigid-plastic thin ring.", NotFor = "Adding shear: see ShearReduction.")]
    [Formula("Cos(pi*axialRatio/2)", Symbol = "m")]
    [Example("ThinWallMomentFactor(0.3)", "0.8910065")]
    [Source("plastic analysis of a thin ring, classical", Standing.Derived)]
    public static double ThinWallMomentFactor([Parameter("n", "", RatioMeaning, AtLeast = 0, AtMost = 1)] double axialRatio) => Math.Cos(Math.PI * Ratio(axialRatio) / 2);

    /// <summary>Part of the plastic moment left beside a pull, a number: 1 − n^1.7; EN 1993-1-1, 6.2.9.1, n from 0 to 1.</summary>
    /// <exception cref="DomainException">The ratio is not from 0 to 1.</exception>
    [Callable(Topic, "The part of the plastic moment left beside a pull, by the code's rule.", Assumes = "Circular hollow section of class 1 or 2.", NotFor = "Adding shear: see ShearReduction.")]
    [Formula("1 - Pow(axialRatio, 1.7)", Symbol = "m")]
    [CautionWhen("1 - Pow(axialRatio, 1.7) > Cos(pi*axialRatio/2) + 1e-12", "Here the code's rule gives a little more than the exact answer for a thin wall.")]
    [Example("CodeMomentFactor(0.3)", "0.8708465")]
    [Source(CodeRule, Standing.FromMemory)]
    public static double CodeMomentFactor([Parameter("n", "", RatioMeaning, AtLeast = 0, AtMost = 1)] double axialRatio) => 1 - Math.Pow(Ratio(axialRatio), CodeExponent);

    /// <summary>Part of the plastic moment left beside a pull, a number: min(1, 1.04 (1 − n^1.7)); Dutch national annex, n from 0 to 1.</summary>
    /// <exception cref="DomainException">The ratio is not from 0 to 1.</exception>
    [Callable(Topic, "The part of the plastic moment left beside a pull, in the form of a national annex.", Assumes = "Circular hollow section of class 1 or 2.", NotFor = "Adding shear: see ShearReduction.")]
    [Formula("Min(1, 1.04*(1 - Pow(axialRatio, 1.7)))", Symbol = "m")]
    [CautionWhen("Min(1, 1.04*(1 - Pow(axialRatio, 1.7))) > Cos(pi*axialRatio/2) + 1e-12", "Here the annex's rule gives a little more than the exact answer for a thin wall.")]
    [Example("AnnexMomentFactor(0.3)", "0.9056804")]
    [Source("Dutch national annex to EN 1993-1-1: M/(1.04 M_c) + (N/N_c)^1.7 ≤ 1 with M ≤ M_c", Standing.SecondHand)]
    public static double AnnexMomentFactor([Parameter("n", "", RatioMeaning, AtLeast = 0, AtMost = 1)] double axialRatio) =>
        Math.Min(1, AnnexFactor * (1 - Math.Pow(Ratio(axialRatio), CodeExponent)));

    /// <summary>Load along the body over what the section holds, a number: |N|/N_pl.</summary>
    /// <exception cref="DomainException">The load exceeds what the section holds, or a value is out of range.</exception>
    [Callable(Topic, "The load along the body over what the section holds.", NotFor = "Loads beyond the plastic axial load.")]
    [Needs("Abs(axial) <= plasticAxialLoad")]
    [Formula("Abs(axial)/plasticAxialLoad", Symbol = "n")]
    [Example("AxialRatio(1736.482 N, 37770.53 N)", "0.04597452")]
    [Source(CodeRule, Standing.FromMemory)]
    public static double AxialRatio(
        [Parameter("N", "kN", "load along the body, positive outward; its sign does not matter here", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force axial,
        [Parameter("N_pl", "kN", "pull at which the whole section yields, at least |N|", Above = 0, AtMost = Most.Kilonewtons)] Force plasticAxialLoad)
    {
        double holds = Admit.Positive(plasticAxialLoad.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(plasticAxialLoad));
        return Math.Min(1, Math.Abs(Admit.Signed(axial.Newtons, holds / 1e3, Scale.Kilonewton, nameof(axial))) / holds);
    }

    /// <summary>Part of the yield strength left beside a shear force, a number from 0 to 1: 1 up to half of V_pl, then 1 − (2V/V_pl − 1)²; EN 1993-1-1, 6.2.8.</summary>
    /// <exception cref="DomainException">The shear force exceeds what the section holds, or a value is out of range.</exception>
    [Callable(Topic, "The part of the yield strength that a shear force leaves for bending.", NotFor = "Shear beyond the plastic shear load.")]
    [Let("v", "Abs(transverse)/plasticShearLoad", "")]
    [Needs("Abs(transverse) <= plasticShearLoad")]
    [Formula("v <= 0.5 ? 1 : 1 - Pow(2*v - 1, 2)")]
    [Example("ShearReduction(9.658 kN, 13.88266 kN)", "0.8468248")]
    [Source(Shear, Standing.FromMemory)]
    public static double ShearReduction(
        [Parameter("V", "kN", "load square to the body; its sign does not matter here", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force transverse,
        [Parameter("V_pl", "kN", "transverse load at which the section yields in shear, at least |V|", Above = 0, AtMost = Most.Kilonewtons)] Force plasticShearLoad)
    {
        double holds = Admit.Positive(plasticShearLoad.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(plasticShearLoad));
        return ShearFactor(Math.Abs(Admit.Signed(transverse.Newtons, holds / 1e3, Scale.Kilonewton, nameof(transverse))) / holds);
    }

    /// <summary>Lever arm in m below which shear lowers the plastic moment: 2 √3 W_pl/A_v; from EN 1993-1-1, 6.2.8.</summary>
    /// <exception cref="DomainException">A value is not above 0 or absurd.</exception>
    [Callable(Topic, "The lever arm below which shear lowers the plastic moment.", NotFor = "Arms with a pull along the body as well.")]
    [Formula("2*Sqrt(3)*plasticModulus/shearArea", Symbol = "a")]
    [Example("ShearLimitArm(361.5 mm³, 46.5 mm²)", "26.93060 mm")]
    [Source(Shear, Standing.FromMemory)]
    public static Length ShearLimitArm(
        [Parameter("W_pl", "mm³", "plastic section modulus", Above = 0, AtMost = Most.CubicMillimetres)] Volume plasticModulus,
        [Parameter("A_v", "mm²", "area that carries shear, 2 A/π for a tube", Above = 0, AtMost = Most.SquareMillimetres)] Area shearArea) =>
        Length.FromMeters(2 * Math.Sqrt(3) * Admit.Positive(plasticModulus.CubicMeters, Most.CubicMillimetres, Scale.CubicMillimetre, nameof(plasticModulus))
            / Admit.Positive(shearArea.SquareMeters, Most.SquareMillimetres, Scale.SquareMillimetre, nameof(shearArea)));

    /// <summary>Utilisation under moments about two axes, a number: (M_y/M_N)² + (M_z/M_N)²; EN 1993-1-1, 6.2.9.1(6).</summary>
    /// <exception cref="DomainException">The reduced moment is not above 0 or a value is absurd.</exception>
    [Callable(Topic, "How far moments about two axes use up the moment a tube holds; 1 is the limit.", NotFor = "Sections other than round tubes.")]
    [Formula("Pow(momentY/reducedMoment, 2) + Pow(momentZ/reducedMoment, 2)")]
    [Example("BiaxialUtilisation(60 N·m, 80 N·m, 100 N·m)", "1.000000")]
    [Source("EN 1993-1-1:2005, 6.2.9.1(6), exponents 2 for circular hollow sections", Standing.FromMemory)]
    public static double BiaxialUtilisation(
        [Parameter("M_y", "N·m", "moment about one axis", AtLeast = -Most.NewtonMetres, AtMost = Most.NewtonMetres)] Torque momentY,
        [Parameter("M_z", "N·m", "moment about the axis square to it", AtLeast = -Most.NewtonMetres, AtMost = Most.NewtonMetres)] Torque momentZ,
        [Parameter("M_N", "N·m", "moment the section holds beside its pull and shear", Above = 0, AtMost = Most.NewtonMetres)] Torque reducedMoment)
    {
        double holds = Admit.Positive(reducedMoment.NewtonMeters, Most.NewtonMetres, Scale.NewtonMetre, nameof(reducedMoment));
        double y = Admit.Signed(momentY.NewtonMeters, Most.NewtonMetres, Scale.NewtonMetre, nameof(momentY)) / holds;
        double z = Admit.Signed(momentZ.NewtonMeters, Most.NewtonMetres, Scale.NewtonMetre, nameof(momentZ)) / holds;
        return (y * y) + (z * z);
    }

    internal static double ShearFactor(double shearRatio)
    {
        double beyond = (2 * Math.Min(1, shearRatio)) - 1;
        return beyond <= 0 ? 1 : 1 - (beyond * beyond);
    }

    private static double Ratio(double axialRatio) => Math.Clamp(Admit.Between(axialRatio, 0, 1, Scale.None, nameof(axialRatio)), 0, 1);
}
