using ScrewSheet.Quantities;
using ScrewSheet.Statistics.Tests.Data;
using UnitsNet;

namespace ScrewSheet.Statistics.Tests;

/// <summary>What the numbers do not mean is said beside them.</summary>
public sealed class CautionTests
{
    [Fact]
    public void FiveSpecimensAboveTenKilonewtonsAreNoTenKilonewtonRating()
    {
        ClaimCheck check = ClaimChecks.CheckClaim(Of.Kilonewtons(10.4, 11.1, 12.0, 10.8, 11.6), Force.FromKilonewtons(10));
        Assert.Equal("5 specimens above the claim are no rating of that strength: at 95 % confidence they show only that 54.9 % of all pieces reach it.", Assert.Single(check.Cautions));
        Assert.Equal(0, check.Below);
    }

    [Fact]
    public void ASpecimenBelowTheClaimIsCounted()
    {
        ClaimCheck check = ClaimChecks.CheckClaim(Of.Kilonewtons(9.4, 11.1, 12.0), Force.FromKilonewtons(10));
        Assert.Equal("One specimen of 3 broke below the claim.", Assert.Single(check.Cautions));
        Assert.Equal(SuccessRuns.SuccessRunWithFailures(3, 1, 0.95), check.ReliabilityBound);
    }

    [Fact]
    public void AllBelowTheClaimShowsNothing() =>
        Assert.Equal(0, ClaimChecks.CheckClaim(Of.Kilonewtons(9, 8), Force.FromKilonewtons(10)).ReliabilityBound);

    [Fact]
    public void ThreeSigmaSaysWhatItCovers()
    {
        ToleranceLimit<Force> rating = NormalLimits.ThreeSigmaRating(Of.Kilonewtons(10.4, 11.1, 12.0, 10.8, 11.6));
        Assert.Contains("From 5 specimens three sigma is sure (95 %) to cover only 86.2 % of the population.", rating.Cautions);
        Assert.Contains(rating.Cautions, sentence => sentence.StartsWith("Only 5 specimens", StringComparison.Ordinal));
        Assert.Equal(9.277896, rating.Limit.Kilonewtons, 1e-6);
    }

    [Fact]
    public void AnOutlierIsSaid() =>
        Assert.Contains(NormalLimits.BBasis(Of.Numbers(PrintedBatches.Uranium)).Cautions, sentence => sentence.Contains("Grubbs", StringComparison.Ordinal));

    [Fact]
    public void ALimitBelowZeroIsSaid() =>
        Assert.Contains(NormalLimits.ABasis(Of.Numbers(1, 5, 9)).Cautions, sentence => sentence.Contains("no strength at all", StringComparison.Ordinal));

    [Fact]
    public void ALargeCleanBatchHasNoCautions()
    {
        Series<double> clean = Series.OfNumbers(Enumerable.Range(1, 300).Select(i => 20 + MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, (i - 0.5) / 300)));
        Assert.Empty(NormalLimits.ThreeSigmaRating(clean).Cautions);
        Assert.Empty(NormalLimits.BBasis(clean).Cautions);
    }

    [Fact]
    public void HeavyCensoringAndFewBreaksAreSaid()
    {
        WeibullFit<double> fit = WeibullLikelihood.WeibullCensoredLikelihood(Of.Numbers(8, 9, 10, 10, 10, 10), Of.Numbers(0, 0, 1, 1, 1, 1));
        Assert.Contains(fit.Cautions, sentence => sentence.StartsWith("Only 2 broken", StringComparison.Ordinal));
        Assert.Contains(fit.Cautions, sentence => sentence.StartsWith("More than half of the specimens (4 of 6)", StringComparison.Ordinal));
        Assert.Contains(WeibullLikelihood.WeibullFractile(fit, 0.01).Cautions, sentence => sentence.Contains("rests on the assumed distribution alone", StringComparison.Ordinal));
    }

    [Fact]
    public void PredictionBeyondTheReadingsIsSaid()
    {
        LineFit<Length, Force> line = Regressions.LinearRegression(Of.Millimetres(0, 1, 2, 3), Of.Kilonewtons(0, 1.1, 1.9, 3.2));
        Assert.Contains(Regressions.PredictionAt(line, Length.FromMillimeters(9)).Cautions, sentence => sentence.Contains("outside the values", StringComparison.Ordinal));
        Assert.DoesNotContain(Regressions.PredictionAt(line, Length.FromMillimeters(2)).Cautions, sentence => sentence.Contains("outside the values", StringComparison.Ordinal));
    }

    [Fact]
    public void DestructiveTestsAreNamedWhereTheyMatter()
    {
        Assert.Contains(StandardPlans.StandardSamplingPlan(120, 0.015).Cautions, sentence => sentence.Contains("destructive", StringComparison.Ordinal));
        StandardPlan all = StandardPlans.StandardSamplingPlan(10, 0.0065);
        Assert.Equal(10, all.SampleSize);
        Assert.Contains(all.Cautions, sentence => sentence.Contains("test them all", StringComparison.Ordinal));
    }

    [Fact]
    public void EqualResultsAreEqualRecords() =>
        Assert.Equal(NormalLimits.BBasis(Of.Numbers(1, 2, 3)), NormalLimits.BBasis(Of.Numbers(3, 2, 1)) with { });

    [Fact]
    public void AKnownVariationThatTheTestsDoNotBearOutIsSaid()
    {
        Series<double> wide = Of.Numbers(8, 10, 12, 14);
        Assert.Contains(CharacteristicValues.CharacteristicValueKnownVariation(wide, 0.05).Cautions, sentence => sentence.Contains("does not hold for them", StringComparison.Ordinal));
        ToleranceLimit<double> single = CharacteristicValues.CharacteristicValueKnownVariation(Of.Numbers(10), 0.05);
        Assert.Equal(10 * (1 - (0.05 * 1.6448536269514722 * Math.Sqrt(2))), single.Limit, 1e-9);
        Assert.Equal(0.7522, single.Confidence, 1e-3);
    }
}
