using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Workbooks.Comparing;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>What the two versions are called.</summary>
/// <param name="Before">The earlier one.</param>
/// <param name="After">The later one.</param>
internal sealed record DiffNames(string Before, string After);

/// <summary>One difference, in harmless words.</summary>
/// <param name="Where">The cell or sheet; empty for the head.</param>
/// <param name="What">What it is.</param>
/// <param name="Before">As it was, or null.</param>
/// <param name="After">As it is, or null.</param>
/// <param name="Note">What is to be said besides, or empty.</param>
/// <param name="IsBad">True for what a reader must not miss.</param>
/// <param name="At">The cell of the later version it is about; null where it is about none.</param>
internal sealed record DiffRow(string Where, string What, string? Before, string? After, string Note = "", bool IsBad = false, CellId? At = null);

/// <summary>Differences of one kind.</summary>
/// <param name="Title">The kind.</param>
/// <param name="Rows">At least one.</param>
internal sealed record DiffSection(string Title, IReadOnlyList<DiffRow> Rows);

/// <summary>The differences of two versions, put in words for people.</summary>
internal static class DiffPage
{
    /// <summary>The kinds, in order.</summary>
    public static ImmutableArray<string> Titles { get; } = ["What the author changed", "What follows from it", "What differs in the library"];

    /// <summary>The kinds of which there are any.</summary>
    public static IEnumerable<DiffSection> Of(Comparison comparison)
    {
        DiffSection[] sections =
        [
            new(Titles[0], [.. Author(new AuthorChanges(comparison.Cells, comparison.Lines, comparison.Moved))]),
            new(Titles[1], [.. Results(comparison)]),
            new(Titles[2], [.. Library(comparison)]),
        ];
        return sections.Where(section => section.Rows.Count > 0);
    }

    /// <summary>What the author changed.</summary>
    public static IEnumerable<DiffRow> Author(AuthorChanges changes) => [.. changes.Lines.Select(Line), .. changes.Cells.SelectMany(Cell), .. changes.Moved.Select(Moved)];

    /// <summary>One sentence under it all.</summary>
    public static string Summary(Comparison comparison)
    {
        if (comparison.IsEmpty) return "The two versions say the same.";
        (int Number, string What)[] counts =
        [
            (comparison.Cells.Length, "cell the author changed|cells the author changed"), (comparison.Lines.Length, "other line the author changed|other lines the author changed"),
            (comparison.Results.Length, "result with another value|results with another value"),
            (comparison.Library.Length, "result kept otherwise by another version of the program|results kept otherwise by another version of the program"),
        ];
        IEnumerable<string> parts = counts.Where(count => count.Number > 0).Select(count => $"{count.Number} {count.What.Split('|')[count.Number == 1 ? 0 : 1]}");
        string all = string.Join("; ", parts);
        return all.Length == 0 ? "No value differs." : all + ".";
    }

    /// <summary>A relative change as people read it: <c>+12.5 %</c>.</summary>
    public static string Percent(double relative) => $"{(relative > 0 ? "+" : "")}{(relative * 100).ToString("G3", CultureInfo.InvariantCulture)} %";

    private static DiffRow Line(LineChange line) => Row(line.Sheet ?? "", line.Change);

    private static IEnumerable<DiffRow> Cell(CellChange cell)
    {
        string where = $"{cell.After ?? cell.Before}{(cell.Name is null ? "" : " " + cell.Name)}";
        return cell.Changes.Select(change => Row(where, change) with { At = cell.After });
    }

    private static DiffRow Row(string where, TextChange change) => new(PlainText.Of(where), change.What, Plain(change.Before), Plain(change.After));

    private static string? Plain(string? text) => text is null ? null : PlainText.Of(text);

    private static DiffRow Moved(MovedRows moved)
    {
        string rows = moved.First == moved.Last ? $"row {moved.First}" : $"rows {moved.First} to {moved.Last}";
        return new DiffRow(PlainText.Of(moved.Sheet), "", null, null, $"{rows} moved {Math.Abs(moved.Down)} {(moved.Down > 0 ? "down" : "up")}");
    }

    private static IEnumerable<DiffRow> Results(Comparison comparison)
    {
        if (comparison.Results.IsEmpty) yield break;
        Selection before = Selection.Of(comparison.Before, comparison.Before.Workbook.Sheets), after = Selection.Of(comparison.After, comparison.After.Workbook.Sheets);
        foreach (ResultChange result in comparison.Results)
        {
            string[] notes = [result.Relative is { } relative ? Percent(relative) : "", result.ByAuthor ? "the author changed it" : ""];
            yield return new DiffRow(Named(result.After), "", Shown(before, result.Before), Shown(after, result.After), string.Join(", ", notes.Where(note => note.Length > 0)), result.After.Fault is not null || Verdict.Fails(result.After), result.After.Id);
        }
    }

    private static IEnumerable<DiffRow> Library(Comparison comparison)
    {
        if (comparison.HasOtherVersion)
            yield return new DiffRow("", "made with", Plain(comparison.Before.Workbook.Head.MadeWith ?? "no version"), Plain(comparison.After.Workbook.Head.MadeWith ?? "no version"));
        if (comparison.Library.IsEmpty) yield break;
        Selection after = Selection.Of(comparison.After, comparison.After.Workbook.Sheets);
        foreach (LibraryChange change in comparison.Library)
            yield return new DiffRow(Named(change.After), "kept as", Plain(Kept(change.Before)), Plain(Kept(change.After)), $"this version computes {Shown(after, change.After)} from either", At: change.After.Id);
    }

    private static string Kept(CellResult cell) => ((ResultContent)cell.Cell.Content).Kept ?? "";

    private static string Named(CellResult cell) => PlainText.Of(cell.Label);

    private static string Shown(Selection selection, CellResult cell) => cell switch
    {
        { Fault.Kind: FaultKind.Waiting } => "waits",
        { Fault: { } fault } => $"fault: {PlainText.Of(fault.Message)}",
        { Value: null } => "no value",
        _ => selection.Shown(cell).ToString(),
    };
}
