using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Tests.Data;
using ScrewSheet.TestKit;
using static ScrewSheet.TestKit.CheckRow;

namespace ScrewSheet.Statistics.Tests.Checks;

/// <summary>Moments, intervals, quantiles, normality and outliers.</summary>
public static class SampleChecks
{
    private static Series<double> Batch => Of.Numbers(PrintedBatches.Constructed);

    private static Series<double> Eighteen => Of.Numbers(PrintedBatches.Eighteen);

    private static Series<double> Ohms => Of.Numbers(PrintedBatches.Resistivity);

    [CheckTable]
    public static IReadOnlyList<CheckRow> Moments =>
    [
        Arithmetic("Sample", "mean of the constructed batch", 12.9, "", () => SampleStatistics.Mean(Batch), 1e-13),
        Arithmetic("Sample", "s of the constructed batch", 0.6582805886, "", () => SampleStatistics.StandardDeviation(Batch), 1e-9),
        Arithmetic("Sample", "population s of the constructed batch", 0.6244997998, "", () => SampleStatistics.PopulationDeviation(Batch), 1e-9),
        Arithmetic("Sample", "CV of the constructed batch", 0.0510295030, "", () => SampleStatistics.CoefficientOfVariation(Batch), 1e-8),
        Arithmetic("Sample", "CI of the mean, lower", 12.429094, "", () => SampleIntervals.MeanInterval(Batch).Lower, 1e-7),
        Arithmetic("Sample", "CI of the mean, upper", 13.370906, "", () => SampleIntervals.MeanInterval(Batch).Upper, 1e-7),
        Arithmetic("Sample", "CI of sigma, lower", 0.452789, "", () => SampleIntervals.DeviationInterval(Batch).Lower, 2e-6),
        Arithmetic("Sample", "CI of sigma, upper", 1.201764, "", () => SampleIntervals.DeviationInterval(Batch).Upper, 1e-6),
        Arithmetic("Sample", "mean of the batch of 18", 141.91788333333, "", () => SampleStatistics.Mean(Eighteen), 1e-12),
        Arithmetic("Sample", "s of the batch of 18", 6.397878169983, "", () => SampleStatistics.StandardDeviation(Eighteen), 1e-12),
        Arithmetic("Sample", "CV of the batch of 18", 0.0450815501, "", () => SampleStatistics.CoefficientOfVariation(Eighteen), 1e-8),
        Arithmetic("Sample", "smallest of the constructed batch", 11.8, "", () => SampleStatistics.Smallest(Batch), 1e-15),
    ];

