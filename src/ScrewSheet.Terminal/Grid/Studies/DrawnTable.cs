using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>A what-if table where it lies on the sheet.</summary>
/// <param name="Block">As written.</param>
/// <param name="Index">Its place among the tables of the sheet.</param>
/// <param name="Table">Its entries; null where there are none yet, or it cannot be drawn.</param>
/// <param name="Area">The cells it covers; its first cell alone where it is not drawn.</param>
internal sealed record DrawnTable(WhatIfBlock Block, int Index, WhatIfTable? Table, CellBlock Area)
{
    /// <summary>Why it is not drawn; null where it is.</summary>
    public string? Trouble { get; init; }

    /// <summary>True where the entries are of before a change, or there are none yet.</summary>
    public bool IsOld { get; init; }

    /// <summary>True where working it out was stopped.</summary>
    public bool IsStopped { get; init; }

    /// <summary>True where the sheet ends before the table does.</summary>
    public bool IsCut { get; init; }

    /// <summary>How many columns beyond it its headings run on where they have no room within: those in which nothing stands there.</summary>
    public int Overhang { get; init; }

    /// <summary>The cells above it with its words, or null.</summary>
    public CellBlock? Title { get; init; }

    /// <summary>The room beside it for its plot, or null.</summary>
    public BesideRoom? Beside { get; init; }

    /// <summary>What an address of the table is.</summary>
    public TableSpot Spot(CellAddress at)
    {
        if (Table is null) return default;
        int row = at.Row - Area.First.Row, column = at.Column - Area.First.Column, axes = Table.Axes.Length;
        if (axes != 2)
        {
            if (row == 0) return column < axes ? new TableSpot(SpotKind.AxisHead, Axis: column) : new TableSpot(SpotKind.ColumnHead, Column: column - axes);
            return column < axes ? new TableSpot(SpotKind.AxisValue, column, Table.Places(row - 1)[column]) : new TableSpot(SpotKind.Entry, Column: column - axes, Scenario: row - 1);
        }
        (int shown, int within) = Math.DivRem(row, Table.Axes[0].Values.Length + 2);
        if (within == 0) return new TableSpot(SpotKind.Heading, Column: shown);
        if (within == 1) return column == 0 ? new TableSpot(SpotKind.Blank) : new TableSpot(SpotKind.AxisValue, 1, column - 1);
        return column == 0 ? new TableSpot(SpotKind.AxisValue, 0, within - 2) : new TableSpot(SpotKind.Entry, Column: shown, Scenario: Table.Scenario(within - 2, column - 1));
    }

    /// <summary>True for a place beside the table onto which a heading runs.</summary>
    public bool IsOverhang(CellAddress at) => at.Column > Area.Last.Column && at.Column <= Area.Last.Column + Overhang && at.Row >= Area.First.Row && at.Row <= Area.Last.Row && Spot(at).Kind == SpotKind.Heading;

    /// <summary>What is drawn at an address of it.</summary>
    public TableFace Face(Session session, CellAddress at)
    {
        if (Trouble is not null) return new TableFace(CellFace.FaultMark, "fault", Ink.Bad, false);
        if (Table is null) return new TableFace(CellFace.PendingMark, IsStopped ? "stopped" : "", Ink.Faint, false);
        TableFace face = Drawn(session, at);
        if (!IsOld) return face;
        TableFace old = face with { Ink = Ink.Faint };
        if (at != Area.First) return old;
        return face.IsPiece ? old with { Text = CellFace.PendingMark + face.Text[1..] } : old with { Mark = CellFace.PendingMark };
    }

    private TableFace Drawn(Session session, CellAddress at)
    {
        var units = session.Workbook.Head.Units;
        TableSpot spot = Spot(at);
        switch (spot.Kind)
        {
            case SpotKind.Heading:
                return TableFace.Running(WhatIfText.Heading(Table!, Table!.Columns[spot.Column], units), session, Area with { Last = Area.Last with { Column = Area.Last.Column + Overhang } }, at, Ink.Strong);
            case SpotKind.AxisHead: return new TableFace(' ', WhatIfText.Named(Table!.Axes[spot.Axis]), Ink.Strong, Table.Axes[spot.Axis].IsNumeric) { IsCut = true };
            case SpotKind.ColumnHead: return new TableFace(' ', WhatIfText.Named(Table!.Columns[spot.Column], units), Ink.Strong, IsFigure(Table.Columns[spot.Column])) { IsCut = true };
            case SpotKind.AxisValue: return new TableFace(CellFace.GivenMark, WhatIfText.Figure(Table!.Axes[spot.Axis], spot.Place), Ink.Given, Table.Axes[spot.Axis].IsNumeric);
            case SpotKind.Entry: return Entry(Table!.Columns[spot.Column], spot.Scenario, units);
            default: return new TableFace(' ', "", Ink.Plain, false);
        }
    }

    private static TableFace Entry(WhatIfColumn column, int scenario, Quantities.Units.UnitSystem units)
    {
        string text = WhatIfText.Entry(column, scenario, units);
        return column.Value(scenario) switch
        {
            null => new TableFace(CellFace.FaultMark, text, Ink.Bad, false),
            TruthValue truth when column.IsCheck => truth.Value ? new TableFace(CellFace.HoldsMark, text, Ink.Good, false) : new TableFace(CellFace.FailsMark, text, Ink.Bad, false),
            NumberValue or QuantityValue => new TableFace(' ', text, Ink.Plain, true),
            _ => new TableFace(' ', text, Ink.Plain, false) { IsCut = true },
        };
    }

    private static bool IsFigure(WhatIfColumn column) => column.Type is Workbooks.Expressions.NumberType or Workbooks.Expressions.QuantityType;
}

/// <summary>What a cell of a table is.</summary>
internal enum SpotKind
{
    /// <summary>Nothing.</summary>
    Blank,

    /// <summary>The line above the entries of a shown cell.</summary>
    Heading,

    /// <summary>The name of a varied given.</summary>
    AxisHead,

    /// <summary>The name of a shown cell.</summary>
    ColumnHead,

    /// <summary>A value a given takes.</summary>
    AxisValue,

    /// <summary>An entry.</summary>
    Entry,
}

/// <summary>A cell of a table.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Axis">Which varied given.</param>
/// <param name="Place">Which of its values.</param>
/// <param name="Column">Which shown cell.</param>
/// <param name="Scenario">Which scenario.</param>
internal readonly record struct TableSpot(SpotKind Kind, int Axis = 0, int Place = 0, int Column = 0, int Scenario = 0);
