using System.Collections.Immutable;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Terminal.Grid.Passing;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>Everything known about the cell under the cursor.</summary>
/// <param name="Heading">What it is, in one line.</param>
/// <param name="Lines">The rest.</param>
/// <param name="Links">The cells it speaks of, in the order shown.</param>
/// <param name="LinkLines">For each link, the line it stands on.</param>
internal sealed record Detail(string Heading, ImmutableArray<ScreenLine> Lines, ImmutableArray<CellId> Links, ImmutableArray<int> LinkLines)
{
    /// <summary>The first line shown where so many have room: as scrolled, else so that the chosen cell is among them.</summary>
    public int TopLine(Linking linking, int rows)
    {
        int line = linking.Chosen < LinkLines.Length ? LinkLines[linking.Chosen] : 0;
        return Math.Clamp(linking.Top ?? line - rows + 2, 0, Math.Max(0, Lines.Length - rows));
    }

    /// <summary>Of the cell under the cursor, in a width; one of the links may be chosen.</summary>
    public static Detail Of(Session session, int width, int? chosen = null)
    {
        Cell? cell = session.Cell;
        DetailBuilder builder = new(session, width, chosen);
        if (cell is null && TableDetail.Under(session) is { } table) TableDetail.Fill(builder, session, table, width);
        else if (cell is null) builder.Text("", "Nothing stands here. Type to put something in: force = 5 kN is a given, moment => force * arm a result, anything else is words.", Ink.Faint);
        else Fill(builder, session, session.At, cell);
        return new Detail(HeadingOf(session, cell), builder.Lines, builder.Links, builder.LinkLines);
    }

    private static string HeadingOf(Session session, Cell? cell)
    {
        if (!session.Block.IsOne) return $"{session.Block}: {session.Block.Rows} rows, {session.Block.Columns} columns";
        if (cell is null) return TableDetail.Under(session) is { } table ? TableDetail.Heading(session, table) : session.Cursor.ToString();
        CellResult? result = session.Result(session.At);
        string kind = cell.Content switch { NoteContent => "words", GivenContent => "given", ResultContent => result?.IsCheck == true ? "check" : "result", _ => "unreadable line" };
        List<string> parts = [cell.Name is null ? session.Cursor.ToString() : $"{session.Cursor} {cell.Name}", kind];
        if (result?.Type is { } type && cell.Content is not NoteContent) parts.Add(type.Name);
        if (cell.Format is not null) parts.Add($"shown in {Quantities.Formatting.DisplayFormatText.Write(cell.Format)}");
        return PlainText.Of(string.Join(" · ", parts));
    }

    private static void Fill(DetailBuilder builder, Session session, CellId id, Cell cell)
    {
        CellResult? result = session.Result(id);
        TableDetail.Collision(builder, session, id.Address);
        if (result?.Fault is { } fault) FaultLines(builder, session, id, fault);
        if (result is not null && Verdict.Changed(result)) builder.Text("changed", Difference(session, result), Ink.Bad);
        if (result is not null)
        {
            foreach (Caution caution in result.Cautions) builder.Text("caution", OriginText.Of(caution), Ink.Careful);
        }
        foreach (CellReview review in session.ReviewsOf(id)) builder.Text("review", PlainText.Of(review.ToString()), review.Holds ? Ink.Plain : Ink.Careful);
        Content(builder, session, cell, result);
        if (result is not null) builder.Members(result);
        builder.Cells("uses", Used(session, id, cell));
        builder.Cells("used by", session.Known?.ReadersOf(id) ?? []);
        if (result is not null && Step(session, result) is { } step) builder.Put(StepText.Calls(step, builder.Room), Ink.Faint);
        if (cell.Content is ResultContent own)
        {
            foreach (string line in OwnFunctions.In(session.Workbook, own.Expression)) builder.Text("by", line, Ink.Faint);
        }
        if (result is not null)
        {
            foreach (string line in CitedSources.Of(result)) builder.Text("source", line, Ink.Faint);
        }
        if (cell.Remark is not null) builder.Text("remark", PlainText.Of(cell.Remark), Ink.Plain);
        if (result is null && cell.Content is ResultContent) builder.Text("", "Not computed yet.", Ink.Faint);
    }

