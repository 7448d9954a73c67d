using CsCheck;
using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using static ScrewSheet.Mechanics.Tests.LeverArm.In;

namespace ScrewSheet.Mechanics.Tests.LeverArm;

public sealed class LeverArmInvariants
{
    /// <summary>Outer diameter in mm and wall as a part of the radius.</summary>
    private static readonly Gen<(double Outer, double Part)> AnyTube = Gen.Select(Gen.Double[5, 100], Gen.Double[0.01, 1]);

    private static readonly Gen<double> Set = Gen.Double[-80, 80];

    [Fact]
    public void ShapeFactor_StaysBetweenThinWallAndSolidBar() => AnyTube.Sample(tube =>
        TubeOf(tube).ShapeFactor is >= 4 / Math.PI - 1e-12 and <= (16 / (3 * Math.PI)) + 1e-12);

    [Fact]
    public void ShapeFactor_GrowsWithTheWall() => Gen.Select(Gen.Double[5, 100], Gen.Double[0.01, 0.9], Gen.Double[0.001, 0.1]).Sample((outer, part, more) =>
        TubeOf((outer, part + more)).ShapeFactor > TubeOf((outer, part)).ShapeFactor);

    [Fact]
    public void Section_ScalesWithPowersOfTheDiameter() => AnyTube.Sample(tube =>
    {
        TubeSection one = TubeOf(tube), two = TubeOf((2 * tube.Outer, tube.Part));
        return Close(two.Area.SquareMeters, 4 * one.Area.SquareMeters) && Close(two.ElasticModulus.CubicMeters, 8 * one.ElasticModulus.CubicMeters)
            && Close(two.PlasticModulus.CubicMeters, 8 * one.PlasticModulus.CubicMeters) && Close(two.SecondMoment.MetersToTheFourth, 16 * one.SecondMoment.MetersToTheFourth)
            && Close(two.RadiusOfGyration.Meters, 2 * one.RadiusOfGyration.Meters);
    });

    [Fact]
    public void Section_IsTheSameFromWhicheverDimensionsItIsMade() => Gen.Select(Gen.Double[5, 100], Gen.Double[0.01, 0.95]).Sample((outer, part) =>
    {
        TubeSection tube = TubeOf((outer, part)), bore = TubeSections.TubeOfBore(tube.OuterDiameter, tube.Bore), round = TubeSections.TubeRoundBore(tube.Bore, tube.Wall);
        TubeSection root = TubeSections.TubeAtThreadRoot(Mm(outer + 3), tube.OuterDiameter, tube.Bore);
        return new[] { bore, round, root }.All(other => Close(other.PlasticModulus.CubicMeters, tube.PlasticModulus.CubicMeters) && Close(other.SecondMoment.MetersToTheFourth, tube.SecondMoment.MetersToTheFourth))
            && Close(root.ContactDiameter.Millimeters, outer + 3) && Close(tube.ContactDiameter.Millimeters, outer);
    });

    [Fact]
    public void Section_FromInchesEqualsTheSameInMillimetres() => AnyTube.Sample(tube =>
        Close(TubeSections.Tube(Length.FromInches(tube.Outer / 25.4), Length.FromInches(tube.Outer * tube.Part / 50.8)).PlasticModulus.CubicMillimeters, TubeOf(tube).PlasticModulus.CubicMillimeters));

    [Fact]
    public void Components_KeepTheLoad() => Gen.Select(Gen.Double[0, 30], Set, Gen.Double[-90, 90]).Sample((load, set, tilt) =>
    {
        ScrewPull pull = SetAngles.PullComponents(KN(load), Deg(set), Deg(tilt));
        return Close(Math.Sqrt(Math.Pow(pull.Axial.Newtons, 2) + Math.Pow(pull.Transverse.Newtons, 2)), load * 1e3, 1e-9) || load < 1e-9;
    });

    [Fact]
    public void Components_AxialTurnsWithTheSignOfTheSetAngleAndTransverseDoesNot() => Gen.Select(Gen.Double[0.1, 30], Set).Sample((load, set) =>
        Close(SetAngles.AxialLoad(KN(load), Deg(-set)).Newtons, -SetAngles.AxialLoad(KN(load), Deg(set)).Newtons)
        && Close(SetAngles.TransverseLoad(KN(load), Deg(-set)).Newtons, SetAngles.TransverseLoad(KN(load), Deg(set)).Newtons));

    [Fact]
    public void CombinedStress_IsNotTheSumOfTheTwoMaxima() => Gen.Select(Gen.Double[0.1, 5], Gen.Double[1, 80]).Sample((load, arm) =>
    {
        TubeStress stress = CombinedStresses.CombinedStress(KN(0.2 * load), KN(load), Bending.BendingMoment(KN(load), Mm(arm)), Mm(17), Mm(1.5));
        double summed = Math.Sqrt(Math.Pow(stress.ExtremeFibre.Pascals, 2) + (3 * Math.Pow(stress.NeutralAxisShear.Pascals, 2)));
        return stress.Governing.Pascals == Math.Max(stress.ExtremeFibre.Pascals, stress.NeutralAxis.Pascals) && stress.Governing.Pascals < summed;
    });

