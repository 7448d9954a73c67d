using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Which side of a specification limit is good.</summary>
[SheetOption("which side of a limit is good")]
public enum LimitSide
{
    /// <summary>A lower limit: values above it are good (a strength).</summary>
    Lower,

    /// <summary>An upper limit: values below it are good.</summary>
    Upper,
}

/// <summary>The decision of a plan by variables.</summary>
/// <param name="QualityIndex">Q, how many deviations the mean lies on the good side of the limit.</param>
/// <param name="AcceptanceConstant">k, what Q must reach.</param>
/// <param name="Accepted">True where Q reaches k.</param>
/// <param name="EstimatedFailing">The estimated share of failing pieces (M-method), 0 to 1.</param>
/// <param name="Cautions">What the decision does not show.</param>
[SheetRecord("The decision of a sampling plan by variables")]
public sealed record VariablesDecision(
    [property: Member("Q", "", "deviations between mean and limit")] double QualityIndex,
    [property: Member("k", "", "what Q must reach")] double AcceptanceConstant,
    [property: Member("", "", "true where the lot is accepted")] bool Accepted,
    [property: Member("p̂", "", "estimated share of failing pieces, 0 to 1")] double EstimatedFailing,
    IReadOnlyList<string> Cautions) : ICautioned;

/// <summary>Sampling by variables: the k-method, the M-method and their operating characteristics.</summary>
public static class VariablesPlans
{
    private const string Assumed = "Normally distributed values; independent pieces drawn at random.";

