using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>What the detail says about a place of a what-if table: which givens lead to which value, what is wrong with it, what the whole table says.</summary>
internal static class TableDetail
{
    private const int Lead = 11;

    /// <summary>The table under the cursor; null where none is.</summary>
    public static DrawnTable? Under(Session session) => session.Sheet.WhatIfs.IsEmpty ? null : session.Tables.On(session).At(session.Cursor);

    /// <summary>The heading.</summary>
    public static string Heading(Session session, DrawnTable table) =>
        PlainText.Of($"{session.Cursor} · table at {table.Block.Anchor}{(table.Block.Title is { Length: > 0 } title ? $" · {title}" : "")}");

    /// <summary>The lines of a place of a table that holds no cell.</summary>
    public static void Fill(DetailBuilder builder, Session session, DrawnTable table, int width)
    {
        if (table.Table is { } worked) Place(builder, session, table, worked);
        State(builder, session, table);
        if (table.Table is { } whole)
        {
            TableSpot spot = table.Spot(session.Cursor);
            WhatIfColumn? only = spot.Kind is SpotKind.Entry or SpotKind.ColumnHead or SpotKind.Heading ? whole.Columns[spot.Column] : null;
            foreach (StyledLine line in WhatIfText.Remarks(whole, only, session.Workbook.Head.Units, Math.Max(8, width - Lead)))
            {
                (string word, string text) = line.Text.Split(": ", 2) is ["fault" or "caution" or "note", var rest] parts ? (parts[0], rest) : ("", line.Text.TrimStart());
                builder.Text(word, text, line.Tone == Tone.Bad ? Ink.Bad : Ink.Careful);
            }
            builder.Cells("shows", [.. whole.Columns.Select(column => column.Cell)]);
            builder.Cells("varies", [.. whole.Axes.Select(axis => axis.Cell)]);
        }
        foreach (PlacedText vary in table.Block.Vary) builder.Text("vary", PlainText.Of(vary.Text), Ink.Faint);
        foreach (PlacedText show in table.Block.Show) builder.Text("show", PlainText.Of(show.Text), Ink.Faint);
        if (table.IsCut) builder.Text("note", $"The sheet ends at row {CellAddress.LastRow}; the entries after it are not drawn.", Ink.Careful);
    }

    /// <summary>What a cell that stands where a table would begin is told; nothing where none would.</summary>
    public static void Collision(DetailBuilder builder, Session session, CellAddress at)
    {
        if (session.Sheet.WhatIfs.IsEmpty) return;
        foreach (DrawnTable table in session.Tables.On(session).Tables.Where(table => table.Trouble is not null && table.Block.Anchor == at)) builder.Text("table", PlainText.Of(table.Trouble!), Ink.Bad);
    }

    private static void Place(DetailBuilder builder, Session session, DrawnTable drawn, WhatIfTable table)
    {
        TableSpot spot = drawn.Spot(session.Cursor);
        switch (spot.Kind)
        {
            case SpotKind.Entry: Entry(builder, session, table, spot); break;
            case SpotKind.AxisValue: builder.Text("given", $"{PlainText.Of(table.Axes[spot.Axis].Label)} = {TablePlot.WithUnit(table.Axes[spot.Axis], spot.Place)}", Ink.Given); break;
            case SpotKind.AxisHead: builder.Text("given", WhatIfText.Named(table.Axes[spot.Axis]), Ink.Given); break;
            case SpotKind.ColumnHead or SpotKind.Heading: builder.Text("shown", WhatIfText.Named(table.Columns[spot.Column], session.Workbook.Head.Units), Ink.Strong); break;
        }
    }

    private static void Entry(DetailBuilder builder, Session session, WhatIfTable table, TableSpot spot)
    {
        WhatIfColumn column = table.Columns[spot.Column];
        int[] places = table.Places(spot.Scenario);
        builder.Text("with", string.Join(", ", table.Axes.Select((axis, i) => $"{PlainText.Of(axis.Label)} = {TablePlot.WithUnit(axis, places[i])}")), Ink.Given);
        string label = PlainText.Of(column.Label);
        if (column.Value(spot.Scenario) is { } value)
        {
            string shown = PrintedText.Of(value, column.Format, session.Workbook.Head.Units, column.IsCheck).ToString();
            bool fails = column.IsCheck && value is TruthValue { Value: false };
            builder.Text("value", column.IsCheck ? $"{label} {shown}" : $"{label} = {shown}", fails ? Ink.Bad : Ink.Strong);
        }
        else builder.Text("fault", $"{label}: {OriginText.Of(column.Fault(spot.Scenario)! with { Place = null })}", Ink.Bad);
    }

    private static void State(DetailBuilder builder, Session session, DrawnTable table)
    {
        if (table.Trouble is { } trouble) builder.Text("fault", PlainText.Of(trouble), Ink.Bad);
        if (!table.IsOld) return;
        if (table.IsStopped) builder.Text("stopped", table.Table is null ? "It was stopped before it was worked out." : "It was stopped: what is shown is of before the change.", Ink.Careful);
        else builder.Text("working", table.Table is null ? "It is being worked out." : "Something changed: it is being worked out again, what is shown is of before.", Ink.Careful);
    }
}
