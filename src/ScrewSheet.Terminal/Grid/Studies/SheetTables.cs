using System.Collections.Immutable;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>How the what-if tables lie on a sheet.</summary>
/// <param name="Tables">In the order of the file.</param>
internal sealed record SheetTables(ImmutableArray<DrawnTable> Tables)
{
    /// <summary>Of the sheet the reader is on.</summary>
    public static SheetTables Of(Session session, TableResults results)
    {
        var tables = ImmutableArray.CreateBuilder<DrawnTable>();
        for (int index = 0; index < session.Sheet.WhatIfs.Length; index++) tables.Add(Place(session, results, index, tables));
        return new SheetTables([.. tables.Select(table => table with { Beside = BesidePlot.RoomOf(table, session, tables), Overhang = Overhang(table, session.Sheet, tables), Title = TitleRoom(table, session.Sheet, tables) })]);
    }

    /// <summary>The table that covers an address; null where none does.</summary>
    public DrawnTable? At(CellAddress at) => Tables.FirstOrDefault(table => table.Area.Contains(at));

    /// <summary>What is drawn at an address that holds no cell, or null.</summary>
    public TableFace? Face(Session session, CellAddress at)
    {
        foreach (DrawnTable table in Tables)
        {
            if (table.Area.Contains(at) || table.IsOverhang(at)) return table.Face(session, at);
            if (table.Title is { } title && title.Contains(at)) return TableFace.Running(PlainText.Of(table.Block.Title!), session, title, at, Screen.Ink.Strong);
            if (table.Beside is { } beside && beside.Cells.Contains(at)) return BesidePlot.Face(table, session, at);
        }
        return null;
    }

    /// <summary>What other programs are given of an address that holds no cell: figures and words, without marks.</summary>
    public string Text(Session session, CellAddress at)
    {
        if (At(at) is not { } table) return "";
        return table.Spot(at).Kind != SpotKind.Heading ? table.Face(session, at).Text : at.Column == table.Area.First.Column ? WhatIfText.Heading(table.Table!, table.Table!.Columns[table.Spot(at).Column], session.Workbook.Head.Units) : "";
    }

    /// <summary>A corner moved out so far that all tables lie within it.</summary>
    public CellAddress Extent(CellAddress corner) => Tables.Aggregate(corner, (far, table) => new CellAddress(Math.Max(far.Column, table.Area.Last.Column), Math.Max(far.Row, table.Area.Last.Row)));

    /// <summary>The cells a table covers, and why it is not drawn where it is not: a table never hides a cell, nor another table.</summary>
    private static DrawnTable Place(Session session, TableResults results, int index, IReadOnlyList<DrawnTable> before)
    {
        WhatIfBlock block = session.Sheet.WhatIfs[index];
        TableInputs? inputs = session.Known?.Tables.FirstOrDefault(known => known.Index == index && known.IsOf(session.SheetName, block));
        TableResult? exact = inputs is null ? null : results.Of(inputs), result = exact ?? results.Before(session.SheetName, block);
        WhatIfTable? table = result?.Outcome.Answer;
        CellBlock room = new(block.Anchor, table is null ? block.Anchor : Corner(block.Anchor, table.Shape));
        string? trouble = result?.Outcome.Fault?.Sentence ?? table?.Shape.CollisionOn(session.Sheet, block.Anchor)?.Sentence
            ?? (session.Sheet.Cells.ContainsKey(block.Anchor) ? new WhatIfShape(1, 1).CollisionOn(session.Sheet, block.Anchor)!.Sentence : null)
            ?? (before.FirstOrDefault(other => other.Trouble is null && Overlaps(other.Area, room)) is { } over ? Overlap(over, block.Anchor) : null);
        return new DrawnTable(block, index, trouble is null ? table : null, trouble is null ? room : new CellBlock(block.Anchor, block.Anchor))
        {
            Trouble = trouble, IsOld = exact is null, IsStopped = inputs is not null && results.IsStopped(inputs),
            IsCut = trouble is null && table is not null && block.Anchor.Row + table.Shape.Rows - 1 > CellAddress.LastRow,
        };
    }

    /// <summary>Why a table cannot be drawn where another is.</summary>
    public static string Overlap(DrawnTable other, CellAddress anchor) => $"The table at {other.Block.Anchor} is drawn where the table at {anchor} would be. Move one of them.";

    /// <summary>True where two blocks have a cell in common.</summary>
    public static bool Overlaps(CellBlock one, CellBlock other) =>
        one.First.Column <= other.Last.Column && other.First.Column <= one.Last.Column && one.First.Row <= other.Last.Row && other.First.Row <= one.Last.Row;

    /// <summary>The last cell of a table, no further than the sheet goes.</summary>
    public static CellAddress Corner(CellAddress anchor, WhatIfShape shape) =>
        new(Math.Min(CellAddress.LastColumn, anchor.Column + shape.Columns - 1), Math.Min(CellAddress.LastRow, anchor.Row + shape.Rows - 1));

    private static int Overhang(DrawnTable table, Sheet sheet, IReadOnlyList<DrawnTable> all)
    {
        const int most = 3;
        if (table.Table is not { Axes.Length: 2 } worked) return 0;
        int[] rows = [.. Enumerable.Range(0, worked.Columns.Length).Select(shown => table.Area.First.Row + (shown * (worked.Axes[0].Values.Length + 2)))];
        bool IsFree(int column) => column <= CellAddress.LastColumn && rows.All(row => !sheet.Cells.ContainsKey(new CellAddress(column, row)) && !all.Any(other => other.Area.Contains(new CellAddress(column, row))));
        int free = 0;
        while (free < most && IsFree(table.Area.Last.Column + free + 1)) free++;
        return free;
    }

    /// <summary>Where a table's words are drawn: above it, as far as nothing stands there.</summary>
    private static CellBlock? TitleRoom(DrawnTable table, Sheet sheet, IReadOnlyList<DrawnTable> all)
    {
        if (string.IsNullOrEmpty(table.Block.Title) || table.Trouble is not null || table.Area.First.Row == 1) return null;
        CellAddress first = table.Area.First with { Row = table.Area.First.Row - 1 };
        bool IsFree(CellAddress at) => !sheet.Cells.ContainsKey(at) && !all.Any(other => other.Area.Contains(at));
        int last = first.Column, most = Math.Max(table.Area.Last.Column, first.Column + 3);
        if (!IsFree(first)) return null;
        while (last < most && IsFree(first with { Column = last + 1 })) last++;
        return new CellBlock(first, first with { Column = last });
    }
}
