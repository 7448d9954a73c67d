using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Workbooks.Model;

/// <content>Changes of what-if tables. As with cells, no other line of the file is rewritten.</content>
public sealed partial record Workbook
{
    /// <summary>With that what-if table on a sheet, behind the tables it has or in place of one of them. Its lines are written in canonical form; lines of the old table that say the same stay.</summary>
    /// <param name="sheet">The sheet's name.</param>
    /// <param name="table">The table; its lines read without fault.</param>
    /// <param name="replaced">The index in <see cref="Sheet.WhatIfs"/> of the table whose place it takes; null for a new one.</param>
    /// <exception cref="ArgumentException">There is no such sheet, or the table does not read back.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The sheet has no table of that index.</exception>
    public Workbook WithWhatIf(string sheet, WhatIfBlock table, int? replaced = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        return ChangeTables(sheet, replaced, old => TableEditing.With(old, table, replaced, NewLine));
    }

    /// <summary>Without a what-if table, its lines and the remark directly above it.</summary>
    /// <param name="sheet">The sheet's name.</param>
    /// <param name="index">The table's index in <see cref="Sheet.WhatIfs"/>.</param>
    /// <exception cref="ArgumentException">There is no such sheet.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The sheet has no table of that index.</exception>
    public Workbook WithoutWhatIf(string sheet, int index) => ChangeTables(sheet, index, old => TableEditing.Without(old, index, NewLine));

    private Workbook ChangeTables(string sheet, int? index, Func<Sheet, Sheet> edit)
    {
        int at = IndexOf(sheet);
        if (at < 0) throw new ArgumentException($"There is no sheet {sheet}.", nameof(sheet));
        if (index is { } table && (table < 0 || table >= Sheets[at].WhatIfs.Length)) throw new ArgumentOutOfRangeException(nameof(index), index, "The sheet has no such table.");
        Workbook changed = this with { Sheets = Sheets.SetItem(at, edit(Sheets[at])) };
        // a line in fault may have been one of the table's: what is in fault now, reading says
        return BrokenLines.IsEmpty ? changed : changed.ReadAgain();
    }
}
