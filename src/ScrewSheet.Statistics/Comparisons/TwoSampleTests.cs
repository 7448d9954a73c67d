using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>What a comparison of two means says.</summary>
/// <typeparam name="T">The kind of the samples.</typeparam>
/// <param name="Difference">First mean less second mean.</param>
/// <param name="Lower">Lower end of its confidence interval.</param>
/// <param name="Upper">Upper end of its confidence interval.</param>
/// <param name="Statistic">t.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom, not rounded.</param>
/// <param name="PValue">The chance of a difference at least as large in either direction if there were none, 0 to 1.</param>
/// <param name="Confidence">Confidence of the interval, 0 to 1.</param>
/// <param name="Cautions">What the comparison does not show.</param>
[SheetRecord("Comparison of two means by Student's t")]
public sealed record MeanComparison<T>(
    [property: Member("", "", "first mean less second mean")] T Difference,
    [property: Member("", "", "lower end of its confidence interval")] T Lower,
    [property: Member("", "", "upper end of its confidence interval")] T Upper,
    [property: Member("t", "", "the statistic")] double Statistic,
    [property: Member("ν", "", "degrees of freedom")] double DegreesOfFreedom,
    [property: Member("p", "", "chance of such a difference, either way, if there were none")] double PValue,
    [property: Member("C", "", "confidence of the interval, 0 to 1")] double Confidence,
    IReadOnlyList<string> Cautions) : ICautioned where T : struct;

/// <summary>Compares the means of two samples.</summary>
public static class TwoSampleTests
{
    private const string NotFor = "Showing that two designs are equal: a difference that was not found may still be there.";

