using CsCheck;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using static ScrewSheet.Mechanics.Belay.DynamicBelays;
using static ScrewSheet.Mechanics.Falls.BodyLoads;
using static ScrewSheet.Mechanics.Falls.FreeFalls;
using static ScrewSheet.Mechanics.Falls.ImpactForces;
using static ScrewSheet.Mechanics.Falls.RopeModuli;
using static ScrewSheet.Mechanics.Friction.CarabinerFriction;
using static ScrewSheet.Mechanics.Friction.RopeDrags;
using static ScrewSheet.Mechanics.Friction.TopPieces;
using static ScrewSheet.Mechanics.Tests.Rope.RopeUnits;
using static ScrewSheet.Mechanics.Tethers.EnergyAbsorbers;
using static ScrewSheet.Mechanics.Tethers.SeriesSprings;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>What must hold for any fall: limits, scaling, energy balance, order, and the same answer in other units.</summary>
public sealed class FallPropertyTests
{
    private static readonly Gen<double> Masses = Gen.Double[20, 200];
    private static readonly Gen<double> Moduli = Gen.Double[3e3, 2e6];
    private static readonly Gen<double> Factors = Gen.Double[0, 5];
    private static readonly Gen<double> Lengths = Gen.Double[0.2, 60];
    private static readonly Gen<double> Friction = Gen.Double[0, 0.6];

    [Fact]
    public void ImpactForce_BalancesTheEnergyOfTheFall() => Gen.Select(Masses, Moduli, Factors, Lengths).Sample((m, k, f, length) =>
    {
        double x = RopeStretch(ImpactForce(Kg(m), N(k), f), N(k), M(length)).Meters;
        Near(m * G * ((f * length) + x), k * x * x / (2 * length));
    });

    [Fact]
    public void ImpactForce_OfNoFall_IsTwiceTheWeightOnAnyRope() => Gen.Select(Masses, Moduli).Sample((m, k) => Near(2 * m * G, ImpactForce(Kg(m), N(k), 0).Newtons, 1e-15));

    [Fact]
    public void ImpactForce_ThreeForms_Agree() => Gen.Select(Masses, Moduli, Factors, Lengths).Sample((m, k, f, length) =>
    {
        double standard = ImpactForce(Kg(m), N(k), f).Newtons;
        Near(standard, ImpactForceOnSpring(Kg(m), RopeSpringRate(N(k), M(length)), M(f * length)).Newtons);
        Near(standard, ImpactForceFromStretch(Kg(m), f, RelativeStretch(N(standard), N(k))).Newtons);
        Near(standard, 2 * MeanStoppingForce(Kg(m), f, RelativeStretch(N(standard), N(k))).Newtons);
    });

    [Fact]
    public void ImpactForce_RisesWithMassModulusAndFallFactor() => Gen.Select(Masses, Moduli, Factors, Gen.Double[1.01, 3]).Sample((m, k, f, more) =>
        ImpactForce(Kg(m * more), N(k), f) > ImpactForce(Kg(m), N(k), f)
        && ImpactForce(Kg(m), N(k * more), f + 0.01) > ImpactForce(Kg(m), N(k), f + 0.01)
        && ImpactForce(Kg(m), N(k), (f * more) + 0.01) > ImpactForce(Kg(m), N(k), f));

    [Fact]
    public void ImpactForce_ScalesWithMassAndModulusTogether() => Gen.Select(Masses, Moduli, Factors, Gen.Double[0.1, 10]).Sample((m, k, f, scale) =>
        Near(scale * ImpactForce(Kg(m), N(k), f).Newtons, ImpactForce(Kg(m * scale), N(k * scale), f).Newtons));

    [Fact]
    public void ImpactForce_InUsUnits_IsTheSame() => Gen.Select(Masses, Moduli, Factors).Sample((m, k, f) =>
        Near(ImpactForce(Kg(m), N(k), f).PoundsForce, ImpactForce(Mass.FromPounds(m / 0.45359237), Force.FromPoundsForce(k / 4.4482216152605), f).PoundsForce));

