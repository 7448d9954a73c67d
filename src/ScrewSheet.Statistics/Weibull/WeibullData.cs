using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Strengths and which of them are censored, checked; what both ways of fitting begin with.</summary>
internal sealed class WeibullData
{
    private WeibullData(double[] values, bool[] broke) => (Values, Broke) = (values, broke);

    /// <summary>In coherent SI, as given.</summary>
    public double[] Values { get; }

    /// <summary>True where the specimen broke at its value.</summary>
    public bool[] Broke { get; }

    public int Count => Values.Length;

    public int Failures => Broke.Count(broke => broke);

    public static WeibullData Of<T>(Series<T> sample, Series<double>? censored) where T : struct
    {
        double[] values = [.. Sample.Positive(sample, 2)];
        bool[] broke = new bool[values.Length];
        Array.Fill(broke, true);
        if (censored is not null) Mark(censored, sample, broke);
        WeibullData data = new(values, broke);
        if (data.Failures < 2) throw new DomainException("At least two specimens must have broken for a Weibull fit.", nameof(sample));
        if (values.Distinct().Count() < 2) throw new DomainException("All values of the sample are equal: there is no scatter to work with.", nameof(sample));
        return data;
    }

    private static void Mark(Series<double> censored, Series sample, bool[] broke)
    {
        Sample.SameLength(sample, censored, "sample", "censored marks");
        for (int i = 0; i < broke.Length; i++)
            broke[i] = censored.Si[i] switch
            {
                0 => true,
                1 => false,
                _ => throw new DomainException("A censored mark is 1 where the specimen was taken off unbroken and 0 where it broke.", nameof(censored)),
            };
    }

    /// <summary>Sentences on number of failures, censoring and outliers of the logarithms.</summary>
    public IReadOnlyList<string> Cautions(bool ranks)
    {
        bool outlier = Count == Failures && Count >= 7 && OutlierTests.GrubbsTest(Series.OfNumbers(Values.Select(value => Math.Log(value))), 0.01).IsOutlier;
        return CautionList.Of(
            (Failures < 10, $"Only {Failures} broken specimens stand behind this fit: {(ranks ? "shape and scale are" : "the shape is too high on average and")} uncertain."),
            (Failures < Count / 2.0, $"More than half of the specimens ({Count - Failures} of {Count}) were taken off unbroken: the fit says little about what lies above the highest break."),
            (outlier, "One specimen lies further out than chance explains on the logarithmic scale (Grubbs' test at 1 %): a second failure mode may be mixed in."));
    }
}
