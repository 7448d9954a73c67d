using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Mechanics.Tests.Declarations;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using static ScrewSheet.Mechanics.Belay.DynamicBelays;
using static ScrewSheet.Mechanics.Falls.BodyLoads;
using static ScrewSheet.Mechanics.Falls.FallFactors;
using static ScrewSheet.Mechanics.Falls.FreeFalls;
using static ScrewSheet.Mechanics.Falls.ImpactForces;
using static ScrewSheet.Mechanics.Falls.RopeModuli;
using static ScrewSheet.Mechanics.Falls.RopeStrands;
using static ScrewSheet.Mechanics.Friction.CarabinerFriction;
using static ScrewSheet.Mechanics.Friction.RopeDrags;
using static ScrewSheet.Mechanics.Friction.TopPieces;
using static ScrewSheet.Mechanics.Hauling.TopRopes;
using static ScrewSheet.Mechanics.Tests.Rope.RopeUnits;
using static ScrewSheet.Mechanics.Tethers.SeriesSprings;
using static ScrewSheet.Mechanics.ViscoElastic.ViscoElasticRopes;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>Mistakes known from public questions; docs/pitfalls-falls.md lists them under the same numbers.</summary>
public sealed class FallPitfallTests
{
    private const double W80 = 80 * G;

    [Fact]
    public void Pitfall01_FallFactorAboveTwo_WarnsAndAnswers()
    {
        Assert.Equal(5, FallFactor(M(5), M(1)));
        Assert.Contains("fixed cable", Assert.Single(Cautions("FallFactor", 5, 1)), StringComparison.Ordinal);
        Assert.Empty(Cautions("FallFactor", 2, 1));
        Assert.Contains(Cautions("ImpactForce", 80, 20000, 5), caution => caution.Contains("fall factor 2", StringComparison.Ordinal));
        Assert.NotEmpty(Cautions("TetherForce", 80, 2e6, 1, 5, 2e5, 6e4));
    }

    [Fact]
    public void Pitfall02_FactorTwo_IsNeitherTwiceNorRootTwoTimesFactorOne()
    {
        double ratio = ImpactForce(Kg(80), KN(20), 2) / ImpactForce(Kg(80), KN(20), 1);
        Assert.InRange(ratio, 1.35, 1.37);
        Assert.NotInRange(ratio, Math.Sqrt(2) - 0.02, Math.Sqrt(2) + 0.02);
    }

    [Fact]
    public void Pitfall03_TautTopRope_StillLoadsTwiceTheWeight()
    {
        double climber = TopRopeForce(Kg(80), KN(20), M(20), M(0)).Newtons;
        Assert.Equal(2 * W80, climber, 1e-9);
        Assert.InRange(TopPieceLoad(N(climber), 1.5).Newtons / W80, 3.3, 3.4);
        Assert.Equal(4, TopPieceLoad(N(climber), 1).Newtons / W80, 1e-12);
    }

    [Fact]
    public void Pitfall04_DistanceAboveThePiece_IsHalfTheFall()
    {
        Assert.Equal(4.5, LeadFallHeight(M(2), M(0.5)).Meters);
        Assert.Equal(2 * FallFactor(M(2), M(10)), LeadFallFactor(M(2), M(10), M(0)), 1e-15);
        Assert.Contains("not the fall height", Parameter("LeadFallFactor", "abovePiece").Meaning, StringComparison.Ordinal);
    }

    [Fact]
    public void Pitfall05_WeightWorksDuringTheStretchToo()
    {
        double k = 1200, w = 86 * 9.80, without = Math.Sqrt(2 * w * 0.750 / k);
        double ours = ImpactForceOnSpring(Kg(86 * 9.80 / G), ForcePerLength.FromNewtonsPerMeter(k), M(0.750)).Newtons / k;
        Assert.Equal(1.03, without, 0.005);
        Assert.True(ours > 1.8 * without, $"{ours} m");
    }

    [Fact]
    public void Pitfall06_MeanForce_IsHalfThePeak()
    {
        Assert.Equal(6.80, ImpactForceFromStretch(Kg(80), 1, 0.30).Kilonewtons, 0.005);
        Assert.Equal(3.40, MeanStoppingForce(Kg(80), 1, 0.30).Kilonewtons, 0.005);
        Assert.NotEqual(5.2, ImpactForceFromStretch(Kg(80), 1, 0.30).Kilonewtons, 1.0);
    }