    [CheckTable]
    public static IReadOnlyList<CheckRow> Quantiles
    {
        get
        {
            double[] ninety = [95.1959, 95.1959, 95.1959, 95.19546, 95.19683, 95.19807, 95.19568, 95.19724333, 95.19714];
            double[] quarter = [95.1065, 95.113, 95.1065, 95.1065, 95.113, 95.10975, 95.11625, 95.11191667, 95.1121875];
            double[] tenth = [95.0925, 95.0925, 95.061, 95.0673, 95.08305, 95.07045, 95.0939, 95.07885, 95.0799];
            double[] ten = [9, 9.5, 9, 9, 9.5, 9.9, 9.1, 9.63333333, 9.6];
            Series<double> toTen = Series.OfNumbers(Enumerable.Range(1, 10).Select(i => (double)i));
            List<CheckRow> rows =
            [
                Printed("Quantiles", "90th percentile of the resistivities, type 6", "95.1981", "", Works.Nist + "7.2.6.2", Standing.SecondHand, () => SampleQuantiles.Quantile(Ohms, 0.9, QuantileType.PlottingPosition)),
                Misprint("Quantiles", "90th percentile of the resistivities labelled as the handbook's (it is type 7)", "95.19568", "", "a public test suite that names the NIST handbook", Standing.SecondHand, () => SampleQuantiles.Quantile(Ohms, 0.9, QuantileType.PlottingPosition)),
                Arithmetic("Quantiles", "median of the resistivities", 95.1579, "", () => SampleQuantiles.Median(Ohms), 1e-12),
            ];
            foreach (QuantileType type in Enum.GetValues<QuantileType>())
            {
                rows.Add(Arithmetic("Quantiles", $"resistivities, 0.90, type {(int)type}", ninety[(int)type - 1], "", () => SampleQuantiles.Quantile(Ohms, 0.9, type), 1e-10));
                rows.Add(Arithmetic("Quantiles", $"resistivities, 0.25, type {(int)type}", quarter[(int)type - 1], "", () => SampleQuantiles.Quantile(Ohms, 0.25, type), 1e-10));
                rows.Add(Arithmetic("Quantiles", $"resistivities, 0.10, type {(int)type}", tenth[(int)type - 1], "", () => SampleQuantiles.Quantile(Ohms, 0.10, type), 1e-10));
                rows.Add(Arithmetic("Quantiles", $"1 to 10, 0.9, type {(int)type}", ten[(int)type - 1], "", () => SampleQuantiles.Quantile(toTen, 0.9, type), 1e-9));
            }
            return rows;
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> NormalityRows =>
    [
        Printed("Normality", "OSL of the batch of 18", "0.465", "", Works.Cmh17Batch, Standing.SecondHand, () => Normality.AndersonDarlingNormal(Eighteen).SignificanceLevel),
        Arithmetic("Normality", "A2 of the batch of 18", 0.2849725782, "", () => Normality.AndersonDarlingNormal(Eighteen).Statistic, 1e-9),
        Arithmetic("Normality", "A* of the batch of 18", 0.3263111929, "", () => Normality.AndersonDarlingNormal(Eighteen).Adjusted, 1e-9),
        Arithmetic("Normality", "OSL of the batch of 18, more digits", 0.4648131801, "", () => Normality.AndersonDarlingNormal(Eighteen).SignificanceLevel, 1e-9),
    ];

    [CheckTable]
    public static IReadOnlyList<CheckRow> GrubbsTable
    {
        get
        {
            (int N, double One, double Two, string Printed, double Strict)[] table =
            [
                (3, 1.1531, 1.1543, "1.154", 1.1546), (4, 1.4625, 1.4812, "1.481", 1.4925), (5, 1.6714, 1.7150, "1.715", 1.7489), (6, 1.8221, 1.8871, "1.887", 1.9442),
                (7, 1.9381, 2.0200, "2.02", 2.0973), (8, 2.0317, 2.1266, "2.127", 2.2208), (10, 2.1761, 2.2900, "2.29", 2.4097), (15, 2.4090, 2.5483, "2.548", 2.7049),
                (20, 2.5566, 2.7082, "2.708", 2.8838), (30, 2.7451, 2.9085, "2.908", 3.1029),
            ];
            return [.. table.SelectMany(row => new[]
            {
                // The last printed digit of n = 30 is cut rather than rounded.
                Printed("Grubbs", $"critical value, either side, 0.05, n {row.N}", row.Printed, "", Works.Cmh17 + ", table 8.5.7", Standing.SecondHand, () => OutlierTests.GrubbsCritical(row.N), 0.55),
                Arithmetic("Grubbs", $"critical value, either side, 0.05, n {row.N}, four decimals", row.Two, "", () => OutlierTests.GrubbsCritical(row.N), 4e-5),
                Arithmetic("Grubbs", $"critical value, one side, 0.05, n {row.N}", row.One, "", () => OutlierTests.GrubbsCritical(row.N, 0.05, OutlierSide.High), 5e-5),
                Arithmetic("Grubbs", $"critical value, one side, 0.01, n {row.N}", row.Strict, "", () => OutlierTests.GrubbsCritical(row.N, 0.01, OutlierSide.Low), 5e-5),
            })];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> GrubbsBatches
    {
        get
        {
            Series<double> uranium = Of.Numbers(PrintedBatches.Uranium), second = Of.Numbers(PrintedBatches.Wet[7..15]), third = Of.Numbers(PrintedBatches.Wet[15..]);
            return
            [
                Printed("Grubbs", "G of the uranium data", "2.468765", "", Works.Nist + "1.3.5.17", Standing.SecondHand, () => OutlierTests.GrubbsTest(uranium, 0.05, OutlierSide.High).Statistic),
                Printed("Grubbs", "one-sided critical value of the uranium data", "2.032", "", Works.Nist + "1.3.5.17", Standing.SecondHand, () => OutlierTests.GrubbsTest(uranium, 0.05, OutlierSide.High).Critical),
                Arithmetic("Grubbs", "G of the uranium data, more digits", 2.46876461121245, "", () => OutlierTests.GrubbsTest(uranium).Statistic, 1e-12),
                Arithmetic("Grubbs", "one-sided critical, n 8", 2.03165200155, "", () => OutlierTests.GrubbsCritical(8, 0.05, OutlierSide.High), 1e-10),
                Arithmetic("Grubbs", "two-sided critical, n 8", 2.12664508720, "", () => OutlierTests.GrubbsCritical(8), 1e-10),
                Printed("Grubbs", "mean of wet batch 2", "93.662", "", Works.Cmh17, Standing.SecondHand, () => SampleStatistics.Mean(second)),
                Printed("Grubbs", "s of wet batch 2", "24.568", "", Works.Cmh17, Standing.SecondHand, () => SampleStatistics.StandardDeviation(second)),
                Printed("Grubbs", "largest normed residual of wet batch 2", "2.008", "", Works.Cmh17, Standing.SecondHand, () => OutlierTests.GrubbsTest(second).Statistic),
                Printed("Grubbs", "largest normed residual of wet batch 3", "2.119", "", Works.Cmh17, Standing.SecondHand, () => OutlierTests.GrubbsTest(third).Statistic),
                Printed("Grubbs", "value flagged in wet batch 3", "80.2334815", "", Works.Cmh17, Standing.SecondHand, () => OutlierTests.GrubbsTest(third).Suspect),
                Printed("Grubbs", "repeated test of 673 621 690 689 689 flags", "3", "", "public issue of a materials-statistics package: repeated values broke the multi-pass test", Standing.SecondHand,
                    () => OutlierTests.GrubbsFlagged(Of.Numbers(673, 621, 690, 689, 689))),
            ];
        }
    }
}