    [Fact]
    public void ShearStress_IsAtMostTheThinWallValueAndReachesItAsTheWallVanishes() => AnyTube.Sample(tube =>
    {
        double Ratio((double, double) of) => CombinedStresses.PeakShearStress(KN(1), TubeOf(of).OuterDiameter, TubeOf(of).Wall).Pascals / CombinedStresses.ThinWallShearStress(KN(1), TubeOf(of).Area).Pascals;
        return Ratio(tube) <= 1 + 1e-12 && Math.Abs(Ratio((tube.Outer, 1e-4)) - 1) < 1e-6;
    });

    [Fact]
    public void Interaction_ThickWallTendsToTheThinWallCurve() => Gen.Double[0, 1].Sample(n =>
        Math.Abs(ThickWallInteraction.ThickWallMomentFactor(n, Mm(1000), Mm(0.05)) - MomentInteraction.ThinWallMomentFactor(n)) < 1e-3);

    [Fact]
    public void Interaction_FallsFromOneToZero() => Gen.Select(AnyTube, Gen.Double[0, 0.99], Gen.Double[0.001, 0.01]).Sample((tube, n, more) =>
    {
        TubeSection section = TubeOf(tube);
        double Exact(double at) => ThickWallInteraction.ThickWallMomentFactor(at, section.OuterDiameter, section.Wall);
        return Exact(0) == 1 && Exact(1) == 0 && Exact(n + more) < Exact(n) && MomentInteraction.CodeMomentFactor(n + more) < MomentInteraction.CodeMomentFactor(n)
            && MomentInteraction.AnnexMomentFactor(n) is >= 0 and <= 1;
    });

    [Fact]
    public void Interaction_SolvedPointLiesOnTheCurve() => Gen.Double[0.05, 0.99].Sample(part =>
    {
        InteractionPoint point = ThickWallInteraction.ThickWallPoint(Mm(7 * part), Mm(17), Mm(1.5));
        return Close(ThickWallInteraction.ThickWallMomentFactor(point.AxialRatio, Mm(17), Mm(1.5)), point.MomentFactor);
    });

    [Fact]
    public void Interaction_ASolidBarAtFullPullHasNoMomentLeftAndAtNoneAll()
    {
        Assert.Equal(1, ThickWallInteraction.ThickWallMomentFactor(0, Mm(10), Mm(5)));
        Assert.Equal(0, ThickWallInteraction.ThickWallMomentFactor(1, Mm(10), Mm(5)));
    }

    [Fact]
    public void ReducedMoment_WithoutLoadsIsThePlasticMomentByEveryRule() => Assert.All(Enum.GetValues<InteractionRule>(), rule =>
        Assert.Equal(186.9341, ThickWallInteraction.ReducedPlasticMoment(N(0), N(0), Mm(17), Mm(1.5), MPa(75 * Ksi), rule).NewtonMeters, 4));

    [Fact]
    public void ReducedMoment_KeepsToHalfTheShearLoadAndFallsBeyond() => Gen.Double[0, 1].Sample(part =>
    {
        double full = Left(0), left = Left(part);
        return part <= 0.5001 ? Close(left, full, 1e-6) : left < full; // just beyond a half the fall is smaller than doubles tell

        static double Left(double part) => ThickWallInteraction.ReducedPlasticMoment(N(0), N(13882.65 * part), Mm(17), Mm(1.5), MPa(75 * Ksi), InteractionRule.Code).NewtonMeters;
    });

    [Fact]
    public void HingeLoad_BalancesItsEquation() => Gen.Select(Gen.Double[5, 100], Set).Sample((arm, set) =>
    {
        double load = HingeLoads.HingeLoad(Mm(17), Mm(1.5), MPa(500), Mm(arm), Deg(set)).Newtons, angle = Math.Abs(set) * Math.PI / 180;
        double moment = 361.5e-9 * 500e6, axial = TubeOf((17, 1.5 / 8.5)).Area.SquareMeters * 500e6;
        return Close(load * arm / 1e3 * Math.Cos(angle), moment * (1 - Math.Pow(load * Math.Sin(angle) / axial, 1.7)), 1e-9);
    });

    [Fact]
    public void HingeLoad_IsAboveFirstYield() => Gen.Select(AnyTube, Gen.Double[5, 100], Gen.Double[-45, 45]).Sample((of, arm, set) =>
    {
        TubeSection tube = TubeOf(of);
        return HingeLoads.HingeLoad(tube.OuterDiameter, tube.Wall, MPa(500), Mm(arm), Deg(set)) > HingeLoads.FirstYieldLoad(tube.Area, tube.ElasticModulus, MPa(500), Mm(arm), Deg(set));
    });