    [Fact]
    public void RopeModulus_ThenImpactForce_ReturnsTheCertifiedPeak() => Gen.Select(Gen.Double[3000, 15000], Gen.Double[55, 100], Gen.Double[0.3, 2]).Sample((peak, m, f) =>
        Near(peak, ImpactForce(Kg(m), RopeModulus(N(peak), Kg(m), f), f).Newtons, 1e-14));

    [Fact]
    public void ImpactForceFromCertificate_IsModulusThenImpact() => Gen.Select(Gen.Double[3000, 15000], Gen.Double[55, 100], Masses, Factors).Sample((peak, m0, m, f) =>
        Near(ImpactForce(Kg(m), RopeModulus(N(peak), Kg(m0)), f).Newtons, ImpactForceFromCertificate(N(peak), Kg(m0), Kg(m), f).Newtons));

    [Fact]
    public void FallTimeAndSpeed_WithoutAir_AreLimitsOfThoseWithDrag() => Gen.Double[0.1, 50].Sample(h =>
    {
        var thin = Speed.FromMetersPerSecond(10_000);
        Near(FallSpeed(M(h)).MetersPerSecond, FallSpeedWithDrag(M(h), thin).MetersPerSecond, 1e-5);
        Near(FallTime(M(h)).Seconds, FallTimeWithDrag(M(h), thin).Seconds, 1e-5);
    });

    [Fact]
    public void FallSpeedWithDrag_StaysBelowBothBounds() => Gen.Select(Gen.Double[0.1, 5000], Gen.Double[5, 130]).Sample((h, v) =>
        FallSpeedWithDrag(M(h), Speed.FromMetersPerSecond(v)).MetersPerSecond <= Math.Min(v, FallSpeed(M(h)).MetersPerSecond) * (1 + 1e-9));

    [Fact]
    public void FallTimeWithDrag_OfAVeryLongFall_DoesNotOverflow() =>
        Near((10_000 / 0.1) + (0.1 / G * Math.Log(2)), FallTimeWithDrag(M(10_000), Speed.FromMetersPerSecond(0.1)).Seconds);

    [Fact]
    public void FrictionRatio_OfBends_Multiplies() => Gen.Select(Friction, Gen.Double[0, 360], Gen.Double[0, 360]).Sample((mu, a, b) =>
        Near(FrictionRatio(mu, Deg(a)) * FrictionRatio(mu, Deg(b)), FrictionRatio(mu, Deg(a + b))));

    [Fact]
    public void FrictionRatio_WithoutFrictionOrWrap_IsOne()
    {
        Assert.Equal(1, FrictionRatio(0, Deg(180)));
        Assert.Equal(1, FrictionRatio(0.5, Deg(0)));
    }

    [Fact]
    public void FrictionFromRatio_UndoesFrictionRatio() => Gen.Select(Gen.Double[0.01, 0.6], Gen.Double[10, 720]).Sample((mu, wrap) => Near(mu, FrictionFromRatio(FrictionRatio(mu, Deg(wrap)), Deg(wrap)), 1e-9));

    [Fact]
    public void HoldingAndRaising_AreInverse() => Gen.Select(Friction, Gen.Double[0, 360], Gen.Double[1, 1e5]).Sample((mu, wrap, load) =>
        Near(load, RaisingForce(HoldingForce(N(load), mu, Deg(wrap)), mu, Deg(wrap)).Newtons));

    [Fact]
    public void TopPiece_LoadsAreSymmetricAndBetweenTheirBounds() => Gen.Select(Gen.Double[0, 2e4], Gen.Double[0, 2e4], Gen.Double[0, 180]).Sample((a, b, angle) =>
    {
        double load = TopPieceResultant(N(a), N(b), Deg(angle)).Newtons;
        Near(load, TopPieceResultant(N(b), N(a), Deg(angle)).Newtons);
        Assert.InRange(load, Math.Abs(a - b) - 1e-3, a + b + 1e-6);
    });

