using System.Diagnostics;
using System.Globalization;
using System.Runtime;
using ScrewSheet.Engine;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Benchmarks;

/// <summary>What a long session costs: resident memory of the process after 10,000 edits less that after 1,000, each after a full collection. Every second edit is a new expression. Median of three processes.</summary>
internal static class SteadyMemory
{
    /// <summary>The argument that makes this program the session that is measured.</summary>
    public const string ChildVerb = "steady-session";

    public static void Run()
    {
        List<(double Early, double Late)> runs = [];
        for (int i = 0; i < 3; i++)
        {
            using Process process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, [ChildVerb]) { RedirectStandardOutput = true })!;
            string[] words = process.StandardOutput.ReadToEnd().Split(' ');
            process.WaitForExit();
            if (process.ExitCode != 0) throw new InvalidOperationException($"The session ended with {process.ExitCode}.");
            runs.Add((double.Parse(words[0], CultureInfo.InvariantCulture), double.Parse(words[1], CultureInfo.InvariantCulture)));
        }
        (double early, double late) = runs.OrderBy(run => run.Late - run.Early).ElementAt(1);
        Report.Amount("steady", late - early, "MB", $"{late:F0} MB after 10,000 edits", $"{early:F0} MB after 1,000", 20,
            $"resident memory, median of three: {string.Join(", ", runs.Select(run => $"{run.Late - run.Early:F1}"))} MB");
    }

    /// <summary>The session: prints both amounts in MB.</summary>
    public static int Child()
    {
        Workbook workbook = TenThousand.Read(TenThousand.File());
        Calculator calculator = new(Library.Shipped);
        calculator.Calculate(workbook);
        double early = 0;
        for (int i = 1; i <= 10_000; i++)
        {
            int row = 1 + (i % TenThousand.Rows);
            Cell cell = workbook.Sheets[0].Cells[new CellAddress(i % 2 == 0 ? 1 : TenThousand.FirstResult + (i * 2 % TenThousand.Shapes), row)];
            CellContent content = i % 2 == 0 ? new GivenContent(string.Create(CultureInfo.InvariantCulture, $"{20 + (i * 0.01):F2} mm"), 1) : new ResultContent(Rebind.Expression(i, row), 1);
            workbook = workbook.WithCell("Work", cell with { Content = content });
            calculator.Calculate(workbook, [new CellId("Work", cell.Address)]);
            if (i == 1000) early = Resident();
        }
        Console.Write(string.Create(CultureInfo.InvariantCulture, $"{early:F2} {Resident():F2} "));
        GC.KeepAlive(calculator);
        GC.KeepAlive(workbook);
        return 0;
    }

    private static double Resident()
    {
        for (int i = 0; i < 3; i++)
        {
            GCSettings.LargeObjectHeapCompactionMode = GCLargeObjectHeapCompactionMode.CompactOnce;
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
            GC.WaitForPendingFinalizers();
        }
        using Process self = Process.GetCurrentProcess();
        return self.WorkingSet64 / 1048576.0;
    }
}
