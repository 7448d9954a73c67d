using System.Collections.Immutable;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Editing;

/// <summary>Inserts and removes whole rows and columns of a sheet; every reference follows, in all sheets.</summary>
public static partial class RowsAndColumns
{
    /// <summary>With <paramref name="count"/> empty rows before a row.</summary>
    /// <exception cref="ArgumentException">A cell would leave the sheet.</exception>
    public static Workbook InsertRows(Workbook workbook, string sheet, int row, int count)
    {
        Refuse(workbook, sheet, address => address.Row >= row && address.Row + count > CellAddress.LastRow, "rows");
        return Relocation.Apply(workbook, (id, _) => id.Sheet == sheet && id.Address.Row >= row ? Inside(id, id.Address with { Row = id.Address.Row + count }) : id);
    }

    /// <summary>Without the rows from one to another, both included.</summary>
    public static Workbook RemoveRows(Workbook workbook, string sheet, int first, int last) =>
        Relocation.Apply(workbook, (id, corner) => id.Sheet != sheet || Left(id.Address.Row, first, last, corner, CellAddress.LastRow) is not { } row
            ? id.Sheet == sheet ? null : id
            : id with { Address = id.Address with { Row = row } });

    /// <summary>With <paramref name="count"/> empty columns before a column; widths move along.</summary>
    /// <exception cref="ArgumentException">A cell would leave the sheet.</exception>
    public static Workbook InsertColumns(Workbook workbook, string sheet, int column, int count)
    {
        Refuse(workbook, sheet, address => address.Column >= column && address.Column + count > CellAddress.LastColumn, "columns");
        Workbook moved = Relocation.Apply(workbook, (id, _) => id.Sheet == sheet && id.Address.Column >= column ? Inside(id, id.Address with { Column = id.Address.Column + count }) : id);
        return Widths(moved, sheet, old => old >= column ? old + count : old);
    }

    /// <summary>Without the columns from one to another, both included; widths move along.</summary>
    public static Workbook RemoveColumns(Workbook workbook, string sheet, int first, int last)
    {
        Workbook moved = Relocation.Apply(workbook, (id, corner) => id.Sheet != sheet || Left(id.Address.Column, first, last, corner, CellAddress.LastColumn) is not { } column
            ? id.Sheet == sheet ? null : id
            : id with { Address = id.Address with { Column = column } });
        return Widths(moved, sheet, old => Left(old, first, last, 0, CellAddress.LastColumn));
    }

    /// <summary>The new number of a row or column; null where it is gone. A corner of a run that is gone goes to the nearest that is left inside.</summary>
    private static int? Left(int at, int first, int last, int corner, int most)
    {
        if (at < first) return at;
        if (at > last) return at - (last - first + 1);
        int? kept = corner switch { 1 => first, 2 => first - 1, _ => null };
        return kept is >= 1 && kept <= most ? kept : corner == 2 ? 0 : null;
    }

    private static CellId? Inside(CellId id, CellAddress address) => address.IsValid ? id with { Address = address } : null;

    private static void Refuse(Workbook workbook, string sheet, Func<CellAddress, bool> leaves, string what)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        if (workbook.Find(sheet)?.Cells.Keys.Any(leaves) == true) throw new ArgumentException($"The sheet has no room for as many {what}.");
    }

    private static Workbook Widths(Workbook workbook, string sheet, Func<int, int?> move)
    {
        if (workbook.Find(sheet) is not { Widths.IsEmpty: false } found) return workbook;
        var widths = found.Widths.Select(pair => (Column: move(pair.Key), Width: pair.Value)).Where(pair => pair.Column is <= CellAddress.LastColumn).ToImmutableDictionary(pair => pair.Column!.Value, pair => pair.Width);
        return workbook.WithSheet(found with { Widths = widths });
    }
}
