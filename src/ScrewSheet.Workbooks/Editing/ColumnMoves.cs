using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Editing;

/// <summary>Column lines, which follow their column where all of it moves.</summary>
internal static class ColumnMoves
{
    private static readonly int[] Probes = [1, CellAddress.LastRow / 2, CellAddress.LastRow];

    /// <summary>True for a line that makes a column a series.</summary>
    public static bool IsColumn(string line) => ColumnLine.TryFind(line, out _, out _);

    /// <summary>The line after a move; null where its column is gone.</summary>
    public static string? Rewrite(string line, Sheet sheet, Relocate move)
    {
        if (!ColumnLine.TryFind(line, out Range letters, out _) || !ColumnLine.TryColumn(line.AsSpan(letters), out int column)) return line;
        return Target(sheet, column, move) is not { } there ? null : there == column ? line : Replaced(line, letters, CellAddress.ColumnName(there));
    }

    /// <summary>The line with another name, where it has that one.</summary>
    public static string Renamed(string line, string old, string name) => ColumnLine.TryFind(line, out _, out Range found) && line.AsSpan(found).SequenceEqual(old) ? Replaced(line, found, name) : line;

    private static string Replaced(string line, Range piece, string text) => string.Concat(line.AsSpan(0, piece.Start.Value), text, line.AsSpan(piece.End.Value));

    /// <summary>Where the column's cells go together; where they part, or there are none, where its empty places go; where those part as well, it stays. Null where none of it is left.</summary>
    private static int? Target(Sheet sheet, int column, Relocate move)
    {
        int[] Of(IEnumerable<CellAddress> places) =>
            [.. places.Select(place => move(new CellId(sheet.Name, place), 0)).Where(to => to?.Sheet == sheet.Name).Select(to => to!.Value.Address.Column).Distinct()];

        if (Of(sheet.Cells.Keys.Where(address => address.Column == column)) is [var together]) return together;
        return Of(Probes.Select(row => new CellAddress(column, row))) switch { [] => null, [var there] => there, _ => column };
    }
}
