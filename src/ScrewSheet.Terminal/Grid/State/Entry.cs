using System.Collections.Immutable;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>A line being typed into a cell.</summary>
internal sealed record Entry
{
    /// <summary>The line.</summary>
    public required TypedText Typed { get; init; }

    /// <summary>The column where a row of entries made with Tab began; Enter goes back under it.</summary>
    public required int FirstColumn { get; init; }

    /// <summary>The line as it was before, newest on top.</summary>
    public ImmutableStack<TypedText> Done { get; init; } = [];

    /// <summary>What was taken back of it and can be done again.</summary>
    public ImmutableStack<TypedText> TakenBack { get; init; } = [];

    /// <summary>What the line would be, once known; perhaps of an earlier state of the line.</summary>
    public Preview? Preview { get; init; }

    /// <summary>What could stand at the caret.</summary>
    public ImmutableArray<Suggestion> Suggestions { get; init; } = [];

    /// <summary>The one chosen, or -1.</summary>
    public int Chosen { get; init; } = -1;

    /// <summary>The call around the caret, or null.</summary>
    public CallHelp? Call { get; init; }

    /// <summary>True when the preview is of this very line.</summary>
    public bool IsPreviewed => Preview?.Typed == Typed.Text;

    /// <summary>An entry into the cell under the cursor, with what stands there or a first text.</summary>
    public static Entry Begin(Session session, Lexicon lexicon, string? first, int? firstColumn = null)
    {
        string text = first ?? (session.Cell is { } cell ? Workbooks.Format.CellText.WriteEntry(WithoutKept(cell)) : "");
        return new Entry { Typed = TypedText.Of(text), FirstColumn = firstColumn ?? session.Cursor.Column }.With(TypedText.Of(text), session, lexicon);
    }

    /// <summary>With another line: suggestions and the call follow at once, what the text alone says too.</summary>
    public Entry With(TypedText typed, Session session, Lexicon lexicon) => this with
    {
        Typed = typed,
        Chosen = -1,
        Suggestions = Completion.At(typed.Before, session, lexicon),
        Call = CallHelp.At(typed.Before, session, lexicon),
        Preview = Preview.OfText(typed.Text, session.Cursor) ?? Preview,
    };

    /// <summary>With another line, which can be taken back; letters of one word are taken back together.</summary>
    public Entry Edited(TypedText typed, Session session, Lexicon lexicon)
    {
        bool goesOn = !Done.IsEmpty && Typed.Caret > 0 && typed.Caret == Typed.Caret + 1 && typed.Text.Length == Typed.Text.Length + 1
            && char.IsLetterOrDigit(typed.Text[Typed.Caret]) && char.IsLetterOrDigit(typed.Text[Typed.Caret - 1]);
        return With(typed, session, lexicon) with { Done = goesOn ? Done : Done.Push(Typed), TakenBack = [] };
    }

    /// <summary>The line before the last change; the same where there was none.</summary>
    public Entry Undo(Session session, Lexicon lexicon) => Done.IsEmpty ? this
        : With(Done.Peek(), session, lexicon) with { Done = Done.Pop(), TakenBack = TakenBack.Push(Typed), Suggestions = [] };

    /// <summary>The line before the last undo; the same where there was none.</summary>
    public Entry Redo(Session session, Lexicon lexicon) => TakenBack.IsEmpty ? this
        : With(TakenBack.Peek(), session, lexicon) with { Done = Done.Push(Typed), TakenBack = TakenBack.Pop(), Suggestions = [] };

    /// <summary>With the chosen suggestion put in.</summary>
    public Entry Accept(Session session, Lexicon lexicon)
    {
        Suggestion suggestion = Suggestions[Chosen];
        return Edited(Typed.Replace(suggestion.From, suggestion.Insert), session, lexicon) with { Suggestions = [] };
    }

    /// <summary>What was kept of a result is the program's to write, so it is not shown for editing.</summary>
    private static Cell WithoutKept(Cell cell) => cell.Content is ResultContent { Kept: not null } result ? cell with { Content = result with { Kept = null } } : cell;
}
