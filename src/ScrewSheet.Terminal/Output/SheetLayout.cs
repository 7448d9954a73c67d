using static ScrewSheet.Terminal.Output.DisplayWidth;

namespace ScrewSheet.Terminal.Output;

/// <summary>
/// Lays the cells of a sheet out in a width. Where there is room, a note stands on the line of the cell right of it;
/// in a narrow terminal each cell has lines of its own. A figure is never cut.
/// </summary>
internal sealed class SheetLayout
{
    private const int NarrowestLabel = 18;
    private const int Gap = 2;

    private readonly IReadOnlyList<ShownCell> cells;
    private readonly int width, address, name, value, unit, beside;

    private SheetLayout(IReadOnlyList<ShownCell> cells, int width)
    {
        this.cells = cells;
        this.width = width;
        address = cells.Select(cell => Of(cell.Address.ToString())).DefaultIfEmpty(0).Max();
        name = Widest(cell => cell.Name);
        value = Widest(cell => cell.Value);
        unit = Widest(cell => cell.Unit);
        beside = Widest(cell => cell.Beside);
    }

    /// <summary>The lines of one sheet.</summary>
    public static IEnumerable<StyledLine> Lines(IReadOnlyList<ShownCell> cells, int width) => new SheetLayout(cells, width).Lines();

    private int Figures => value + (unit > 0 ? 1 + unit : 0);

    private int Fixed => address + Gap + (name > 0 ? name + Gap : 0) + Figures + (beside > 0 ? Gap + beside : 0);

    private IEnumerable<StyledLine> Lines()
    {
        int room = width - Fixed - Gap;
        return room >= NarrowestLabel ? Wide(Math.Min(room, LongestLabel())) : Fixed <= width ? cells.SelectMany(Aligned) : cells.SelectMany(Stacked);
    }

    private int LongestLabel() => Enumerable.Range(1, Math.Max(0, cells.Count - 1)).Where(IsLabelled).Select(at => Of(cells[at - 1].Note!)).DefaultIfEmpty(0).Max();

    // a note is the label of the next cell when that stands right of it in the same row
    private bool IsLabelled(int at) =>
        at > 0 && cells[at].Note is null && cells[at - 1] is { Note: not null, Below.Count: 0 } note && note.Address.Row == cells[at].Address.Row && note.Address.Column < cells[at].Address.Column;

    private IEnumerable<StyledLine> Wide(int label)
    {
        for (int at = 0; at < cells.Count; at++)
        {
            if (at + 1 < cells.Count && IsLabelled(at + 1)) continue;
            IEnumerable<StyledLine> lines = cells[at].Note is null ? Labelled(cells[at], IsLabelled(at) ? cells[at - 1].Note! : "", label) : NoteLines(cells[at]);
            foreach (StyledLine line in lines) yield return line;
        }
    }

    private IEnumerable<StyledLine> Labelled(ShownCell cell, string note, int label)
    {
        IReadOnlyList<string> words = Wrapping.Lines(note, Math.Max(1, label));
        string labelled = label == 0 ? "" : PadRight(words[0], label + Gap);
        yield return new StyledLine((PadRight(cell.Address.ToString(), address + Gap) + labelled + Row(cell)).TrimEnd(), cell.Tone);
        foreach (string more in words.Skip(1)) yield return new StyledLine(new string(' ', address + Gap) + more);
        foreach (StyledLine line in Below(cell)) yield return line;
    }

    private IEnumerable<StyledLine> Aligned(ShownCell cell)
    {
        if (cell.Note is not null) return NoteLines(cell);
        return Below(cell).Prepend(new StyledLine((PadRight(cell.Address.ToString(), address + Gap) + Row(cell)).TrimEnd(), cell.Tone));
    }

    private IEnumerable<StyledLine> Stacked(ShownCell cell)
    {
        if (cell.Note is not null) return NoteLines(cell);
        IEnumerable<string> parts = new[] { cell.Name, $"{cell.Value} {cell.Unit}".Trim(), cell.Beside }.Where(part => part.Length > 0);
        return Packed(cell, parts).Concat(Below(cell));
    }

    // as many parts on a line as it holds, each whole
    private IEnumerable<StyledLine> Packed(ShownCell cell, IEnumerable<string> parts)
    {
        string line = PadRight(cell.Address.ToString(), address);
        foreach (string part in parts)
        {
            if (Of(line) > address && Of(line) + Gap + Of(part) > width)
            {
                yield return new StyledLine(line, cell.Tone);
                line = new string(' ', address);
            }
            line += new string(' ', Gap) + part;
        }
        yield return new StyledLine(line.TrimEnd(), cell.Tone);
    }

    private string Row(ShownCell cell)
    {
        string named = name > 0 ? PadRight(cell.Name, name + Gap) : "";
        string figure = PadLeft(cell.Value, value) + (unit > 0 ? " " + PadRight(cell.Unit, unit) : "");
        return named + figure + (cell.Beside.Length > 0 ? new string(' ', Gap) + cell.Beside : "");
    }

    private IEnumerable<StyledLine> NoteLines(ShownCell cell) =>
        Wrapping.Hanging(PadRight(cell.Address.ToString(), address + Gap), cell.Note!, width).Select(line => new StyledLine(line)).Concat(Below(cell));

    private IEnumerable<StyledLine> Below(ShownCell cell) =>
        from remark in cell.Below
        let lead = new string(' ', address + Gap) + (remark.Word.Length > 0 ? remark.Word + ": " : "")
        from line in Wrapping.Hanging(lead, remark.Text, width)
        select new StyledLine(line, remark.Tone);

    private int Widest(Func<ShownCell, string> part) => cells.Where(cell => cell.Note is null).Select(cell => Of(part(cell))).DefaultIfEmpty(0).Max();
}
