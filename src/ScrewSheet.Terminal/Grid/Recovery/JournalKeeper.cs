using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Terminal.Grid.Recovery;

/// <summary>
/// Has every change in the journal as soon as it is made, on a thread of its own, so that the keyboard never waits for the disk. Where changes come faster than they can be written,
/// the newest is written and those before it are passed over.
/// </summary>
/// <param name="journals">The folder of journals.</param>
/// <param name="tell">Where to say that it does not work; called on the journal's thread.</param>
internal sealed class JournalKeeper(Journals journals, Action<Input> tell) : IDisposable
{
    private static readonly TimeSpan LongestEnd = TimeSpan.FromSeconds(2);

    private readonly Lock door = new();
    private readonly AutoResetEvent wake = new(false);
    private readonly ManualResetEventSlim idle = new(true);
    private readonly List<LeftWork> taken = [];
    private Thread? thread;
    private Session? wanted, noted;
    private bool ended, dropped, failing;
    private OwnJournal? own;
    private ReadOnlyMemory<byte> hashed;
    private string? hash;

    /// <summary>Takes notice of a session. Costs nothing where it says the same as before.</summary>
    public void Note(Session session)
    {
        lock (door)
        {
            bool same = noted is not null && ReferenceEquals(noted.Workbook, session.Workbook) && ReferenceEquals(noted.Saved, session.Saved) && noted.Path == session.Path;
            if (same || dropped || (thread is null && !session.IsUnsaved)) return;
            noted = session;
            Want(session);
        }
    }

    /// <summary>Removes another journal once its changes are in this one.</summary>
    public void TakeOver(LeftWork left)
    {
        lock (door)
        {
            taken.Add(left);
            if (noted is not null) Want(noted);
        }
    }

    /// <summary>The reader left: what is not saved is not wanted.</summary>
    public void Drop()
    {
        lock (door)
        {
            if (thread is null || dropped) return;
            dropped = true;
            Want(noted!);
        }
    }

    /// <summary>Waits until everything noted is on the disk.</summary>
    /// <returns>False where it took longer.</returns>
    public bool Settle(TimeSpan longest) => idle.Wait(longest);

    /// <summary>Writes what is still to be written, and ends.</summary>
    public void Dispose()
    {
        idle.Wait(LongestEnd);
        lock (door) ended = true;
        wake.Set();
        thread?.Join(LongestEnd);
        foreach (LeftWork left in taken) left.Dispose();
    }

    private void Want(Session session)
    {
        wanted = session;
        idle.Reset();
        if (thread is null)
        {
            thread = new Thread(Work) { IsBackground = true, Name = "journal" };
            thread.Start();
        }
        wake.Set();
    }

    private void Work()
    {
        while (true)
        {
            Session? session;
            bool keep;
            lock (door)
            {
                (session, keep) = (wanted, !dropped);
                wanted = null;
                if (session is null) idle.Set();
                if (session is null && ended) break;
            }
            if (session is null) wake.WaitOne();
            else Guarded(() => Write(session, keep));
        }
        own?.Dispose();
    }

    private void Write(Session session, bool keep)
    {
        if (keep && session.IsUnsaved)
        {
            own ??= journals.Begin();
            own.File.Put(new JournalHead(session.Path is null ? null : FilePlace.Of(session.Path), HashOf(session)), session.Bytes, WorkbookText.Write(session.Workbook), DateTimeOffset.UtcNow);
        }
        else if (own is { } done)
        {
            own = null;
            using (done) done.File.Remove();
        }
        List<LeftWork> held;
        lock (door)
        {
            held = [.. taken];
            taken.Clear();
        }
        foreach (LeftWork left in held) left.Remove();
    }

    private string? HashOf(Session session)
    {
        if (session.Path is null) return null;
        if (hash is null || !hashed.Equals(session.Bytes)) (hashed, hash) = (session.Bytes, JournalHead.HashOf(session.Bytes.Span));
        return hash;
    }

    /// <summary>Trouble with the journal is told once, and again after it worked in between; the work itself goes on.</summary>
    private void Guarded(Action work)
    {
        try
        {
            work();
            failing = false;
        }
        catch (Exception trouble) when (trouble is UserMistake or IOException or UnauthorizedAccessException)
        {
            if (!failing) tell(new Said($"What is typed cannot be kept against a power cut, so save often. {trouble.Message}"));
            failing = true;
        }
    }
}
