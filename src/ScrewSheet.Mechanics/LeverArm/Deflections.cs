using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>Elastic deflection and slope of the free arm, its root held rigidly.</summary>
public static class Deflections
{
    private const string Topic = "Lever arm";
    private const string Tables = "Roark's Formulas for Stress and Strain, Table 8.1 case 1a";
    private const string Rigid = "The root is rigid; in real ice it turns as well, which the embedded body adds.";
    private const string Elastic = "Loads beyond first yield.";

    /// <summary>Deflection in m at the load: F a³/(3 E I); Roark, Table 8.1 case 1a.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "How far the load bends the free arm, its root held rigidly.", Assumes = Rigid, NotFor = Elastic)]
    [Formula("transverse*Pow(leverArm, 3)/(3*youngsModulus*secondMoment)", Symbol = "δ")]
    [Example("CantileverDeflection(1 kN, 50 mm, 200 GPa, 2214.087 mm⁴)", "0.0940945 mm")]
    [Source(Tables, Standing.FromMemory)]
    public static Length CantileverDeflection(
        [Parameter("F", "kN", "load square to the body", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force transverse,
        [Parameter("a", "mm", "lever arm from the root to the load line", AtLeast = 0, AtMost = Most.Millimetres)] Length leverArm,
        [Parameter("E", "GPa", "Young's modulus of the tube", Above = 0, AtMost = Most.Gigapascals, UsualFrom = 1, UsualTo = 500)] Pressure youngsModulus,
        [Parameter("I", "mm⁴", "second moment of area of the tube", Above = 0, AtMost = Most.QuarticMillimetres)] AreaMomentOfInertia secondMoment)
    {
        double arm = Arm(leverArm);
        return Length.FromMeters(Load(transverse) * arm * arm * arm / (3 * Rigidity(youngsModulus, secondMoment)));
    }

    /// <summary>Slope at the load as an angle: F a²/(2 E I) rad; Roark, Table 8.1 case 1a.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "How far the load turns the end of the free arm, its root held rigidly.", Assumes = Rigid, NotFor = Elastic)]
    [Formula("transverse*Pow(leverArm, 2)/(2*youngsModulus*secondMoment)", Symbol = "θ")]
    [Example("CantileverSlope(1 kN, 50 mm, 200 GPa, 2214.087 mm⁴)", "0.002822834 rad")]
    [Source(Tables, Standing.FromMemory)]
    public static Angle CantileverSlope(
        [Parameter("F", "kN", "load square to the body", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force transverse,
        [Parameter("a", "mm", "lever arm from the root to the load line", AtLeast = 0, AtMost = Most.Millimetres)] Length leverArm,
        [Parameter("E", "GPa", "Young's modulus of the tube", Above = 0, AtMost = Most.Gigapascals, UsualFrom = 1, UsualTo = 500)] Pressure youngsModulus,
        [Parameter("I", "mm⁴", "second moment of area of the tube", Above = 0, AtMost = Most.QuarticMillimetres)] AreaMomentOfInertia secondMoment)
    {
        double arm = Arm(leverArm);
        return Angle.FromRadians(Load(transverse) * arm * arm / (2 * Rigidity(youngsModulus, secondMoment)));
    }

    private static double Load(Force transverse) => Admit.Signed(transverse.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(transverse));

    private static double Arm(Length leverArm) => Admit.Between(leverArm.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(leverArm));

    private static double Rigidity(Pressure youngsModulus, AreaMomentOfInertia secondMoment) =>
        Admit.Positive(youngsModulus.Pascals, Most.Gigapascals, Scale.Gigapascal, nameof(youngsModulus))
        * Admit.Positive(secondMoment.MetersToTheFourth, Most.QuarticMillimetres, Scale.QuarticMillimetre, nameof(secondMoment));
}