    [Fact]
    public void Pitfall07_StoppingTime_IsTwiceDistanceOverSpeed() =>
        Assert.Equal(2 * 1.5 / 10, StoppingTime(Speed.FromMetersPerSecond(10), M(1.5)).Seconds, 1e-15);

    [Fact]
    public void Pitfall08_MassAndWeight_AreDifferentQuantities()
    {
        Assert.Equal(784.532, HaulingForce(Kg(80), 1).Newtons, 1e-9);
        Assert.Equal(101.971621, KN(1).KilogramsForce, 1e-6);
        Assert.Equal(typeof(Mass), ParameterType("ImpactForce", "mass"));
        Assert.Equal(typeof(Force), ParameterType("HoldingForce", "load"));
    }

    [Fact]
    public void Pitfall09_ModulusAndSpringRate_AreDifferentQuantities()
    {
        Assert.Equal(typeof(Force), ParameterType("ImpactForce", "modulus"));
        Assert.Equal(typeof(ForcePerLength), ParameterType("ImpactForceOnSpring", "stiffness"));
        Assert.Contains("not N/m, not Pa", Parameter("ImpactForce", "modulus").Meaning, StringComparison.Ordinal);
    }

    [Fact]
    public void Pitfall10_CertifiedPeak_IsNoBreakingLoad() => Assert.Contains("no breaking load", Declared("RopeModulus").NotFor, StringComparison.Ordinal);

    [Fact]
    public void Pitfall11_EverydayFall_IsMuchLowerThanTheLabel()
    {
        double everyday = ImpactForceFromCertificate(KN(9), Kg(80), Kg(80), 0.2).Kilonewtons;
        Assert.InRange(everyday, 3, 4);
        Assert.Equal(1.77, Callables.Named("ImpactForceFromCertificate").GetParameters()[^1].DefaultValue);
    }

    [Fact]
    public void Pitfall12_HalfRopeLabel_IsNotComparableWithASingle()
    {
        Assert.Equal(55, CertificationMass(RopeUse.Half).Kilograms);
        Assert.Equal(7.4, ImpactForce(Kg(80), RopeModulusInUse(KN(6), RopeUse.Half, 1), 1.77).Kilonewtons, 0.05);
    }

    [Fact]
    public void Pitfall13_ClippingBothStrands_RaisesTheForce()
    {
        var one = ImpactForce(Kg(80), RopeModulusInUse(KN(7.3), RopeUse.Single, 1), 1.77);
        var two = ImpactForce(Kg(80), RopeModulusInUse(KN(7.3), RopeUse.Single, 2), 1.77);
        Assert.True(two > one);
        Assert.Contains(Cautions("ParallelRopeModulus", 15000, 2), caution => caution.Contains("20 %", StringComparison.Ordinal));
        Assert.Empty(Cautions("ParallelRopeModulus", 15000, 1));
    }

    [Fact]
    public void Pitfall14_StaticElongation_MustNotFeedTheImpactFormula()
    {
        Assert.Contains(Cautions("StaticRopeModulus", 0, 80, 0.08), caution => caution.StartsWith("Do not use a static modulus", StringComparison.Ordinal));
        Assert.True(ImpactForce(Kg(80), StaticRopeModulus(Kg(0), Kg(80), 0.08), 1.77) < 0.7 * KN(9));
        Assert.Contains("static elongation", Declared("ImpactForce").NotFor, StringComparison.Ordinal);
    }

    [Fact]
    public void Pitfall15_ClimberBelayerAndTopPiece_AreThreeLoads()
    {
        Assert.Equal(2.0 / 3, BelayerTension(KN(6), 1.5) / KN(6), 1e-12);
        Assert.Equal(5.0 / 3, TopPieceLoad(KN(6), 1.5) / KN(6), 1e-12);
        Assert.Equal(2, TopPieceLoad(KN(6), 1) / KN(6), 1e-12);
        Assert.Contains("friction helps here; set the ratio to 1 for design", Cautions("TopPieceLoad", 6000, 1.5));
        Assert.Empty(Cautions("TopPieceLoad", 6000, 1));
    }

