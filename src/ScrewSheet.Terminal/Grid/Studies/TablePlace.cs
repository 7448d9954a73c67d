using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>Where a table may stand on a sheet.</summary>
internal static class TablePlace
{
    // a line for the words above it, and one that stays free
    private const int Gap = 3;

    /// <summary>A free place: below the last table, else at the right of everything.</summary>
    public static CellAddress Suggest(Session session, WhatIfShape shape)
    {
        SheetTables tables = session.Tables.On(session);
        if (tables.Tables is [.., var last])
        {
            CellAddress below = new(last.Block.Anchor.Column, last.Area.Last.Row + Gap);
            if (Problem(session, below, shape, null) is null) return below;
        }
        int column = tables.Tables.Select(table => table.Area.Last.Column).Append(session.Sheet.Cells.IsEmpty ? 0 : Moves.Extent(session.Sheet).Column).Max();
        return new CellAddress(Math.Min(CellAddress.LastColumn, column + 2), 2);
    }

    /// <summary>Reads an address and says why a table of that shape cannot stand there; null where it can.</summary>
    public static string? Read(Session session, string typed, WhatIfShape shape, int? own, out CellAddress anchor) =>
        CellAddress.TryParse(typed.Trim().ToUpperInvariant(), out anchor) && anchor.IsValid ? Problem(session, anchor, shape, own) : $"{PlainText.Of(typed.Trim())} is no address. Write one like D2.";

    /// <summary>Why a table of that shape cannot stand there; null where it can.</summary>
    /// <param name="session">The session.</param>
    /// <param name="anchor">Its top left cell.</param>
    /// <param name="shape">Its shape.</param>
    /// <param name="own">The table of the sheet that it is, or null for a new one.</param>
    public static string? Problem(Session session, CellAddress anchor, WhatIfShape shape, int? own)
    {
        if (anchor.Column + shape.Columns - 1 > CellAddress.LastColumn || anchor.Row + shape.Rows - 1 > CellAddress.LastRow) return $"From {anchor} on the sheet has no room for it.";
        if (shape.CollisionOn(session.Sheet, anchor) is { } fault) return fault.Sentence;
        CellBlock room = new(anchor, SheetTables.Corner(anchor, shape));
        DrawnTable? other = session.Tables.On(session).Tables.FirstOrDefault(table => table.Index != own && SheetTables.Overlaps(table.Area, room));
        return other is null ? null : SheetTables.Overlap(other, anchor);
    }
}
