using System.Diagnostics;
using System.Globalization;
using ScrewSheet.Engine;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Benchmarks;

/// <summary>Changes one given that feeds 100 of 10,000 results, until all are right again, against computing all from the same workbook with every shape known.</summary>
internal static class EditGiven
{
    private const int Edits = 1000, Wholes = 25;

    public static void Run()
    {
        Workbook workbook = TenThousand.Read(TenThousand.File());
        Calculator calculator = new(Library.Shipped), whole = new(Library.Shipped);
        Calculation all = calculator.Calculate(workbook);
        Workbook other = TenThousand.Read("screwsheet 1\nsheet Other\nA1 = 1 m\n"u8.ToArray());
        Sample edits = new(), wholes = new();
        for (int i = -200; i < Edits; i++)
        {
            int row = 1 + ((i + 200) % TenThousand.Rows);
            Cell cell = workbook.Sheets[0].Cells[new CellAddress(1, row)];
            GivenContent given = new(string.Create(CultureInfo.InvariantCulture, $"{20 + (i * 0.01):F2} mm"), 1);
            if (i == 0) Sample.Settle();
            long start = Stopwatch.GetTimestamp();
            workbook = workbook.WithCell("Work", cell with { Content = given });
            all = calculator.Calculate(workbook, [new CellId("Work", cell.Address)]);
            double time = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            if (i >= 0) edits.Add(time);
            if (calculator.Events.Count != 100) throw new InvalidOperationException($"An edit ran {calculator.Events.Count} cells, not 100.");
            if (i % (Edits / Wholes) != 0) continue;
            whole.Calculate(other);
            Sample none = new();
            (i >= 0 ? wholes : none).Time(() => whole.Calculate(workbook));
        }
        CheckAgreement(all, whole.Calculate(workbook));
        double p99 = edits.Quantile(0.99);
        Report.Ratio("edit", p99 / wholes.Median, $"{p99:F2} ms p99", $"{wholes.Median:F1} ms median", 0.02,
            $"{Edits} edits among {wholes.Count} whole calculations; median edit {edits.Median:F2} ms = {edits.Median / wholes.Median:G3}, least {edits.Least:F2} / {wholes.Least:F1} ms = {edits.Least / wholes.Least:G3}");
    }

    private static void CheckAgreement(Calculation edited, Calculation whole)
    {
        foreach ((CellId id, CellResult result) in whole.Cells)
            if (!Equals(result.Outcome, edited.Cells[id].Outcome)) throw new InvalidOperationException($"{id} differs after editing.");
    }
}
