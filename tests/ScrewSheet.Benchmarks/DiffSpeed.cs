using ScrewSheet.Engine;
using ScrewSheet.Workbooks.Comparing;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Benchmarks;

/// <summary>
/// Compares two workbooks of 10,000 results, one with a row inserted at the top and ten givens changed, so that every address and two thousand values differ.
/// </summary>
/// <remarks>
/// <c>diff-text</c> is reading both files and comparing them, against reading both files twice; what the results are is known beforehand to the comparison.
/// <c>diff</c> is all a user waits for, reading, computing and comparing both, against reading and computing both twice.
/// </remarks>
internal static class DiffSpeed
{
    private const int Repeats = 15, Warm = 5, Changed = 10;

    public static void Run()
    {
        byte[] before = TenThousand.File(), after = Later(before);
        Calculator calculator = new(Library.Shipped);
        Calculation early = calculator.Calculate(TenThousand.Read(before)), late = calculator.Calculate(TenThousand.Read(after));
        CheckFound(Comparison.Of(early, late));
        Sample text = new(), textTwice = new(), whole = new(), wholeTwice = new(), alone = new();
        for (int i = 0; i < Repeats + Warm; i++)
        {
            Sample none = new();
            void Time(Sample sample, Action work)
            {
                Sample.Settle();
                (i < Warm ? none : sample).Time(work);
            }
            Time(text, () => Both(before, after, () => Comparison.Of(early, late)));
            Time(textTwice, () => Both(before, after, () => Both(before, after)));
            Time(alone, () => Comparison.Of(early, late));
            Time(whole, () => Comparison.Of(calculator.Calculate(TenThousand.Read(before)), calculator.Calculate(TenThousand.Read(after))));
            Time(wholeTwice, () => Computed(calculator, before, after, times: 2));
        }
        Report.Ratio("diff-text", text.Median / textTwice.Median, $"{text.Median:F0} ms", $"{textTwice.Median:F0} ms", 1,
            $"reading both and comparing, against reading both twice, nothing computed; medians of {Repeats}; comparing alone {alone.Median:F0} ms");
        Report.Ratio("diff", whole.Median / wholeTwice.Median, $"{whole.Median:F0} ms", $"{wholeTwice.Median:F0} ms", 1,
            $"reading, computing and comparing both, against reading and computing both twice; medians of {Repeats}; shapes known from before");
    }

    /// <summary>With a row inserted at the top and some givens changed.</summary>
    private static byte[] Later(byte[] file)
    {
        Workbook moved = RowsAndColumns.InsertRows(TenThousand.Read(file), "Work", 1, 1);
        for (int row = 2; row < 2 + Changed; row++)
        {
            Cell cell = moved.Find("Work")!.Cells[new CellAddress(1, row)];
            moved = moved.WithCell("Work", ((EntryRead)CellText.ReadLine($"{cell.Address} [mm] = {row + 100} mm")).Cell);
        }
        return WorkbookText.Write(moved);
    }

    private static void Both(byte[] before, byte[] after, Action? then = null)
    {
        TenThousand.Read(before);
        TenThousand.Read(after);
        then?.Invoke();
    }

    private static void Computed(Calculator calculator, byte[] before, byte[] after, int times)
    {
        for (int i = 0; i < times; i++)
        {
            calculator.Calculate(TenThousand.Read(before));
            calculator.Calculate(TenThousand.Read(after));
        }
    }

    private static void CheckFound(Comparison found)
    {
        bool right = found.Cells.Length == Changed && found.Moved is [{ First: 1, Last: TenThousand.Rows, Down: 1 }] && found.Results.Length >= Changed * TenThousand.Shapes / 2;
        if (!right) throw new InvalidOperationException($"Found {found.Cells.Length} changed cells, {found.Moved.Length} moves and {found.Results.Length} changed results.");
    }
}
