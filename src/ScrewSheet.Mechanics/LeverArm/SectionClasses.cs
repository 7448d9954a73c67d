using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>The greatest diameter over wall of each section class.</summary>
[SheetRecord("the greatest diameter over wall thickness of each section class")]
public readonly record struct SectionClassLimits
{
    internal SectionClassLimits(double class1, double class2, double class3)
    {
        Class1 = class1;
        Class2 = class2;
        Class3 = class3;
    }

    /// <summary>Greatest D/t of class 1: hinges with full rotation.</summary>
    [Member("", "", "greatest D/t of class 1: a hinge that turns")]
    public double Class1 { get; }

    /// <summary>Greatest D/t of class 2: plastic moment, little rotation.</summary>
    [Member("", "", "greatest D/t of class 2: the plastic moment, but little rotation")]
    public double Class2 { get; }

    /// <summary>Greatest D/t of class 3: elastic moment only.</summary>
    [Member("", "", "greatest D/t of class 3: the elastic moment only")]
    public double Class3 { get; }
}

/// <summary>Whether the wall lets the section reach its plastic moment.</summary>
public static class SectionClasses
{
    private const string Topic = "Lever arm";
    private const string Steel = "EN 1993-1-1:2005, Table 5.2 sheet 3";
    private const string Aluminium = "EN 1999-1-1, 6.1.4, buckling class A without welds";
    private const string NoHinge = "Class 3 or 4: the wall buckles before a plastic hinge forms; do not use the plastic moment.";
    private const double SteelReference = 235e6, AluminiumReference = 250e6;

    /// <summary>Greatest D/t of each class for a steel tube, numbers: 50, 70, 90 × 235 MPa/f_y; EN 1993-1-1, Table 5.2.</summary>
    /// <exception cref="DomainException">The strength is not above 0 MPa or absurd.</exception>
    [Callable(Topic, "How thin the wall of a steel tube may be for each section class.", NotFor = "Aluminium: see AluminiumClassLimits.")]
    [Let("eps2", "235000000/yieldStrength", "")]
    [Formula("50*eps2", Member = "Class1")]
    [Formula("70*eps2", Member = "Class2")]
    [Formula("90*eps2", Member = "Class3")]
    [Example("SteelClassLimits(355 MPa).Class1", "33.09859")]
    [Source(Steel, Standing.FromMemory)]
    public static SectionClassLimits SteelClassLimits(
        [Parameter("f_y", "MPa", "yield strength of the steel", Above = 0, AtMost = Most.Megapascals, UsualFrom = 200, UsualTo = 700)] Pressure yieldStrength)
    {
        double square = SteelReference / SectionStrength.Yield(yieldStrength);
        return new SectionClassLimits(50 * square, 70 * square, 90 * square);
    }

    /// <summary>Greatest D/t of each class for an aluminium tube, numbers: (11, 16, 22 ε/3)², ε² = 250 MPa/f_o; EN 1999-1-1, 6.1.4.</summary>
    /// <exception cref="DomainException">The strength is not above 0 MPa or absurd.</exception>
    [Callable(Topic, "How thin the wall of an aluminium tube may be for each section class.", Assumes = "Buckling class A, no welds.", NotFor = "Steel, or welded aluminium.")]
    [Let("eps2", "250000000/proofStrength", "")]
    [Formula("121*eps2/9", Member = "Class1")]
    [Formula("256*eps2/9", Member = "Class2")]
    [Formula("484*eps2/9", Member = "Class3")]
    [Example("AluminiumClassLimits(241.3165 MPa).Class1", "13.92823")]
    [Source(Aluminium, Standing.FromMemory)]
    public static SectionClassLimits AluminiumClassLimits(
        [Parameter("f_o", "MPa", "0.2 % proof strength of the alloy", Above = 0, AtMost = Most.Megapascals, UsualFrom = 50, UsualTo = 700)] Pressure proofStrength)
    {
        double square = AluminiumReference / Proof(proofStrength);
        return new SectionClassLimits(121 * square / 9, 256 * square / 9, 484 * square / 9);
    }

