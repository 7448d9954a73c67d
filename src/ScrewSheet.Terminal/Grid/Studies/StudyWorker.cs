using System.Collections.Immutable;
using System.Diagnostics;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>
/// Does studies on a thread of its own, one at a time, so that the keyboard is never kept waiting. What the reader asked for goes first: a table under way
/// stops for it and begins again behind it. A table under way that a newer version of the workbook has unchanged goes on.
/// </summary>
internal sealed class StudyWorker : IDisposable
{
    private readonly Lock door = new();
    private readonly AutoResetEvent wake = new(false);
    private readonly ManualResetEventSlim idle = new(true);
    private readonly Func<FunctionLibrary> library;
    private readonly Action<Input> tell;
    private StudyRunner? runner;
    private Calculation? calculation;
    private ImmutableArray<TableInputs> tables = [];
    private DoStudy? asked;
    private TableInputs? underWay;
    private StudyTicket? ticket;
    private CancellationTokenSource stop = new();
    private bool makesWay, ended;

    /// <summary>With a library; what comes out goes to <paramref name="tell"/>, on other threads.</summary>
    public StudyWorker(Func<FunctionLibrary> library, Action<Input> tell)
    {
        (this.library, this.tell) = (library, tell);
        new Thread(Work) { IsBackground = true, Name = "studies" }.Start();
    }

    /// <summary>Does what is asked for.</summary>
    public void Do(StudyEffect effect)
    {
        lock (door)
        {
            switch (effect)
            {
                case WorkOutTables work:
                    (calculation, tables) = (work.Calculation, work.Tables);
                    if (underWay is not { } running || makesWay) break;
                    if (tables.Any(running.Same)) tables = tables.RemoveAll(running.Same);
                    else StopRunning();
                    break;
                case DoStudy study:
                    asked = study;
                    if (underWay is { } waiting && !makesWay) (tables, makesWay) = (tables.Insert(0, waiting), true);
                    if (underWay is not null || ticket is not null) StopRunning();
                    break;
                case StopStudy:
                    if (asked is { } dropped) tell(new StudyDone(dropped.Ticket, Stopped(dropped.Ticket)));
                    asked = null;
                    if (ticket is not null) StopRunning();
                    break;
                default: throw new ArgumentOutOfRangeException(nameof(effect), effect, "No such effect.");
            }
            idle.Reset();
        }
        wake.Set();
    }

    /// <summary>Waits until nothing is to be done any more.</summary>
    /// <returns>False when it took longer.</returns>
    public bool Settle(TimeSpan longest) => idle.Wait(longest);

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (door)
        {
            (ended, asked, tables) = (true, null, []);
            StopRunning();
        }
        wake.Set();
    }

    private void StopRunning()
    {
        stop.Cancel();
        stop = new CancellationTokenSource();
    }

    private void Work()
    {
        while (true)
        {
            DoStudy? study;
            TableInputs? table = null;
            Calculation? of;
            CancellationToken token;
            lock (door)
            {
                if (ended) return;
                (study, asked, of, token) = (asked, null, calculation, stop.Token);
                if (study is null && !tables.IsEmpty) (table, tables) = (tables[0], tables.RemoveAt(0));
                (underWay, ticket, makesWay) = (table, study?.Ticket, false);
                if (study is null && table is null) idle.Set();
            }
            if (study is not null) Do(study, token);
            else if (table is not null) Do(table, of!, token);
            else wake.WaitOne();
        }
    }

    private void Do(DoStudy study, CancellationToken token)
    {
        Func<GridState, GridState> show;
        try
        {
            show = study.Work(Runner, new Slowly(share => tell(new StudyShare(study.Ticket, share))), token);
        }
        catch (OperationCanceledException)
        {
            show = Stopped(study.Ticket);
        }
        catch (Exception mistake) when (mistake is not OutOfMemoryException)
        {
            show = state => state.Say(Failed(mistake), trouble: true);
        }
        tell(new StudyDone(study.Ticket, show));
    }

    private void Do(TableInputs table, Calculation of, CancellationToken token)
    {
        try
        {
            StudyOutcome<WhatIfRequest> request = WhatIfRequest.Of(table.Block, table.Sheet);
            // where it stands is looked at when it is drawn, so that moving it or a cell works nothing out
            Slowly progress = new(share => tell(new TableShare($"table {table.Block.Anchor}", share)));
            tell(new TableDone(new TableResult(table, request.IsAnswered ? Runner.WhatIf(of, request.Answer with { Anchor = null }, progress, token) : request.Fault)));
        }
        catch (OperationCanceledException)
        {
            // something newer is asked for, or the reader stopped it
        }
        catch (Exception mistake) when (mistake is not OutOfMemoryException)
        {
            tell(new TableFailed(table, Failed(mistake)));
        }
    }

    private static Func<GridState, GridState> Stopped(StudyTicket ticket) => state => state.Say(ticket.Stopped);

    private StudyRunner Runner => runner ??= new StudyRunner(library(), Environment.ProcessorCount);

    private static string Failed(Exception mistake) =>
        $"That failed by a mistake of this program ({PlainText.Of(mistake.GetType().Name)}: {PlainText.Of(mistake.Message)}). Your entries are safe; save them.";

    /// <summary>Passes on what share is done ten times a second at most, and nothing of what takes less than a moment.</summary>
    private sealed class Slowly(Action<double> pass) : IProgress<double>
    {
        private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(100);
        private readonly Lock door = new();
        private long last = Stopwatch.GetTimestamp();

        public void Report(double share)
        {
            lock (door)
            {
                if (Stopwatch.GetElapsedTime(last) < Moment) return;
                last = Stopwatch.GetTimestamp();
            }
            pass(share);
        }
    }
}
