using ScrewSheet.Engine.Binding;
using ScrewSheet.Engine.Evaluation;
using ScrewSheet.Engine.Graph;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine;

/// <summary>
/// Computes workbooks and keeps what it knows, so that the next calculation of a changed workbook does only what the change asks for.
/// </summary>
/// <remarks>For one thread at a time. A stopped calculation loses nothing: the next one begins afresh.</remarks>
public sealed class Calculator
{
    private const int Few = 8;

    private readonly Binder binder;
    private readonly CodeCache codes;
    private Recalculation? state;
    private Workbook? last;
    private volatile Recalculation? working;

    /// <summary>A calculator that knows this library.</summary>
    public Calculator(FunctionLibrary library)
    {
        binder = new Binder(library);
        codes = new CodeCache(library);
    }

    /// <summary>
    /// Has the compiler and all around it loaded by a calculation of no consequence. A program that is about to calculate runs this on a thread of its own
    /// while it reads its file and its library; it changes nothing but how soon the first result is there.
    /// </summary>
    public static void WarmUp()
    {
        CompilerDoor.WarmUp(); // first, since it takes longest and shares nothing with reading a file
        const string trial = "screwsheet 1\nsheet Trial\nA1 = 1 kN\nA2 => Sqrt(A1 * A1) / 2 + 3 kN\nA3 => A2 > A1 ? Pow(2, 3) : Math.Min(1, 2)\n";
        if (WorkbookText.Read(trial) is WorkbookRead read) new Calculator(FunctionLibrary.Of()).Calculate(read.Workbook);
    }

    /// <summary>
    /// Runs work on a thread whose stack is deep enough for every expression there may be. Calculations and evaluations within it need no such thread of their own,
    /// which whoever does thousands of them saves.
    /// </summary>
    /// <typeparam name="T">What the work gives.</typeparam>
    /// <param name="work">The work; what it throws is thrown here.</param>
    public static T WithRoom<T>(Func<T> work) => DeepStack.Run(work);

    /// <summary>What the last calculation did, cell by cell.</summary>
    public IReadOnlyList<CalculationEvent> Events => state?.Events ?? [];

    /// <summary>The cell being computed, or computed last in the calculation that runs; null while none runs. May be asked from any thread.</summary>
    public CellId? Running => working?.Running;

    /// <summary>All results of a workbook. What did not change since the last one is not computed again.</summary>
    /// <param name="workbook">The workbook.</param>
    /// <param name="stop">Stops the calculation between and within cells.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Calculation Calculate(Workbook workbook, CancellationToken stop = default) => Guarded(workbook, stop, null);

    /// <summary>The same where the caller knows which cells may differ from the last workbook: nothing else is looked at.</summary>
    /// <param name="workbook">The workbook; functions, sheets and head as in the last one.</param>
    /// <param name="changed">Every cell that was added, removed or written anew; an edit that had to read the whole file again is noticed.</param>
    /// <param name="stop">Stops the calculation.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Calculation Calculate(Workbook workbook, IReadOnlyCollection<CellId> changed, CancellationToken stop = default) => Guarded(workbook, stop, changed);

    /// <summary>Throws where what is known contradicts itself; for tests.</summary>
    public void CheckInvariants() => state?.CheckInvariants();

    private Calculation Guarded(Workbook workbook, CancellationToken stop, IReadOnlyCollection<CellId>? changed)
    {
        // a thread of its own for a few changed cells would cost more than they do; what needs a deep stack then asks for it
        return changed is { Count: <= Few } ? Update(workbook, stop, changed) : DeepStack.Run(() => Update(workbook, stop, changed));
    }

    private Calculation Update(Workbook workbook, CancellationToken stop, IReadOnlyCollection<CellId>? changed)
    {
        Recalculation? before = SameWorld(workbook) ? state : null;
        state = null;
        Recalculation now = before ?? DeepStack.Run(() => new Recalculation(workbook, binder, codes));
        working = now;
        try
        {
            Calculation calculation = before is null ? DeepStack.Run(() => now.All(stop)) : now.Changed(last!, workbook, changed, stop);
            (state, last) = (now, workbook);
            return calculation;
        }
        finally
        {
            working = null;
        }
    }

    /// <summary>True when functions, sheets and units are those of the last workbook, so that its graph still holds.</summary>
    private bool SameWorld(Workbook workbook) => state is not null && last is not null
        && last.Functions.SequenceEqual(workbook.Functions)
        && last.Head.Units == workbook.Head.Units
        && last.Sheets.Select(sheet => sheet.Name).SequenceEqual(workbook.Sheets.Select(sheet => sheet.Name))
        && last.Sheets.Zip(workbook.Sheets).All(pair => SheetColumns.AreTheSame(pair.First.Columns, pair.Second.Columns));
}