    /// <summary>Section class of a steel tube, 1 to 4; EN 1993-1-1, Table 5.2.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The section class of a steel tube: 1 turns as a hinge, 4 buckles before it yields.", NotFor = "Aluminium: see AluminiumTubeClass.")]
    [Let("slenderness", "outerDiameter/wall", "")]
    [Let("eps2", "235000000/yieldStrength", "")]
    [Needs("2*wall <= outerDiameter")]
    [Formula("slenderness <= 50*eps2 ? 1 : slenderness <= 70*eps2 ? 2 : slenderness <= 90*eps2 ? 3 : 4")]
    [CautionWhen("slenderness > 70*eps2", NoHinge)]
    [Example("SteelTubeClass(17 mm, 1.5 mm, 517.1068 MPa)", "1.000000")]
    [Source(Steel, Standing.FromMemory)]
    public static double SteelTubeClass(
        [Parameter("D", "mm", "outer diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall,
        [Parameter("f_y", "MPa", "yield strength of the steel", Above = 0, AtMost = Most.Megapascals, UsualFrom = 200, UsualTo = 700)] Pressure yieldStrength) =>
        ClassOf(Slenderness(outerDiameter, wall), SteelClassLimits(yieldStrength));

    /// <summary>Section class of an aluminium tube without welds, 1 to 4; EN 1999-1-1, 6.1.4.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The section class of an aluminium tube: 1 turns as a hinge, 4 buckles before it yields.", Assumes = "Buckling class A, no welds.", NotFor = "Steel, or welded aluminium.")]
    [Let("slenderness", "outerDiameter/wall", "")]
    [Let("eps2", "250000000/proofStrength", "")]
    [Needs("2*wall <= outerDiameter")]
    [Formula("slenderness <= 121*eps2/9 ? 1 : slenderness <= 256*eps2/9 ? 2 : slenderness <= 484*eps2/9 ? 3 : 4")]
    [CautionWhen("slenderness > 256*eps2/9", NoHinge)]
    [Example("AluminiumTubeClass(17 mm, 1.5 mm, 461.9487 MPa)", "2.000000")]
    [Source(Aluminium, Standing.FromMemory)]
    public static double AluminiumTubeClass(
        [Parameter("D", "mm", "outer diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall,
        [Parameter("f_o", "MPa", "0.2 % proof strength of the alloy", Above = 0, AtMost = Most.Megapascals, UsualFrom = 50, UsualTo = 700)] Pressure proofStrength) =>
        ClassOf(Slenderness(outerDiameter, wall), AluminiumClassLimits(proofStrength));

    /// <summary>Slenderness parameter β of a round aluminium tube, a number: 3 √(D/t); EN 1999-1-1, 6.1.4.</summary>
    /// <exception cref="DomainException">A dimension is out of range.</exception>
    [Callable(Topic, "The slenderness parameter of a round aluminium tube.", NotFor = "Steel.")]
    [Needs("2*wall <= outerDiameter")]
    [Formula("3*Sqrt(outerDiameter/wall)", Symbol = "β")]
    [Example("AluminiumSlenderness(17 mm, 1.5 mm)", "10.0995")]
    [Source(Aluminium, Standing.FromMemory)]
    public static double AluminiumSlenderness(
        [Parameter("D", "mm", "outer diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall) =>
        3 * Math.Sqrt(Slenderness(outerDiameter, wall));

    private static double Slenderness(Length outerDiameter, Length wall)
    {
        double outer = Admit.Positive(outerDiameter.Meters, Most.Millimetres, Scale.Millimetre, nameof(outerDiameter));
        return outer / Admit.Positive(wall.Meters, outer / 2 / 1e-3, Scale.Millimetre, nameof(wall));
    }

    private static double ClassOf(double slenderness, in SectionClassLimits limits) =>
        slenderness <= limits.Class1 ? 1 : slenderness <= limits.Class2 ? 2 : slenderness <= limits.Class3 ? 3 : 4;

    private static double Proof(Pressure proofStrength) => Admit.Positive(proofStrength.Pascals, Most.Megapascals, Scale.Megapascal, nameof(proofStrength));
}
