using System.Collections.Concurrent;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.Keys;
using ScrewSheet.Terminal.Grid.Recovery;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Work;

/// <summary>What the grid needs of its surroundings.</summary>
internal sealed record GridSurroundings
{
    private readonly Lazy<FunctionLibrary>? library;

    /// <summary>The library; asking for it may take a while the first time.</summary>
    public FunctionLibrary Library
    {
        get => library?.Value ?? throw new InvalidOperationException("No library was given.");
        init => library = new(value);
    }

    /// <summary>Loads the library when it is first asked for, which the first screen does not.</summary>
    public Func<FunctionLibrary> LibraryLater
    {
        init => library = new(value);
    }

    /// <summary>The folder with the shipped workbooks.</summary>
    public required string Shipped { get; init; }

    /// <summary>What is remembered between starts.</summary>
    public required Remembered Remembered { get; init; }

    /// <summary>Where workbooks are saved.</summary>
    public IDisk Disk { get; init; } = new Disk();
}

/// <summary>Holds the state, does what it asks for outside, and says when the screen changed. For one thread; results from the calculation wait in a queue.</summary>
internal sealed class GridProgram : IDisposable
{
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(3), LongestNote = TimeSpan.FromSeconds(1);
    private readonly GridSurroundings surroundings;
    private readonly Recalculator recalculator;
    private readonly StudyWorker studies;
    private readonly JournalKeeper journal;
    private readonly ConcurrentQueue<Input> arrived = new();
    private LeftWork? offered;
    private int rescued;

    /// <summary>On the start page, or with a file open.</summary>
    /// <param name="surroundings">The surroundings.</param>
    /// <param name="file">The file, or null.</param>
    public GridProgram(GridSurroundings surroundings, WorkbookFile? file)
    {
        this.surroundings = surroundings;
        recalculator = new Recalculator(() => surroundings.Library, arrived.Enqueue);
        studies = new StudyWorker(() => surroundings.Library, arrived.Enqueue);
        journal = new JournalKeeper(surroundings.Remembered.Unsaved, arrived.Enqueue);
        State = new GridState
        {
            Lexicon = new Lexicon(() => surroundings.Library),
            Mode = new Browsing(),
            StartItems = file is not null ? [] : [.. Recovering.Items(surroundings.Remembered.Unsaved.Found()), .. StartPage.Items(surroundings.Remembered.Recent, ShippedWorkbooks.Names(surroundings.Shipped))],
        };
        State = StartPage.Show(State);
        if (file is not null) OpenAndOffer(file);
        if (!surroundings.Remembered.CautionsRead) State = State with { Mode = new Reading("Before you begin", PageName.Cautions, 0, State.Mode) };
    }

    /// <summary>The state.</summary>
    public GridState State { get; private set; }

    /// <summary>True when the reader left.</summary>
    public bool HasLeft { get; private set; }

    /// <summary>A text for the clipboard.</summary>
    public event Action<string>? Copied;

    /// <summary>Takes an input in and does what follows from it.</summary>
    public void Handle(Input input)
    {
        State = Dispatch.Next(State, input);
        if (State.Session is { } session) journal.Note(session);
        foreach (Effect effect in State.Effects)
        {
            if (!Do(effect)) break;
        }
    }

    /// <summary>Tells that the first screen was drawn: from now on the calculation may take the machine's time.</summary>
    public void Shown() => recalculator.Begin();

    /// <summary>Takes in what arrived from the calculation.</summary>
    /// <returns>True when something did.</returns>
    public bool TakeArrived()
    {
        bool any = false;
        while (arrived.TryDequeue(out Input? input))
        {
            Handle(input);
            any = true;
        }
        if (recalculator.SlowCell() is var slow && slow != State.Slow)
        {
            Handle(new Slowed(slow));
            any = true;
        }
        return any;
    }

    /// <summary>Waits for the calculation and takes its results in.</summary>
    public void Settle(TimeSpan longest)
    {
        recalculator.Settle(longest);
        TakeArrived();
    }

    /// <summary>Waits for studies and the journal too.</summary>
    public void SettleStudies(TimeSpan longest)
    {
        Settle(longest);
        studies.Settle(longest);
        journal.Settle(longest);
        TakeArrived();
    }

    /// <summary>Where the program ends without the reader having left: puts changes that are not saved, and a line being typed that reads, into a file of their own.</summary>
    /// <remarks>Once only, from any thread.</remarks>
    /// <returns>The file; null where there was nothing to put, it was done before, or it could not be written.</returns>
    public string? Rescue()
    {
        if (HasLeft || State.Session is not { } session || Interlocked.Exchange(ref rescued, 1) != 0) return null;
        Session whole = State.Mode is Entering entering ? Edits.Commit(session, entering.Entry.Typed.Text, out _) : session;
        if (!whole.IsUnsaved) return null;
        journal.Note(whole);
        string? path = surroundings.Remembered.Rescue(WorkbookText.Write(whole.Workbook));
        journal.Settle(LongestNote);
        return path;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        recalculator.Dispose();
        studies.Dispose();
        journal.Dispose();
        offered?.Dispose();
    }

