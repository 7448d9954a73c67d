using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Exports.Tables;

/// <summary>A what-if table worked out elsewhere, as exports take it: what is varied, what is shown, and every entry as text and as a number.</summary>
public sealed record ComputedTable
{
    /// <summary>The sheet it stands on.</summary>
    public required string Sheet { get; init; }

    /// <summary>Its top left cell on that sheet, or null for one that is in no file.</summary>
    public CellAddress? Anchor { get; init; }

    /// <summary>The words above it, or null.</summary>
    public string? Title { get; init; }

    /// <summary>The varied givens: the first makes rows, the second columns, more a long list in which the last changes fastest.</summary>
    public ImmutableArray<TableAxis> Axes { get; init; } = [];

    /// <summary>The shown cells, each with one entry for every scenario.</summary>
    public ImmutableArray<TableColumn> Columns { get; init; } = [];

    /// <summary>What must be said below it, one sentence each.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Why there is no table, as a sentence; null where there is one.</summary>
    public string? Fault { get; init; }

    /// <summary>How many scenarios there are.</summary>
    public int Scenarios => Axes.Aggregate(1, (product, axis) => product * axis.Values.Length);

    /// <summary>The scenario at a place of each axis, from 0.</summary>
    public int Scenario(params ReadOnlySpan<int> places)
    {
        int scenario = 0;
        for (int i = 0; i < Axes.Length; i++) scenario = (scenario * Axes[i].Values.Length) + places[i];
        return scenario;
    }

    /// <summary>The place of each axis, from 0, in a scenario.</summary>
    public int[] Places(int scenario)
    {
        int[] places = new int[Axes.Length];
        for (int i = Axes.Length - 1; i >= 0; i--) (scenario, places[i]) = Math.DivRem(scenario, Axes[i].Values.Length);
        return places;
    }
}

/// <summary>A varied given and the values it takes.</summary>
/// <param name="Cell">The given.</param>
/// <param name="Label">How it is called.</param>
/// <param name="Unit">The unit its values are shown in; null where they have none.</param>
/// <param name="Values">The values, in order.</param>
public sealed record TableAxis(CellId Cell, string Label, Unit? Unit, ImmutableArray<TableEntry> Values)
{
    /// <summary>True where every value is a number.</summary>
    public bool IsNumeric => Values.All(value => value.Number is not null);
}

/// <summary>A shown cell and its value in every scenario.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Label">How it is called.</param>
/// <param name="Unit">The unit its values are shown in; null where they have none.</param>
/// <param name="Format">How its cell asks to be shown, or null.</param>
/// <param name="IsCheck">True for a check: its entries hold or fail.</param>
/// <param name="Entries">One for each scenario.</param>
public sealed record TableColumn(CellId Cell, string Label, Unit? Unit, DisplayFormat? Format, bool IsCheck, ImmutableArray<TableEntry> Entries)
{
    /// <summary>The cautions and faults that ride with its entries, one sentence each.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];
}

/// <summary>A value of a table.</summary>
/// <param name="Text">As shown, without the unit of its column; a word for what is no number.</param>
/// <param name="Number">The number in the unit of its column, all digits; null for what is no number.</param>
/// <param name="Truth">Holds or fails, yes or no; null for what is neither.</param>
/// <param name="Fault">Why there is no value, as a sentence; null where there is one.</param>
public readonly record struct TableEntry(string Text, double? Number = null, bool? Truth = null, string? Fault = null);
