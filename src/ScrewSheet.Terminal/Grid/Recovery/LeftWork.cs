using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Comparing;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Recovery;

/// <summary>What a grid that is gone had not saved; held by this one until it is removed or let go.</summary>
/// <param name="read">The journal.</param>
/// <param name="held">Its lock.</param>
/// <param name="remove">Takes the journal off the disk.</param>
internal sealed class LeftWork(JournalRead read, FileStream held, Action remove) : IDisposable
{
    private readonly ReadResult result = WorkbookText.Read(read.Text);

    /// <summary>Whose it is.</summary>
    public JournalHead Head => read.Head;

    /// <summary>When it was written last.</summary>
    public DateTimeOffset At => read.At;

    /// <summary>The workbook; null where it cannot be read.</summary>
    public Workbook? Workbook => (result as WorkbookRead)?.Workbook;

    /// <summary>Why it cannot be read; null where it can.</summary>
    public string? Trouble => (result as Refusal)?.Fault is { } fault ? OriginText.Of(fault) : null;

    /// <summary>True where some of it could not be read.</summary>
    public bool IsDamaged => read.IsDamaged;

    /// <summary>What it says otherwise than a version of the workbook.</summary>
    public AuthorChanges ChangesSince(Workbook before) => Workbook is { } after ? AuthorChanges.Of(before, after) : AuthorChanges.None;

    /// <summary>Takes it off the disk.</summary>
    public void Remove()
    {
        remove();
        Dispose();
    }

    /// <summary>Lets it go; it is offered again at the next start.</summary>
    public void Dispose() => held.Dispose();
}