    [Fact]
    public void TopPieceLoadOpen_OfParallelStrands_IsTopPieceLoad() => Gen.Select(Gen.Double[1, 2e4], Friction).Sample((t, mu) =>
        Near(TopPieceLoad(N(t), FrictionRatio(mu, Deg(180))).Newtons, TopPieceLoadOpen(N(t), mu, Deg(0)).Newtons));

    [Fact]
    public void EffectiveLength_LiesBetweenFirstStrandAndWholeRope() => Gen.Select(Lengths.Array[1, 8], Gen.Double[0, 180].Array[8], Friction).Sample((strands, wraps, mu) =>
    {
        double[] bends = wraps[..(strands.Length - 1)];
        double length = EffectiveLength(Strands(strands), Bends(bends), mu).Meters;
        Assert.InRange(length, strands[0] * (1 - 1e-12), strands.Sum() * (1 + 1e-12));
        Near(strands.Sum(), EffectiveLength(Strands(strands), Bends(bends), 0).Meters);
        Assert.True(EffectiveLength(Strands(strands), Bends(bends), mu + 0.1).Meters <= length * (1 + 1e-12));
    });

    [Fact]
    public void EffectiveLength_DependsOnTheOrderOfStrands() =>
        Assert.True(EffectiveLength(Strands(15, 5), Bends(180), 0.13) > EffectiveLength(Strands(5, 15), Bends(180), 0.13));

    [Fact]
    public void FallWithRopeDrag_SplitsItsEnergyAndOrdersItsForces() => Gen.Select(Masses, Moduli, Lengths, Lengths.Array[2, 6], Gen.Double[1, 180].Array[6], Gen.Double[0.01, 0.6]).Sample((m, k, h, strands, wraps, mu) =>
    {
        var fall = FallWithRopeDrag(Kg(m), N(k), M(h), Strands(strands), Bends(wraps[..(strands.Length - 1)]), mu);
        double tension = fall.ClimberForce.Newtons, stored = 0, lost = 0, x = tension * fall.EffectiveLength.Meters / k, slide = x;
        for (int i = 0; i < strands.Length; i++)
        {
            stored += tension * tension * strands[i] / (2 * k);
            if (i == strands.Length - 1) break;
            slide -= tension * strands[i] / k;
            double next = tension / FrictionRatio(mu, Deg(wraps[i]));
            lost += (tension - next) * slide / 2;
            tension = next;
        }
        Near(stored, fall.RopeEnergy.Joules);
        Near(lost, fall.FrictionEnergy.Joules, 1e-6);
        Near(tension, fall.BelayerForce.Newtons);
        Assert.True(fall.EffectiveFallFactor >= fall.FallFactor && fall.BelayerForce <= fall.ClimberForce);
    });

    [Fact]
    public void DynamicBelay_BalancesItsEnergies() => Gen.Select(Masses, Moduli, Lengths, Lengths, Gen.Double[2500, 9000], Gen.Double[1, 4]).Sample((m, k, h, length, device, ratio) =>
    {
        var fall = DynamicBelay(Kg(m), N(k), M(h), M(length), N(device), ratio);
        Near(fall.FallEnergy.Joules, fall.RopeEnergy.Joules + fall.DeviceEnergy.Joules + fall.PiecesEnergy.Joules, 1e-9);
        Near(fall.TotalDrop.Meters, h + fall.Stretch.Meters + fall.Slip.Meters);
        Assert.True(fall.PeakForce.Newtons <= ImpactForceOnSpring(Kg(m), RopeSpringRate(N(k), M(length)), M(h)).Newtons * (1 + 1e-12) && fall.Slip.Meters >= 0);
    });

    [Fact]
    public void DynamicBelay_SlipVanishes_AsTheLimitReachesTheElasticForce() => Gen.Select(Masses, Moduli, Lengths, Lengths).Sample((m, k, h, length) =>
    {
        double elastic = ImpactForce(Kg(m), N(k), h / length).Newtons;
        Assert.True(DynamicBelay(Kg(m), N(k), M(h), M(length), N(elastic * (1 - 1e-9))).Slip.Meters < 1e-6 * (h + length));
        Assert.Equal(0, DynamicBelay(Kg(m), N(k), M(h), M(length), N(elastic * (1 + 1e-9))).Slip.Meters);
    });

