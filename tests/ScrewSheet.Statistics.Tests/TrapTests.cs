using System.Globalization;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;
using ScrewSheet.Statistics.Tests.Data;

namespace ScrewSheet.Statistics.Tests;

/// <summary>Known ways such code goes wrong, each with a value that shows it.</summary>
public sealed class TrapTests
{
    [Fact]
    public void Deviation_OfLargeNearEqualValues_IsNotLostInOnePass() =>
        Assert.Equal(Math.Sqrt(30), SampleStatistics.StandardDeviation(Of.Numbers(1e9 + 4, 1e9 + 7, 1e9 + 13, 1e9 + 16)), 1e-12);

    [Fact]
    public void ThreeSigma_UsesDivisorNMinusOne()
    {
        Series<double> batch = Of.Numbers(PrintedBatches.Constructed);
        double wrong = SampleStatistics.Mean(batch) - (3 * SampleStatistics.PopulationDeviation(batch));
        Assert.Equal(11.026501, wrong, 1e-6);
        Assert.Equal(10.925158235, NormalLimits.ThreeSigmaRating(batch).Limit, 1e-9);
    }

    [Fact]
    public void ContentInPercent_IsRefusedWithTheRemedy()
    {
        var refused = Assert.Throws<DomainException>(() => ToleranceFactors.ToleranceFactor(10, 95, 0.95));
        Assert.Equal("content must lie between 0 and 1, both excluded; it is 95. Write 0.95 or 95 % for 95 per cent.", refused.Message);
    }

