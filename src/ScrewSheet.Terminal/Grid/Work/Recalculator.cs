using ScrewSheet.Engine;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Work;

/// <summary>
/// Calculates on a thread of its own, so that the keyboard is never kept waiting. Only the newest version is calculated and only the newest line tried out;
/// what came before them is passed over.
/// </summary>
internal sealed class Recalculator : IDisposable
{
    // where a typed line is tried out: nobody reads this cell, so trying runs nothing else
    private static readonly CellAddress Scratch = new(CellAddress.LastColumn, CellAddress.LastRow);

    private readonly Lock door = new();
    private readonly AutoResetEvent wake = new(false);
    private readonly ManualResetEventSlim idle = new(true);
    private readonly Thread thread;
    private readonly Calculator calculator;
    private readonly Action<Input> tell;
    private CancellationTokenSource stop = new();
    private Workbook? wanted;
    private TryOut? typed;
    private bool ended;

    /// <summary>With a library; what it finds out goes to <paramref name="tell"/>, on its own thread.</summary>
    public Recalculator(FunctionLibrary library, Action<Input> tell)
    {
        calculator = new Calculator(library);
        this.tell = tell;
        thread = new Thread(Work) { IsBackground = true, Name = "calculation" };
        thread.Start();
    }

    /// <summary>Asks for the results of a version.</summary>
    public void Calculate(Workbook workbook) => Ask(() => wanted = workbook);

    /// <summary>Asks what a line would give.</summary>
    public void TryOut(TryOut line) => Ask(() => typed = line);

    /// <summary>Stops what runs; a later question begins afresh.</summary>
    public void Stop()
    {
        lock (door)
        {
            stop.Cancel();
            stop = new CancellationTokenSource();
            (wanted, typed) = (null, null);
        }
    }

    /// <summary>Waits until nothing is asked any more.</summary>
    /// <returns>False when it took longer.</returns>
    public bool Settle(TimeSpan longest) => idle.Wait(longest);

    /// <inheritdoc/>
    public void Dispose()
    {
        Stop();
        lock (door) ended = true;
        wake.Set();
    }

    private void Ask(Action question)
    {
        lock (door)
        {
            idle.Reset();
            question();
        }
        wake.Set();
    }

    private void Work()
    {
        while (true)
        {
            Workbook? workbook;
            TryOut? line;
            CancellationToken token;
            lock (door)
            {
                if (ended) return;
                (workbook, line, token) = (wanted, wanted is null ? typed : null, stop.Token);
                wanted = null;
                if (workbook is null) typed = null;
                if (workbook is null && line is null) idle.Set();
            }
            if (workbook is not null) Guarded(() => new Calculated(Known.Of(calculator.Calculate(workbook, token))));
            else if (line is not null) Guarded(() => new Previewed(Try(line, token)));
            else wake.WaitOne();
        }
    }

    /// <summary>Tells what came out; a mistake of the program itself must not end the reader's work with it.</summary>
    private void Guarded(Func<Input> work)
    {
        try
        {
            tell(work());
        }
        catch (OperationCanceledException)
        {
            tell(new Said("Stopped calculating. The next change begins afresh.", IsTrouble: true));
        }
        catch (Exception mistake) when (mistake is not OutOfMemoryException)
        {
            tell(new Said($"The calculation failed by a mistake of this program ({PlainText.Of(mistake.GetType().Name)}: {PlainText.Of(mistake.Message)}). Your entries are safe; save them.", IsTrouble: true));
        }
    }

    private Preview Try(TryOut line, CancellationToken token)
    {
        if (CellText.ReadEntry(line.Typed, line.At.Address) is not EntryRead read) return Preview.OfText(line.Typed, line.At.Address)!;
        Cell cell = read.Cell with { Address = Scratch, Name = read.Cell.DeclaredType is null ? null : "scratch_line" };
        Workbook workbook = line.Workbook.WithCell(line.At.Sheet, cell);
        Calculation calculation = calculator.Calculate(workbook, token);
        CellResult result = calculation.Cells[new CellId(line.At.Sheet, Scratch)];
        if (Circle(calculation, line.At, result)) return new Preview(line.Typed, null, null, new(2101, Workbooks.Diagnostics.FaultKind.Circle, "This cell would wait for itself.", "Take the reference out that leads back to it."), []);
        string? value = result.Value is null ? null : PrintedText.Of(result.Value, read.Cell.Format, workbook.Head.Units, result.IsCheck).ToString();
        return new Preview(line.Typed, value, result.Type?.Phrase, result.Fault, [.. result.Cautions.Select(OriginText.Of)]);
    }

    /// <summary>True where what the line reads leads back to the cell it is typed into.</summary>
    private static bool Circle(Calculation calculation, CellId at, CellResult from)
    {
        HashSet<CellId> seen = [];
        Stack<CellResult> open = new([from]);
        while (open.TryPop(out CellResult? result))
        {
            foreach (CellReference reference in result.References)
            {
                if (reference.Last is { } last ? reference.First.Sheet == at.Sheet && CellBlock.Between(reference.First.Address, last.Address).Contains(at.Address) : reference.First == at) return true;
                if (reference.Last is null && seen.Add(reference.First) && calculation.Cells.GetValueOrDefault(reference.First) is { } next) open.Push(next);
            }
        }
        return false;
    }
}