    /// <summary>Decides on a lot by the k-method, deviation estimated; at least three values, not all equal.</summary>
    [Callable(Topics.Sampling, "Is the lot accepted by measured strengths (k-method)?", Assumes = Assumed, NotFor = "Strengths that are not normal: the method looks at mean and scatter only.")]
    [NoFormula("distance of the mean from the limit in standard deviations against k; share failing by the incomplete beta function")]
    [Source(Works.Variables, Standing.SecondHand)]
    [Example("VariablesDecide(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 8 kN, 1.5).QualityIndex", "3.511183")]
    public static VariablesDecision VariablesDecide<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("L", "", "the specification limit")] T limit,
        [Parameter("k", "", "the acceptance constant of the plan")] double constant,
        [Parameter("side", "", "which side of the limit is good")] LimitSide side = LimitSide.Lower) where T : struct
    {
        var values = Sample.Spread(sample, 3);
        Require.Finite(constant, nameof(constant));
        Moments moments = Moments.Of(values.AsSpan());
        double edge = Values.SiLike(sample, limit, nameof(limit)), off = moments.Mean - edge;
        double q = (side == LimitSide.Lower ? off : -off) / moments.Scattering("sample");
        int failing = values.Count(value => side == LimitSide.Lower ? !(value >= edge) : !(value <= edge));
        bool accepted = q >= constant;
        return new VariablesDecision(q, constant, accepted, EstimatedFailing(values.Length, q), CautionList.Of(
            (accepted && failing > 0, $"{failing} tested piece{(failing == 1 ? "" : "s")} lay beyond the limit although mean and scatter pass: look at {(failing == 1 ? "it" : "them")} before accepting."),
            (values.Length < 10, $"With {values.Length} pieces the decision leans on the assumed normal distribution.")));
    }

    /// <summary>The M-method's estimate of the share failing, from n and the quality index Q; n at least 3; 0 to 1.</summary>
    [Callable(Topics.Sampling, "Which share of pieces fails, judged from the quality index?", Assumes = Assumed)]
    [NoFormula("the regularised incomplete beta function of (1 - Q sqrt(n)/(n - 1))/2 with both parameters n/2 - 1")]
    [Example("EstimatedFailing(75, 1.84097)", "0.0317000")]
    [Source(Works.Variables, Standing.SecondHand)]
    public static double EstimatedFailing(
        [Parameter("n", "", Says.PlanSize, AtLeast = 3)] double sampleSize,
        [Parameter("Q", "", "how many deviations the mean lies on the good side of the limit")] double index)
    {
        int n = Values.Whole(sampleSize, 3, nameof(sampleSize));
        double b = Math.Max(0, (1 - (Require.Finite(index, nameof(index)) * Math.Sqrt(n) / (n - 1))) / 2), half = (n / 2.0) - 1;
        return Distributions.BetaLower(b, half, half);
    }

    /// <summary>The acceptance constant k that belongs to a largest estimated share M; n at least 3.</summary>
    [Callable(Topics.Sampling, "Which acceptance constant belongs to a largest estimated share M?", Assumes = Assumed)]
    [NoFormula("the inverse of EstimatedFailing")]
    [Example("ConstantFromShare(75, 0.0317)", "1.84097")]
    [Source(Works.Variables, Standing.SecondHand)]
    public static double ConstantFromShare(
        [Parameter("n", "", Says.PlanSize, AtLeast = 3)] double sampleSize,
        [Parameter("M", "", "the largest estimated share of failing pieces, 0 to 1", Above = 0, Below = 1)] double share)
    {
        int n = Values.Whole(sampleSize, 3, nameof(sampleSize));
        double half = (n / 2.0) - 1;
        return (1 - (2 * Distributions.BetaQuantile(Values.Share(share, nameof(share)), half, half))) * (n - 1) / Math.Sqrt(n);
    }

    /// <summary>The probability of acceptance by the k-method, deviation estimated, 0 to 1; n at least 2.</summary>
    [Callable(Topics.Sampling, "How likely is a lot of this quality to pass a plan by variables?", Assumes = Assumed)]
    [NoFormula("the noncentral t distribution, by integrating over the distribution of s", Steps = 10_000)]
    [Example("VariablesAcceptanceProbability(75, 1.84097, 0.015)", "0.9599")]
    [Source(Works.Variables, Standing.SecondHand)]
    public static double VariablesAcceptanceProbability(
        [Parameter("n", "", Says.PlanSize, AtLeast = 2)] double sampleSize,
        [Parameter("k", "", "the acceptance constant of the plan", AtLeast = -50, AtMost = 50)] double constant,
        [Parameter("p", "", Says.Defective, Above = 0, Below = 1, UsualTo = 0.5)] double fraction)
    {
        Require.AtMost(Require.AtLeast(constant, -50, "", nameof(constant)), 50, "", nameof(constant));
        double z = -Distributions.Z(Values.Share(fraction, nameof(fraction)));
        return Math.Clamp(1 - NoncentralFactors.Confidence(Values.Whole(sampleSize, 2, nameof(sampleSize)), constant, z), 0, 1);
    }

    /// <summary>The probability of acceptance by the k-method when the deviation is known, 0 to 1; n at least 1.</summary>
    [Callable(Topics.Sampling, "How likely is a lot to pass a plan by variables, when the scatter is known?", Assumes = Assumed + " The standard deviation is known.")]
    [NoFormula("the normal distribution of sqrt(n) (z - k)")]
    [Example("VariablesAcceptanceProbabilityKnownDeviation(14, 1.205, 0.05)", "0.950096")]
    [Source(Works.Variables, Standing.SecondHand)]
    public static double VariablesAcceptanceProbabilityKnownDeviation(
        [Parameter("n", "", Says.PlanSize, AtLeast = 1)] double sampleSize,
        [Parameter("k", "", "the acceptance constant of the plan")] double constant,
        [Parameter("p", "", Says.Defective, Above = 0, Below = 1, UsualTo = 0.5)] double fraction) =>
        Distributions.Phi(Math.Sqrt(Values.Whole(sampleSize, 1, nameof(sampleSize))) * (-Distributions.Z(Values.Share(fraction, nameof(fraction))) - Require.Finite(constant, nameof(constant))));
}