    /// <summary>Welch's test: unequal spread allowed; at least two values in each sample, one of them scattered.</summary>
    [Callable(Topics.Comparisons, "Do two designs differ in mean strength?", Assumes = "Independent specimens; strength near normal; the spreads may differ.", NotFor = NotFor)]
    [NoFormula("difference over the root of s1²/n1 + s2²/n2, Student's t at the degrees of freedom of Welch and Satterthwaite")]
    [Source(Works.TwoSamples, Standing.FromMemory)]
    [Example("WelchTest(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), Values(8.7 kN, 9.2 kN, 9.9 kN, 9 kN, 9.4 kN)).Statistic", "1.780327")]
    public static MeanComparison<T> WelchTest<T>(
        [Parameter("x1", "", "the test results of the first design")] Series<T> first,
        [Parameter("x2", "", "the test results of the second design")] Series<T> second,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct =>
        Compare(first, second, confidence, pooled: false);

    /// <summary>Student's test with a common spread; at least two values in each sample.</summary>
    [Callable(Topics.Comparisons, "Do two designs differ in mean strength, if their spread is the same?", Assumes = "Independent specimens; strength near normal; equal spread.", NotFor = NotFor)]
    [NoFormula("difference over the pooled standard deviation times the root of 1/n1 + 1/n2, Student's t at n1 + n2 - 2 degrees of freedom")]
    [Source(Works.TwoSamples, Standing.FromMemory)]
    [Example("PooledTest(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), Values(8.7 kN, 9.2 kN, 9.9 kN, 9 kN, 9.4 kN)).Statistic", "1.780327")]
    public static MeanComparison<T> PooledTest<T>(
        [Parameter("x1", "", "the test results of the first design")] Series<T> first,
        [Parameter("x2", "", "the test results of the second design")] Series<T> second,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct =>
        Compare(first, second, confidence, pooled: true);

    /// <summary>Student's test of the differences of pairs; both series of the same length, at least two pairs.</summary>
    [Callable(Topics.Comparisons, "Do two treatments differ when each pair was tested together?", Assumes = "Each value of the first series belongs to the same piece, place or day as the value beside it; differences near normal.", NotFor = NotFor)]
    [NoFormula("mean of the differences over their standard error, Student's t at n - 1 degrees of freedom")]
    [Source(Works.TwoSamples, Standing.FromMemory)]
    [Example("PairedTest(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), Values(8.7 kN, 9.2 kN, 9.9 kN, 9 kN, 9.4 kN)).Statistic", "10.59027")]
    public static MeanComparison<T> PairedTest<T>(
        [Parameter("x1", "", "the results of the first treatment, one a pair")] Series<T> first,
        [Parameter("x2", "", "the results of the second treatment, one a pair")] Series<T> second,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        var a = Sample.Spread(first, 2, "first series");
        var b = Sample.Spread(second, 2, "second series");
        Alike(first, second);
        Sample.SameLength(first, second, "first series", "second series");
        Moments differences = Moments.Of(a.Zip(b, (x, y) => x - y).ToArray());
        double error = differences.Scattering("differences") / Math.Sqrt(differences.Count);
        return Result(first.Make, differences.Mean, error, differences.Count - 1, confidence, differences.Count);
    }

    /// <summary>Welch's test from number, mean and standard deviation of each sample.</summary>
    [Callable(Topics.Comparisons, "Do two designs differ, when only number, mean and scatter are known?", Assumes = "Independent specimens; strength near normal; deviations with divisor n - 1.", NotFor = NotFor)]
    [NoFormula("Welch's test from the summaries of both samples")]
    [Example("WelchTestFromSummary(249, 20.14458, 6.41470, 79, 30.48101, 6.10771).Statistic", "-12.94627")]
    [Source(Works.TwoSamples, Standing.SecondHand)]
    public static MeanComparison<T> WelchTestFromSummary<T>(
        [Parameter("n1", "", "how many specimens of the first design", AtLeast = 2)] double firstCount,
        [Parameter("m1", "", "their mean")] T firstMean,
        [Parameter("s1", "", "their standard deviation")] T firstDeviation,
        [Parameter("n2", "", "how many specimens of the second design", AtLeast = 2)] double secondCount,
        [Parameter("m2", "", "their mean")] T secondMean,
        [Parameter("s2", "", "their standard deviation")] T secondDeviation,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        Moments a = Summary(firstCount, firstMean, firstDeviation, nameof(firstCount), nameof(firstDeviation));
        Moments b = Summary(secondCount, secondMean, secondDeviation, nameof(secondCount), nameof(secondDeviation));
        return Compare(Values.Maker(firstMean), a, b, confidence, pooled: false);
    }

    private static Moments Summary<T>(double count, T mean, T deviation, string countName, string deviationName) where T : struct
    {
        int n = Values.Whole(count, 2, countName);
        double s = Require.AtLeast(Values.Si(deviation, deviationName), 0, "", deviationName);
        return new Moments(n, Values.Si(mean, "mean"), s * s * (n - 1));
    }

    private static MeanComparison<T> Compare<T>(Series<T> first, Series<T> second, double confidence, bool pooled) where T : struct
    {
        Moments a = Moments.Of(Sample.Spread(first, 2, "first sample").AsSpan()), b = Moments.Of(Sample.Spread(second, 2, "second sample").AsSpan());
        Alike(first, second);
        return Compare(first.Make, a, b, confidence, pooled);
    }

    private static MeanComparison<T> Compare<T>(Func<double, T> make, Moments a, Moments b, double confidence, bool pooled) where T : struct
    {
        double va = a.SumOfSquares / (a.Count - 1) / a.Count, vb = b.SumOfSquares / (b.Count - 1) / b.Count;
        if (!(va + vb > 0)) throw new DomainException("Neither sample scatters: there is nothing to compare the difference with.");
        double dof, error;
        if (pooled)
        {
            dof = a.Count + b.Count - 2.0;
            error = Math.Sqrt((a.SumOfSquares + b.SumOfSquares) / dof * ((1.0 / a.Count) + (1.0 / b.Count)));
        }
        else
        {
            double shareA = va / (va + vb), shareB = vb / (va + vb);
            dof = 1 / ((shareA * shareA / (a.Count - 1)) + (shareB * shareB / (b.Count - 1)));
            error = Math.Sqrt(va + vb);
        }
        return Result(make, a.Mean - b.Mean, error, dof, confidence, Math.Min(a.Count, b.Count));
    }

    private static MeanComparison<T> Result<T>(Func<double, T> make, double difference, double error, double dof, double confidence, int smaller) where T : struct
    {
        double t = difference / error, p = 2 * Distributions.StudentUpper(Math.Abs(t), dof);
        double half = Distributions.StudentQuantile((1 + Values.Share(confidence, nameof(confidence))) / 2, dof) * error;
        return new MeanComparison<T>(make(difference), make(difference - half), make(difference + half), Values.Answer(t), dof, Math.Min(1, p), confidence, CautionList.Of(
            (smaller < 5, $"The smaller sample has {smaller} specimens: only a large difference could be found."),
            (p > 1 - confidence, "No difference was shown. That is not a proof of equality: the interval says how large one may still be."),
            (p <= 1 - confidence, "The means differ; whether one design is safer depends on its low fractile, not on its mean.")));
    }

    private static void Alike(Series first, Series second)
    {
        if (first.Dimension != second.Dimension) throw new DomainException("The two series must hold the same kind of quantity.", nameof(second));
    }
}
