using System.Globalization;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>What a batch says about a strength that somebody claims.</summary>
/// <param name="Count">How many specimens were tested.</param>
/// <param name="Below">How many of them broke below the claim.</param>
/// <param name="ReliabilityBound">The share of the population shown to reach the claim at the confidence, by counting alone, 0 to 1.</param>
/// <param name="Confidence">The confidence, 0 to 1.</param>
/// <param name="Cautions">What the numbers do not mean.</param>
[SheetRecord("What a batch shows, by counting alone, about a claimed strength")]
public sealed record ClaimCheck(
    [property: Member("n", "", "specimens tested")] double Count,
    [property: Member("f", "", "specimens that broke below the claim")] double Below,
    [property: Member("R", "", "share of the population shown to reach the claim, 0 to 1")] double ReliabilityBound,
    [property: Member("C", "", "confidence, 0 to 1")] double Confidence,
    IReadOnlyList<string> Cautions) : ICautioned;

/// <summary>Sets a claimed strength against a batch without assuming a distribution.</summary>
public static class ClaimChecks
{
    /// <summary>Counts the specimens below a claim and says what share of the population is shown to reach it; at least one value.</summary>
    [Callable(Topics.Ratings, "All specimens held more than the claim: what does that prove?", Assumes = "Independent specimens, made and tested like what is sold. No distribution is assumed.",
        NotFor = "Turning a handful of passes into a rating.")]
    [NoFormula("counts the specimens below the claim, then the exact binomial (Clopper-Pearson) bound", Steps = 10_000)]
    [Source(Works.ClopperPearson, Standing.SecondHand)]
    [Example("CheckClaim(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 9 kN).ReliabilityBound", "0.5492803")]
    public static ClaimCheck CheckClaim<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("R", "", "the strength that is claimed")] T claim,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        var values = Sample.Of(sample, 1);
        double limit = Values.SiLike(sample, claim, nameof(claim));
        Values.Share(confidence, nameof(confidence));
        int n = values.Length, below = values.Count(value => !(value >= limit));
        double bound = below == n ? 0 : SuccessRuns.SuccessRunWithFailures(n, below, confidence);
        string sure = Values.Text(confidence * 100) + " %";
        return new ClaimCheck(n, below, bound, confidence, CautionList.Of(
            (below == 0 && n < 299, $"{Specimens(n)} above the claim {(n == 1 ? "is" : "are")} no rating of that strength: at {sure} confidence they show only that {Values.Percent(bound)} of all pieces reach it."),
            (below > 0, $"{Specimens(below)} of {n.ToString(CultureInfo.InvariantCulture)} broke below the claim.")));
    }

    private static string Specimens(int n) => n == 1 ? "One specimen" : $"{n.ToString(CultureInfo.InvariantCulture)} specimens";
}
