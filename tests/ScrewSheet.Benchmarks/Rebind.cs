using System.Diagnostics;
using System.Globalization;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using ScrewSheet.Engine;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Benchmarks;

/// <summary>Types an expression never seen before into one of 10,000 cells until its value and those of its dependents are there, against one warm evaluation by the scripting package.</summary>
internal static class Rebind
{
    private const int Edits = 600, Scripts = 30;

    /// <summary>An expression that no cell had before, with units, functions and references to its row.</summary>
    public static string Expression(int number, int row) => string.Create(CultureInfo.InvariantCulture,
        $"(A{row} + {number + 1} mm) * {1 + (number % 89 / 8.0)} - Max(B{row}, C{row}) / {2 + (number % 13)} + Sqrt(D{row} * {number + 3} mm)");

    public static void Run()
    {
        Workbook workbook = TenThousand.Read(TenThousand.File());
        Calculator calculator = new(Library.Shipped);
        calculator.Calculate(workbook);
        Sample edits = new(), scripts = new();
        for (int i = -100; i < Edits; i++)
        {
            int row = 1 + ((i + 100) % TenThousand.Rows), shape = (i + 100) * 2 % TenThousand.Shapes;
            Cell cell = workbook.Sheets[0].Cells[new CellAddress(TenThousand.FirstResult + shape, row)];
            ResultContent content = new(Expression(i + 100, row), 1);
            if (i == 0) Sample.Settle();
            long start = Stopwatch.GetTimestamp();
            workbook = workbook.WithCell("Work", cell with { Content = content });
            Calculation now = calculator.Calculate(workbook, [new CellId("Work", cell.Address)]);
            double time = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            if (i >= 0) edits.Add(time);
            if (now.Cells[new CellId("Work", cell.Address)].Value is null) throw new InvalidOperationException($"{content.Expression}: {now.Cells[new CellId("Work", cell.Address)].Fault}");
            if (calculator.Events.Count != 3) throw new InvalidOperationException($"Binding one cell and running it and its dependent are three works, not {calculator.Events.Count}.");
            if (i % (Edits / Scripts) != 0) continue;
            double script = Script(i);
            if (i >= 0) scripts.Add(script);
        }
        double p99 = edits.Quantile(0.99);
        string ours = $"{p99:F1} ms p99", theirs = $"{scripts.Median:F0} ms median";
        string note = $"{Edits} entries, median {edits.Median:F1} ms, worst {edits.Quantile(1):F1} ms; {Scripts} scripts, least {scripts.Least:F0} ms";
        Report.Amount("rebind", p99, "ms p99", ours, theirs, 15, note);
        Report.Ratio("rebind", p99 / scripts.Median, ours, theirs, 0.15, note);
    }

    private static double Script(int number)
    {
        Sample sample = new();
        string code = string.Create(CultureInfo.InvariantCulture, $"(0.010 + {number}) * 1.5 - System.Math.Max(0.02, 0.03) / 3.0 + System.Math.Sqrt(0.04 * {number + 200})");
        sample.Time(() => CSharpScript.EvaluateAsync<double>(code).GetAwaiter().GetResult());
        return sample.Median;
    }
}
