using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Comparing;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Passing;

/// <summary>A comparison the reader asked for, so that its list can be opened again.</summary>
/// <param name="Workbook">The version it was made of.</param>
/// <param name="Path">What it was compared with.</param>
/// <param name="List">The differences.</param>
internal sealed record Compared(Workbook Workbook, string Path, Listing List)
{
    private static readonly string[] Words = ["changed", "follows", "library"];

    /// <summary>The differences as a list, each leading to its cell.</summary>
    public static Compared Of(Comparison comparison, string path)
    {
        List<Item> items = [new Item("in all", DiffPage.Summary(comparison), "Changed: by the author. Follows: a result that has another value since. Library: kept otherwise by another version of the program.", new Nothing())];
        DiffSection[] sections = [.. DiffPage.Of(comparison)];
        foreach (DiffSection section in sections) items.AddRange(section.Rows.Select(row => Item(WordOf(section), row)));
        return new Compared(comparison.After.Workbook, path, new Listing($"Since {PlainText.Of(path)}", [.. items]));
    }

    private static string WordOf(DiffSection section) => Words[DiffPage.Titles.IndexOf(section.Title)];

    private static Item Item(string word, DiffRow row) =>
        new(word, DiffText.Sentence(row), row.At is null ? "" : "Enter goes there; Space and 7 opens this list again.", row.At is { } at ? new GoTo(at) : new Nothing(), row.IsBad);
}
