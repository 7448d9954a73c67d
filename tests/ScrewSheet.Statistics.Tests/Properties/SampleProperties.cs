using CsCheck;
using ScrewSheet.Quantities;
using ScrewSheet.Statistics.Tests.Data;
using UnitsNet;

namespace ScrewSheet.Statistics.Tests.Properties;

/// <summary>What must hold for any sample.</summary>
public sealed class SampleProperties
{
    /// <summary>Strengths in kN with some scatter: 3 to 30 values, two of them surely different.</summary>
    private static Gen<double[]> Batches { get; } =
        from values in Gen.Double[1, 50].Array[3, 30]
        from off in Gen.Double[0.5, 5]
        select (double[])[.. values, values[0] + off];

    [Fact]
    public void ShiftAndScale_CarryThrough() =>
        Gen.Select(Batches, Gen.Double[0.1, 20], Gen.Double[0, 100]).Sample((values, scale, shift) =>
        {
            Series<double> plain = Of.Numbers(values), moved = Series.OfNumbers(values.Select(x => (scale * x) + shift));
            Close((scale * SampleStatistics.Mean(plain)) + shift, SampleStatistics.Mean(moved));
            Close(scale * SampleStatistics.StandardDeviation(plain), SampleStatistics.StandardDeviation(moved));
            Close((scale * NormalLimits.ThreeSigmaRating(plain).Limit) + shift, NormalLimits.ThreeSigmaRating(moved).Limit, 1e-8 * (1 + (scale * 200)));
            Close((scale * SampleQuantiles.Quantile(plain, 0.3)) + shift, SampleQuantiles.Quantile(moved, 0.3));
            Close(OutlierTests.GrubbsTest(plain).Statistic, OutlierTests.GrubbsTest(moved).Statistic);
            Close(Normality.AndersonDarlingNormal(plain).Statistic, Normality.AndersonDarlingNormal(moved).Statistic, 1e-7);
        }, iter: 200);

    [Fact]
    public void Units_DoNotMatter() =>
        Batches.Sample(values =>
        {
            ToleranceLimit<Force> force = NormalLimits.BBasis(Of.Kilonewtons(values));
            ToleranceLimit<double> number = NormalLimits.BBasis(Of.Numbers(values));
            Close(number.Limit, force.Limit.Kilonewtons, 1e-9 * (1 + Math.Abs(number.Limit)) * 50);
            Close(WeibullLikelihood.WeibullMaximumLikelihood(Of.Numbers(values)).Shape, WeibullLikelihood.WeibullMaximumLikelihood(Of.Kilonewtons(values)).Shape, 1e-7);
        }, iter: 60);

    [Fact]
    public void Order_DoesNotMatter() =>
        Batches.Sample(values =>
        {
            Series<double> one = Of.Numbers(values), other = Series.OfNumbers(values.Reverse());
            Close(SampleStatistics.Mean(one), SampleStatistics.Mean(other));
            Close(SampleStatistics.StandardDeviation(one), SampleStatistics.StandardDeviation(other));
            Close(SampleQuantiles.Quantile(one, 0.1), SampleQuantiles.Quantile(other, 0.1));
            Close(WeibullLikelihood.WeibullMaximumLikelihood(one).Shape, WeibullLikelihood.WeibullMaximumLikelihood(other).Shape, 1e-7);
        }, iter: 200);

    [Fact]
    public void Quantiles_RiseAndStayWithinTheSample() =>
        Gen.Select(Batches, Gen.Double[0, 1], Gen.Double[0, 1], Gen.Int[1, 9]).Sample((values, p, q, type) =>
        {
            Series<double> sample = Of.Numbers(values);
            double low = SampleQuantiles.Quantile(sample, Math.Min(p, q), (QuantileType)type), high = SampleQuantiles.Quantile(sample, Math.Max(p, q), (QuantileType)type);
            Assert.True(low <= high + 1e-12);
            Assert.InRange(low, values.Min(), values.Max());
            Assert.InRange(high, values.Min(), values.Max());
        });

    [Fact]
    public void Median_IsTheHalfQuantileOfEverySymmetricType() =>
        Batches.Sample(values =>
        {
            Series<double> sample = Of.Numbers(values);
            foreach (QuantileType type in new[] { QuantileType.InverseDistributionAveraged, QuantileType.Hazen, QuantileType.PlottingPosition, QuantileType.FirstToLast, QuantileType.MedianUnbiased, QuantileType.NormalUnbiased })
                Close(SampleQuantiles.Median(sample), SampleQuantiles.Quantile(sample, 0.5, type));
        }, iter: 300);

    [Fact]
    public void Intervals_HoldTheirEstimate() =>
        Gen.Select(Batches, Gen.Double[0.5, 0.999]).Sample((values, confidence) =>
        {
            Series<double> sample = Of.Numbers(values);
            Interval<double> mean = SampleIntervals.MeanInterval(sample, confidence), deviation = SampleIntervals.DeviationInterval(sample, confidence);
            Assert.InRange(SampleStatistics.Mean(sample), mean.Lower, mean.Upper);
            if (confidence > 0.8) Assert.InRange(SampleStatistics.StandardDeviation(sample), deviation.Lower, deviation.Upper);
        }, iter: 200);

    [Fact]
    public void Comparisons_TurnedRound_ChangeTheirSign() =>
        Gen.Select(Batches, Batches).Sample((a, b) =>
        {
            MeanComparison<double> forth = TwoSampleTests.WelchTest(Of.Numbers(a), Of.Numbers(b)), back = TwoSampleTests.WelchTest(Of.Numbers(b), Of.Numbers(a));
            Close(forth.Statistic, -back.Statistic);
            Close(forth.PValue, back.PValue);
            Close(forth.Lower, -back.Upper, 1e-7);
        }, iter: 100);

    [Fact]
    public void AnovaOfTwoGroups_IsThePooledTestSquared() =>
        Gen.Select(Batches, Batches).Sample((a, b) =>
        {
            var (sample, group) = Of.Groups(a, b);
            AnalysisOfVariance<double> anova = GroupTests.OneWayAnova(sample, group);
            MeanComparison<double> pooled = TwoSampleTests.PooledTest(Of.Numbers(a), Of.Numbers(b));
            Close(pooled.Statistic * pooled.Statistic, anova.Statistic, 1e-8 * (1 + anova.Statistic));
            Close(pooled.PValue, anova.PValue, 1e-9);
        }, iter: 100);

    [Fact]
    public void Line_ThroughPointsOnALine_FindsIt() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[-100, 100], Gen.Double[-1000, 1000]).Sample((slope, intercept, start) =>
        {
            double[] x = [.. Enumerable.Range(0, 12).Select(i => start + i)];
            LineFit<double, double> line = Regressions.LinearRegression(Of.Numbers(x), Series.OfNumbers(x.Select((each, i) => intercept + (slope * each) + (i % 2 == 0 ? 0.5 : -0.5))));
            LinePrediction<double> middle = Regressions.PredictionAt(line, start + 5.5);
            Close(intercept + (slope * (start + 5.5)), middle.Value, 1e-6);
            Assert.True(middle.MeanLower < middle.Value && middle.SingleLower < middle.MeanLower);
        }, iter: 200);

    private static void Close(double expected, double actual, double allowed = 1e-9) => Assert.Equal(expected, actual, allowed * (1 + Math.Abs(expected)));
}
