using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>What a new file holds.</summary>
public static class NewWorkbook
{
    /// <summary>A workbook with a title, SI units and one empty sheet, as its canonical text reads.</summary>
    /// <param name="title">The title; line breaks become blanks, empty for none.</param>
    public static Workbook Empty(string title)
    {
        ArgumentNullException.ThrowIfNull(title);
        string line = CellTextWriter.OneLine(title).Trim();
        string head = line.Length == 0 ? "" : $"title {line}\n";
        return WorkbookText.Read($"screwsheet 1\n{head}units SI\n\nsheet Sheet\n") is WorkbookRead read
            ? read.Workbook
            : throw new ArgumentException("A title is text without half surrogate pairs.", nameof(title));
    }
}
