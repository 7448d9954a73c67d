using System.Collections.Immutable;
using System.Text;
using ScrewSheet.Engine;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Work;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Fuzzing.Edits;

/// <summary>
/// Edits a workbook at random as the grid would, does the same to a slow book, and after each step looks at everything: both say the same, every reference leads
/// where it led, the text reads back, undo and redo lead back, and calculating what changed gives what calculating everything gives.
/// </summary>
internal sealed class EditWalk
{
    /// <summary>The edits of one workbook, after which another is begun.</summary>
    public const int StepsPerBook = 50;

    /// <summary>How often everything is bound anew, not only calculated anew.</summary>
    private const int FreshEvery = 400;

    private static readonly Workbook Blank = Read("sheet Blank");

    private readonly FunctionLibrary library = FunctionLibrary.Of();
    private readonly Calculator kept, whole;
    private readonly Random random;
    private readonly List<string> done = [];
    private Trials trials = new();
    private SlowSession slow;
    private Session session;
    private Calculation calculation;

    /// <summary>A walk; the same seed gives the same walk.</summary>
    public EditWalk(int seed)
    {
        (kept, whole, random) = (new Calculator(library), new Calculator(library), new Random(seed));
        (session, slow, calculation) = (null!, null!, null!);
        Begin();
    }

    /// <summary>How many steps were taken.</summary>
    public long Steps { get; private set; }

    /// <summary>How often each edit changed something.</summary>
    public Dictionary<string, int> Counts { get; } = [];

    /// <summary>How many results the slow book worked out as well, and how many of them are numbers.</summary>
    public (long All, long Numbers) Compared { get; private set; }

    /// <summary>Takes steps.</summary>
    /// <param name="steps">How many.</param>
    /// <param name="taken">Told after each.</param>
    /// <exception cref="BrokenPromiseException">Something does not hold; the message tells the way there.</exception>
    public void Take(long steps, Action? taken = null)
    {
        for (long i = 0; i < steps; i++)
        {
            Step();
            taken?.Invoke();
        }
    }

    private void Step()
    {
        if (done.Count == StepsPerBook) Begin();
        Workbook before = session.Workbook;
        try
        {
            if (random.Next(6) == 0) trials.Try(kept, new TryOut(before, session.At, "=> A1 + B2"), Typed("=> A1 + B2"), CancellationToken.None);
            (session, string what) = RandomEdits.Next(random, session, slow, calculation);
            done.Add(what);
            Steps++;
            if (!ReferenceEquals(before, session.Workbook)) Counts[what.Split(' ')[0]] = Counts.GetValueOrDefault(what.Split(' ')[0]) + 1;
            Check(before);
        }
        catch (Exception wrong)
        {
            throw new BrokenPromiseException($"{wrong.Message}\nafter\n{string.Join('\n', done)}\nfrom\n{Encoding.UTF8.GetString(WorkbookText.Write(before))}\nto\n{Encoding.UTF8.GetString(WorkbookText.Write(session.Workbook))}\n{wrong.StackTrace}");
        }
    }

    private static Workbook Read(string text) => ((WorkbookRead)WorkbookText.Read($"screwsheet 1\n{text}\n")).Workbook;

    private void Begin()
    {
        Workbook workbook = Read(Shapes.All[random.Next(Shapes.All.Count)]);
        done.Clear();
        (session, slow, trials) = (Session.Open(workbook, null, default), new SlowSession(SlowBook.Of(workbook), random.Next(4) == 0), new Trials());
        calculation = trials.Calculate(kept, new Calculate(workbook), CancellationToken.None);
    }

