using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>A single-sampling plan found for two points of its operating characteristic.</summary>
/// <param name="SampleSize">How many pieces are tested.</param>
/// <param name="AcceptanceNumber">The largest number of failing pieces with which the lot is accepted.</param>
/// <param name="AcceptedAtGood">Probability of acceptance at the good quality, 0 to 1.</param>
/// <param name="AcceptedAtBad">Probability of acceptance at the bad quality, 0 to 1.</param>
[SheetRecord("A single-sampling plan by attributes")]
public sealed record SamplingPlan(
    [property: Member("n", "", "pieces tested")] double SampleSize,
    [property: Member("c", "", "failing pieces still accepted")] double AcceptanceNumber,
    [property: Member("", "", "probability of acceptance at the good quality")] double AcceptedAtGood,
    [property: Member("", "", "probability of acceptance at the bad quality")] double AcceptedAtBad);

/// <summary>Single sampling by attributes: test n pieces, accept the lot with at most c failing.</summary>
public static class AttributePlans
{
    private const string Process = "The lot is drawn from a steady process and pieces fail independently (type B, binomial).";
    private const string Rectified = "Rejected lots are tested piece by piece and good pieces survive the test; with destructive tests this does not apply, only the untested pieces remain to ship.";

    /// <summary>The probability that a lot from a process is accepted (type B, binomial), 0 to 1.</summary>
    [Callable(Topics.Sampling, "How likely is a lot of this quality to be accepted?", Assumes = Process, NotFor = "A small lot of known content: use AcceptanceProbabilityOfLot.")]
    [NoFormula("the chance of at most c failing in n, by the incomplete beta function")]
    [Example("AcceptanceProbability(500, 3, 0.01)", "0.263616")]
    [Source(Works.SamplingPlans, Standing.FromMemory)]
    public static double AcceptanceProbability(
        [Parameter("n", "", Says.PlanSize, AtLeast = 1)] double sampleSize,
        [Parameter("c", "", Says.PlanNumber, AtLeast = 0)] double acceptanceNumber,
        [Parameter("p", "", Says.Defective, AtLeast = 0, AtMost = 1, UsualTo = 0.5)] double fraction)
    {
        (int n, int c) = Plan(sampleSize, acceptanceNumber);
        return Distributions.BinomialAtMost(c, n, Portion(fraction, nameof(fraction)));
    }

    /// <summary>The probability that a lot of known content is accepted (type A, hypergeometric), 0 to 1.</summary>
    [Callable(Topics.Sampling, "How likely is a lot with so many failing pieces to be accepted?", Assumes = "Pieces are drawn at random from the lot without putting any back (type A).")]
    [NoFormula("the chance of at most c failing in a draw without putting back (hypergeometric)")]
    [Example("AcceptanceProbabilityOfLot(120, 22, 20, 1)", "0.0762970752")]
    [Source(Works.SamplingPlans, Standing.FromMemory)]
    public static double AcceptanceProbabilityOfLot(
        [Parameter("N", "", Says.Lot, AtLeast = 1)] double lotSize,
        [Parameter("D", "", "how many pieces of the lot would fail", AtLeast = 0)] double failing,
        [Parameter("n", "", Says.PlanSize, AtLeast = 1)] double sampleSize,
        [Parameter("c", "", Says.PlanNumber, AtLeast = 0)] double acceptanceNumber)
    {
        (int n, int c) = Plan(sampleSize, acceptanceNumber);
        int lot = Values.Whole(lotSize, 1, nameof(lotSize)), marked = Values.Whole(failing, 0, nameof(failing));
        Require.AtMost(n, lot, "", nameof(sampleSize));
        Require.AtMost(marked, lot, "", nameof(failing));
        return Distributions.HypergeometricAtMost(c, lot, marked, n);
    }

