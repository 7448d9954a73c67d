using System.Collections.Immutable;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>The plot of a table: the shown cell under the cursor over the given that is varied; of two givens over the first, with the second as it is under the cursor.</summary>
internal static class TablePlot
{
    /// <summary>The plot, or null.</summary>
    /// <param name="session">The session, its cursor in the table.</param>
    /// <param name="drawn">The table.</param>
    /// <param name="problem">Why there is none, or null.</param>
    public static Plot? Of(Session session, DrawnTable drawn, out string? problem)
    {
        WhatIfTable? table = drawn.Table;
        problem = table is null ? drawn.Trouble ?? "The table is not worked out yet."
            : table.Axes.Length > 2 ? "A table of more than two givens has no plot."
            : !table.Axes[0].IsNumeric ? $"{PlainText.Of(table.Axes[0].Label)} has no values between two others, so nothing is drawn over it." : null;
        if (problem is not null) return null;
        TableSpot spot = drawn.Spot(session.Cursor);
        WhatIfColumn? column = spot.Kind is SpotKind.Entry or SpotKind.Heading or SpotKind.ColumnHead ? table!.Columns[spot.Column] : BesidePlot.Column(table!);
        problem = column?.Type is NumberType or QuantityType ? null : $"{PlainText.Of(column?.Label ?? "The table")} holds no figures; put the cursor on one.";
        return problem is null ? Draw(session, table!, column!, spot, out problem) : null;
    }

    private static Plot? Draw(Session session, WhatIfTable table, WhatIfColumn column, TableSpot spot, out string? problem)
    {
        WhatIfAxis axis = table.Axes[0];
        int second = table.Axes.Length == 1 ? 0 : spot.Kind == SpotKind.Entry ? table.Places(spot.Scenario)[1] : spot is { Kind: SpotKind.AxisValue, Axis: 1 } ? spot.Place : 0;
        var unit = WhatIfText.UnitOf(column, session.Workbook.Head.Units);
        var points = ImmutableArray.CreateBuilder<(double, double)>();
        for (int place = 0; place < axis.Values.Length; place++)
        {
            if (SiValue.Of(column.Value(table.Axes.Length == 1 ? place : table.Scenario(place, second))) is { } si) points.Add((axis.InUnit(place), unit.FromSi(si)));
        }
        problem = points.Count < 2 ? "Fewer than two entries hold a figure." : null;
        string fixedAt = table.Axes.Length == 1 ? "" : $", {PlainText.Of(table.Axes[1].Label)} = {WithUnit(table.Axes[1], second)}";
        return problem is null ? new Plot(WhatIfText.Named(axis) + fixedAt, WhatIfText.Named(column, session.Workbook.Head.Units), points.ToImmutable(), axis.Values.Length - points.Count, IsJoined: true) : null;
    }

    /// <summary>A value of a varied given with its unit.</summary>
    public static string WithUnit(WhatIfAxis axis, int place) => axis.Unit?.Symbol is { Length: > 0 } symbol ? $"{WhatIfText.Figure(axis, place)} {symbol}" : WhatIfText.Figure(axis, place);
}
