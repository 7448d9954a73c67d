using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Which end of the sample is searched for an outlier.</summary>
[SheetOption("which end of a sample is searched for an outlier")]
public enum OutlierSide
{
    /// <summary>Both ends (maximum normed residual).</summary>
    Either,

    /// <summary>Only the smallest value.</summary>
    Low,

    /// <summary>Only the largest value.</summary>
    High,
}

/// <summary>What Grubbs' test says about the most extreme value of a sample.</summary>
/// <typeparam name="T">The kind of the sample.</typeparam>
/// <param name="Statistic">G, the distance from the mean in standard deviations.</param>
/// <param name="Critical">What G must exceed.</param>
/// <param name="Suspect">The most extreme value.</param>
/// <param name="SuspectNumber">Its place in the sample, counted from 1.</param>
/// <param name="IsOutlier">True where G exceeds the critical value.</param>
/// <param name="Cautions">What the test does not allow.</param>
[SheetRecord("Grubbs' test of the most extreme value")]
public sealed record GrubbsResult<T>(
    [property: Member("G", "", "distance of the suspect from the mean, in standard deviations")] double Statistic,
    [property: Member("", "", "the value G must exceed to call it an outlier")] double Critical,
    [property: Member("", "", "the most extreme value")] T Suspect,
    [property: Member("", "", "its place in the sample, counted from 1")] double SuspectNumber,
    [property: Member("", "", "true where it lies too far out to be chance at this level")] bool IsOutlier,
    IReadOnlyList<string> Cautions) : ICautioned where T : struct;

/// <summary>Grubbs' outlier test (the maximum normed residual).</summary>
public static class OutlierTests
{
    /// <summary>Each pass goes over all values: beyond this the repeated test takes too long for a cell.</summary>
    private const int MostRepeated = 5000;

    /// <summary>Tests the most extreme value of a sample of at least three. All values equal: no outlier.</summary>
    [Callable(Topics.Outliers, "Does one specimen lie too far out to be chance?", Assumes = "All specimens but one come from one normal distribution; one outlier in a pass.",
        NotFor = "Leaving out a weak specimen without a cause found on the piece or the rig.")]
    [NoFormula("largest distance from the mean over s, against a critical value from Student's t at n - 2 degrees of freedom")]
    [Source(Works.Grubbs, Standing.SecondHand)]
    [Example("GrubbsTest(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN, 4.2 kN)).Statistic", "2.001968")]
    public static GrubbsResult<T> GrubbsTest<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("α", "", "the chance of calling an innocent value an outlier, 0 to 1", Above = 0, Below = 1, UsualTo = 0.1)] double significance = 0.05,
        [Parameter("side", "", "which end is searched")] OutlierSide side = OutlierSide.Either) where T : struct
    {
        var values = Sample.Spread(sample, 3);
        Values.Share(significance, nameof(significance));
        (double g, int index) = Extreme([.. values], side);
        double critical = GrubbsCritical(values.Length, significance, side);
        bool outlier = g > critical;
        return new GrubbsResult<T>(g, critical, sample.Make(values[index]), index + 1, outlier, CautionList.Of(
            (values.Length < 7, $"With {values.Length} specimens Grubbs' test finds only gross outliers; seven or more are advised."),
            (outlier, "A specimen is left out only where a cause is found on it or on the rig; a weak piece that was made and tested like the others is a result.")));
    }

    /// <summary>What G must exceed at this level, a pure number; n at least 3.</summary>
    [Callable(Topics.Outliers, "How many standard deviations out is too far for chance?", Assumes = "Normal sample.")]
    [NoFormula("from Student's t at n - 2 degrees of freedom and the level shared over the values")]
    [Example("GrubbsCritical(8, 0.05)", "2.12664508720")]
    [Source(Works.Grubbs, Standing.SecondHand)]
    public static double GrubbsCritical(
        [Parameter("n", "", Says.Count, AtLeast = 3)] double count,
        [Parameter("α", "", "the chance of calling an innocent value an outlier, 0 to 1", Above = 0, Below = 1, UsualTo = 0.1)] double significance = 0.05,
        [Parameter("side", "", "which end is searched")] OutlierSide side = OutlierSide.Either)
    {
        int n = Values.Whole(count, 3, nameof(count));
        double tail = Values.Share(significance, nameof(significance)) / (side == OutlierSide.Either ? 2.0 * n : n);
        if (tail >= 0.5) throw new DomainException("significance is too large for so few values.", nameof(significance));
        double t = -Distributions.StudentQuantile(tail, n - 2);
        // Written without t² alone, which overflows for three values and a tiny level.
        return (n - 1) / Math.Sqrt(n) / Math.Sqrt(1 + ((n - 2) / t / t));
    }

    /// <summary>How many values Grubbs' test flags when it is repeated without each one found; at least three values.</summary>
    [Callable(Topics.Outliers, "How many specimens does Grubbs' test flag when it is repeated?", Assumes = "Normal sample apart from the outliers.",
        NotFor = "Cleaning a sample until it looks good: each pass raises the chance of a false call.")]
    [NoFormula("Grubbs' test over and over, the most extreme value left out each time, until none is flagged")]
    [Source(Works.Grubbs, Standing.SecondHand)]
    [Example("GrubbsFlagged(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN, 4.2 kN))", "1")]
    public static double GrubbsFlagged<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("α", "", "the chance of calling an innocent value an outlier in one pass, 0 to 1", Above = 0, Below = 1, UsualTo = 0.1)] double significance = 0.05) where T : struct
    {
        List<double> left = [.. Sample.Spread(sample, 3)];
        if (left.Count > MostRepeated) throw new DomainException($"The repeated test takes at most {MostRepeated} values: among more, some always lie far out.", nameof(sample));
        Values.Share(significance, nameof(significance));
        int flagged = 0;
        while (left.Count >= 3)
        {
            (double g, int index) = Extreme(left, OutlierSide.Either);
            if (!(g > GrubbsCritical(left.Count, significance))) break;
            left.RemoveAt(index);
            flagged++;
        }
        return flagged;
    }

    private static (double G, int Index) Extreme(List<double> values, OutlierSide side)
    {
        Moments moments = Moments.Of(values.ToArray());
        int index = 0;
        double furthest = double.NegativeInfinity;
        for (int i = 0; i < values.Count; i++)
        {
            double off = values[i] - moments.Mean;
            double distance = side switch { OutlierSide.Low => -off, OutlierSide.High => off, _ => Math.Abs(off) };
            if (distance > furthest) (furthest, index) = (distance, i);
        }
        return (moments.SumOfSquares > 0 ? furthest / moments.Deviation : 0, index);
    }
}