    /// <summary>Does one thing outside; false where what comes after it must not be done.</summary>
    private bool Do(Effect effect)
    {
        switch (effect)
        {
            case Calculate calculate: recalculator.Calculate(calculate); return true;
            case StopCalculating: recalculator.Stop(); return true;
            case StudyEffect study: studies.Do(study); return true;
            case TryOut line: recalculator.TryOut(line); return true;
            case SetClipboard clipboard: Copied?.Invoke(clipboard.Text); return true;
            case RememberCautions: surroundings.Remembered.ReadCautions(); return true;
            case Leave:
                HasLeft = true;
                journal.Drop();
                return true;
            case TookLeft taken: journal.TakeOver(taken.Left); return true;
            case PutAway away: return Tried(() => PutAway(away.Left));
            case OpenLeft left: return Tried(() => Open(left));
            case WriteFile write: return Tried(() => Write(write));
            case OpenFile open: return Tried(() => OpenAndOffer(WorkbookFile.Read(open.Path)));
            case OpenShipped shipped: return Tried(() => Handle(new Opened(Open(shipped.Name))));
            default: throw new ArgumentOutOfRangeException(nameof(effect), effect, "No such effect.");
        }
    }

    private bool Tried(Action work)
    {
        try
        {
            work();
            return true;
        }
        catch (UserMistake mistake)
        {
            State = State.Say(mistake.Message, trouble: true);
            return false;
        }
    }

    private void OpenAndOffer(WorkbookFile file)
    {
        surroundings.Remembered.Opened(file.Path);
        Handle(new Opened(Session.Open(file.Workbook, file.Path, file.Bytes)));
        Offer(file.Path);
    }

    /// <summary>Asks about the newest changes of the file that a grid left which is gone, and tells of those of a grid that runs.</summary>
    private void Offer(string path)
    {
        string place = FilePlace.Of(path);
        foreach (FoundJournal found in surroundings.Remembered.Unsaved.Found().Where(found => found.Path == place))
        {
            if (found.IsAlive) Handle(new Said($"Another grid has changes of {FileTrouble.Quoted(path)} that are not saved."));
            else if (surroundings.Remembered.Unsaved.Claim(found.Id) is { } left)
            {
                Handle(new Offered(offered = left));
                return;
            }
        }
    }

    private void PutAway(LeftWork left)
    {
        left.Remove();
        if (State.Session?.Path is { } path) Offer(path);
    }

    /// <summary>Changes whose file is not there, or never was: they are offered over an empty workbook.</summary>
    private void Open(OpenLeft journal)
    {
        LeftWork left = surroundings.Remembered.Unsaved.Claim(journal.Journal) ?? throw new UserMistake("These changes are not there any more, or another grid has them.");
        Handle(new Opened(Session.Open(NewWorkbook.Empty(""), null, ReadOnlyMemory<byte>.Empty)));
        Handle(new Offered(offered = left));
    }

    private Session Open(string shipped) => WorkbookText.Read(ShippedWorkbooks.Read(surroundings.Shipped, shipped)) is WorkbookRead read
        ? Session.Open(read.Workbook, null, ReadOnlyMemory<byte>.Empty)
        : throw new UserMistake($"The shipped workbook {PlainText.Of(shipped)} cannot be read.");

    /// <summary>Writes the workbook with its present results kept.</summary>
    private void Write(WriteFile write)
    {
        Settle(LongestWait);
        Session session = State.Session ?? write.Session;
        Workbook workbook = session.IsCalculated ? KeptResults.In(Output.Selection.Of(session.Known!.Calculation, session.Workbook.Sheets)) : session.Workbook;
        byte[] bytes = WorkbookText.Write(workbook);
        string path = write.NewPath ?? session.Path!;
        string late = session.IsCalculated ? "" : " The results were not all in, so the file keeps those it had.";
        string? unflushed = null;
        try
        {
            if (write.NewPath is not null) SafeWrite.Create(path, bytes, surroundings.Disk);
            else Replace(path, session.Bytes, bytes, surroundings.Disk);
        }
        catch (WrittenNotFlushed trouble)
        {
            unflushed = trouble.Message;
        }
        surroundings.Remembered.Opened(path);
        Handle(new Written(session with { Workbook = workbook, Saved = workbook, Path = path, Bytes = bytes }, $"Saved {FileTrouble.Quoted(path)}.{late}"));
        if (unflushed is not null) State = State.Say(unflushed, trouble: true);
    }

    private static void Replace(string path, ReadOnlyMemory<byte> expected, byte[] bytes, IDisk disk)
    {
        if (!BoundedRead.All(path).AsSpan().SequenceEqual(expected.Span)) throw new UserMistake($"{FileTrouble.Quoted(path)} was changed by another program since it was opened, so nothing was written. Save under another name: Space, then W.");
        if (!expected.Span.SequenceEqual(bytes)) SafeWrite.Replace(path, expected, bytes, disk);
    }
}
