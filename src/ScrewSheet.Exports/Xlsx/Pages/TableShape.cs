using ScrewSheet.Exports.Tables;
using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>A place where a value of an axis stands.</summary>
/// <param name="At">Where.</param>
/// <param name="Axis">Which axis.</param>
/// <param name="Value">Which of its values.</param>
/// <param name="Same">The place that holds the same value already and is the one to type over, or null.</param>
internal readonly record struct AxisPlace(CellAddress At, int Axis, int Value, CellAddress? Same);

/// <summary>Where the parts of a what-if table stand: of two givens one block for each shown cell, one below the other; of any other number a list.</summary>
/// <param name="table">The table.</param>
/// <param name="anchor">Its top left cell.</param>
internal sealed class TableShape(ComputedTable table, CellAddress anchor)
{
    /// <summary>Its top left cell.</summary>
    public CellAddress Anchor => anchor;

    /// <summary>The table.</summary>
    public ComputedTable Table => table;

    private bool IsGrid => table.Axes.Length == 2;

    private int Block => table.Axes[0].Values.Length + 2;

    /// <summary>True where a sheet has room for it.</summary>
    public bool Fits => table.Axes.Length > 0 && table.Scenarios > 0
        && anchor.Column + (IsGrid ? table.Axes[1].Values.Length : table.Axes.Length + table.Columns.Length) <= PlacedCells.LastColumn
        && anchor.Row + (IsGrid ? (long)Block * table.Columns.Length : table.Scenarios) <= 1_048_576;

    /// <summary>The words above rows and columns.</summary>
    public IEnumerable<(CellAddress At, string Words)> Heads()
    {
        for (int column = 0; column < table.Columns.Length; column++)
        {
            string shown = Named(table.Columns[column].Label, table.Columns[column].Unit?.Symbol);
            if (IsGrid) yield return (At(0, column * Block), $"{shown}; down {Axis(0)}, across {Axis(1)}");
            else yield return (At(table.Axes.Length + column, 0), shown);
        }
        if (IsGrid) yield break;
        for (int axis = 0; axis < table.Axes.Length; axis++) yield return (At(axis, 0), Axis(axis));
    }

    /// <summary>An axis with its unit.</summary>
    public string Axis(int axis) => Named(table.Axes[axis].Label, table.Axes[axis].Unit?.Symbol);

    /// <summary>Every place of an axis value.</summary>
    public IEnumerable<AxisPlace> AxisPlaces()
    {
        if (!IsGrid)
        {
            for (int scenario = 0; scenario < table.Scenarios; scenario++)
            {
                int[] places = table.Places(scenario);
                for (int axis = 0; axis < places.Length; axis++) yield return new AxisPlace(Head(0, axis, places), axis, places[axis], null);
            }
            yield break;
        }
        for (int column = 0; column < table.Columns.Length; column++)
            for (int axis = 0; axis < 2; axis++)
                for (int value = 0; value < table.Axes[axis].Values.Length; value++)
                    yield return new AxisPlace(Head(column, axis, [value, value]), axis, value, column == 0 ? null : Head(0, axis, [value, value]));
    }

    /// <summary>Where the value of an axis stands for an entry.</summary>
    /// <param name="column">The shown cell.</param>
    /// <param name="axis">The axis.</param>
    /// <param name="places">The entry.</param>
    public CellAddress Head(int column, int axis, int[] places)
    {
        if (!IsGrid) return At(axis, table.Scenario(places) + 1);
        return axis == 0 ? At(0, (column * Block) + 2 + places[0]) : At(1 + places[1], (column * Block) + 1);
    }

    /// <summary>Where an entry stands.</summary>
    public CellAddress Entry(int column, int scenario)
    {
        if (!IsGrid) return At(table.Axes.Length + column, scenario + 1);
        int[] places = table.Places(scenario);
        return At(1 + places[1], (column * Block) + 2 + places[0]);
    }

    private CellAddress At(int right, int down) => new(anchor.Column + right, anchor.Row + down);

    /// <summary>A label with its unit.</summary>
    public static string Named(string label, string? unit) => VisibleText.Of(UnitLabel.Of(label, unit));
}