    [Fact]
    public void Pitfall16_Friction_RaisesTheClimbersForceAndLowersTheBelayers()
    {
        var with = FallWithRopeDrag(Kg(80), KN(20), M(10), Strands(5, 15), Bends(180), 0.13);
        var without = FallWithRopeDrag(Kg(80), KN(20), M(10), Strands(5, 15), Bends(180), 0);
        Assert.True(with.ClimberForce > without.ClimberForce && with.EffectiveFallFactor > without.EffectiveFallFactor && with.BelayerForce < without.BelayerForce);
    }

    [Fact]
    public void Pitfall17_OpenAngle_LoadsTheTopPieceLessThanTheSum()
    {
        Assert.True(TopPieceLoadOpen(KN(6), 0.13, Deg(60)) < TopPieceLoadOpen(KN(6), 0.13, Deg(0)));
        Assert.Equal(120, WrapOfOpenAngle(Deg(60)).Degrees, 1e-9);
        Assert.Contains("friction helps here; set 0 for design", Cautions("TopPieceLoadOpen", 6000, 0.13, 1));
        Assert.Empty(Cautions("TopPieceLoadOpen", 6000, 0.5, 2.8));
        Assert.Contains("friction helps here; set 0 for design", Cautions("HoldingForce", 800, 0.2, 1));
        Assert.Contains("friction helps here; set 0 for design", Cautions("LipHoldingForce", 800, 0.2, 1));
    }

    [Fact]
    public void Pitfall18_DegreesTakenForRadians_AreRefused()
    {
        Assert.Throws<DomainException>(() => FrictionRatio(0.13, Angle.FromRadians(180)));
        Assert.Equal(typeof(Angle), ParameterType("FrictionRatio", "wrap"));
    }

    [Fact]
    public void Pitfall19_TwoTurnsAtPointSeven_AreNotOver7000() => Assert.InRange(FrictionRatio(0.7, Deg(720)), 6610.7, 6610.9);

    [Fact]
    public void Pitfall20_ShortStiffTether_PullsHarderThanADynamicRope() =>
        Assert.True(ImpactForce(Kg(80), RopeModulus(KN(16.7), Kg(80), 1), 1) > ImpactForce(Kg(80), RopeModulus(KN(7.6), Kg(80), 2), 2));

    [Fact]
    public void Pitfall21_Length_MattersOnlyWithDampingOrGivingBody()
    {
        Assert.Equal(TetherForce(Kg(80), KN(24), M(1), M(1), KNm(1e12), KNm(1e12)).Newtons, TetherForce(Kg(80), KN(24), M(4), M(4), KNm(1e12), KNm(1e12)).Newtons, 1e-4);
        Assert.True(TetherForce(Kg(80), KN(24), M(1), M(1), KNm(200), KNm(60)) < TetherForce(Kg(80), KN(24), M(4), M(4), KNm(200), KNm(60)));
        Assert.NotEqual(
            StandardSolidFall(Kg(80), KN(10), KN(14), S(0.1), M(4.6), M(2.6)).PeakForce.Newtons,
            StandardSolidFall(Kg(80), KN(10), KN(14), S(0.1), M(46), M(26)).PeakForce.Newtons, 500.0);
    }

    [Fact]
    public void Pitfall22_RigidMass_OverPredictsShortHumanShocks()
    {
        Assert.Contains("a rigid mass does not", Declared("ImpactForce").NotFor, StringComparison.Ordinal);
        Assert.True(TetherForce(Kg(80), KN(2000), M(1), M(1), KNm(1e12), KNm(60)) < 0.25 * TetherForce(Kg(80), KN(2000), M(1), M(1), KNm(1e12), KNm(1e12)));
    }

    [Fact]
    public void Pitfalls23To25_NoMultiplierForWetFrozenOrUsedRope_IsOffered() =>
        Assert.DoesNotContain(RopeCall.Functions.SelectMany(method => method.GetParameters()), p =>
            new[] { "wet", "frozen", "ice", "fallsHeld", "age" }.Contains(p.Name, StringComparer.OrdinalIgnoreCase));

