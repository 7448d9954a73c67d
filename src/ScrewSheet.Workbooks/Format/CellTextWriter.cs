using System.Text;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>The canonical text of a cell: one blank between parts.</summary>
internal static class CellTextWriter
{
    /// <summary>The line of the file; of a cell in fault, the line as it stands.</summary>
    public static string Line(Cell cell) => cell.Content is BrokenContent broken ? broken.Text : $"{cell.Address} {Entry(cell)}";

    /// <summary>What the grid's entry line shows: the same without the address.</summary>
    public static string Entry(Cell cell)
    {
        if (cell.Content is BrokenContent broken) return AfterAddress(broken.Shown);
        StringBuilder text = new();
        if (cell.DeclaredType is not null) text.Append(cell.DeclaredType).Append(' ');
        if (cell.Name is not null) text.Append(cell.Name).Append(' ');
        if (cell.Format is not null) text.Append('[').Append(DisplayFormatText.Write(cell.Format)).Append("] ");
        text.Append(Content(cell.Content));
        if (cell.Remark is not null) text.Append(" // ").Append(OneLine(cell.Remark));
        return text.ToString().TrimEnd(' ');
    }

    /// <summary>A number and its unit.</summary>
    public static string Number(NumberLiteral number)
    {
        string numeral = NumberText.Exact(number.Value);
        return number.Unit is null ? numeral : $"{numeral} {number.Unit.Symbol}";
    }

    /// <summary>The text with every character that would end or hide in a line replaced by a blank.</summary>
    public static string OneLine(string text) =>
        text.Any(IsBreaking) ? string.Concat(text.Select(c => IsBreaking(c) ? ' ' : c)) : text;

    private static bool IsBreaking(char c) => (char.IsControl(c) && c != '\t') || c is '\u2028' or '\u2029';

    private static string Content(CellContent content) => content switch
    {
        NoteContent note => QuotedText.Write(note.Text),
        GivenContent given => Given(given),
        ResultContent { Kept: null } result => $"=> {OneLine(result.Expression)}",
        ResultContent result => $"=> {OneLine(result.Expression)} gives {OneLine(result.Kept)}",
        _ => throw new ArgumentException($"A cell cannot hold {content.GetType().Name}.", nameof(content)),
    };

    private static string Given(GivenContent given)
    {
        StringBuilder text = new("= ");
        text.Append(OneLine(given.Text));
        if (given.Tolerance is not null) text.Append(" ± ").Append(OneLine(given.Tolerance.Text));
        if (given.Within is not null) text.Append(" within ").Append(OneLine(given.Within.Text));
        if (given.Source is not null) text.Append(" source ").Append(QuotedText.Write(given.Source));
        return text.ToString();
    }

    private static string AfterAddress(string line)
    {
        string text = line.TrimStart(' ', '\t');
        int end = CellLine.AddressEnd(text, 0);
        return CellAddress.TryParse(text.AsSpan(0, end), out _) ? text[end..].TrimStart(' ', '\t') : text;
    }
}
