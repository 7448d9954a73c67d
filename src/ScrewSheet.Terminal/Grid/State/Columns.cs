using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>Widths of columns.</summary>
internal static class Columns
{
    /// <summary>The narrowest.</summary>
    public const int Least = 3;

    /// <summary>The widest on the screen.</summary>
    public const int Most = 120;

    /// <summary>The selected columns so many characters wider, or narrower.</summary>
    public static Session Widen(Session session, int by)
    {
        CellBlock block = session.Block;
        return Set(session, Enumerable.Range(block.First.Column, block.Columns), column => session.Width(column) + by);
    }

    /// <summary>The selected columns as wide as what stands in them asks for.</summary>
    public static Session Fit(Session session)
    {
        CellBlock block = session.Block;
        Dictionary<int, int> needed = [];
        foreach ((CellAddress at, Cell cell) in session.Sheet.Cells)
        {
            if (at.Column < block.First.Column || at.Column > block.Last.Column) continue;
            needed[at.Column] = Math.Max(needed.GetValueOrDefault(at.Column), CellFace.Of(session, new CellId(session.SheetName, at), cell).Needs);
        }
        return Set(session, needed.Keys, column => needed[column]);
    }

    /// <summary>One column to a width; drawn out further, that is the same change.</summary>
    public static Session Draw(Session session, int column, int width, bool further)
    {
        Session changed = Set(session, [column], _ => width);
        bool same = further && !session.Done.IsEmpty && session.Done.Peek().What == Word && !ReferenceEquals(changed, session);
        return same ? changed with { Done = session.Done } : changed;
    }

    private const string Word = "the width of columns";

    private static Session Set(Session session, IEnumerable<int> columns, Func<int, int> width)
    {
        ImmutableDictionary<int, int> widths = session.Sheet.Widths;
        foreach (int column in columns)
        {
            int wide = Math.Clamp(width(column), Least, Most);
            if (wide != session.Width(column)) widths = widths.SetItem(column, wide);
        }
        if (ReferenceEquals(widths, session.Sheet.Widths)) return session;
        Workbook workbook = session.Workbook;
        // the cells stay as they are, so no line of theirs need be looked at
        return session.Changed(workbook with { Sheets = workbook.Sheets.Replace(session.Sheet, session.Sheet with { Widths = widths }) }, Word);
    }

    /// <summary>The series a column is by name, or null.</summary>
    public static SheetColumn? NamedAt(Sheet sheet, int column) => sheet.Columns.FirstOrDefault(named => named.Column == column);

    /// <summary>The head of a column: its letters, and its name where that has room.</summary>
    public static string Head(Sheet sheet, int column, int width)
    {
        string letters = CellAddress.ColumnName(column);
        string whole = NamedAt(sheet, column) is { } named ? $"{letters} {PlainText.Of(named.Name)}" : letters;
        return DisplayWidth.Of(whole) <= width ? whole : letters;
    }
}
