using System.Runtime.CompilerServices;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>What a section holds in bending, pull and shear, each alone, without partial factors.</summary>
public static class SectionStrength
{
    private const string Topic = "Lever arm";
    private const string Moments = "EN 1993-1-1:2005, 6.2.4 to 6.2.6, without γ_M0";
    private const string YieldMeaning = "yield strength; say whether it is a minimum or a typical value";

    /// <summary>Moment in N·m at which the extreme fibre yields: W_el f_y; EN 1993-1-1, 6.2.5.</summary>
    /// <exception cref="DomainException">A value is not above 0 or absurd.</exception>
    [Callable(Topic, "The moment at which a section first yields.", NotFor = "Saying when the tube breaks: it folds on, see FoldOverLoad.")]
    [Formula("elasticModulus*yieldStrength", Symbol = "M_el")]
    [Example("ElasticMoment(260.4808 mm³, 517.1068 MPa)", "134.696 N·m")]
    [Source(Moments, Standing.FromMemory)]
    public static Torque ElasticMoment(
        [Parameter("W_el", "mm³", "elastic section modulus", Above = 0, AtMost = Most.CubicMillimetres)] Volume elasticModulus,
        [Parameter("f_y", "MPa", YieldMeaning, Above = 0, AtMost = Most.Megapascals, UsualFrom = 30, UsualTo = 2500)] Pressure yieldStrength) =>
        Torque.FromNewtonMeters(Admit.Positive(elasticModulus.CubicMeters, Most.CubicMillimetres, Scale.CubicMillimetre, nameof(elasticModulus)) * Yield(yieldStrength));

    /// <summary>Moment in N·m of a full plastic hinge: W_pl f_y; EN 1993-1-1, 6.2.5.</summary>
    /// <exception cref="DomainException">A value is not above 0 or absurd.</exception>
    [Callable(Topic, "The moment at which a section forms a plastic hinge.", Assumes = "The wall does not buckle first (section class 1 or 2).",
        NotFor = "Saying when the tube breaks: it folds on, see FoldOverLoad.")]
    [Formula("plasticModulus*yieldStrength", Symbol = "M_pl")]
    [Example("PlasticMoment(361.5 mm³, 517.1068 MPa)", "186.934 N·m")]
    [Source(Moments, Standing.FromMemory)]
    public static Torque PlasticMoment(
        [Parameter("W_pl", "mm³", "plastic section modulus", Above = 0, AtMost = Most.CubicMillimetres)] Volume plasticModulus,
        [Parameter("f_y", "MPa", YieldMeaning, Above = 0, AtMost = Most.Megapascals, UsualFrom = 30, UsualTo = 2500)] Pressure yieldStrength) =>
        Torque.FromNewtonMeters(Admit.Positive(plasticModulus.CubicMeters, Most.CubicMillimetres, Scale.CubicMillimetre, nameof(plasticModulus)) * Yield(yieldStrength));

    /// <summary>Pull in N at which the whole section yields: A f_y; EN 1993-1-1, 6.2.4.</summary>
    /// <exception cref="DomainException">A value is not above 0 or absurd.</exception>
    [Callable(Topic, "The pull along the body at which the whole section yields.", NotFor = "A section weakened by holes or a notch.")]
    [Formula("area*yieldStrength", Symbol = "N_pl")]
    [Example("PlasticAxialLoad(73.04203 mm², 517.1068 MPa)", "37.7705 kN")]
    [Source(Moments, Standing.FromMemory)]
    public static Force PlasticAxialLoad(
        [Parameter("A", "mm²", "area of the metal", Above = 0, AtMost = Most.SquareMillimetres)] Area area,
        [Parameter("f_y", "MPa", YieldMeaning, Above = 0, AtMost = Most.Megapascals, UsualFrom = 30, UsualTo = 2500)] Pressure yieldStrength) =>
        Force.FromNewtons(Admit.Positive(area.SquareMeters, Most.SquareMillimetres, Scale.SquareMillimetre, nameof(area)) * Yield(yieldStrength));

