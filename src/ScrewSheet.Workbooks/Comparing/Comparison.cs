using System.Collections.Immutable;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Workbooks.Comparing;

/// <summary>Something that reads otherwise than before.</summary>
/// <param name="What">What it is, in a word or two: <c>given</c>, <c>expression</c>, <c>note</c>, <c>name</c>, <c>title</c> …</param>
/// <param name="Before">As it was; null where it was not there.</param>
/// <param name="After">As it is; null where it is gone.</param>
public sealed record TextChange(string What, string? Before, string? After);

/// <summary>A cell that its author changed, added or removed.</summary>
/// <param name="Before">Where it was; null where it is new.</param>
/// <param name="After">Where it is; null where it is gone.</param>
/// <param name="Name">Its name, the later one; null where it has none.</param>
/// <param name="Changes">What reads otherwise; of a new or a removed cell, its whole text.</param>
public sealed record CellChange(CellId? Before, CellId? After, string? Name, ImmutableArray<TextChange> Changes);

/// <summary>A line that is no cell and that the author changed: of the head, a function, a sheet, a what-if table, a remark.</summary>
/// <param name="Sheet">The sheet it stands on, as the later version calls it; null for the head.</param>
/// <param name="Change">What reads otherwise.</param>
public sealed record LineChange(string? Sheet, TextChange Change);

/// <summary>A result whose value changed.</summary>
/// <param name="Before">What it was.</param>
/// <param name="After">What it is.</param>
/// <param name="Relative">The change as a part of what it was, in coherent SI; null where either is no number or it was zero.</param>
/// <param name="ByAuthor">True where the author changed the cell itself; false where it follows from something else.</param>
public sealed record ResultChange(CellResult Before, CellResult After, double? Relative, bool ByAuthor);

/// <summary>A result that says the same in both versions and comes to the same here, but was kept as different values: other versions of the program computed them.</summary>
/// <param name="Before">The earlier one.</param>
/// <param name="After">The later one.</param>
public sealed record LibraryChange(CellResult Before, CellResult After);

/// <summary>What differs between two versions of a workbook.</summary>
/// <param name="Before">The earlier version, calculated.</param>
/// <param name="After">The later version, calculated.</param>
/// <param name="Cells">Cells the author changed, in the order of the later version, then those that are gone.</param>
/// <param name="Lines">Other lines the author changed.</param>
/// <param name="Moved">Rows that moved without saying anything else.</param>
/// <param name="Results">Results whose values changed, in the order of the later version.</param>
/// <param name="Library">Results that other versions of the program computed differently.</param>
public sealed record Comparison(
    Calculation Before, Calculation After, ImmutableArray<CellChange> Cells, ImmutableArray<LineChange> Lines, ImmutableArray<MovedRows> Moved,
    ImmutableArray<ResultChange> Results, ImmutableArray<LibraryChange> Library)
{
    /// <summary>True where nothing differs but perhaps blanks.</summary>
    public bool IsEmpty => Cells.IsEmpty && Lines.IsEmpty && Moved.IsEmpty && Results.IsEmpty && Library.IsEmpty && !HasOtherVersion;

    /// <summary>True where the two say that different versions of the program kept their results.</summary>
    public bool HasOtherVersion => Before.Workbook.Head.MadeWith != After.Workbook.Head.MadeWith;

    /// <summary>Compares two calculated versions.</summary>
    public static Comparison Of(Calculation before, Calculation after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        WorkbookPairs pairs = WorkbookPairs.Of(before.Workbook, after.Workbook);
        AuthorChanges changes = AuthorChanges.Of(pairs);
        ResultComparer results = new(before, after, pairs, changes.Cells);
        return new Comparison(before, after, changes.Cells, changes.Lines, changes.Moved, results.Changes(), results.ByLibrary());
    }
}
