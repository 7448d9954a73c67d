using System.Diagnostics;
using ScrewSheet.Terminal;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Toolkit;
using ScrewSheet.Terminal.Grid.Work;
using ScrewSheet.Workbooks.Format;
using Terminal.Gui.Input;

namespace ScrewSheet.Benchmarks.Grid;

/// <summary>The grid over 10,000 rows of 50 columns, in this process: from a key to the finished screen, and from a typed character to what the line would give.</summary>
internal static class GridSpeed
{
    private const int Keys = 600, WarmUp = 150;
    private static readonly TimeSpan Long = TimeSpan.FromMinutes(5);

    // single steps and whole pages, both ways; each of them changes the cells or the detail
    private static readonly Key[] Moves =
    [
        Key.CursorDown, Key.CursorDown, Key.CursorRight, Key.PageDown, Key.CursorDown, Key.CursorRight.WithCtrl, Key.PageDown, Key.CursorRight, Key.CursorUp, Key.PageDown,
        Key.CursorLeft, Key.PageUp, Key.CursorRight.WithCtrl, Key.CursorDown, Key.CursorLeft.WithCtrl, Key.CursorUp, Key.CursorLeft, Key.CursorLeft.WithCtrl, Key.PageDown, Key.CursorDown,
    ];

    /// <summary>Moving and scrolling, against a bare window of the same size with one changing cell.</summary>
    public static void Moving()
    {
        using GridProgram program = Open();
        program.Handle(new Press(KeyName.Right, Ctrl: true));
        program.Handle(new Press(KeyName.Right, Ctrl: true));
        foreach ((int width, int height) in new[] { (80, 24), (200, 50) })
        {
            Sample ours = new(), theirs = new();
            using Stage grid = new(new GridWindow(program, mono: false), width, height);
            using Stage bare = new(new BareWindow(), width, height);
            Sample.Settle();
            for (int i = -WarmUp; i < Keys; i++)
            {
                double a = Time(() => grid.Press(Moves[(i + WarmUp) % Moves.Length])), b = Time(() => bare.Press(Key.CursorDown));
                if (i < 0) continue;
                ours.Add(a);
                theirs.Add(b);
            }
            if (!grid.Text.Contains("uses", StringComparison.Ordinal) || !grid.Text.Contains("mm", StringComparison.Ordinal)) throw new InvalidOperationException($"The grid does not show its cells:\n{grid.Text}");
            Report.Ratio($"grid-{width}x{height}", ours.Quantile(0.95) / theirs.Quantile(0.95), $"{ours.Quantile(0.95):F2} ms p95", $"{theirs.Quantile(0.95):F2} ms p95", 2,
                $"{Keys} keys each; medians {ours.Median:F2} / {theirs.Median:F2} ms");
        }
    }

    /// <summary>Each character of a long expression, until the screen shows what the line gives.</summary>
    public static void Typing()
    {
        using GridProgram program = Open();
        using Stage grid = new(new GridWindow(program, mono: false), 80, 24);
        Sample times = new();
        int open = 0;
        for (int line = -3; line < 12; line++)
        {
            grid.Press(Key.CursorDown);
            int row = program.State.Open.Cursor.Row;
            foreach (char c in $"=> (B{row} + {line + 20} mm) * 1.5 - Max(C{row}, D{row}) / 2 + Sqrt(E{row} * {line + 7} mm) + FallFactor(B{row}, C{row}) * K{row}")
            {
                double time = Time(() =>
                {
                    grid.Press(new Key(c));
                    program.Settle(Long);
                    grid.Draw();
                });
                if (line < 0) continue;
                times.Add(time);
                if (program.State.Mode is Entering { Entry.Suggestions.IsEmpty: false }) open++;
            }
            if (program.State.Mode is not Entering { Entry: { IsPreviewed: true, Preview.Value: not null } }) throw new InvalidOperationException($"The line gives nothing:\n{grid.Text}");
            grid.Press(Key.Esc);
        }
        Report.Amount("typing", times.Quantile(0.95), "ms p95", $"{times.Quantile(0.95):F1} ms p95", "-", 50, $"{times.Count} characters, {open} with the list open; median {times.Median:F1} ms, worst {times.Quantile(1):F1} ms");
    }

    private static GridProgram Open()
    {
        byte[] bytes = LargeSheet.File();
        GridSurroundings surroundings = new() { Library = Composition.Library(), Shipped = AppContext.BaseDirectory, Remembered = new Remembered(Path.Combine(Path.GetTempPath(), $"screwsheet-bench-{Environment.ProcessId}")) };
        GridProgram program = new(surroundings, new WorkbookFile("many.screwsheet", bytes, ((WorkbookRead)WorkbookText.Read(bytes)).Workbook));
        long start = Stopwatch.GetTimestamp();
        program.Settle(Long);
        Report.Note($"{LargeSheet.Rows * LargeSheet.Columns:N0} cells calculated and ready to show after {Stopwatch.GetElapsedTime(start).TotalSeconds:F1} s");
        if (program.State.Mode is Reading) program.Handle(new Press(KeyName.Enter)); // the cautions, the first time
        return program.State.Open.IsCalculated ? program : throw new InvalidOperationException("The results are not in.");
    }

    private static double Time(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }
}
