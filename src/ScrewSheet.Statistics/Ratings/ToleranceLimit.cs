using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>A limit worked out from a batch, with what it promises.</summary>
/// <typeparam name="T">The kind of the sample.</typeparam>
/// <param name="Limit">The limit.</param>
/// <param name="Factor">How many standard deviations it lies from the mean (of the logarithms for a lognormal limit).</param>
/// <param name="Count">How many specimens stand behind it.</param>
/// <param name="Content">The share of the population it leaves on its good side, 0 to 1.</param>
/// <param name="Confidence">How sure that is, 0 to 1.</param>
/// <param name="Cautions">What the number does not mean.</param>
[SheetRecord("A limit from a batch of tests: its value, and the share of the population it promises at a confidence")]
public sealed record ToleranceLimit<T>(
    [property: Member("", "", "the limit")] T Limit,
    [property: Member("k", "", "standard deviations between mean and limit")] double Factor,
    [property: Member("n", "", "specimens behind it")] double Count,
    [property: Member("p", "", "share of the population on its good side, 0 to 1")] double Content,
    [property: Member("C", "", "confidence, 0 to 1")] double Confidence,
    IReadOnlyList<string> Cautions) : ICautioned where T : struct;

/// <summary>Limits to both sides of a batch.</summary>
/// <typeparam name="T">The kind of the sample.</typeparam>
/// <param name="Lower">The lower limit.</param>
/// <param name="Upper">The upper limit.</param>
/// <param name="Factor">How many standard deviations they lie from the mean.</param>
/// <param name="Content">The share of the population between them, 0 to 1.</param>
/// <param name="Confidence">How sure that is, 0 to 1.</param>
/// <param name="Cautions">What the numbers do not mean.</param>
[SheetRecord("Limits to both sides of a batch that hold a share of the population at a confidence")]
public sealed record ToleranceInterval<T>(
    [property: Member("", "", "lower limit")] T Lower,
    [property: Member("", "", "upper limit")] T Upper,
    [property: Member("k", "", "standard deviations between mean and limits")] double Factor,
    [property: Member("p", "", "share of the population between them, 0 to 1")] double Content,
    [property: Member("C", "", "confidence, 0 to 1")] double Confidence,
    IReadOnlyList<string> Cautions) : ICautioned where T : struct;

/// <summary>What every limit from a batch must say about the batch.</summary>
internal static class BatchCautions
{
    /// <summary>Sentences on size, outliers, normality and the sign of the limit.</summary>
    /// <param name="sample">The batch, on the scale the limit was worked out on.</param>
    /// <param name="limit">The limit in SI, on the scale of strength.</param>
    /// <param name="further">Sentences of the caller's own.</param>
    public static IReadOnlyList<string> Of(Series<double> sample, double limit, params (bool Applies, string Sentence)[] further)
    {
        int n = sample.Count;
        bool outlier = n >= 3 && OutlierTests.GrubbsTest(sample).IsOutlier;
        bool odd = n >= 8 && Moments.Of(sample.Si.AsSpan()).SumOfSquares > 0 && !Normality.AndersonDarlingNormal(sample).LooksNormal;
        return CautionList.Of([
            .. further,
            (n < 10, $"Only {n} specimens stand behind this limit: a further batch may give a very different one."),
            (outlier, "One specimen lies further out than chance explains (Grubbs' test at 5 %): find its cause before using this limit."),
            (odd, "The batch does not look normal (Anderson-Darling at 5 %): a limit that assumes a normal distribution may be too high."),
            (limit <= 0, "The limit is not above zero: these tests support no strength at all."),
        ]);
    }
}
