using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>Elastic buckling of the wall and flattening of the tube in bending.</summary>
public static class WallBuckling
{
    private const string Topic = "Lever arm";
    private const string Brazier = "Brazier, On the flexure of thin cylindrical shells and other thin sections, 1927";
    private const string Thick = "With a mean radius under 30 walls the tube yields long before its wall buckles: this value does not govern.";
    private const string ModulusMeaning = "Young's modulus";
    private const string PoissonMeaning = "Poisson's ratio";
    private const string RadiusMeaning = "radius of the middle of the wall";
    private const string WallMeaning = "wall thickness, at most twice the mean radius";

    /// <summary>Elastic buckling stress of the wall in Pa: E t/(R √(3 (1 − ν²))), R the mean radius; classical.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The stress at which the wall of a tube buckles elastically.", Assumes = "Elastic, long, thin and perfectly round; real shells buckle at a part of it.", NotFor = "Design without a knock-down factor.")]
    [Needs("wall <= 2*meanRadius")]
    [Formula("youngsModulus*wall/(meanRadius*Sqrt(3*(1 - Pow(poissonRatio, 2))))", Symbol = "σ_cr")]
    [CautionWhen("meanRadius < 30*wall", Thick)]
    [Example("WallBucklingStress(200 GPa, 0.3, 100 mm, 1 mm)", "1210.455 MPa")]
    [Source("elastic buckling of a thin cylinder in compression, classical", Standing.FromMemory)]
    public static Pressure WallBucklingStress(
        [Parameter("E", "GPa", ModulusMeaning, Above = 0, AtMost = Most.Gigapascals, UsualFrom = 1, UsualTo = 500)] Pressure youngsModulus,
        [Parameter("ν", "", PoissonMeaning, AtLeast = 0, AtMost = 0.5)] double poissonRatio,
        [Parameter("R", "mm", RadiusMeaning, Above = 0, AtMost = Most.Millimetres)] Length meanRadius,
        [Parameter("t", "mm", WallMeaning, Above = 0, AtMost = Most.Millimetres)] Length wall)
    {
        double radius = Radius(meanRadius);
        return Pressure.FromPascals(Modulus(youngsModulus) * Thickness(wall, radius) / (radius * Math.Sqrt(3 * Plate(poissonRatio))));
    }

    /// <summary>Greatest moment in N·m of an elastic tube that flattens as it bends: (2√2/9) π E R t²/√(1 − ν²); Brazier 1927.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The moment at which an elastic tube flattens and gives way.", Assumes = "Elastic, long and thin.", NotFor = "Thick tubes, which yield first.")]
    [Needs("wall <= 2*meanRadius")]
    [Formula("2*Sqrt(2)/9*pi*youngsModulus*meanRadius*Pow(wall, 2)/Sqrt(1 - Pow(poissonRatio, 2))", Symbol = "M_B")]
    [CautionWhen("meanRadius < 30*wall", Thick)]
    [Example("BrazierMoment(200 GPa, 0.3, 100 mm, 1 mm)", "20699.59 N·m")]
    [Source(Brazier, Standing.FromMemory)]
    public static Torque BrazierMoment(
        [Parameter("E", "GPa", ModulusMeaning, Above = 0, AtMost = Most.Gigapascals, UsualFrom = 1, UsualTo = 500)] Pressure youngsModulus,
        [Parameter("ν", "", PoissonMeaning, AtLeast = 0, AtMost = 0.5)] double poissonRatio,
        [Parameter("R", "mm", RadiusMeaning, Above = 0, AtMost = Most.Millimetres)] Length meanRadius,
        [Parameter("t", "mm", WallMeaning, Above = 0, AtMost = Most.Millimetres)] Length wall)
    {
        double radius = Radius(meanRadius), thickness = Thickness(wall, radius);
        return Torque.FromNewtonMeters(2 * Math.Sqrt(2) / 9 * Math.PI * Modulus(youngsModulus) * radius * thickness * thickness / Math.Sqrt(Plate(poissonRatio)));
    }

    /// <summary>Brazier's moment over the plastic moment, a number; above 1 the tube yields before it flattens.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "How many times its plastic moment a tube could take before it flattens elastically; above 1 flattening does not govern.",
        Assumes = "Elastic, long and thin for the flattening.", NotFor = "Ovalisation after yield.")]
    [Let("R", "(outerDiameter - wall)/2", "m")]
    [Let("d", "outerDiameter - 2*wall", "m")]
    [Needs("2*wall <= outerDiameter")]
    [Formula("2*Sqrt(2)/9*pi*youngsModulus*R*Pow(wall, 2)/Sqrt(1 - Pow(poissonRatio, 2))/((Pow(outerDiameter, 3) - Pow(d, 3))/6*yieldStrength)")]
    [CautionWhen("R < 30*wall", Thick)]
    [Example("BrazierRatio(17 mm, 1.5 mm, 200 GPa, 0.3, 517.1068 MPa)", "19.3089")]
    [Source(Brazier, Standing.FromMemory)]
    public static double BrazierRatio(
        [Parameter("D", "mm", "outer diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall,
        [Parameter("E", "GPa", ModulusMeaning, Above = 0, AtMost = Most.Gigapascals, UsualFrom = 1, UsualTo = 500)] Pressure youngsModulus,
        [Parameter("ν", "", PoissonMeaning, AtLeast = 0, AtMost = 0.5)] double poissonRatio,
        [Parameter("f_y", "MPa", "yield strength", Above = 0, AtMost = Most.Megapascals, UsualFrom = 30, UsualTo = 2500)] Pressure yieldStrength)
    {
        TubeSection tube = TubeSections.Tube(outerDiameter, wall);
        return BrazierMoment(youngsModulus, poissonRatio, tube.MeanRadius, wall).NewtonMeters / (tube.PlasticModulusSi * SectionStrength.Yield(yieldStrength));
    }

    /// <summary>Flattening in m at Brazier's moment: 2 R/9, R the mean radius.</summary>
    /// <exception cref="DomainException">The radius is not above 0 mm or absurd.</exception>
    [Callable(Topic, "How far a tube has flattened, radius inward, when it reaches Brazier's moment.", NotFor = "Tubes that yield first.")]
    [Formula("2*meanRadius/9", Symbol = "ζ")]
    [Example("BrazierFlattening(100 mm)", "22.2222 mm")]
    [Source(Brazier, Standing.FromMemory)]
    public static Length BrazierFlattening([Parameter("R", "mm", RadiusMeaning, Above = 0, AtMost = Most.Millimetres)] Length meanRadius) =>
        Length.FromMeters(2 * Radius(meanRadius) / 9);

    private static double Modulus(Pressure youngsModulus) => Admit.Positive(youngsModulus.Pascals, Most.Gigapascals, Scale.Gigapascal, nameof(youngsModulus));

    private static double Plate(double poissonRatio)
    {
        double ratio = Admit.Between(poissonRatio, 0, 0.5, Scale.None, nameof(poissonRatio));
        return 1 - (ratio * ratio);
    }

    private static double Radius(Length meanRadius) => Admit.Positive(meanRadius.Meters, Most.Millimetres, Scale.Millimetre, nameof(meanRadius));

    private static double Thickness(Length wall, double radius) => Admit.Positive(wall.Meters, 2 * radius / 1e-3, Scale.Millimetre, nameof(wall));
}
