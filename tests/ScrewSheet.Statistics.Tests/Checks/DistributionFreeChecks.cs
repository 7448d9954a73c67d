using System.Globalization;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Tests.Data;
using ScrewSheet.TestKit;
using static ScrewSheet.TestKit.CheckRow;

namespace ScrewSheet.Statistics.Tests.Checks;

/// <summary>Limits by counting, success runs and small batches without a normal distribution.</summary>
public static class DistributionFreeChecks
{
    private const string Group = "Distribution-free";

    [CheckTable]
    public static IReadOnlyList<CheckRow> Sizes
    {
        get
        {
            (double P, double C, int N, double Achieved)[] table =
            [
                (0.90, 0.90, 22, 0.901522910), (0.90, 0.95, 29, 0.952898713), (0.95, 0.90, 45, 0.900559743), (0.95, 0.95, 59, 0.951505475),
                (0.99, 0.90, 230, 0.900895184), (0.99, 0.95, 299, 0.950463743), (0.99, 0.99, 459, 0.990079026),
            ];
            return
            [
                .. table.SelectMany(row => new[]
                {
                    Arithmetic(Group, Text($"specimens for the weakest, p {row.P}, C {row.C}"), row.N, "", () => SuccessRuns.SuccessRunSampleSize(row.P, row.C), 1e-12),
                    Arithmetic(Group, Text($"confidence reached, p {row.P}, n {row.N}"), row.Achieved, "", () => DistributionFreeLimits.DistributionFreeConfidence(row.N, row.P), 1e-9),
                }),
                Printed(Group, "specimens for B-basis by the weakest", "29", "", Works.Cmh17, Standing.SecondHand, () => DistributionFreeLimits.DistributionFreeSampleSize(0.90, 0.95)),
                Printed(Group, "specimens for A-basis by the weakest", "299", "", Works.Cmh17, Standing.SecondHand, () => DistributionFreeLimits.DistributionFreeSampleSize(0.99, 0.95)),
                Printed(Group, "specimens for 0.95 at 0.95 by the weakest", "59", "", "NBS Handbook 91, quoted in a public manual", Standing.SecondHand, () => DistributionFreeLimits.DistributionFreeSampleSize(0.95, 0.95)),
            ];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> Ranks
    {
        get
        {
            (int N, int Rank)[] b = [(29, 1), (46, 2), (61, 3), (76, 4), (89, 5), (103, 6), (116, 7), (129, 8), (142, 9), (154, 10), (275, 20), (660, 54)];
            (int N, int Rank)[] a = [(299, 1), (473, 2), (628, 3), (773, 4), (913, 5), (1049, 6), (1568, 10)];
            return
            [
                .. b.Select(row => Printed(Group, $"rank of B-basis, n {row.N}", Text($"{row.Rank}"), "", Works.Cmh17 + ", table 8.5.12", Standing.SecondHand, () => DistributionFreeLimits.DistributionFreeRank(row.N, 0.90, 0.95), 0.1)),
                .. a.Select(row => Printed(Group, $"rank of A-basis, n {row.N}", Text($"{row.Rank}"), "", Works.Cmh17 + ", table 8.5.13", Standing.SecondHand, () => DistributionFreeLimits.DistributionFreeRank(row.N, 0.99, 0.95), 0.1)),
                .. b.Where(row => row.Rank is <= 6 or 10).Select(row => Arithmetic(Group, $"smallest n for rank {row.Rank} of B-basis", row.N, "", () => DistributionFreeLimits.DistributionFreeSampleSize(0.90, 0.95, row.Rank), 1e-12)),
                .. a.Where(row => row.Rank <= 4).Select(row => Arithmetic(Group, $"smallest n for rank {row.Rank} of A-basis", row.N, "", () => DistributionFreeLimits.DistributionFreeSampleSize(0.99, 0.95, row.Rank), 1e-12)),
            ];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> Runs
    {
        get
        {
            (int N, double R)[] content = [(3, 0.36840), (5, 0.54928), (6, 0.60696), (10, 0.74113), (20, 0.86089), (30, 0.90497)];
            return
            [
                .. content.Select(row => Arithmetic(Group, $"content of the weakest at 0.95, n {row.N}", row.R, "", () => DistributionFreeLimits.DistributionFreeContent(row.N, 0.95), 2e-5)),
                Arithmetic(Group, "59 tests, no failure", 0.950492, "", () => SuccessRuns.SuccessRunWithFailures(59, 0, 0.95), 1e-6),
                Arithmetic(Group, "93 tests, one failure", 0.950006, "", () => SuccessRuns.SuccessRunWithFailures(93, 1, 0.95), 1e-6),
                Arithmetic(Group, "59 tests, one failure", 0.922102, "", () => SuccessRuns.SuccessRunWithFailures(59, 1, 0.95), 1e-6),
            ];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> SmallBatches
    {
        get
        {
            (int N, int Rank, string K)[] table =
            [
                (2, 2, "35.177"), (3, 3, "7.859"), (4, 4, "4.505"), (5, 4, "4.101"), (6, 5, "3.064"), (8, 6, "2.382"), (10, 6, "2.137"), (12, 7, "1.814"),
                (15, 8, "1.540"), (18, 9, "1.354"), (20, 10, "1.253"), (22, 10, "1.184"), (25, 11, "1.087"), (28, 12, "1.010"),
            ];
            const string source = "M. G. Vangel, 1994; CMH-17-1G, table 8.5.14";
            return
            [
                .. table.SelectMany(row => new[]
                {
                    Printed("Hanson-Koopmans", $"rank, n {row.N}", Text($"{row.Rank}"), "", source, Standing.SecondHand, () => HansonKoopmans.HansonKoopmansRank(row.N), 0.1),
                    Printed("Hanson-Koopmans", $"factor, n {row.N}", row.K, "", source, Standing.SecondHand, () => HansonKoopmans.HansonKoopmansFactor(row.N), 0.51),
                }),
                Printed("Hanson-Koopmans", "batch of 18", "124.156", "", Works.Cmh17Batch, Standing.SecondHand, () => HansonKoopmans.HansonKoopmansBBasis(Of.Numbers(PrintedBatches.Eighteen)).Limit, 8),
                Printed("Hanson-Koopmans", "wet batch of 22", "37.9", "", Works.Cmh17, Standing.SecondHand, () => HansonKoopmans.HansonKoopmansBBasis(Of.Numbers(PrintedBatches.Wet)).Limit),
            ];
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