    [Fact]
    public void Pitfall26_SlippingBelay_ReportsForceAndDropAndNeverStopsBelowTheWeight()
    {
        var soft = DynamicBelay(Kg(80), KN(20), M(10), M(20), KN(2));
        var hard = DynamicBelay(Kg(80), KN(20), M(10), M(20), KN(3));
        Assert.True(soft.PeakForce < hard.PeakForce && soft.TotalDrop > hard.TotalDrop);
        Assert.Throws<DomainException>(() => DynamicBelay(Kg(80), KN(20), M(10), M(20), KN(0.5)));
        Assert.Contains(Cautions("DynamicBelay", 80, 20000, 10, 20, 2000, 1), caution => caution.StartsWith("The belay slips", StringComparison.Ordinal));
        Assert.Empty(Cautions("DynamicBelay", 80, 20000, 10, 20, 6000, 1));
    }

    [Fact]
    public void Pitfall27_Clearance_AddsStretchAndSlip()
    {
        var fall = DynamicBelay(Kg(80), KN(20), M(10), M(15), KN(3));
        Assert.Equal(fall.TotalDrop.Meters + 2.5, FallClearance(M(10), fall.Stretch, fall.Slip, M(1.5), M(1)).Meters, 1e-12);
    }

    [Fact]
    public void Pitfall28_LightUser_GetsACaution()
    {
        Assert.Contains(Cautions("AbsorberTear", 40, 5, 3500), caution => caution.Contains("40 kg", StringComparison.Ordinal));
        Assert.Empty(Cautions("AbsorberTear", 80, 5, 6000));
    }

    [Fact]
    public void Pitfall30_RoughRappel_ReachesThreeBodyWeights()
    {
        Assert.InRange(RappelPeak(Kg(86)).Newtons / (86 * G), 3, 3.2);
        Assert.Contains("dropping onto the device or jerking", Declared("RappelPeak").Assumes, StringComparison.Ordinal);
        Assert.NotEmpty(Cautions("LoadInG", 12000, 70));
    }

    [Fact]
    public void Pitfall31_StandardGravity_IsUsedThroughout() => Assert.Equal(9.80665, FallEnergy(Kg(1), M(1)).Joules, 1e-15);

    [Fact]
    public void Pitfall32_FeetOnMetres_AreConverted() => Assert.Equal(FallFactor(M(6.096), M(30.48)), FallFactor(Ft(20), M(30.48)), 1e-12);

    [Fact]
    public void Pitfall33_TestFallFactor_IsAnInputThatHardlyMoves() =>
        Assert.InRange(ImpactForceFromCertificate(KN(9), Kg(80), Kg(80), 1, 1.71) / ImpactForceFromCertificate(KN(9), Kg(80), Kg(80), 1, 5 / 2.8), 1, 1.02);

    [Fact]
    public void Pitfall34_TensionNetForceAndReading_AreThreeFunctions()
    {
        Assert.Equal(6000 - W80, NetStoppingForce(KN(6), Kg(80)).Newtons, 1e-9);
        Assert.Equal(6000 / W80, LoadInG(KN(6), Kg(80)), 1e-12);
    }

    /// <summary>A triple-certified rope, quoted in a community article on rope standards: the linear model against the published forces, with the tolerance that the comparison is known to need.</summary>
    [Theory]
    [InlineData(55, 1, 5.3, 5.5, 0.10)]
    [InlineData(80, 2, 8.4, 8.6, 0.20)]
    public void TripleRatedRope_IsPredictedWithinTheStatedTolerance(double mass, double strands, double from, double to, double above)
    {
        double predicted = ImpactForce(Kg(mass), RopeModulusInUse(KN(7.3), RopeUse.Single, strands), 1.77).Kilonewtons;
        Assert.InRange(predicted, from, to * (1 + above));
    }

    [Fact]
    public void TripleRatedRope_StretchesLessThanALinearOne() =>
        Assert.True(RelativeStretch(KN(7.3), RopeModulusInUse(KN(7.3), RopeUse.Single, 1)) > 1.2 * 0.37);

    private static IReadOnlyList<string> Cautions(string function, params double[] si) => DeclaredCautions.Of(function, RopeCall.With(Callables.Named(function), si).Arguments);

    private static CallableAttribute Declared(string function) => (CallableAttribute)Attribute.GetCustomAttribute(Callables.Named(function), typeof(CallableAttribute))!;

    private static ParameterAttribute Parameter(string function, string name) =>
        (ParameterAttribute)Attribute.GetCustomAttribute(Callables.Named(function).GetParameters().Single(p => p.Name == name), typeof(ParameterAttribute))!;

    private static Type ParameterType(string function, string name) => Callables.Named(function).GetParameters().Single(p => p.Name == name).ParameterType;
}