    /// <summary>The operating characteristic: the probability of acceptance (type B) at each quality of a series.</summary>
    [Callable(Topics.Sampling, "How does the chance of acceptance fall with quality (the OC curve)?", Assumes = Process)]
    [NoFormula("AcceptanceProbability at each value")]
    [Source(Works.SamplingPlans, Standing.FromMemory)]
    [Example("Smallest(OperatingCharacteristic(20, 1, Values(0.01, 0.05, 0.18)))", "0.1018323")]
    public static Series<double> OperatingCharacteristic(
        [Parameter("n", "", Says.PlanSize, AtLeast = 1)] double sampleSize,
        [Parameter("c", "", Says.PlanNumber, AtLeast = 0)] double acceptanceNumber,
        [Parameter("p", "", "the shares of failing pieces to look at, each 0 to 1")] Series<double> fractions)
    {
        var values = Sample.Of(fractions, 1, "fractions");
        return fractions.With(values.Select(p => AcceptanceProbability(sampleSize, acceptanceNumber, p)));
    }

    /// <summary>The quality that is accepted with a probability (type B), 0 to 1; c less than n.</summary>
    [Callable(Topics.Sampling, "Which quality does the plan accept with this probability?", Assumes = Process)]
    [NoFormula("a quantile of the beta distribution")]
    [Example("QualityAccepted(68, 2, 0.05)", "0.089704")]
    [Source(Works.SamplingPlans, Standing.FromMemory)]
    public static double QualityAccepted(
        [Parameter("n", "", Says.PlanSize, AtLeast = 1)] double sampleSize,
        [Parameter("c", "", Says.PlanNumber, AtLeast = 0)] double acceptanceNumber,
        [Parameter("Pa", "", "the probability of acceptance, 0 to 1", Above = 0, Below = 1)] double probability)
    {
        (int n, int c) = Plan(sampleSize, acceptanceNumber);
        if (c == n) throw new DomainException("With c equal to n every lot is accepted.", nameof(acceptanceNumber));
        return Distributions.BetaQuantile(1 - Values.Share(probability, nameof(probability)), c + 1.0, n - c);
    }

    /// <summary>The smallest plan that accepts good quality and refuses bad quality with the chances asked for (type B).</summary>
    [Callable(Topics.Sampling, "Which plan accepts good lots and refuses bad ones?", Assumes = Process)]
    [NoFormula("for c = 0, 1, 2 …: the largest n that still accepts good lots, until it refuses bad ones; then the smallest n that does")]
    [Example("FindSamplingPlan(0.01, 0.05).SampleSize", "132")]
    [Source(Works.SamplingPlans, Standing.FromMemory)]
    public static SamplingPlan FindSamplingPlan(
        [Parameter("p1", "", "the share of failing pieces that is good enough, 0 to 1", Above = 0, Below = 1)] double good,
        [Parameter("p2", "", "the share of failing pieces that must be refused, 0 to 1", Above = 0, Below = 1)] double bad,
        [Parameter("α", "", "the chance of refusing a good lot, 0 to 1", Above = 0, Below = 1, UsualTo = 0.2)] double producerRisk = 0.05,
        [Parameter("β", "", "the chance of accepting a bad lot, 0 to 1", Above = 0, Below = 1, UsualTo = 0.2)] double consumerRisk = 0.10)
    {
        double p1 = Values.Share(good, nameof(good)), p2 = Values.Share(bad, nameof(bad));
        double alpha = Values.Share(producerRisk, nameof(producerRisk)), beta = Values.Share(consumerRisk, nameof(consumerRisk));
        Require.Above(p2, p1, "", nameof(bad));
        for (int c = 0; c <= 2000; c++)
        {
            int n = SmallestRefusing(c, p2, beta);
            double accepted = Distributions.BinomialAtMost(c, n, p1);
            if (accepted >= 1 - alpha) return new SamplingPlan(n, c, accepted, Distributions.BinomialAtMost(c, n, p2));
        }
        throw new DomainException("Good and bad quality lie too close together for a plan of reasonable size.", nameof(bad));
    }