    private void Check(Workbook before)
    {
        Workbook workbook = session.Workbook;
        if (ReferenceEquals(before, workbook))
        {
            Target.Promise(slow.Now.Difference(workbook) is null, "an edit that changes nothing changes the slow book");
            return;
        }
        slow.Now.TakeHalfRuns(workbook);
        if (slow.Now.Difference(workbook) is { } difference) throw new BrokenPromiseException(difference);
        Written(workbook);
        UndoAndRedo();
        Calculated(before, workbook);
        SlowValues values = new(slow.Now);
        foreach (CellResult result in calculation.Cells.Values) Leads(result, values);
        Values(values);
    }

    /// <summary>The text reads back as the same cells, and each address is there once.</summary>
    private static void Written(Workbook workbook)
    {
        byte[] bytes = WorkbookText.Write(workbook);
        Target.Promise(WorkbookText.Read(bytes) is WorkbookRead, "it is written and not read");
        Workbook read = ((WorkbookRead)WorkbookText.Read(bytes)).Workbook;
        Target.Promise(WorkbookText.Write(read).AsSpan().SequenceEqual(bytes), "written, read and written, it is another text");
        Target.Promise(read.Faults.Length == workbook.Faults.Length, "read back it has other faults");
        foreach ((Sheet sheet, Sheet again) in workbook.Sheets.Zip(read.Sheets))
        {
            Target.Promise(sheet.Order.Count == sheet.Cells.Count && sheet.Order.Distinct().Count() == sheet.Order.Count, "an address stands twice, or in no order");
            Target.Promise(sheet.Order.SequenceEqual(again.Order), "read back its cells are others, or in another order");
            foreach ((Cell cell, Cell other) in sheet.CellsInOrder.Zip(again.CellsInOrder))
                Target.Promise(SlowBook.Of(cell) == SlowBook.Of(other) && cell.Remark == other.Remark && cell.Format == other.Format, $"{cell.Address} reads back as {SlowBook.Of(other)}, not {SlowBook.Of(cell)}");
        }
    }

    /// <summary>Back and forth again leads to the very same workbooks.</summary>
    private void UndoAndRedo()
    {
        if (session.Done.IsEmpty) return;
        Session back = Terminal.Grid.State.Edits.Undo(session, out Step? step), forth = Terminal.Grid.State.Edits.Redo(back, out _);
        Target.Promise(ReferenceEquals(back.Workbook, step!.Workbook) && ReferenceEquals(forth.Workbook, session.Workbook) && forth.Done.Count() == session.Done.Count(), "undo and redo lead elsewhere");
    }

    /// <summary>What calculating only what changed gives is what calculating everything gives.</summary>
    private void Calculated(Workbook before, Workbook workbook)
    {
        calculation = trials.Calculate(kept, new Calculate(workbook, before, session.Only), CancellationToken.None);
        kept.CheckInvariants();
        // the author's functions are bound anew each time everything is calculated, which costs as much as ten steps
        if (workbook.Functions.IsEmpty || Steps % 10 == 0) Same(calculation, Everything(workbook));
        if (Steps % FreshEvery == 0) Same(calculation, new Calculator(library).Calculate(workbook));
    }

    private Cell Typed(string text) => ((EntryRead)CellText.ReadEntry(text, session.Cursor)).Cell;

    /// <summary>A calculation that knows nothing but how expressions are bound.</summary>
    private Calculation Everything(Workbook workbook) => Calculator.WithRoom(() =>
    {
        whole.Calculate(Blank);
        return whole.Calculate(workbook);
    });

    private static void Same(Calculation one, Calculation other)
    {
        Target.Promise(one.Cells.Count == other.Cells.Count, $"{one.Cells.Count} results, calculated anew {other.Cells.Count}");
        Target.Promise(one.Faults.SequenceEqual(other.Faults), "calculated anew it has other faults");
        foreach ((CellId id, CellResult fresh) in other.Cells)
        {
            CellResult old = one.Cells[id];
            Target.Promise(ReferenceEquals(old.Cell, fresh.Cell), $"{id} is the result of a cell as it was before");
            Target.Promise(Equals(old.Outcome, fresh.Outcome), $"{id} is {old.Outcome}, calculated anew {fresh.Outcome}");
            Target.Promise(old.Type == fresh.Type && old.Cautions.SequenceEqual(fresh.Cautions) && old.IsCheck == fresh.IsCheck && old.Kept == fresh.Kept, $"{id} is {old}, calculated anew {fresh}");
            Target.Promise(old.References.SequenceEqual(fresh.References), $"{id} refers to other cells when calculated anew");
        }
    }

