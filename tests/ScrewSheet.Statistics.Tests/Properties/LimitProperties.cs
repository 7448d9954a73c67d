using CsCheck;
using MathNet.Numerics.Random;
using ScrewSheet.Quantities;

namespace ScrewSheet.Statistics.Tests.Properties;

/// <summary>What must hold for any limit, plan or factor.</summary>
public sealed class LimitProperties
{
    private static Gen<double> Shares { get; } = Gen.Double[0.55, 0.995];

    [Fact]
    public void ToleranceFactor_FallsWithNAndRisesWithContentAndConfidence() =>
        Gen.Select(Gen.Int[2, 60], Shares, Shares).Sample((n, p, c) =>
        {
            double k = ToleranceFactors.ToleranceFactor(n, p, c);
            Assert.True(ToleranceFactors.ToleranceFactor(n, p + ((1 - p) / 2), c) > k);
            Assert.True(ToleranceFactors.ToleranceFactor(n, p, c + ((1 - c) / 2)) > k);
            if (c > 0.7) Assert.True(ToleranceFactors.ToleranceFactor(n + 1, p, c) < k);
            Assert.True(ToleranceFactors.TwoSidedToleranceFactor(n, p, c) > 0);
        }, iter: 40);

    [Fact]
    public void ContentCovered_TurnsTheFactorBack() =>
        Gen.Select(Gen.Int[2, 200], Shares, Shares).Sample((n, p, c) =>
            Assert.Equal(p, ToleranceFactors.ContentCovered(n, Math.Min(50, ToleranceFactors.ToleranceFactor(n, p, c)), c), ToleranceFactors.ToleranceFactor(n, p, c) < 50 ? 1e-8 : 1), iter: 40);

    [Fact]
    public void ToleranceFactor_OfVeryManySpecimens_ComesToTheNormalQuantile() =>
        Assert.Equal(1.2815515655, ToleranceFactors.ToleranceFactor(1_000_000, 0.90, 0.5), 1e-5);