    /// <summary>The average share of failing pieces that leaves rectifying inspection, 0 to 1.</summary>
    [Callable(Topics.Sampling, "Which quality leaves on average, if rejected lots are sorted piece by piece?", Assumes = Process + " " + Rectified, NotFor = "Destructive tests.")]
    [NoFormula("probability of acceptance times p times (N - n) / N")]
    [Example("AverageOutgoingQuality(10000, 52, 3, 0.03)", "0.0277411")]
    [CautionWhen("true", Rectified)]
    [Source(Works.SamplingPlans, Standing.FromMemory)]
    public static double AverageOutgoingQuality(
        [Parameter("N", "", Says.Lot, AtLeast = 1)] double lotSize,
        [Parameter("n", "", Says.PlanSize, AtLeast = 1)] double sampleSize,
        [Parameter("c", "", Says.PlanNumber, AtLeast = 0)] double acceptanceNumber,
        [Parameter("p", "", Says.Defective, AtLeast = 0, AtMost = 1, UsualTo = 0.5)] double fraction)
    {
        int lot = LotOf(lotSize, sampleSize);
        return AcceptanceProbability(sampleSize, acceptanceNumber, fraction) * fraction * (lot - sampleSize) / lot;
    }

    /// <summary>How many pieces of a lot are tested on average under rectifying inspection.</summary>
    [Callable(Topics.Sampling, "How many pieces are tested on average, if rejected lots are sorted piece by piece?", Assumes = Process + " " + Rectified, NotFor = "Destructive tests.")]
    [NoFormula("n plus the probability of refusal times (N - n)")]
    [Example("AverageTotalInspection(10000, 52, 3, 0.03)", "752.962")]
    [CautionWhen("true", Rectified)]
    [Source(Works.SamplingPlans, Standing.FromMemory)]
    public static double AverageTotalInspection(
        [Parameter("N", "", Says.Lot, AtLeast = 1)] double lotSize,
        [Parameter("n", "", Says.PlanSize, AtLeast = 1)] double sampleSize,
        [Parameter("c", "", Says.PlanNumber, AtLeast = 0)] double acceptanceNumber,
        [Parameter("p", "", Says.Defective, AtLeast = 0, AtMost = 1, UsualTo = 0.5)] double fraction)
    {
        int lot = LotOf(lotSize, sampleSize);
        return sampleSize + ((1 - AcceptanceProbability(sampleSize, acceptanceNumber, fraction)) * (lot - sampleSize));
    }

    private static int LotOf(double lotSize, double sampleSize)
    {
        int lot = Values.Whole(lotSize, 1, nameof(lotSize));
        Require.AtMost(sampleSize, lot, "", nameof(sampleSize));
        return lot;
    }

    private static (int N, int C) Plan(double sampleSize, double acceptanceNumber)
    {
        int n = Values.Whole(sampleSize, 1, nameof(sampleSize)), c = Values.Whole(acceptanceNumber, 0, nameof(acceptanceNumber));
        Require.AtMost(c, n, "", nameof(acceptanceNumber));
        return (n, c);
    }

    private static double Portion(double fraction, string parameter) =>
        fraction >= 0 && fraction <= 1 ? fraction : throw new DomainException($"{parameter} must lie between 0 and 1; it is {Values.Text(fraction)}. An AQL of 1.5 % is 0.015.", parameter);

    private static int SmallestRefusing(int c, double p2, double beta)
    {
        int high = c + 1;
        while (Distributions.BinomialAtMost(c, high, p2) > beta)
            high = high < 500_000_000 ? high * 2 : throw new DomainException("Such a plan would need more pieces than can be tested.", "bad");
        int low = Math.Max(c, high / 2);
        while (high - low > 1)
        {
            int middle = low + ((high - low) / 2);
            if (Distributions.BinomialAtMost(c, middle, p2) > beta) low = middle;
            else high = middle;
        }
        return high;
    }
}