    /// <summary>A bound expression refers to what the slow book says its references lead to.</summary>
    private void Leads(CellResult result, SlowValues values)
    {
        if (result.Cell.Content is not ResultContent || result.Referring is null) return;
        SlowBook book = slow.Now;
        List<CellReference> expected = [];
        List<SlowReference> all = values.References(result.Id);
        for (int i = 0; i < all.Count; i++)
        {
            if (all[i].Corner == 2) continue;
            string sheet = all[i].Sheet ?? result.Id.Sheet;
            if (all[i].Corner == 1) expected.Add(new CellReference(values.Target(all[i], result.Id.Sheet)!.Value, values.Target(all[i + 1], result.Id.Sheet)!.Value));
            else if (book.Columns.TryGetValue((sheet, all[i].Name), out int column)) expected.Add(new CellReference(new CellId(sheet, new CellAddress(column, 1)), new CellId(sheet, new CellAddress(column, CellAddress.LastRow))) { Column = all[i].Name });
            else if (values.Target(all[i], result.Id.Sheet) is { } target) expected.Add(new CellReference(target));
        }
        Target.Promise(result.References.ToHashSet().SetEquals(expected), $"{result.Id} refers to {string.Join(", ", result.References)}, not {string.Join(", ", expected)}");
    }

    /// <summary>The results are those the slow book works out.</summary>
    private void Values(SlowValues values)
    {
        foreach ((CellId id, SlowCell cell) in slow.Now.Cells)
        {
            if (cell.Kind == SlowKind.Note || values.Of(id) is not { IsKnown: true } expected) continue;
            CellValue? value = calculation.Cells[id].Value;
            Compared = (Compared.All + 1, Compared.Numbers + (expected.Number is null ? 0 : 1));
            double? number = value switch { NumberValue plain => plain.Value, QuantityValue quantity => quantity.Si, _ => null };
            bool same = expected.Number is not { } sought ? value is null : number is { } found && Math.Abs(found - sought) <= 1e-9 * Math.Max(1, Math.Max(Math.Abs(found), Math.Abs(sought)));
            Target.Promise(same, $"{id} => {cell.Text} is {value?.ToString() ?? calculation.Cells[id].Fault?.Sentence}, and should be {expected.Number?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "a fault"}");
        }
    }
}

/// <summary>A slow book with the versions it was and can be again.</summary>
/// <param name="book">The book.</param>
/// <param name="hasForces">True where forces are typed as well as numbers. Each new dimension must be bound, so most walks do without.</param>
internal sealed class SlowSession(SlowBook book, bool hasForces)
{
    /// <summary>True where forces are typed as well as numbers.</summary>
    public bool HasForces => hasForces;

    private readonly Stack<SlowBook> done = new(), takenBack = new();

    /// <summary>The book as it is.</summary>
    public SlowBook Now { get; private set; } = book;

    /// <summary>Does an edit, which can be taken back.</summary>
    public void Do(Action<SlowBook> edit)
    {
        SlowBook next = Now.Copy();
        edit(next);
        done.Push(Now);
        takenBack.Clear();
        Now = next;
    }

    /// <summary>Takes the last edit back.</summary>
    public void Undo()
    {
        if (done.Count == 0) return;
        takenBack.Push(Now);
        Now = done.Pop();
    }

    /// <summary>Does it again.</summary>
    public void Redo()
    {
        if (takenBack.Count == 0) return;
        done.Push(Now);
        Now = takenBack.Pop();
    }
}
