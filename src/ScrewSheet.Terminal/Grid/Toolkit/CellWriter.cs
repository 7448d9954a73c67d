using System.Drawing;
using ScrewSheet.Terminal.Output;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Text;
using Terminal.Gui.ViewBase;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace ScrewSheet.Terminal.Grid.Toolkit;

/// <summary>
/// Writes characters straight into the screen's buffer and marks only those that changed, so that a moved cursor sends a few bytes and not a screen.
/// It draws over the whole view and knows of nothing lying on it.
/// </summary>
internal readonly ref struct CellWriter
{
    private static readonly string[] Ascii = [.. Enumerable.Range(0, 128).Select(code => code is < 32 or 127 ? " " : ((char)code).ToString())];
    private readonly Cell[,] cells;
    private readonly bool[] dirty;
    private readonly int left, top, width, height;

    /// <summary>Over a view.</summary>
    public CellWriter(View view)
    {
        IDriver driver = view.App!.Driver!;
        cells = driver.Contents!;
        dirty = driver.GetOutputBuffer().DirtyLines;
        Point origin = view.ViewportToScreen(Point.Empty);
        (left, top) = (origin.X, origin.Y);
        width = Math.Min(view.Viewport.Width, cells.GetLength(1) - left);
        height = Math.Min(view.Viewport.Height, cells.GetLength(0) - top);
    }

    /// <summary>Writes a text into so many columns; what has no room is left out, and where the toolkit counts fewer columns than we do, blanks make up for it: what stands beside stays in its place.</summary>
    /// <returns>The columns.</returns>
    public int Put(int x, int y, string text, int columns, in Attribute attribute)
    {
        if (y < 0 || y >= height) return columns;
        if (System.Text.Ascii.IsValid(text)) return PutAscii(x, y, text, attribute);
        for (int used = PutWide(x, y, text, columns, attribute); used < columns && x + used < width; used++) Set(left + x + used, top + y, " ", attribute);
        return columns;
    }

    private int PutAscii(int x, int y, string text, in Attribute attribute)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (x + i >= 0 && x + i < width) Set(left + x + i, top + y, Ascii[text[i]], attribute);
        }
        return text.Length;
    }

    private int PutWide(int x, int y, string text, int columns, in Attribute attribute)
    {
        int used = 0;
        foreach (string grapheme in GraphemeHelper.GetGraphemes(text))
        {
            // what steers a terminal or is not seen was shown by number long before; should any come here, it goes no further
            string shown = grapheme.EnumerateRunes().Any(PlainText.IsHidden) ? " " : grapheme;
            int wide = shown.GetColumns(), at = x + used;
            if (used + wide > columns) break;
            used += wide;
            if (wide == 0 || at < 0 || at + wide > width) continue;
            Set(left + at, top + y, shown, attribute);
            if (wide == 2)
            {
                ref Cell second = ref cells[top + y, left + at + 1];
                second.Attribute = attribute;
                second.Grapheme = " ";
                second.IsDirty = false;
            }
        }
        return used;
    }

    private void Set(int x, int y, string grapheme, in Attribute attribute)
    {
        ref Cell cell = ref cells[y, x];
        if (cell.Attribute == attribute && cell.Grapheme == grapheme) return;
        cell.Attribute = attribute;
        cell.Grapheme = grapheme;
        cell.IsDirty = true;
        dirty[y] = true;
    }
}