    [Theory]
    [InlineData(5, 0.90, 0.95)]
    [InlineData(10, 0.99, 0.90)]
    [InlineData(30, 0.95, 0.95)]
    public void ToleranceFactor_BySimulation_CoversAsOftenAsItSays(int n, double p, double c)
    {
        const int batches = 20_000;
        double k = ToleranceFactors.ToleranceFactor(n, p, c), fractile = -MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, p);
        var random = new Xoshiro256StarStar(20261125);
        double[] values = new double[n];
        int covered = 0;
        for (int batch = 0; batch < batches; batch++)
        {
            MathNet.Numerics.Distributions.Normal.Samples(random, values, 0, 1);
            Series<double> sample = Series.OfNumbers(values);
            if (SampleStatistics.Mean(sample) - (k * SampleStatistics.StandardDeviation(sample)) <= fractile) covered++;
        }
        double share = (double)covered / batches, error = Math.Sqrt(c * (1 - c) / batches);
        Assert.InRange(share, c - (4 * error), c + (4 * error));
    }

    [Fact]
    public void TwoSidedFactor_BySimulation_CoversAsOftenAsItSays()
    {
        const int batches = 20_000;
        double k = ToleranceFactors.TwoSidedToleranceFactor(8, 0.90, 0.95);
        var random = new Xoshiro256StarStar(8);
        double[] values = new double[8];
        int covered = 0;
        for (int batch = 0; batch < batches; batch++)
        {
            MathNet.Numerics.Distributions.Normal.Samples(random, values, 0, 1);
            Series<double> sample = Series.OfNumbers(values);
            double mean = SampleStatistics.Mean(sample), half = k * SampleStatistics.StandardDeviation(sample);
            if (MathNet.Numerics.Distributions.Normal.CDF(0, 1, mean + half) - MathNet.Numerics.Distributions.Normal.CDF(0, 1, mean - half) >= 0.90) covered++;
        }
        Assert.InRange((double)covered / batches, 0.95 - 0.0062, 0.95 + 0.0062);
    }

    [Fact]
    public void HansonKoopmans_BySimulationOnExponentialTails_HoldsExactly()
    {
        // The least favourable distribution: the logarithm of the strength is minus an exponential value, so the strength itself is uniform on 0 to 1.
        var random = new Xoshiro256StarStar(1994);
        const int batches = 20_000;
        int held = 0;
        double k = HansonKoopmans.HansonKoopmansFactor(8);
        int r = (int)HansonKoopmans.HansonKoopmansRank(8);
        for (int batch = 0; batch < batches; batch++)
        {
            double[] sorted = [.. Enumerable.Range(0, 8).Select(_ => random.NextDouble()).Order()];
            if (sorted[r - 1] * Math.Pow(sorted[0] / sorted[r - 1], k) <= 0.10) held++;
        }
        Assert.InRange((double)held / batches, 0.95 - 0.0062, 0.95 + 0.0062);
    }

    [Fact]
    public void SuccessRun_IsTheBoundWithoutFailures() =>
        Gen.Select(Gen.Int[1, 2000], Gen.Double[0.01, 0.999]).Sample((n, c) =>
            Assert.Equal(SuccessRuns.SuccessRunReliability(n, c), SuccessRuns.SuccessRunWithFailures(n, 0, c), 1e-12));

    [Fact]
    public void BoundWithFailures_IsWhereSoFewWouldBeRare() =>
        Gen.Select(Gen.Int[2, 300], Gen.Int[0, 20], Gen.Double[0.05, 0.99]).Where((n, f, _) => f < n).Sample((n, f, c) =>
            Assert.Equal(1 - c, AttributePlans.AcceptanceProbability(n, f, 1 - SuccessRuns.SuccessRunWithFailures(n, f, c)), 1e-9));

    [Fact]
    public void SampleSize_IsTheSmallestThatWorks() =>
        Gen.Select(Gen.Double[0.5, 0.99], Gen.Double[0.5, 0.99], Gen.Int[1, 5]).Sample((p, c, r) =>
        {
            double n = DistributionFreeLimits.DistributionFreeSampleSize(p, c, r);
            Assert.True(DistributionFreeLimits.DistributionFreeConfidence(n, p, r) >= c - 1e-12);
            if (n > r) Assert.True(DistributionFreeLimits.DistributionFreeConfidence(n - 1, p, r) < c);
        }, iter: 300);

    [Fact]
    public void OperatingCharacteristic_FallsFromOneToZero() =>
        Gen.Select(Gen.Int[1, 500], Gen.Int[0, 10]).Where((n, c) => c < n).Sample((n, c) =>
        {
            Series<double> curve = AttributePlans.OperatingCharacteristic(n, c, Series.OfNumbers(Enumerable.Range(0, 21).Select(i => i / 20.0)));
            Assert.Equal(1, curve.Si[0]);
            Assert.Equal(0, curve.Si[20]);
            Assert.All(curve.Si.Zip(curve.Si.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1e-14));
        }, iter: 100);

    [Fact]
    public void LotAndProcess_AgreeForAHugeLot() =>
        Gen.Select(Gen.Int[1, 60], Gen.Int[0, 3], Gen.Int[1, 20]).Where((n, c, _) => c < n).Sample((n, c, percent) =>
            Assert.Equal(AttributePlans.AcceptanceProbability(n, c, percent / 100.0), AttributePlans.AcceptanceProbabilityOfLot(1_000_000, 10_000 * percent, n, c), 1e-3), iter: 100);

    [Fact]
    public void FoundPlan_KeepsBothRisks() =>
        Gen.Select(Gen.Double[0.001, 0.05], Gen.Double[3, 10]).Sample((good, ratio) =>
        {
            SamplingPlan plan = AttributePlans.FindSamplingPlan(good, good * ratio);
            Assert.True(plan.AcceptedAtGood >= 0.95);
            Assert.True(plan.AcceptedAtBad <= 0.10);
            Assert.True(AttributePlans.AcceptanceProbability(plan.SampleSize - 1, plan.AcceptanceNumber, good * ratio) > 0.10);
        }, iter: 60);

    [Fact]
    public void WeibullFit_OfManyQuantiles_FindsTheDistribution() =>
        Gen.Select(Gen.Double[0.8, 25], Gen.Double[1, 40]).Sample((shape, scale) =>
        {
            Series<double> sample = Series.OfNumbers(Enumerable.Range(1, 2000).Select(i => WeibullDistribution.WeibullQuantile(shape, scale, (i - 0.5) / 2000)));
            WeibullFit<double> fit = WeibullLikelihood.WeibullMaximumLikelihood(sample);
            Assert.Equal(1, fit.Shape / shape, 0.01);
            Assert.Equal(1, fit.Scale / scale, 0.01);
            BoundedFractile<double> tenth = WeibullLikelihood.WeibullFractile(fit, 0.1);
            Assert.True(tenth.LowerBound < tenth.Value && tenth.Value < tenth.UpperBound);
        }, iter: 30);

    [Fact]
    public void WeibullInterference_OfEqualShapes_HasAClosedForm() =>
        Gen.Select(Gen.Double[0.5, 20], Gen.Double[1, 30], Gen.Double[1, 30]).Sample((shape, strength, load) =>
        {
            double expected = 1 / (1 + Math.Pow(strength / load, shape));
            if (expected is < 1e-12 or > 1 - 1e-12) return;
            Assert.Equal(expected, StrengthAgainstLoad.WeibullInterference(shape, strength, 0.0, shape, load, 0).FailureProbability, 1e-7 * expected);
        }, iter: 50);

    [Fact]
    public void NormalLoadAndStrength_BothWays_MakeOne() =>
        Gen.Select(Gen.Double[1, 50], Gen.Double[0.1, 5], Gen.Double[1, 50], Gen.Double[0.1, 5]).Sample((s, us, l, ul) =>
            Assert.Equal(1, StrengthAgainstLoad.NormalInterference(s, us, l, ul).FailureProbability + StrengthAgainstLoad.NormalInterference(l, ul, s, us).FailureProbability, 1e-12));

    [Fact]
    public void VariablesPlan_AcceptsAsOftenAsTheToleranceFactorSays() =>
        Gen.Select(Gen.Int[3, 60], Gen.Double[0.01, 0.2], Gen.Double[0.02, 0.2]).Sample((n, p, risk) =>
            Assert.Equal(risk, VariablesPlans.VariablesAcceptanceProbability(n, Math.Min(50, ToleranceFactors.ToleranceFactor(n, 1 - p, 1 - risk)), p), 1e-7), iter: 40);
}
