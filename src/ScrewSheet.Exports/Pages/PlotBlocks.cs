using System.Collections.Immutable;
using ScrewSheet.Exports.Drawing;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Exports.Pages;

/// <summary>Plots of what-if tables: a panel for each shown number over the first given, a curve for each value of the second.</summary>
internal static class PlotBlocks
{
    private const int MostCurves = 12;

    /// <summary>The plot of a table, or why there is none.</summary>
    public static Block Of(PlotLine line, ComputedTable table, bool blanks)
    {
        string title = line.Title ?? table.Title ?? $"Plot of the table at {line.Table}";
        TableColumn[] drawn = [.. table.Columns.Where(column => column.Entries.Any(entry => entry.Number is not null))];
        string? why = table.Fault is not null ? "its table could not be worked out"
            : table.Axes.Length > 2 ? "its table varies more than two givens"
            : !table.Axes[0].IsNumeric ? $"{table.Axes[0].Label} takes values that are no numbers"
            : drawn.Length == 0 ? "its table shows no numbers"
            : table.Axes.Length == 2 && table.Axes[1].Values.Length > MostCurves ? $"{table.Axes[1].Label} takes more than {MostCurves} values" : null;
        if (why is not null) return new MissingBlock($"{title} is not drawn: {why}.");
        ImmutableArray<Plot> panels = [.. drawn.Select(column => new Plot(UnitLabel.Of(table.Axes[0].Label, table.Axes[0].Unit), UnitLabel.Of(column.Label, column.Unit), Curves(table, column), blanks))];
        string over = table.Axes.Length == 2 ? $", one curve for each {table.Axes[1].Label}" : "";
        return new PlotBlock(title, panels, $"{string.Join(" and ", panels.Select(panel => panel.Up))} over {panels[0].Across}{over}.{Ranges(panels, blanks)}");
    }

    private static ImmutableArray<Curve> Curves(ComputedTable table, TableColumn column)
    {
        TableAxis across = table.Axes[0];
        int curves = table.Axes.Length == 2 ? table.Axes[1].Values.Length : 1;
        return [.. Enumerable.Range(0, curves).Select(curve => new Curve(
            table.Axes.Length == 2 ? $"{table.Axes[1].Label} {table.Axes[1].Values[curve].Text}{(table.Axes[1].Unit is { Symbol.Length: > 0 } unit ? " " + unit.Symbol : "")}" : column.Label,
            [.. Enumerable.Range(0, across.Values.Length).Select(place => (across.Values[place].Number!.Value, column.Entries[table.Axes.Length == 2 ? table.Scenario(place, curve) : place].Number))]))];
    }

    private static string Ranges(ImmutableArray<Plot> panels, bool blanks) => blanks ? " The values are left to draw."
        : string.Concat(panels.Select(panel => panel.Ends() is { } ends ? $" {panel.Up} goes from {ends.Least} to {ends.Most}." : ""));
}
