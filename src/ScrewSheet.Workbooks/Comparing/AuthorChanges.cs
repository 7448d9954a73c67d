using System.Collections.Immutable;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Comparing;

/// <summary>What an author changed from one version of a workbook to another; it is known without calculating either.</summary>
/// <param name="Cells">Cells that were changed, in the order of the later version, then those that are gone.</param>
/// <param name="Lines">Other lines that were changed.</param>
/// <param name="Moved">Rows that moved without saying anything else.</param>
public sealed record AuthorChanges(ImmutableArray<CellChange> Cells, ImmutableArray<LineChange> Lines, ImmutableArray<MovedRows> Moved)
{
    /// <summary>No change.</summary>
    public static AuthorChanges None { get; } = new([], [], []);

    /// <summary>How many there are.</summary>
    public int Count => Cells.Length + Lines.Length + Moved.Length;

    /// <summary>Compares two versions.</summary>
    public static AuthorChanges Of(Workbook before, Workbook after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return Of(WorkbookPairs.Of(before, after));
    }

    /// <summary>Compares two versions whose cells are paired.</summary>
    internal static AuthorChanges Of(WorkbookPairs pairs) => new(new CellComparer(pairs).Changes(), LineComparer.Changes(pairs), [.. pairs.Sheets.SelectMany(Moves)]);

    private static IEnumerable<MovedRows> Moves(SheetPair sheet) =>
        sheet.Rows.IsIdentity ? [] : sheet.Rows.Moves(sheet.After.Name, sheet.Before.Cells.Keys.Select(address => address.Row).Where(row => sheet.Rows.Forward(row) is not null));
}
