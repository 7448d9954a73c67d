using System.Diagnostics;
using ScrewSheet.Engine;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Kernels;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Studies.Uncertainty;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using UnitsNet;

namespace ScrewSheet.Benchmarks;

/// <summary>What-if tables and draws: the kernel beside the same model written by hand, beside the calculation of the workbook, on one thread and two, and in how much memory.</summary>
internal static class WhatIfSpeed
{
    private const int Block = 4096, Rounds = 60, Repeats = 25;
    private const double Kernel = 0.8, UnitsNet = 20, CellByCell = 200, TwoThreads = 1.7, FirstTable = 50, Megabytes = 24;

    public static void Run()
    {
        Workbook workbook = PlacementModel.Read();
        Calculator calculator = new(Library.Shipped);
        Calculation calculation = calculator.Calculate(workbook);
        StudyRunner.WarmUp(); // as the program does on a thread of its own while it reads and computes
        First(calculation);
        Loops(calculation);
        Threads(calculation);
        Memory(calculation);
    }

    /// <summary>The first table of a process, nothing warmed but the calculation that is on the screen anyway.</summary>
    private static void First(Calculation calculation)
    {
        StudyRunner runner = new(Library.Shipped, Environment.ProcessorCount);
        double small = Milliseconds(() => Table(runner, calculation, "exposed: 0 mm to 60 mm step 10 mm", "mass: 60 kg, 80 kg, 100 kg"));
        double first = Milliseconds(() => Table(runner, calculation, "exposed: 0 mm to 100 mm over 100 steps", "fall: 1 m to 10 m over 99 steps"));
        Sample later = new();
        for (int i = 0; i < 15; i++) later.Time(() => Table(new StudyRunner(Library.Shipped, 1), calculation, "exposed: 0 mm to 100 mm over 100 steps", "fall: 1 m to 10 m over 99 steps"));
        Report.Amount("what-if first-table", small, "ms", $"{small:F1} ms for 21 entries", "asked for", FirstTable, "the first of the process after the warm-up that runs beside reading the file; cell by cell");
        Report.Amount("what-if first-kernel-table", later.Median, "ms", $"{later.Median:F1} ms for 10,100 entries, trials and compiling included", "asked for", FirstTable, $"median of {later.Count}, a new runner each; the first of the process {first:F1} ms");
    }

    private static void Loops(Calculation calculation)
    {
        Kernel kernel = Made(calculation);
        double[] exposed = [.. Enumerable.Range(0, Block).Select(i => 0.1 * i / Block)], fall = [.. Enumerable.Range(0, Block).Select(i => 1 + (9.0 * i / Block))], output = new double[Block];
        int[] faults = new int[Block];
        CautionTally tally = new();
        double[][] inputs = [exposed, fall];
        Action ours = () => kernel.Run(inputs, output, faults, tally, 0, Block);
        ours();
        double[] here = [.. output];
        Action plain = () => ByHand(exposed, fall, output), careful = () => ByHandCarefully(exposed, fall, output);
        Action quantities = () => OverUnitsNet(exposed, fall, output);
        plain();
        for (int i = 0; i < Block; i++)
            if (Math.Abs(output[i] - here[i]) > 1e-12 * Math.Abs(here[i])) throw new InvalidOperationException($"The models differ at {i}: {here[i]:R} and {output[i]:R}.");
        (double k, double p, double c, double u) = (Least(ours), Least(plain), Least(careful), Least(quantities));
        Report.Ratio("what-if kernel", k / p, $"{k:F1} ns a scenario", $"{p:F1} ns by hand over doubles", Kernel, $"{kernel.Operations} operations left in the loop, limits, ranges and faults looked at; two of twelve inputs varied");
        Report.Note($"the same with every power written as products: {c:F1} ns, ratio {k / c:G3}");
        Report.Times("what-if units", u / k, $"{k:F1} ns", $"{u:F1} ns by hand over UnitsNet types", UnitsNet);
        double cells = Calculated(calculation);
        Report.Times("what-if cells", cells / k, $"{k:F1} ns", $"{cells:F0} ns by calculating the workbook anew, what did not change left alone", CellByCell);
    }

    private static void Threads(Calculation calculation)
    {
        Sample one = new(), two = new();
        UncertaintyRequest request = new() { Cell = At("index"), Samples = 1_000_000 };
        StudyRunner single = new(Library.Shipped, 1), both = new(Library.Shipped, 2);
        for (int i = 0; i < 4; i++)
        {
            one.Time(() => single.Uncertainty(calculation, request));
            two.Time(() => both.Uncertainty(calculation, request));
        }
        Report.Times("what-if threads", one.Least / two.Least, $"{two.Least:F0} ms for 1,000,000 draws, first order and shares", $"{one.Least:F0} ms on one thread", TwoThreads, "least of 4", counts: false);
    }

