using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>What a cell shows in the grid: a mark that says what it is, and its text.</summary>
/// <param name="Mark">One character.</param>
/// <param name="Text">A figure, a word or words.</param>
/// <param name="Unit">The unit after a figure, or empty.</param>
/// <param name="Ink">How mark and text look.</param>
/// <param name="IsFigure">True where the text is a figure: at the right, never cut.</param>
internal readonly record struct CellFace(char Mark, string Text, string Unit, Ink Ink, bool IsFigure)
{
    /// <summary>The cell's name, by which others call it; shown as far as it has room beside the value. Empty where it has none.</summary>
    public string Name { get; init; } = "";

    /// <summary>What stands behind it: a blank, or that somebody reviewed it.</summary>
    public char Behind { get; init; } = ' ';

    private const int LeastName = 4;

    /// <summary>Before a given.</summary>
    public const char GivenMark = '›';

    /// <summary>A fault.</summary>
    public const char FaultMark = '!';

    /// <summary>Waits for a cell in fault.</summary>
    public const char WaitingMark = '~';

    /// <summary>A check that fails.</summary>
    public const char FailsMark = '✗';

    /// <summary>A check that holds.</summary>
    public const char HoldsMark = '✓';

    /// <summary>A result that is not what the file says.</summary>
    public const char ChangedMark = '≠';

    /// <summary>A value with a caution.</summary>
    public const char CautionMark = '▲';

    /// <summary>Not computed yet.</summary>
    public const char PendingMark = '⋯';

    /// <summary>Reviewed, and the mark holds.</summary>
    public const char ReviewedMark = '●';

    /// <summary>Reviewed, but something it depends on was changed since.</summary>
    public const char FallenMark = '○';

    /// <summary>The marks behind a cell and what they say, for the help.</summary>
    public static IReadOnlyList<(char Mark, string Meaning)> MarksBehind { get; } =
    [
        (ReviewedMark, "a result somebody marked as checked: the detail says who and when"), (FallenMark, "its mark no longer holds: the detail says what was changed since"),
    ];

    /// <summary>The marks and what they say, for the help.</summary>
    public static IReadOnlyList<(char Mark, string Meaning)> Marks { get; } =
    [
        (GivenMark, "a given: a value somebody put in"), (' ', "a result, or words"), (HoldsMark, "a check that holds"), (FailsMark, "a check that fails"),
        (FaultMark, "a fault: the detail says what and why"), (WaitingMark, "waits for a cell in fault"), (ChangedMark, "not what the file says it was"),
        (CautionMark, "a value with a caution"), (PendingMark, "not computed yet"),
    ];

    /// <summary>Of a cell.</summary>
    public static CellFace Of(Session session, CellId id, Cell cell) => Content(session, id, cell) with { Behind = BehindOf(session.ReviewsOf(id)) };

    private static char BehindOf(ImmutableArray<CellReview> reviews) => reviews.IsEmpty ? ' ' : reviews.Any(review => review.Holds) ? ReviewedMark : FallenMark;

    private static CellFace Content(Session session, CellId id, Cell cell)
    {
        if (cell.Content is NoteContent note) return new CellFace(' ', PlainText.Of(note.Text), "", Ink.Plain, false);
        if (cell.Content is BrokenContent) return new CellFace(FaultMark, "fault", "", Ink.Bad, false);
        CellResult? result = session.Result(id);
        if (result?.Fault is { } fault) return fault.Kind == FaultKind.Waiting ? new CellFace(WaitingMark, "waits", "", Ink.Careful, false) : new CellFace(FaultMark, "fault", "", Ink.Bad, false);
        if (result?.Value is null) return Pending(cell);
        PrintedValue shown = session.Known!.Shown(result)!.Value;
        (char mark, Ink ink) = MarkOf(result, cell);
        return new CellFace(mark, shown.Figure, shown.Unit, ink, result.Type is NumberType or QuantityType) { Name = PlainText.Of(cell.Name ?? "") };
    }

    private static CellFace Pending(Cell cell) => cell.Content is GivenContent { Literal: NumberLiteral number }
        ? new CellFace(GivenMark, Quantities.Formatting.NumberText.Format(number.Value, cell.Format?.Unit == number.Unit ? cell.Format?.Digits : null), number.Unit?.Symbol ?? "", Ink.Given, true) { Name = PlainText.Of(cell.Name ?? "") }
        : new CellFace(PendingMark, "", "", Ink.Faint, false);

    private static (char, Ink) MarkOf(CellResult result, Cell cell)
    {
        if (Verdict.Fails(result)) return (FailsMark, Ink.Bad);
        if (Verdict.Changed(result)) return (ChangedMark, Ink.Bad);
        if (!result.Cautions.IsEmpty) return (CautionMark, Ink.Careful);
        if (Verdict.Holds(result)) return (HoldsMark, Ink.Good);
        return cell.Content is GivenContent ? (GivenMark, Ink.Given) : (' ', Ink.Plain);
    }

    /// <summary>The columns it needs to be seen whole: its mark, its name, its text, a blank.</summary>
    public int Needs => DisplayWidth.Of(Text) + (Unit.Length == 0 ? 2 : 3 + DisplayWidth.Of(Unit)) + (Name.Length == 0 ? 0 : DisplayWidth.Of(Name) + 1);

    /// <summary>Words over more than their own columns; only those are marked as being under the cursor.</summary>
    public void PutFlowing(LineBuilder line, int own, int width, Ink? over)
    {
        string whole = Mark + Fit.Left(Text, width - 2) + " ", first = Fit.Upto(whole, own - 1);
        line.Add(first, over ?? Ink).Add(whole[first.Length..], Ink);
    }

    /// <summary>The name, or what there is room for beside a figure: its beginning, where that says more than a letter or two.</summary>
    private string NameIn(int room) => DisplayWidth.Of(Name) <= room ? Name : IsFigure && room >= LeastName ? Fit.Cut(Name, room) : "";

    /// <summary>In so many columns, the last of them blank.</summary>
    public void Put(LineBuilder line, int width, Ink? over)
    {
        int room = width - 2;
        string joined = Unit.Length == 0 ? Text : $"{Text} {Unit}";
        line.Add(Mark.ToString(), over ?? Ink);
        string name = NameIn(room - DisplayWidth.Of(joined) - 1);
        int named = DisplayWidth.Of(name);
        if (!IsFigure && named > 0) line.Add(Fit.Left(Text, room - named), over ?? Ink).Add(name, over ?? Ink.Faint);
        else if (!IsFigure) line.Add(Fit.Left(Text, room), over ?? Ink);
        else if (DisplayWidth.Of(joined) > room) line.Add(Fit.Figure("…", room), over ?? Ink);
        else
        {
            if (named > 0) line.Add(name, over ?? Ink.Faint);
            line.Add(DisplayWidth.PadLeft(Text, room - named - (joined.Length - Text.Length)), over ?? Ink);
            if (Unit.Length > 0) line.Add(" " + Unit, over ?? Ink.Faint);
        }
        line.Add(Behind.ToString(), over is Ink.Selected ? Ink.Selected : Behind switch { FallenMark => Ink.Careful, ReviewedMark => Ink.Good, _ => Ink.Plain });
    }
}
