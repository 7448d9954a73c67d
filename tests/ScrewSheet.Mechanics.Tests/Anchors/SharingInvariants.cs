using CsCheck;
using ScrewSheet.Mechanics.Anchors;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using static ScrewSheet.Mechanics.Tests.LeverArm.In;

namespace ScrewSheet.Mechanics.Tests.Anchors;

/// <summary>Sharing by stiffness, legs in space, and what is left when one is lost.</summary>
public sealed class SharingInvariants
{
    /// <summary>Anchors above the master point, as a rescuer would set them.</summary>
    private static Gen<double[][]> Legs(int least, int most) =>
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[0.3, 2], Gen.Double[20, 500], (x, y, z, ea) => new[] { x, y, z, ea }).Array[least, most];

    [Fact]
    public void Parallel_SharesHoldTheLoadAndShorterLegsCarryMore() => Gen.Select(Gen.Double[0.1, 50], Gen.Double[0.1, 2].Array[1, 8]).Sample((load, lengths) =>
    {
        LegSharing sharing = StiffnessSharing.ShareParallel(KN(load), Metres(lengths), Kilonewtons([.. lengths.Select(_ => 100.0)]));
        return Close(sharing.Tensions.Si.Sum(), load * 1e3) && lengths[(int)sharing.LargestLeg - 1] == lengths.Min();
    });

    [Fact]
    public void Slack_NoneIsParallelSharing_AndAnyHoldsTheLoad() => Gen.Select(Gen.Double[0.1, 50], Gen.Select(Gen.Double[20, 500], Gen.Double[0, 50]).Array[1, 8]).Sample((load, legs) =>
    {
        Series<ForcePerLength> springs = Series.Of<ForcePerLength>(legs.Select(leg => leg.Item1 * 1e3));
        LegSharing slack = StiffnessSharing.ShareWithSlack(KN(load), springs, Metres([.. legs.Select(leg => leg.Item2 / 1e3)]));
        LegSharing none = StiffnessSharing.ShareWithSlack(KN(load), springs, Metres([.. legs.Select(_ => 0.0)]));
        LegSharing parallel = StiffnessSharing.ShareParallel(KN(load), Metres([.. legs.Select(_ => 1.0)]), Kilonewtons([.. legs.Select(leg => leg.Item1)]));
        // with all legs late the whole anchor gives first, but every leg still follows its own spring
        return Close(slack.Tensions.Si.Sum(), load * 1e3) && none.Tensions.Si.Zip(parallel.Tensions.Si, (a, b) => Close(a, b)).All(same => same)
            && legs.Select((leg, i) => Math.Abs(slack.Tensions.Si[i] - (leg.Item1 * 1e3 * Math.Max(0, slack.MovedX.Meters - (leg.Item2 / 1e3)))) < 1e-6 * load * 1e3).All(same => same);
    });

    [Fact]
    public void Slack_PairRuleIsTheGeneralOne() => Gen.Select(Gen.Double[0.1, 20], Gen.Double[20, 500], Gen.Double[0, 60]).Sample((load, stiffness, error) =>
    {
        LegPair pair = StiffnessSharing.PairWithLengthError(KN(load), KNm(stiffness), Mm(error));
        LegSharing general = StiffnessSharing.ShareWithSlack(KN(load), Series.Of<ForcePerLength>([stiffness * 1e3, stiffness * 1e3]), Metres(0, error / 1e3));
        return Math.Abs(pair.First.Newtons - general.Tensions.Si[0]) < 1e-9 * load * 1e3 && Math.Abs(pair.Second.Newtons - general.Tensions.Si[1]) < 1e-9 * load * 1e3;
    });

    [Fact]
    public void Plane_TensionsBalanceThePull_ScaleWithIt_AndMirror() => Gen.Select(Gen.Double[0.1, 20], Gen.Double[-20, 20], Gen.Select(Gen.Double[0.2, 1], Gen.Double[20, 500]).Array[2, 6]).Sample((load, pull, legs) =>
    {
        double[] angles = [.. legs.Select((_, i) => -60 + (120.0 * i / (legs.Length - 1)))];
        LegSharing At(double force, double direction, double sign) => StiffnessSharing.SharePlane(KN(force), Deg(sign * direction), Degrees([.. angles.Select(a => sign * a)]),
            Metres([.. legs.Select(leg => leg.Item1)]), Kilonewtons([.. legs.Select(leg => leg.Item2)]));
        LegSharing one = At(load, pull, 1), twice = At(2 * load, pull, 1), mirrored = At(load, pull, -1);
        double x = one.Tensions.Si.Zip(angles, (t, a) => t * Math.Sin(a * Math.PI / 180)).Sum(), y = one.Tensions.Si.Zip(angles, (t, a) => t * Math.Cos(a * Math.PI / 180)).Sum();
        double psi = pull * Math.PI / 180, scale = load * 1e3;
        return Math.Abs(x - (scale * Math.Sin(psi))) < 1e-6 * scale && Math.Abs(y - (scale * Math.Cos(psi))) < 1e-6 * scale && one.Tensions.Si.All(t => t >= 0)
            && one.Tensions.Si.Zip(twice.Tensions.Si, (a, b) => Math.Abs((2 * a) - b) < 1e-6 * scale).All(same => same)
            && one.Tensions.Si.Zip(mirrored.Tensions.Si, (a, b) => Math.Abs(a - b) < 1e-6 * scale).All(same => same);
    });

    [Fact]
    public void Plane_ASlackLegIsDroppedAndTheOthersSharedAgain()
    {
        LegSharing withSlack = StiffnessSharing.SharePlane(KN(10), Deg(40), Degrees(-60, 30, 50), Metres(0.5, 0.5, 0.5), Kilonewtons(100, 100, 100));
        LegSharing without = StiffnessSharing.SharePlane(KN(10), Deg(40), Degrees(30, 50), Metres(0.5, 0.5), Kilonewtons(100, 100));
        Assert.Equal(0, withSlack.Tensions.Si[0]);
        Assert.Equal(1, withSlack.SlackLegs);
        Assert.Equal("At least one leg is slack and carries nothing.", Assert.Single(withSlack.Cautions));
        Assert.Equal(without.Tensions.Si[0], withSlack.Tensions.Si[1], 6);
        Assert.Equal(without.Tensions.Si[1], withSlack.Tensions.Si[2], 6);
    }

    [Fact]
    public void Plane_LegsAllAlongThePullShareAsParallelOnes()
    {
        LegSharing plane = StiffnessSharing.SharePlane(KN(10), Deg(20), Degrees(20, 20, 20), Metres(0.3, 0.5, 0.8), Kilonewtons(100, 100, 100));
        Assert.Equal(5063.291, plane.Tensions.Si[0], 3);
        Assert.Equal(1898.734, plane.Tensions.Si[2], 3);
    }

    [Fact]
    public void Plane_LegsThatCannotHoldThePull_AreRefusedWithTheRemedy() => Assert.Contains("Use TiedLegs",
        Assert.Throws<DomainException>(() => StiffnessSharing.SharePlane(KN(10), Deg(80), Degrees(-30, 0, 30), Metres(1, 1, 1), Kilonewtons(100, 100, 100))).Message, StringComparison.Ordinal);

    [Fact]
    public void Space_StaticallyDeterminateLegsDoNotCareForTheirStiffness() => Gen.Double[1, 1000].Array[3].Sample(stiffness =>
    {
        Series<Length> x = Metres(0.3, -0.4, 0.05), y = Metres(0.1, 0.1, -0.2), z = Metres(0.8, 0.6, 1);
        LegSharing statics = LegsInSpace.ThreeLegs(N(0), N(0), KN(-10), x, y, z), elastic = StiffnessSharing.ShareSpace(N(0), N(0), KN(-10), x, y, z, Kilonewtons(stiffness));
        return statics.Tensions.Si.Zip(elastic.Tensions.Si, (a, b) => Math.Abs(a - b) < 1e-5).All(same => same);
    });

    [Fact]
    public void ThreeLegs_BalanceThePullWhereTheMasterPointComesToRest() => Gen.Select(Legs(3, 3), Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, -0.1]).Sample((legs, fx, fy, fz) =>
    {
        if (NearlyFlat(legs)) return true;
        LegSharing sharing = LegsInSpace.ThreeLegs(KN(fx), KN(fy), KN(fz), Part(legs, 0), Part(legs, 1), Part(legs, 2));
        return sharing.Tensions.Si.All(t => t >= 0) && Unbalance(legs, sharing, fx, fy, fz) < 1e-6 && legs.Select((leg, i) => Reach(leg, sharing) <= Length0(leg) * (1 + 1e-6) || sharing.Tensions.Si[i] > 0).All(fits => fits);
    });

    [Fact]
    public void ThreeLegs_WhenOneIsSlackTheOthersCarryInTheirNewPlane()
    {
        // the pull runs level away from the third anchor: it goes slack and the first two share it evenly
        LegSharing sharing = LegsInSpace.ThreeLegs(N(0), KN(-5), N(0), Metres(-0.3, 0.3, 0), Metres(0.5, 0.5, -0.5), Metres(0.5, 0.5, 0.5));
        Assert.Equal(0, sharing.Tensions.Si[2], 9);
        Assert.Equal(sharing.Tensions.Si[0], sharing.Tensions.Si[1], 6);
        Assert.Contains("swings", Assert.Single(sharing.Cautions), StringComparison.Ordinal);
        Assert.True(Unbalance([[-0.3, 0.5, 0.5], [0.3, 0.5, 0.5], [0, -0.5, 0.5]], sharing, 0, -5, 0) < 1e-9);
    }

    [Fact]
    public void TiedLegs_BalanceThePullWhereTheyComeToRest() => Gen.Select(Legs(1, 6), Gen.Double[-5, 5], Gen.Double[-5, 5], Gen.Double[-5, 5]).Sample((legs, fx, fy, fz) =>
    {
        if (Length0([fx, fy, fz]) < 1e-3) return true; // no pull is refused, see below
        LegSharing sharing = Tied(legs, fx, fy, fz);
        return Unbalance(legs, sharing, fx, fy, fz) < 1e-6
            && legs.Select((leg, i) => Math.Abs(sharing.Tensions.Si[i] - (leg[3] * 1e3 * Math.Max(0, (Reach(leg, sharing) / Length0(leg)) - 1))) < 1).All(fits => fits);
    }, iter: 300);

    [Fact]
    public void TiedLegs_StiffOnesTendToTheRigidAnswer() => Gen.Select(Legs(3, 3), Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, -0.1]).Sample((legs, fx, fy, fz) =>
    {
        if (NearlyFlat(legs)) return true;
        LegSharing rigid = LegsInSpace.ThreeLegs(KN(fx), KN(fy), KN(fz), Part(legs, 0), Part(legs, 1), Part(legs, 2));
        LegSharing stiff = Tied([.. legs.Select(leg => new[] { leg[0], leg[1], leg[2], 1e6 })], fx, fy, fz);
        return rigid.Tensions.Si.Zip(stiff.Tensions.Si, (a, b) => Math.Abs(a - b) < 0.01 * Math.Sqrt((fx * fx) + (fy * fy) + (fz * fz)) * 1e3 * Worst(legs)).All(near => near);
    }, iter: 200);

    [Fact]
    public void TiedLegs_WithoutAPull_AreRefused() =>
        Assert.Equal("pullX, pullY and pullZ must not all be 0 kN.", Assert.Throws<DomainException>(() => Tied([[0, 0, 1, 100]], 0, 0, 0)).Message);

    [Fact]
    public void LostLeg_CarriesNothingAndTheRestHoldsThePull() => Gen.Select(Legs(2, 5), Gen.Int[0, 4], Gen.Double[-5, -0.5]).Sample((legs, lost, fz) =>
    {
        int gone = lost % legs.Length;
        LegSharing sharing = Redundancy.WithoutLeg(N(0), N(0), KN(fz), Part(legs, 0), Part(legs, 1), Part(legs, 2), Kilonewtons([.. legs.Select(leg => leg[3])]), gone + 1);
        return sharing.Tensions.Si[gone] == 0 && Unbalance(legs, sharing, 0, 0, fz) < 1e-6;
    }, iter: 200);

    [Fact]
    public void OneLegOut_OfTwoEqualLegsTheOtherCarriesAllAndDropsByTheTiedRule()
    {
        double depth = 0.2 / Math.Tan(Math.PI / 6);
        RedundancyCheck check = Redundancy.OneLegOut(N(0), N(0), KN(-5), Metres(-0.2, 0.2), Metres(0, 0), Metres(depth, depth), Kilonewtons(1e6, 1e6), Kilonewtons(10, 8), Mass.FromKilograms(80), KNm(20));
        Assert.Equal(0.625, check.Worst, 5);
        Assert.Equal([0, 0.625, 0.5, 0], check.Utilisations.Si.Select(value => Math.Round(value, 5)));
        Assert.Equal(LegFailure.FixedLegDrop(M(0.4), Deg(60)).Meters, check.Drops.Si[0], 4);
        Assert.Equal(1, check.WorstLoss);
        Assert.Equal(2, check.WorstLeg);
        Assert.True(check.Redundant);
        Assert.Empty(check.Cautions);
    }

    [Fact]
    public void OneLegOut_AShockAboveThePullCounts()
    {
        double depth = 0.2 / Math.Tan(Math.PI / 6);
        RedundancyCheck check = Redundancy.OneLegOut(N(0), N(0), N(-784.5), Metres(-0.2, 0.2), Metres(0, 0), Metres(depth, depth), Kilonewtons(1e6, 1e6), Kilonewtons(2, 2), Mass.FromKilograms(80), KNm(20));
        double shock = LegFailure.ShockBound(Mass.FromKilograms(80), KNm(20), LegFailure.FixedLegDrop(M(0.4), Deg(60))).Kilonewtons;
        Assert.Equal(shock / 2, check.WorstWithImpact, 3);
        Assert.Equal(784.5 / 2000, check.Worst, 3);
        Assert.False(check.Redundant);
        Assert.Single(check.Cautions);
    }

    [Fact]
    public void OneLegOut_ScalesWithCapacity_AndImpactNeverHelps() => Gen.Select(Legs(3, 5), Gen.Double[-5, -0.5]).Sample((legs, fz) =>
    {
        RedundancyCheck At(double holds) => Redundancy.OneLegOut(N(0), N(0), KN(fz), Part(legs, 0), Part(legs, 1), Part(legs, 2), Kilonewtons([.. legs.Select(leg => leg[3])]),
            Kilonewtons([.. legs.Select(_ => holds)]), Mass.FromKilograms(80), KNm(50));
        RedundancyCheck weak = At(5), strong = At(10);
        return Close(weak.Worst, 2 * strong.Worst) && weak.WorstWithImpact >= weak.Worst * (1 - 1e-9) && weak.Drops.Si.All(drop => drop >= 0);
    }, iter: 60);

    [Fact]
    public void LegNumbers_OfADifferentCount_AreRefused() => Assert.Equal("stiffness must have one value for each of the 3 legs; it has 2.",
        Assert.Throws<DomainException>(() => StiffnessSharing.ShareParallel(KN(1), Metres(1, 1, 1), Kilonewtons(100, 100))).Message);

    [Fact]
    public void Sharing_EqualAnswersAreEqual()
    {
        LegSharing Again() => StiffnessSharing.ShareParallel(KN(10), Metres(0.3, 0.5), Kilonewtons(100, 100));
        Assert.Equal(Again(), Again());
        Assert.NotEqual(Again(), StiffnessSharing.ShareParallel(KN(11), Metres(0.3, 0.5), Kilonewtons(100, 100)));
    }

    private static LegSharing Tied(double[][] legs, double fx, double fy, double fz) =>
        LegsInSpace.TiedLegs(KN(fx), KN(fy), KN(fz), Part(legs, 0), Part(legs, 1), Part(legs, 2), Kilonewtons([.. legs.Select(leg => leg[3])]));

    private static Series<Length> Part(double[][] legs, int axis) => Metres([.. legs.Select(leg => leg[axis])]);

    private static double Length0(double[] leg) => Math.Sqrt((leg[0] * leg[0]) + (leg[1] * leg[1]) + (leg[2] * leg[2]));

    private static double[] Offset(double[] leg, LegSharing sharing) => [leg[0] - sharing.MovedX.Meters, leg[1] - sharing.MovedY.Meters, leg[2] - sharing.MovedZ.Meters];

    private static double Reach(double[] leg, LegSharing sharing) => Length0(Offset(leg, sharing));

    /// <summary>What is left of the pull after the legs' tensions at the moved master point, over the pull.</summary>
    private static double Unbalance(double[][] legs, LegSharing sharing, params double[] kilonewtons)
    {
        double[] left = [.. kilonewtons.Select(force => force * 1e3)];
        for (int leg = 0; leg < legs.Length; leg++)
        {
            double[] offset = Offset(legs[leg], sharing);
            for (int axis = 0; axis < 3; axis++) left[axis] += sharing.Tensions.Si[leg] * offset[axis] / Length0(offset);
        }
        return Length0(left) / (1e3 * Length0(kilonewtons));
    }

    /// <summary>Legs nearly in one plane, or two nearly in line, make tensions that swamp the comparison.</summary>
    private static bool NearlyFlat(double[][] legs) => Worst(legs) > 20;

    private static double Worst(double[][] legs)
    {
        double[][] u = [.. legs.Select(leg => leg.Take(3).Select(part => part / Length0(leg)).ToArray())];
        double volume = (u[0][0] * ((u[1][1] * u[2][2]) - (u[1][2] * u[2][1]))) - (u[0][1] * ((u[1][0] * u[2][2]) - (u[1][2] * u[2][0]))) + (u[0][2] * ((u[1][0] * u[2][1]) - (u[1][1] * u[2][0])));
        return 1 / Math.Max(1e-12, Math.Abs(volume));
    }
}
