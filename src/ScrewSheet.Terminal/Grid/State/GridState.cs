using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.Passing;
using ScrewSheet.Terminal.Grid.Recovery;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>Something the program must do outside its state. A closed family.</summary>
internal abstract record Effect;

/// <summary>Calculate this version.</summary>
/// <param name="Workbook">The workbook.</param>
/// <param name="Since">The version before it, where it differs from that in one cell only.</param>
/// <param name="Only">That cell.</param>
internal sealed record Calculate(Workbook Workbook, Workbook? Since = null, CellId? Only = null) : Effect;

/// <summary>Stop the calculation that runs.</summary>
internal sealed record StopCalculating : Effect;

/// <summary>Try out a line typed into a cell.</summary>
/// <param name="Workbook">The workbook.</param>
/// <param name="At">The cell.</param>
/// <param name="Typed">The line.</param>
internal sealed record TryOut(Workbook Workbook, CellId At, string Typed) : Effect;

/// <summary>Write the workbook to its file, or to a new one.</summary>
/// <param name="Session">The session.</param>
/// <param name="NewPath">Another file than its own, which must not be there; null for its own.</param>
internal sealed record WriteFile(Session Session, string? NewPath) : Effect;

/// <summary>Open a file.</summary>
/// <param name="Path">The file.</param>
internal sealed record OpenFile(string Path) : Effect;

/// <summary>Open a copy of a shipped workbook.</summary>
/// <param name="Name">Its name.</param>
internal sealed record OpenShipped(string Name) : Effect;

/// <summary>Open changes that were not saved and whose file is not there.</summary>
/// <param name="Journal">The journal.</param>
internal sealed record OpenLeft(string Journal) : Effect;

/// <summary>Forget changes that were not saved, now that they are in the open workbook.</summary>
/// <param name="Left">The changes.</param>
internal sealed record TookLeft(LeftWork Left) : Effect;

/// <summary>Remove changes that were not saved.</summary>
/// <param name="Left">The changes.</param>
internal sealed record PutAway(LeftWork Left) : Effect;

/// <summary>Give a text to other programs.</summary>
/// <param name="Text">The text.</param>
internal sealed record SetClipboard(string Text) : Effect;

/// <summary>Remember that the cautions were read.</summary>
internal sealed record RememberCautions : Effect;

/// <summary>End.</summary>
internal sealed record Leave : Effect;

/// <summary>What the reader is told until the next key.</summary>
/// <param name="Text">One sentence.</param>
/// <param name="IsTrouble">True where something did not work.</param>
internal sealed record Notice(string Text, bool IsTrouble);

/// <summary>The whole program at one moment. Immutable.</summary>
internal sealed record GridState
{
    /// <summary>The narrowest screen.</summary>
    public const int LeastWidth = 44;

    /// <summary>The lowest screen.</summary>
    public const int LeastHeight = 14;

    /// <summary>Columns of the screen.</summary>
    public int Width { get; init; } = 80;

    /// <summary>Lines of the screen.</summary>
    public int Height { get; init; } = 24;

    /// <summary>The words of the language.</summary>
    public required Lexicon Lexicon { get; init; }

    /// <summary>What the reader is doing.</summary>
    public required Mode Mode { get; init; }

    /// <summary>The open workbook, or null on the start page.</summary>
    public Session? Session { get; init; }

    /// <summary>What was copied, or null.</summary>
    public Clip? Clip { get; init; }

    /// <summary>Who reviews, or null where that was not asked yet.</summary>
    public Reviewer? Reviewer { get; init; }

    /// <summary>The last comparison with another version, or null.</summary>
    public Compared? Compared { get; init; }

    /// <summary>The line left with Escape, or null.</summary>
    public string? LeftEntry { get; init; }

    /// <summary>What the reader is told.</summary>
    public Notice? Notice { get; init; }

    /// <summary>The cell that takes long to compute, or null.</summary>
    public CellId? Slow { get; init; }

    /// <summary>True when the calculation was stopped before its end.</summary>
    public bool IsStopped { get; init; }

    /// <summary>The column whose head the mouse holds by its end, or null.</summary>
    public (int Column, bool IsDrawn)? Widening { get; init; }

    /// <summary>The page to begin with.</summary>
    public ImmutableArray<Item> StartItems { get; init; } = [];

    /// <summary>What is to be done outside, in order.</summary>
    public ImmutableArray<Effect> Effects { get; init; } = [];

    /// <summary>The workbook of a state that has one.</summary>
    public Session Open => Session ?? throw new InvalidOperationException("No workbook is open.");

    /// <summary>With something to be done outside.</summary>
    public GridState And(Effect effect) => this with { Effects = Effects.Add(effect) };

    /// <summary>With something to say.</summary>
    public GridState Say(string text, bool trouble = false) => this with { Notice = new Notice(text, trouble) };

    /// <summary>Back in the grid.</summary>
    public GridState Browse() => this with { Mode = new Browsing() };

    /// <summary>With another session; a new version of the workbook is calculated, and the cursor is brought onto the screen.</summary>
    public GridState With(Session session)
    {
        Session followed = Moves.Follow(session, Layout.Of(this).GridWidth, Layout.Of(this).GridRows);
        GridState next = this with { Session = followed };
        if (Session is not null && ReferenceEquals(Session.Workbook, session.Workbook)) return next;
        return (next with { IsStopped = false }).And(new Calculate(session.Workbook, Session?.Workbook, session.Only));
    }
}

/// <summary>How the screen is divided.</summary>
/// <param name="GridRows">Rows of cells.</param>
/// <param name="DetailRows">Lines of the detail.</param>
/// <param name="EntryRows">Lines of the entry.</param>
/// <param name="GridWidth">Columns of characters for cells.</param>
internal readonly record struct Layout(int GridRows, int DetailRows, int EntryRows, int GridWidth)
{
    /// <summary>Characters of a row's head.</summary>
    public const int HeadWidth = 6;

    /// <summary>Characters before what is said, and one after it.</summary>
    public const int NoticeLead = 4;

    /// <summary>Title, column heads, heading of the detail, line of keys.</summary>
    private const int Frame = 4;

    /// <summary>Of a screen.</summary>
    public static Layout Of(GridState state)
    {
        int entry = state.Mode is Entering entering ? EntryLines(entering.Entry, state.Width) : 1;
        int rest = Math.Max(4, state.Height - Frame - entry);
        int detail = state.Mode is Commanding ? Math.Clamp(16, 3, rest - 1) : Math.Clamp(rest * 2 / 5, 3, 16);
        if (state.Mode is Confirming asked) detail = Math.Max(detail, Math.Min(Screen.QuestionPicture.Lines(asked, state.Width).Count, rest - 1));
        // what is said takes its lines from the detail, so that the cells stay where they are
        int said = state.Mode is not Entering && state.Notice is { } notice ? Math.Min(NoticeLines(notice, state.Width) - 1, detail - 1) : 0;
        return new Layout(rest - detail, detail - said, entry + said, Math.Max(10, state.Width - HeadWidth));
    }

    private static int NoticeLines(Notice notice, int width) => notice.Text.Length <= width - NoticeLead ? 1 : Output.Wrapping.Lines(notice.Text, Math.Max(8, width - NoticeLead)).Count;

    private static int EntryLines(Entry entry, int width) => Math.Clamp((Output.DisplayWidth.Of(entry.Typed.Text) + 4 + width - 1) / Math.Max(1, width), 1, 5);
}