    /// <summary>The most the heap grew while a million draws and then ten million were summed up.</summary>
    private static void Memory(Calculation calculation)
    {
        double few = Grown(calculation, 1_000_000), many = Grown(calculation, 10_000_000);
        Report.Amount("what-if memory", few, "MB", $"{few:F1} MB for 1,000,000 draws", $"{many:F1} MB for 10,000,000", Megabytes, "greatest growth of the heap");
    }

    private static double Grown(Calculation calculation, long samples)
    {
        Sample.Settle();
        Watch watch = new(GC.GetTotalMemory(true));
        new StudyRunner(Library.Shipped, 2).Uncertainty(calculation, new UncertaintyRequest { Cell = At("index"), Samples = samples }, watch);
        return watch.Grown / 1e6;
    }

    private static Kernel Made(Calculation calculation)
    {
        Cone cone = Cone.Of(calculation, [Id(calculation, "exposed"), Id(calculation, "fall")], [Id(calculation, "index")]);
        StudyTools tools = new(Library.Shipped, new FunctionTrials(Library.Shipped), 1);
        CellValue[] values = [calculation.Cells[cone.Varied[0]].Value!, calculation.Cells[cone.Varied[1]].Value!];
        return ScenarioModel.Make(tools, cone, values, compile: true, [[0.04, 4]]).Kernels[0] ?? throw new InvalidOperationException("The model has no kernel.");
    }

    private static double Calculated(Calculation calculation)
    {
        const int scenarios = 300;
        Calculator calculator = new(Library.Shipped);
        CellId[] changed = [Id(calculation, "exposed"), Id(calculation, "fall")];
        return Calculator.WithRoom(() =>
        {
            calculator.Calculate(calculation.Workbook);
            double least = double.MaxValue;
            for (int round = 0; round < 8; round++)
            {
                long start = Stopwatch.GetTimestamp();
                for (int i = 0; i < scenarios; i++)
                {
                    Workbook scenario = ScenarioWorkbook.With(calculation.Workbook, changed[0], GivenValues.Number(calculation.Cells[changed[0]].Type!, 0.1 * i / scenarios), null);
                    calculator.Calculate(ScenarioWorkbook.With(scenario, changed[1], GivenValues.Number(calculation.Cells[changed[1]].Type!, 1 + (9.0 * i / scenarios)), null), changed);
                }
                least = Math.Min(least, Stopwatch.GetElapsedTime(start).TotalNanoseconds / scenarios);
            }
            return least;
        });
    }

    private static void ByHand(double[] exposed, double[] fall, double[] output)
    {
        for (int i = 0; i < output.Length; i++) output[i] = PlacementModel.Plain(85, 24000, fall[i], 12, 1.5, exposed[i], 0.01, 0.017, 0.0015, 517e6, 205e9, 0.2);
    }

    private static void ByHandCarefully(double[] exposed, double[] fall, double[] output)
    {
        for (int i = 0; i < output.Length; i++) output[i] = PlacementModel.Careful(85, 24000, fall[i], 12, 1.5, exposed[i], 0.01, 0.017, 0.0015, 517e6, 205e9, 0.2);
    }

    private static void OverUnitsNet(double[] exposed, double[] fall, double[] output)
    {
        for (int i = 0; i < output.Length; i++)
        {
            output[i] = PlacementModel.OverUnitsNet(Mass.FromKilograms(85), Force.FromKilonewtons(24), Length.FromMeters(fall[i]), Length.FromMeters(12), 1.5, Length.FromMeters(exposed[i]), Length.FromMillimeters(10),
                Length.FromMillimeters(17), Length.FromMillimeters(1.5), Pressure.FromMegapascals(517), Pressure.FromGigapascals(205), 0.2);
        }
    }

    private static double Least(Action work)
    {
        double least = double.MaxValue;
        for (int round = 0; round < Rounds; round++)
        {
            long start = Stopwatch.GetTimestamp();
            for (int i = 0; i < Repeats; i++) work();
            least = Math.Min(least, Stopwatch.GetElapsedTime(start).TotalNanoseconds / Repeats / Block);
        }
        return least;
    }

    private static WhatIfTable Table(StudyRunner runner, Calculation calculation, params string[] vary) =>
        runner.WhatIf(calculation, WhatIfRequest.Read(vary.Select(At), [At("index")]).Answer!) is { Answer: { } table } ? table : throw new InvalidOperationException("There is no table.");

    private static double Milliseconds(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    private static PlacedText At(string text) => new(text, new Place(0, 1));

    private static CellId Id(Calculation calculation, string name) => new("Fall", calculation.Workbook.Find("Fall")!.Names[name]);

    private sealed class Watch : IProgress<double>
    {
        private readonly long before;
        private long most;

        public Watch(long before) => (this.before, most) = (before, before);

        public long Grown => most - before;

        public void Report(double value)
        {
            lock (this) most = Math.Max(most, GC.GetTotalMemory(false));
        }
    }
}
