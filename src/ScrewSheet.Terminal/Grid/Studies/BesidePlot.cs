using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>Room for a small plot.</summary>
/// <param name="Cells">The cells it has.</param>
/// <param name="Least">The least value drawn, in coherent SI.</param>
/// <param name="Most">The greatest.</param>
internal readonly record struct BesideRoom(CellBlock Cells, double Least, double Most);

/// <summary>The small plot beside a table of one given: for each row a point where its first figure lies between the least and the greatest. It lies over empty cells and hides none.</summary>
internal static class BesidePlot
{
    private const int Least = 14, Most = 42, MostRows = 2000;

    /// <summary>Where it lies and between which values; null where there is no room or nothing to draw.</summary>
    public static BesideRoom? RoomOf(DrawnTable table, Session session, IReadOnlyList<DrawnTable> all)
    {
        if (table.Table is not { Axes.Length: 1, Scenarios: >= 2 and < MostRows } worked || Column(worked) is not { } drawn) return null;
        int column = table.Area.Last.Column, wide = 0;
        while (wide < Most && column < CellAddress.LastColumn && IsFree(column + 1)) wide += session.Width(++column);
        if (wide < Least) return null;
        double[] values = [.. Enumerable.Range(0, worked.Scenarios).Select(scenario => SiValue.Of(drawn.Value(scenario))).OfType<double>()];
        CellBlock room = new(new CellAddress(table.Area.Last.Column + 1, table.Area.First.Row), new CellAddress(column, table.Area.Last.Row));
        return values.Length < 2 ? null : new BesideRoom(room, values.Min(), values.Max());

        bool IsFree(int at)
        {
            CellBlock strip = new(new CellAddress(at, table.Area.First.Row), new CellAddress(at, table.Area.Last.Row));
            return !strip.CellsOf(session.Sheet).Any() && !all.Any(other => SheetTables.Overlaps(other.Area, strip));
        }
    }

    /// <summary>The piece of it at a cell.</summary>
    public static TableFace Face(DrawnTable table, Session session, CellAddress at)
    {
        (CellBlock room, double least, double most) = table.Beside!.Value;
        WhatIfColumn column = Column(table.Table!)!;
        int wide = Math.Min(Most, Enumerable.Range(room.First.Column, room.Columns).Sum(session.Width)) - 4, scenario = at.Row - room.First.Row - 1;
        string line;
        if (scenario < 0) line = Ends(column, session, least, most, wide + 2);
        else if (SiValue.Of(column.Value(scenario)) is { } si) line = "│" + new string(' ', (int)Math.Round((si - least) / (most > least ? most - least : 1) * (wide - 1))) + "•";
        else line = "│";
        line = scenario < 0 ? line : DisplayWidth.PadRight(line, wide + 1) + "│";
        return TableFace.Running(line, session, room, at, table.IsOld || scenario < 0 ? Ink.Faint : Ink.Plain);
    }

    /// <summary>The first shown cell with figures.</summary>
    public static WhatIfColumn? Column(WhatIfTable table) => table.Columns.FirstOrDefault(column => column.Type is NumberType or QuantityType);

    private static string Ends(WhatIfColumn column, Session session, double least, double most, int wide)
    {
        StudyFigures figures = new(column.Type!, column.Format, session.Workbook.Head.Units);
        string low = QuantityText.Format(least, figures.Unit, column.Format?.Digits).Number, high = QuantityText.Format(most, figures.Unit, column.Format?.Digits).Number;
        string name = Fit.Cut(WhatIfText.Named(column, session.Workbook.Head.Units), wide - DisplayWidth.Of(low) - DisplayWidth.Of(high) - 2);
        int before = Math.Max(DisplayWidth.Of(low) + 1, (wide - DisplayWidth.Of(name)) / 2);
        string left = DisplayWidth.PadRight(low, before) + name;
        return left + DisplayWidth.PadLeft(high, Math.Max(DisplayWidth.Of(high) + 1, wide - DisplayWidth.Of(left)));
    }
}