    [Fact]
    public void SpringsInSeries_AreSofterThanTheSoftestAndInAnyOrder() => Gen.Double[1e3, 1e7].Array[1, 6].Sample(springs =>
    {
        double chain = SpringsInSeries(Series.Of<ForcePerLength>(springs)).NewtonsPerMeter;
        Assert.True(chain <= springs.Min() * (1 + 1e-12));
        Near(chain, SpringsInSeries(Series.Of<ForcePerLength>(springs.Reverse())).NewtonsPerMeter);
    });

    [Fact]
    public void TetherForce_WithRigidAnchorAndBody_IsImpactForce() => Gen.Select(Masses, Moduli, Gen.Double[0.3, 3], Gen.Double[0, 2]).Sample((m, k, length, f) =>
        Near(ImpactForce(Kg(m), N(k), f).Newtons, TetherForce(Kg(m), N(k), M(length), M(f * length), KNm(1e12), KNm(1e12)).Newtons, 1e-8));

    [Fact]
    public void TetherStiffness_OfGivingParts_IsThatOfTheirChain() => Gen.Select(Moduli, Gen.Double[0.3, 3], Gen.Double[10, 1000], Gen.Double[10, 1000]).Sample((k, length, a, b) =>
        Near(TwoSpringsInSeries(RopeSpringRate(N(k), M(length)), TwoSpringsInSeries(KNm(a), KNm(b))).NewtonsPerMeter, TetherStiffness(N(k), M(length), KNm(a), KNm(b)).NewtonsPerMeter));

    [Fact]
    public void AbsorberMeanForce_OverTheTearLength_IsTheTearForce() => Gen.Select(Gen.Double[40, 120], Gen.Double[0.5, 6], Gen.Double[2, 6]).Sample((m, h, force) =>
        Near(force * 1000, AbsorberMeanForce(Kg(m), M(h), M(Math.Max(0.001, AbsorberTear(Kg(m), M(h), KN(force)).Meters))).Newtons));

    [Fact]
    public void LoadInG_OfNoFall_IsTwo() => Masses.Sample(m => Near(2, LoadInG(ImpactForce(Kg(m), KN(20), 0), Kg(m)), 1e-15));

    [Fact]
    public void TopPieceOfADraggedFall_IsTopPieceLoadOpen() => Gen.Select(Gen.Double[1, 180], Friction).Sample((wrap, mu) =>
    {
        var fall = FallWithRopeDrag(Kg(80), KN(20), M(5), Strands(5, 5), Bends(wrap), mu);
        Near(TopPieceLoadOpen(fall.ClimberForce, mu, Deg(180 - wrap)).Newtons, fall.TopPieceForce.Newtons, 1e-8);
    });

    [Fact]
    public void RopeWithoutPieces_IsAPlainFall()
    {
        var fall = FallWithRopeDrag(Kg(80), KN(20), M(5), Strands(10), Bends(), 0.2);
        Near(ImpactForce(Kg(80), KN(20), 0.5).Newtons, fall.ClimberForce.Newtons);
        Assert.Equal(0, fall.TopPieceForce.Newtons);
    }

    [Fact]
    public void BendsThatDoNotFitTheStrands_AreRefused() =>
        Assert.Equal("bends must have one angle fewer than there are strands, 1 for 2 strands; it has 2.", Assert.Throws<DomainException>(() => EffectiveLength(Strands(5, 5), Bends(10, 20), 0.1)).Message);

    private static void Near(double expected, double actual, double relative = 1e-10) =>
        Assert.True(Math.Abs(expected - actual) <= (relative * Math.Max(Math.Abs(expected), Math.Abs(actual))) + 1e-12, $"{expected:R} against {actual:R}");
}