    [Fact]
    public void HingeLoad_WithShearNeverExceedsItWithoutAndEqualsItOnALongArm() => Gen.Select(Gen.Double[1, 100], Gen.Double[-60, 60]).Sample((arm, set) =>
    {
        double without = HingeLoads.HingeLoad(Mm(17), Mm(1.5), MPa(500), Mm(arm), Deg(set)).Newtons, with = HingeLoads.HingeLoadWithShear(Mm(17), Mm(1.5), MPa(500), Mm(arm), Deg(set)).Newtons;
        return with <= without * (1 + 1e-12) && (arm < 26.93 || Close(with, without)) && with * Math.Cos(set * Math.PI / 180) <= 46.5e-6 * 500e6 / Math.Sqrt(3) * (1 + 1e-9);
    });

    [Fact]
    public void FoldOver_RisesWithRotationUnlessThePullAloneYieldsTheTube() => Gen.Select(Gen.Double[0, 75], Gen.Double[0.5, 5]).Sample((angle, more) =>
    {
        Force At(double degrees) => HingeLoads.FoldOverLoad(Nm(186.9341), KN(37.77053), Mm(50), Deg(degrees));
        return At(angle + more) > At(angle) && At(angle) <= HingeLoads.FoldOverLoadBendingOnly(Nm(186.9341), Mm(50), Deg(angle)) * (1 + 1e-12);
    });

    [Fact]
    public void FoldOver_AtASetAngleIsTheHingeLoad() => Gen.Select(Gen.Double[5, 100], Gen.Double[0, 80]).Sample((arm, set) =>
    {
        TubeSection tube = TubeOf((17, 1.5 / 8.5));
        return Close(HingeLoads.FoldOverLoad(SectionStrength.PlasticMoment(tube.PlasticModulus, MPa(500)), SectionStrength.PlasticAxialLoad(tube.Area, MPa(500)), Mm(arm), Deg(set)).Newtons,
            HingeLoads.HingeLoad(Mm(17), Mm(1.5), MPa(500), Mm(arm), Deg(set)).Newtons);
    });

    [Fact]
    public void Brazier_OverWallBucklingIsAlwaysTheSameNumber() => Gen.Select(Gen.Double[1, 500], Gen.Double[0, 0.5], Gen.Double[1, 500], Gen.Double[0.01, 1]).Sample((modulus, poisson, radius, part) =>
    {
        double wall = radius * part, metres = radius / 1e3;
        double ratio = WallBuckling.BrazierMoment(GPa(modulus), poisson, Mm(radius), Mm(wall)).NewtonMeters
            / (WallBuckling.WallBucklingStress(GPa(modulus), poisson, Mm(radius), Mm(wall)).Pascals * Math.PI * metres * metres * wall / 1e3);
        return Close(ratio, 0.5443311, 1e-7);
    });

    [Fact]
    public void Deflection_GrowsWithTheCubeOfTheArmAndSlopeWithItsSquare() => Gen.Select(Gen.Double[0.1, 5], Gen.Double[5, 100]).Sample((load, arm) =>
    {
        AreaMomentOfInertia second = TubeOf((17, 0.2)).SecondMoment;
        return Close(Deflections.CantileverDeflection(KN(load), Mm(2 * arm), GPa(200), second).Meters, 8 * Deflections.CantileverDeflection(KN(load), Mm(arm), GPa(200), second).Meters)
            && Close(Deflections.CantileverSlope(KN(load), Mm(2 * arm), GPa(200), second).Radians, 4 * Deflections.CantileverSlope(KN(load), Mm(arm), GPa(200), second).Radians);
    });

    [Fact]
    public void SectionClass_NeverImprovesWithAThinnerWall() => Gen.Select(Gen.Double[10, 200], Gen.Double[0.02, 0.9], Gen.Double[200, 700]).Sample((outer, part, strength) =>
        SectionClasses.SteelTubeClass(Mm(outer), Mm(outer / 2 * part), MPa(strength)) <= SectionClasses.SteelTubeClass(Mm(outer), Mm(outer / 2.2 * part), MPa(strength))
        && SectionClasses.AluminiumTubeClass(Mm(outer), Mm(outer / 2 * part), MPa(strength)) <= SectionClasses.AluminiumTubeClass(Mm(outer), Mm(outer / 2.2 * part), MPa(strength)));

    [Fact]
    public void Wall_ThickerThanTheRadius_IsRefusedInAWholeSentence()
    {
        DomainException refusal = Assert.Throws<DomainException>(() => TubeSections.Tube(Mm(17), Mm(9)));
        Assert.Equal("wall must be at most 8.5 mm; it is 9 mm.", refusal.Message);
        Assert.Equal("wall", refusal.Parameter);
    }

    [Fact]
    public void Root_LargerThanTheCrest_IsRefused() =>
        Assert.Equal("rootDiameter must be at most 17 mm; it is 20 mm.", Assert.Throws<DomainException>(() => TubeSections.TubeAtThreadRoot(Mm(17), Mm(20), Mm(14))).Message);

    private static TubeSection TubeOf((double Outer, double Part) tube) => TubeSections.Tube(Mm(tube.Outer), Mm(tube.Outer / 2 * tube.Part));
}