    /// <summary>Transverse load in N at which the section yields in shear: A_v f_y/√3; EN 1993-1-1, 6.2.6.</summary>
    /// <exception cref="DomainException">A value is not above 0 or absurd.</exception>
    [Callable(Topic, "The transverse load at which a section yields in shear.", NotFor = "A lever arm long enough to bend: that fails first.")]
    [Formula("shearArea*yieldStrength/Sqrt(3)", Symbol = "V_pl")]
    [Example("PlasticShearLoad(46.5 mm², 517.1068 MPa)", "13.88266 kN")]
    [Source(Moments, Standing.FromMemory)]
    public static Force PlasticShearLoad(
        [Parameter("A_v", "mm²", "area that carries shear, 2 A/π for a tube", Above = 0, AtMost = Most.SquareMillimetres)] Area shearArea,
        [Parameter("f_y", "MPa", YieldMeaning, Above = 0, AtMost = Most.Megapascals, UsualFrom = 30, UsualTo = 2500)] Pressure yieldStrength) =>
        Force.FromNewtons(Admit.Positive(shearArea.SquareMeters, Most.SquareMillimetres, Scale.SquareMillimetre, nameof(shearArea)) * Yield(yieldStrength) / Math.Sqrt(3));

    /// <summary>Transverse load in N that puts a given moment on a lever arm: M/a; statics.</summary>
    /// <exception cref="DomainException">A value is not above 0 or absurd.</exception>
    [Callable(Topic, "The transverse load that brings a lever arm to a given moment.", Assumes = "A pure transverse load, no pull along the body.",
        NotFor = "Very short arms, where shear decides: see ShearLimitArm.")]
    [Formula("moment/leverArm", Symbol = "F")]
    [Example("LeverArmLoad(186.9341 N·m, 50 mm)", "3.738682 kN")]
    [Source("statics of a cantilever with an end load", Standing.Derived)]
    public static Force LeverArmLoad(
        [Parameter("M", "N·m", "the moment the section holds, elastic or plastic", Above = 0, AtMost = Most.NewtonMetres)] Torque moment,
        [Parameter("a", "mm", "lever arm from the sound ice to the load line", Above = 0, AtMost = Most.Millimetres)] Length leverArm) =>
        Force.FromNewtons(Admit.Positive(moment.NewtonMeters, Most.NewtonMetres, Scale.NewtonMetre, nameof(moment))
            / Admit.Positive(leverArm.Meters, Most.Millimetres, Scale.Millimetre, nameof(leverArm)));

    /// <summary>Lever arm in m at which a transverse load forms a hinge: M_pl/V; statics.</summary>
    /// <exception cref="DomainException">A value is not above 0 or absurd.</exception>
    [Callable(Topic, "The lever arm at which a given load forms a plastic hinge.", Assumes = "A pure transverse load, no pull along the body, no shear reduction.",
        NotFor = "Very short arms, where shear decides: see ShearLimitArm.")]
    [Formula("plasticMoment/transverse", Symbol = "a")]
    [Example("HingeArm(186.9341 N·m, 10 kN)", "18.69341 mm")]
    [Source("statics of a cantilever with an end load", Standing.Derived)]
    public static Length HingeArm(
        [Parameter("M_pl", "N·m", "plastic moment of the section", Above = 0, AtMost = Most.NewtonMetres)] Torque plasticMoment,
        [Parameter("V", "kN", "load square to the body", Above = 0, AtMost = Most.Kilonewtons)] Force transverse) =>
        Length.FromMeters(Admit.Positive(plasticMoment.NewtonMeters, Most.NewtonMetres, Scale.NewtonMetre, nameof(plasticMoment))
            / Admit.Positive(transverse.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(transverse)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double Yield(Pressure yieldStrength) => Admit.Positive(yieldStrength.Pascals, Most.Megapascals, Scale.Megapascal, nameof(yieldStrength));
}