    [Fact]
    public void AqlInPercent_IsRefusedWithTheRemedy()
    {
        Assert.Contains("Write 0.015 or 1.5 %", Assert.Throws<DomainException>(() => StandardPlans.StandardSamplingPlan(5000, 1.5)).Message, StringComparison.Ordinal);
        Assert.Contains("An AQL of 1.5 % is 0.015", Assert.Throws<DomainException>(() => AttributePlans.AcceptanceProbability(200, 7, 1.5)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FailureShare_OfAVerySmallLoad_KeepsItsDigits() =>
        Assert.Equal(1e-12, WeibullDistribution.WeibullFailureShare(2.0, 1.0, 1e-6), 1e-24);

    [Fact]
    public void WeibullQuantile_OfAVerySmallShare_KeepsItsDigits() =>
        Assert.Equal(1e-12, WeibullDistribution.WeibullQuantile(1, 1.0, 1e-12), 1e-24);

    [Theory]
    [InlineData(9, 1.1285884059538324e-19)]
    [InlineData(10, 7.61985302416047e-24)]
    public void FarTail_IsNotOneMinusOne(double z, double expected) =>
        Assert.Equal(expected, StrengthAgainstLoad.NormalInterference(z, 1, 0, 0).FailureProbability, expected * 1e-12);

    [Fact]
    public void WeibullFit_OfLargeShapeInPascal_NeitherOverflowsNorUnderflows()
    {
        WeibullFit<double> small = WeibullLikelihood.WeibullMaximumLikelihood(Of.Numbers(PrintedBatches.Eighteen));
        WeibullFit<double> pascal = WeibullLikelihood.WeibullMaximumLikelihood(Series.OfNumbers(PrintedBatches.Eighteen.Select(x => x * 1e9)));
        WeibullFit<double> tiny = WeibullLikelihood.WeibullMaximumLikelihood(Series.OfNumbers(PrintedBatches.Eighteen.Select(x => x * 1e-30)));
        Assert.Equal(small.Shape, pascal.Shape, 1e-8);
        Assert.Equal(small.Shape, tiny.Shape, 1e-8);
        Assert.Equal(small.Scale * 1e9, pascal.Scale, 1e3);
    }

    [Fact]
    public void MomentsOfMoreThan46341Values_AreRight()
    {
        Series<double> many = Series.OfNumbers(Enumerable.Range(0, 50_000).Select(i => i % 2 == 0 ? 1.0 : 3.0));
        Assert.Equal(Math.Sqrt(50_000.0 / 49_999), SampleStatistics.StandardDeviation(many), 1e-12);
    }

    [Fact]
    public void NotANumber_DoesNotSlipThrough()
    {
        Series<double> sample = Of.Numbers(1, double.NaN, 3);
        Assert.Throws<DomainException>(() => SampleStatistics.Mean(sample));
        Assert.Throws<DomainException>(() => SampleQuantiles.Median(sample));
        Assert.Throws<DomainException>(() => ClaimChecks.CheckClaim(sample, 2));
        Assert.Throws<DomainException>(() => ClaimChecks.CheckClaim(Of.Numbers(1, 2, 3), double.NaN));
        Assert.Throws<DomainException>(() => ToleranceFactors.ToleranceFactor(10, double.NaN, 0.95));
        Assert.Throws<DomainException>(() => AttributePlans.AcceptanceProbability(10, 1, double.NaN));
    }

    [Fact]
    public void InterpolatingInK_WouldBeSixPerCentWrong()
    {
        double Factor(double n) => ToleranceFactors.ToleranceFactor(n, 0.90, 0.95);
        double interpolated = Factor(5) + ((Factor(10) - Factor(5)) / 5);
        Assert.Equal(3.1962, interpolated, 1e-4);
        Assert.Equal(3.0063, Factor(6), 1e-4);
    }

    [Fact]
    public void ToleranceFactor_OfTwoSpecimensAtHighConfidence_MeetsItsDefinition()
    {
        // With two specimens P(mean - k s below the fractile) is a plain double integral; k is near 185 and the integrand has a narrow step.
        double k = ToleranceFactors.ToleranceFactor(2, 0.99, 0.99), z = 2.3263478740408408;
        double direct = Quadrature.Simpson(r => 2 * Distributions.Density(r) * Distributions.Phi(Math.Sqrt(2) * ((k * r) - z)), 0, 10, 200_000);
        Assert.Equal(0.99, direct, 1e-9);
    }

    [Fact]
    public void ThreeSigma_MeetsBBasisFromSevenAndABasisFrom35()
    {
        Assert.True(ToleranceFactors.ToleranceFactor(6, 0.90, 0.95) > 3);
        Assert.True(ToleranceFactors.ToleranceFactor(7, 0.90, 0.95) <= 3);
        Assert.True(ToleranceFactors.ToleranceFactor(34, 0.99, 0.95) > 3);
        Assert.True(ToleranceFactors.ToleranceFactor(35, 0.99, 0.95) <= 3);
    }

    [Theory]
    [InlineData(5, -0.0076)]
    [InlineData(10, -0.0143)]
    [InlineData(20, -0.0083)]
    [InlineData(43, -0.0040)]
    public void NatrellasApproximation_MissesTheExactFactorByAsMuchAsKnown(double n, double relative) =>
        Assert.Equal(relative, (ToleranceFactors.NatrellaToleranceFactor(n, 0.90, 0.95) / ToleranceFactors.ToleranceFactor(n, 0.90, 0.95)) - 1, 6e-5);

    [Fact]
    public void NatrellasApproximation_IsRefusedWhereItTurnsNegative() =>
        Assert.Throws<DomainException>(() => ToleranceFactors.NatrellaToleranceFactor(2, 0.90, 0.99));

    [Fact]
    public void Quantiles_LeaveTheCallersOrderAlone()
    {
        Series<double> sample = Of.Numbers(StrdData.Mavro);
        double before = SampleStatistics.LagOneAutocorrelation(sample);
        SampleQuantiles.Median(sample);
        Normality.AndersonDarlingNormal(sample);
        Assert.Equal(before, SampleStatistics.LagOneAutocorrelation(sample));
    }

    [Fact]
    public void LikelihoodAndRankShapes_Differ()
    {
        Series<double> ten = Of.Numbers(16, 34, 53, 75, 93, 120, 150, 191, 240, 339);
        Assert.True(WeibullLikelihood.WeibullMaximumLikelihood(ten).Shape > 1.1 * WeibullRanks.WeibullMedianRanks(ten).Shape);
    }

    [Theory]
    [InlineData(1, 0.9999, 3183.098757, 1e-3)]
    [InlineData(340, 0.975, 1.966966, 2e-6)]
    [InlineData(9, 0.975, 2.262157162798206, 1e-12)]
    public void StudentQuantile_ReachesBeyondAFixedBracket(double dof, double probability, double expected, double allowed) =>
        Assert.Equal(expected, Distributions.StudentQuantile(probability, dof), allowed);

    [Fact]
    public void ChiSquareQuantile_OfManyDegrees_IsFound() => Assert.Equal(31891.590693, Distributions.ChiSquareQuantile(0.999, 31115), 1e-4);

    [Fact]
    public void FisherTail_OfFewDegrees_IsRight()
    {
        Assert.Equal(0.01, Distributions.FisherUpper(4052.180695, 1, 1), 1e-9);
        Assert.Equal(0.001, Distributions.FisherUpper(499999.5, 2, 1), 1e-9);
    }

    [Fact]
    public void BetaAndHypergeometric_StayWithinZeroAndOne()
    {
        Assert.InRange(AttributePlans.AcceptanceProbabilityOfLot(500, 250, 100, 100), 1 - 1e-12, 1);
        Assert.InRange(SuccessRuns.SuccessRunWithFailures(100_000, 3, 0.95), 0.9999, 1);
        Assert.InRange(AttributePlans.AcceptanceProbability(1000, 1000, 0.5), 1, 1);
    }

    [Fact]
    public void ConfidenceNearNothing_KeepsItsDigits()
    {
        double content = 1 - 1e-12, failing = 1 - content;
        Assert.Equal(1000 * failing * (1 - (499.5 * failing)), DistributionFreeLimits.DistributionFreeConfidence(1000, content, 1), 1e-9 * 1000 * failing);
        double near = 1 - 1e-9, gap = 1 - near;
        Assert.Equal(gap * gap, DistributionFreeLimits.MinMaxConfidence(2, near), 1e-9 * gap * gap);
    }

    [Fact]
    public void BetaOfLargeParameters_IsANumber() => Assert.InRange(Distributions.BetaLower(0.5, 176, 210), 0.5, 1);

    [Fact]
    public void ColumnsWithBlanksInDifferentRows_AreNotPaired()
    {
        Series position = Series.Of<UnitsNet.Length>([0, 0.01, 0.03]).InRows([2, 3, 5]), reading = Series.Of<UnitsNet.Force>([0, 1000, 2000]).InRows([2, 4, 5]);
        var refused = Assert.Throws<DomainException>(() => RigRecords.RecordEnergy((Series<UnitsNet.Length>)position, (Series<UnitsNet.Force>)reading));
        Assert.Equal("The positions and the readings belong together row by row, but row 3 has only one of them. Take the rows that have both: first.Beside(second) and second.Beside(first).", refused.Message);
    }

    [Fact]
    public void EqualValues_HaveNoOutlierButNoRatingEither()
    {
        Series<double> equal = Of.Numbers(5, 5, 5, 5);
        Assert.False(OutlierTests.GrubbsTest(equal).IsOutlier);
        Assert.Equal(0, OutlierTests.GrubbsTest(equal).Statistic);
        Assert.Throws<DomainException>(() => NormalLimits.ThreeSigmaRating(equal));
        Assert.Throws<DomainException>(() => WeibullLikelihood.WeibullMaximumLikelihood(equal));
        Assert.Throws<DomainException>(() => Normality.AndersonDarlingNormal(equal));
        Assert.Throws<DomainException>(() => SampleStatistics.LagOneAutocorrelation(equal));
        Assert.Equal(0, SampleStatistics.StandardDeviation(equal));
    }

    [Fact]
    public void EqualSpreads_GiveAStatisticOfZeroAndP1()
    {
        var (sample, group) = Of.Groups([1, 2, 4], [11, 12, 14]);
        SpreadComparison ours = GroupTests.EqualSpreadTest(sample, group);
        Assert.Equal(0, ours.Statistic);
        Assert.Equal(1, ours.PValue);
    }

    [Fact]
    public void EqualSpreadTest_IsAnovaOfDistances()
    {
        var (sample, group) = Of.Groups([1, 2, 4, 9], [10, 20, 40, 41]);
        var (distances, same) = Of.Groups([2, 1, 1, 6], [20, 10, 10, 11]);
        Assert.Equal(GroupTests.OneWayAnova(distances, same).Statistic, GroupTests.EqualSpreadTest(sample, group).Statistic, 1e-12);
    }

    [Fact]
    public void CensoredRanks_WithoutCensoring_AreMedianRanks()
    {
        Series<double> ten = Of.Numbers(16, 34, 53, 75, 93, 120, 150, 191, 240, 339);
        Assert.Equal(WeibullRanks.WeibullMedianRanks(ten), WeibullRanks.WeibullCensoredRanks(ten, ten.With(new double[10])));
    }

    [Fact]
    public void CensoredRanks_AreAdjustedAfterEachSpecimenTakenOff()
    {
        // n = 3, the middle one taken off: ranks 1 and 1 + (4 - 1)/(1 + 1) = 2.5.
        WeibullPlotFit<double> fit = WeibullRanks.WeibullCensoredRanks(Of.Numbers(10, 15, 20), Of.Numbers(0, 1, 0), RankRegression.RankOnStrength, RankMethod.Benard);
        double Score(double rank) => Math.Log(-Math.Log(1 - ((rank - 0.3) / 3.4)));
        Assert.Equal((Score(2.5) - Score(1)) / Math.Log(2), fit.Shape, 1e-12);
    }

    [Fact]
    public void AnswersDoNotFollowTheCulture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Contains("0.95 or 95 %", Assert.Throws<DomainException>(() => ToleranceFactors.ToleranceFactor(10, 95, 0.95)).Message, StringComparison.Ordinal);
            Assert.Contains("54.9 %", ClaimChecks.CheckClaim(Of.Kilonewtons(10.4, 11.1, 12.0, 10.8, 11.6), UnitsNet.Force.FromKilonewtons(10)).Cautions[0], StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
