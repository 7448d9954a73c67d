using System.Diagnostics;
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
    // a line being tried out that takes longer gives way to the next question; what was known by then is worked out afresh
    private static readonly TimeSpan LongestTrial = TimeSpan.FromSeconds(1), Slow = TimeSpan.FromSeconds(0.4);

    private const string ByHand = "Stopped. What was not computed stays so until the next change, or until Space and then the full stop.";

    private static readonly TimeSpan LongestDelay = TimeSpan.FromSeconds(2);

    private readonly Lock door = new();
    private readonly AutoResetEvent wake = new(false);
    private readonly ManualResetEventSlim idle = new(true);
    private readonly Thread thread;
    private readonly ManualResetEventSlim begin = new(false);
    private readonly Func<FunctionLibrary> library;
    private readonly Action<Input> tell;
    private readonly Trials trials = new();
    private CancellationTokenSource stop = new();
    private Calculate? wanted;
    private TryOut? typed, trying;
    private long tryingSince, seenSince;
    private CellId? seen;
    private bool ended, isStopped;
    private volatile Calculator? calculator;
    private string? told;
    private Known? known;

    /// <summary>With a library; what it finds out goes to <paramref name="tell"/>, on its own thread.</summary>
    public Recalculator(Func<FunctionLibrary> library, Action<Input> tell)
    {
        this.library = library;
        this.tell = tell;
        thread = new Thread(Work) { IsBackground = true, Name = "calculation" };
        thread.Start();
    }

    /// <summary>Asks for the results of a version.</summary>
    public void Calculate(Calculate question) => Ask(() => wanted = wanted is null || ReferenceEquals(wanted.Workbook, question.Since) && wanted.Only == question.Only ? question with { Since = wanted?.Since ?? question.Since } : new Calculate(question.Workbook));

    /// <summary>Asks what a line would give.</summary>
    public void TryOut(TryOut line) => Ask(() => typed = line);

    /// <summary>Stops what runs; a later question begins afresh.</summary>
    public void Stop()
    {
        lock (door)
        {
            bool dropped = wanted is not null;
            isStopped = true;
            stop.Cancel();
            (wanted, typed) = (null, null);
            if (dropped && !ended) tell(new Stopped(ByHand));
        }
    }

    /// <summary>The cell that has been computed for a while, or null; to be asked by one thread, now and then.</summary>
    public CellId? SlowCell()
    {
        CellId? now = calculator?.Running is { } cell && cell.Address == Trials.Scratch ? trying?.At : calculator?.Running;
        if (now != seen) (seen, seenSince) = (now, Stopwatch.GetTimestamp());
        return now is not null && Stopwatch.GetElapsedTime(seenSince) > Slow ? now : null;
    }

    /// <summary>Waits until nothing is asked any more.</summary>
    /// <returns>False when it took longer.</returns>
    public bool Settle(TimeSpan longest)
    {
        Begin();
        return idle.Wait(longest);
    }

    /// <summary>Lets the work begin; until then the compiler and the library are not even loaded, so that the first screen is there sooner.</summary>
    public void Begin() => begin.Set();

    /// <inheritdoc/>
    public void Dispose()
    {
        Stop();
        lock (door) ended = true;
        begin.Set();
        wake.Set();
    }

    private void Ask(Action question)
    {
        lock (door)
        {
            idle.Reset();
            question();
            if (trying is not null && Stopwatch.GetElapsedTime(tryingSince) > LongestTrial) stop.Cancel();
        }
        wake.Set();
    }

    private void Work()
    {
        begin.Wait(LongestDelay);
        lock (door)
        {
            if (ended) return;
        }
        calculator = new Calculator(library());
        while (true)
        {
            Calculate? version;
            TryOut? line;
            CancellationToken token;
            lock (door)
            {
                if (ended) return;
                if (stop.IsCancellationRequested) stop = new CancellationTokenSource();
                (version, line, token, isStopped) = (wanted, wanted is null ? typed : null, stop.Token, false);
                (trying, tryingSince) = (line, Stopwatch.GetTimestamp());
                wanted = null;
                if (version is null) typed = null;
                if (version is null && line is null && known is null or { HasReaders: true }) idle.Set();
            }
            if (version is not null) Guarded(() => new Calculated(known = Known.Of(trials.Calculate(calculator!, version, token), library(), known)));
            else if (line is not null) Guarded(() => new Previewed(Try(line, token)));
            else if (known is { HasReaders: false }) Guarded(FindReaders);
            else wake.WaitOne();
        }
    }

    private Calculated FindReaders()
    {
        known!.FindReaders();
        return new Calculated(known);
    }

    /// <summary>Tells what came out; a mistake of the program itself must not end the reader's work with it.</summary>
    private void Guarded(Func<Input> work)
    {
        try
        {
            Input found = work();
            if (found is Calculated { Known.HasReaders: false }) told = null;
            tell(found);
        }
        catch (OperationCanceledException)
        {
            trials.Forget();
            if (isStopped) tell(new Stopped(ByHand));
        }
        catch (Exception mistake) when (mistake is not OutOfMemoryException)
        {
            trials.Forget();
            string why = $"The calculation failed by a mistake of this program ({PlainText.Of(mistake.GetType().Name)}: {PlainText.Of(mistake.Message)}). Your entries are safe; save them.";
            // told once, so that it does not hide what is said after it, such as that the file is saved
            tell(new Stopped(why == told ? null : why));
            told = why;
        }
    }

    private Preview Try(TryOut line, CancellationToken token)
    {
        if (CellText.ReadEntry(line.Typed, line.At.Address) is not EntryRead read) return Preview.OfText(line.Typed, line.At.Address)!;
        Calculation calculation = trials.Try(calculator!, line, read.Cell, token);
        CellResult result = calculation.Cells[new CellId(line.At.Sheet, Trials.Scratch)];
        if (Circle(calculation, line.At, result)) return new Preview(line.Typed, null, null, new(2101, Workbooks.Diagnostics.FaultKind.Circle, "This cell would wait for itself.", "Take the reference out that leads back to it."), []);
        string? value = result.Value is null ? null : PrintedText.Of(result.Value, read.Cell.Format, line.Workbook.Head.Units, result.IsCheck).ToString();
        return new Preview(line.Typed, value, result.Type is QuantityType { Kind: null } ? "a quantity" : result.Type?.Phrase, result.Fault, [.. result.Cautions.Select(OriginText.Of)]);
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
