using ScrewSheet.Studies.Faults;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Studies.Tables;

/// <summary>How much room a table takes as it is drawn, with its heads.</summary>
/// <param name="Rows">Rows.</param>
/// <param name="Columns">Columns.</param>
public sealed record WhatIfShape(int Rows, int Columns)
{
    /// <summary>Of a table: one for each shown cell below the other where two givens are varied, else a list.</summary>
    /// <param name="axes">How many values each varied given takes, in order.</param>
    /// <param name="shown">How many cells are shown.</param>
    public static WhatIfShape Of(IReadOnlyList<int> axes, int shown)
    {
        ArgumentNullException.ThrowIfNull(axes);
        return axes.Count == 2 ? new WhatIfShape(shown * (axes[0] + 2), axes[1] + 1) : new WhatIfShape(axes.Aggregate(1, (product, values) => product * values) + 1, axes.Count + shown);
    }

    /// <summary>The fault of a table with its top left cell there, where a cell stands beneath it; else null.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="anchor">Its top left cell.</param>
    /// <param name="place">Where the table stands in the file, or null.</param>
    public Fault? CollisionOn(Sheet sheet, CellAddress anchor, Place? place = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        bool IsBeneath(CellAddress at) => at.Row >= anchor.Row && at.Row < anchor.Row + Rows && at.Column >= anchor.Column && at.Column < anchor.Column + Columns;
        IEnumerable<CellAddress> places = (long)Rows * Columns > sheet.Cells.Count ? sheet.Cells.Keys.Where(IsBeneath)
            : Enumerable.Range(anchor.Row, Rows).SelectMany(row => Enumerable.Range(anchor.Column, Columns).Select(column => new CellAddress(column, row))).Where(sheet.Cells.ContainsKey);
        CellAddress? first = places.Order().Select(at => (CellAddress?)at).FirstOrDefault();
        return first is { } found ? StudyFaults.Occupied(found.ToString(), anchor.ToString(), place) : null;
    }
}