    private static void Content(DetailBuilder builder, Session session, Cell cell, CellResult? result)
    {
        switch (cell.Content)
        {
            case NoteContent note: builder.Text("", PlainText.Of(note.Text), Ink.Plain); break;
            case BrokenContent { Versions: { } versions }: ConflictChoice.Describe(builder, versions); break;
            case BrokenContent broken: builder.Text("line", PlainText.Of(broken.Shown.Trim()), Ink.Plain); break;
            case GivenContent given: Given(builder, session, given, result); break;
            case ResultContent content: Worked(builder, session, content, result); break;
        }
    }

    /// <summary>Formula, numbers, result; the functions it calls stand further down, so that these are seen first.</summary>
    private static void Worked(DetailBuilder builder, Session session, ResultContent content, CellResult? result)
    {
        WorkedStep? step = result is null ? null : Step(session, result);
        if (step is null || !builder.Put(StepText.Formula(step, builder.Room), Ink.Plain)) builder.Text("formula", PlainText.Of(content.Expression), Ink.Plain);
        if (step is not null) builder.Put(StepText.Numbers(step, builder.Room), Ink.Plain);
        if (result is not null && session.Known!.Shown(result) is { } shown) builder.Text("result", shown.ToString(), Ink.Strong);
    }

    private static WorkedStep? Step(Session session, CellResult result) => result.Cell.Content is ResultContent ? session.Known!.Steps.Of(result) : null;

    private static void Given(DetailBuilder builder, Session session, GivenContent given, CellResult? result)
    {
        string value = result is not null && session.Known!.Shown(result) is { } shown ? shown.ToString() : PlainText.Of(given.Text);
        builder.Text("value", value, Ink.Strong);
        if (given.Tolerance is { } tolerance) builder.Text("within ±", $"{PlainText.Of(tolerance.Text)}{(tolerance.Shape == ToleranceShape.Normal ? " (95 %, k = 2)" : "")}", Ink.Plain);
        if (given.Within is { } limits) builder.Text("allowed", PlainText.Of(limits.Text), Ink.Plain);
        if (given.Source is { } source) builder.Text("source", PlainText.Of(source), Ink.Plain);
    }

    private static void FaultLines(DetailBuilder builder, Session session, CellId id, Fault fault)
    {
        builder.Text(fault.Kind == FaultKind.Waiting ? "waits" : "fault", PlainText.Of(fault.Sentence), fault.Kind == FaultKind.Waiting ? Ink.Careful : Ink.Bad);
        if (fault.Place is { } place && session.Workbook.Find(id.Sheet)?.Cells.GetValueOrDefault(id.Address) is { } cell) Pointer(builder, cell, place);
        if (fault.Cause is { } cause && Places.Find(session.Workbook, id.Sheet, cause) is { } at && at != id) builder.Cells("cause", [at]);
    }

    /// <summary>The piece of the expression the fault speaks of.</summary>
    private static void Pointer(DetailBuilder builder, Cell cell, Place place)
    {
        (string text, int column) = cell.Content switch { ResultContent result => (result.Expression, result.ExpressionColumn), GivenContent given => (given.Text, given.TextColumn), _ => ("", 1) };
        int start = place.Line > 0 ? place.Column - column : place.Column - 1;
        if (start < 0 || place.Length <= 0 || start + place.Length > text.Length || place.Length == text.Length) return;
        builder.Text("at", PlainText.Of(text.Substring(start, place.Length)), Ink.Bad);
    }

    private static IReadOnlyList<CellId> Used(Session session, CellId id, Cell cell)
    {
        if (cell.Content is not ResultContent result) return [];
        return [.. WrittenReferences.In(result.Expression, name => session.Workbook.Find(name) is not null)
            .Select(reference => reference.Target(session.Workbook, id.Sheet)).OfType<CellId>().Where(target => session.Workbook.Find(target.Sheet) is not null).Distinct()];
    }

    private static string Difference(Session session, CellResult result)
    {
        string kept = PlainText.Of((result.Cell.Content as ResultContent)?.Kept ?? "");
        return $"the file says {kept}, this version computes {session.Known!.Shown(result)?.ToString() ?? "no value"}";
    }
}
