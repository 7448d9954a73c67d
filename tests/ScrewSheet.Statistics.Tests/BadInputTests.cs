using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Tests.Data;
using UnitsNet;

namespace ScrewSheet.Statistics.Tests;

/// <summary>What cannot be answered is refused with a plain sentence, never with a number.</summary>
public sealed class BadInputTests
{
    public static IEnumerable<object[]> Refusals => Cases.Keys.Select(name => new object[] { name });

    private static Series<double> None => Of.Numbers();

    private static Series<double> One => Of.Numbers(7);

    private static Series<double> Three => Of.Numbers(1, 2, 4);

    private static Dictionary<string, (Action Do, string Sentence)> Cases { get; } = new()
    {
        ["mean of nothing"] = (() => SampleStatistics.Mean(None), "The sample needs at least 1 value; it has 0."),
        ["deviation of one"] = (() => SampleStatistics.StandardDeviation(One), "The sample needs at least 2 values; it has 1."),
        ["median of nothing"] = (() => SampleQuantiles.Median(None), "The sample needs at least 1 value; it has 0."),
        ["infinite value"] = (() => SampleStatistics.Mean(Of.Numbers(1, double.PositiveInfinity)), "The sample holds something that is not a finite number."),
        ["too large to square"] = (() => SampleStatistics.StandardDeviation(Of.Numbers(1e300, -1e300)), "The numbers are too large or too small to be worked with: the answer is not finite."),
        ["variation about zero"] = (() => SampleStatistics.CoefficientOfVariation(Of.Numbers(-1, 1)), "The mean is zero, so the scatter cannot be set against it."),
        ["quantile above one"] = (() => SampleQuantiles.Quantile(Three, 90), "fraction must lie between 0 and 1; it is 90. Write 0.9 or 90 % for ninety per cent."),
        ["unknown quantile"] = (() => SampleQuantiles.Quantile(Three, 0.5, (QuantileType)12), "type must be one of the nine quantile types."),
        ["confidence one"] = (() => SampleIntervals.MeanInterval(Three, 1), "confidence must lie between 0 and 1, both excluded; it is 1. Write 0.01 or 1 % for 1 per cent."),
        ["confidence zero"] = (() => SampleIntervals.DeviationInterval(Three, 0), "confidence must lie between 0 and 1, both excluded; it is 0."),
        ["half a specimen"] = (() => ToleranceFactors.ToleranceFactor(4.5, 0.9, 0.95), "count must be a whole number; it is 4.5."),
        ["one specimen"] = (() => ToleranceFactors.ToleranceFactor(1, 0.9, 0.95), "count must be at least 2; it is 1."),
        ["no scatter"] = (() => NormalLimits.BBasis(Of.Numbers(3, 3, 3)), "All values of the sample are equal: there is no scatter to work with."),
        ["logarithm of zero"] = (() => NormalLimits.LognormalLowerLimit(Of.Numbers(0, 1, 2), 0.9), "Every value of the sample must be greater than zero here."),
        ["too few to count"] = (() => DistributionFreeLimits.DistributionFreeLimit(Three, 0.9), "Even the weakest of 3 specimens is no such limit: its confidence is 27.1 %. DistributionFreeSampleSize says how many are needed."),
        ["all failed"] = (() => SuccessRuns.SuccessRunWithFailures(5, 5, 0.95), "failures must be less than 5; it is 5."),
        ["29 for the small-batch limit"] = (() => HansonKoopmans.HansonKoopmansFactor(29), "count must be at most 28; it is 29. With more specimens use DistributionFreeLimit."),
        ["marks of another length"] = (() => WeibullLikelihood.WeibullCensoredLikelihood(Three, One), "The sample and the censored marks belong together reading by reading, but there are 3 and 1 of them."),
        ["marks that are no marks"] = (() => WeibullLikelihood.WeibullCensoredLikelihood(Three, Of.Numbers(0, 2, 0)), "A censored mark is 1 where the specimen was taken off unbroken and 0 where it broke."),
        ["all censored"] = (() => WeibullLikelihood.WeibullCensoredLikelihood(Three, Of.Numbers(1, 1, 1)), "At least two specimens must have broken for a Weibull fit."),
        ["exact ranks of too many"] = (() => WeibullRanks.WeibullMedianRanks(Series.OfNumbers(Enumerable.Range(1, 5001).Select(i => (double)i))), "Exact median ranks are worked out for at most 5000 specimens; take Benard's ranks, which hardly differ there."),
        ["repeated test of too many"] = (() => OutlierTests.GrubbsFlagged(Series.OfNumbers(Enumerable.Range(1, 5001).Select(i => (double)i))), "The repeated test takes at most 5000 values: among more, some always lie far out."),
        ["likelihood without a highest point"] = (() => WeibullLikelihood.WeibullCensoredLikelihood(Of.Numbers(9, 10, 10), Of.Numbers(1, 0, 0)), "All broken specimens stand at the highest value of the sample: the likelihood has no highest point."),
        ["negative strength"] = (() => WeibullRanks.WeibullMedianRanks(Of.Numbers(-1, 2)), "Every value of the sample must be greater than zero here."),
        ["two constant samples"] = (() => TwoSampleTests.WelchTest(Of.Numbers(1, 1), Of.Numbers(2, 2)), "Neither sample scatters: there is nothing to compare the difference with."),
        ["pairs of different length"] = (() => TwoSampleTests.PairedTest(Three, Of.Numbers(1, 2)), "The first series and the second series belong together reading by reading, but there are 3 and 2 of them."),
        ["one group"] = (() => GroupTests.OneWayAnova(Three, Of.Numbers(1, 1, 1)), "There must be at least two groups."),
        ["groups of one"] = (() => GroupTests.OneWayAnova(Three, Three), "At least one group needs two values."),
        ["Grubbs of two"] = (() => OutlierTests.GrubbsTest(Of.Numbers(1, 2)), "The sample needs at least 3 values; it has 2."),
        ["line through one place"] = (() => Regressions.LinearRegression(Of.Numbers(1, 1, 1), Three), "The fit needs at least 2 different values along the abscissa."),
        ["line of different lengths"] = (() => Regressions.LinearRegression(Three, Of.Numbers(1, 2, 3, 4)), "The abscissa and the ordinate belong together reading by reading, but there are 3 and 4 of them."),
        ["line through equal readings"] = (() => Regressions.LinearRegression(Three, Of.Numbers(5, 5, 5)), "All readings are equal: no dependence can be fitted."),
        ["more tested than the lot holds"] = (() => AttributePlans.AcceptanceProbabilityOfLot(10, 1, 11, 0), "sampleSize must be at most 10; it is 11."),
        ["bad better than good"] = (() => AttributePlans.FindSamplingPlan(0.05, 0.01), "bad must be greater than 0.05; it is 0.01."),
        ["unlisted AQL"] = (() => StandardPlans.StandardSamplingPlan(5000, 0.02), "quality must be an AQL of the table: 0.65 %, 1 %, 1.5 %, 2.5 %, 4 % or 6.5 %."),
        ["letter without rows"] = (() => StandardPlans.StandardSamplingPlan(20000, 0.015), "The rows of code letter M are not held here; they are for letters B to L."),
        ["limits turned round"] = (() => Capability.ProcessCapability(20.0, 8, 2), "The lower limit must be below the upper limit."),
        ["uneven subgroups"] = (() => ControlCharts.MeanRangeChart(Of.Numbers(1, 2, 3, 4, 5, 6, 7), 3), "7 values do not divide into subgroups of 3."),
        ["nothing scatters"] = (() => StrengthAgainstLoad.NormalInterference(10.0, 0, 5, 0), "Strength and load do not scatter against each other: the index has no meaning."),
        ["displacement that goes back"] = (() => RigRecords.RecordEnergy(Of.Millimetres(0, 2, 1), Of.Kilonewtons(0, 1, 2)), "The displacement goes back at reading 3: the energy under such a record is not defined here. Cut the record or sort it."),
        ["record without a drop"] = (() => RigRecords.RecordFirstDrop(Of.Millimetres(0, 1, 2), Of.Kilonewtons(0, 1, 2)), "The record never falls by 5 % of its highest value so far."),
        ["range without readings"] = (() => RigRecords.RecordStiffness(Of.Millimetres(0, 1, 2), Of.Kilonewtons(0, 1, 2), Force.FromKilonewtons(0.1), Force.FromKilonewtons(0.2)), "Only 0 readings lie between these forces before the peak; at least three are needed."),
        ["spread of temperatures"] = (() => SampleStatistics.StandardDeviation(Series.Of<Temperature>([270, 280])), "Temperatures on a scale with a zero have no spread of their own kind; use temperature differences in K."),
        ["claim of another kind"] = (() => ClaimChecks.CheckClaim(Series.Of([1, 2], Dimension.Of(length: 1)), ScrewSheet.Quantities.Quantity.FromSi(1, Dimension.Of(mass: 1))), "claim must be of the same kind as the sample."),
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void IsRefusedWithASentence(string name)
    {
        (Action act, string sentence) = Cases[name];
        Assert.Equal(sentence, Assert.Throws<DomainException>(act).Message);
    }
}
