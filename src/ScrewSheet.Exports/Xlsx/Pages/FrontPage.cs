using System.Globalization;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>The first sheet: what the file is, what its reader must know before trusting a figure, how to read it, and which figures do not follow a change.</summary>
internal static class FrontPage
{
    private const int MostLines = 2_000;

    /// <summary>The sheet; made last, when everything is counted.</summary>
    public static Page Make(Book book)
    {
        Page page = new(book.FrontName);
        int row = 0;
        Head head = book.Calculation.Workbook.Head;
        Line(head.Title.Length > 0 ? head.Title : "Workbook", Role.Title);
        if (head.Author.Length > 0) Line($"Author: {head.Author}", Role.Note);
        if (head.Date.Length > 0) Line($"Date: {head.Date}", Role.Note);
        Block("Cautions", [.. book.Request.Warnings, .. CautionsOf(book.Calculation), "Cautions are those of the values as exported; a given typed over here may need more of them."]);
        Block("Faults", [.. FaultsOf(book.Calculation), .. book.Left]);
        row++;
        Line("How to read this file", Role.Heading);
        Legend("8.5", Role.Given, "A given: in a box. Type over it, in the unit shown; its name is a defined name of the file.");
        Legend("8.5", Role.Live, "A result that follows: a formula. It takes each number into coherent SI (N, m, kg, s, rad) and the result back into the unit shown.");
        Legend("8.5", Role.Fixed, "A result that does not follow: a value as exported, in italics in a dotted box. Its comment says why.");
        Line("The comment of a cell holds its line of the workbook, the source of its formulas, and what must be known about it.", Role.Note);
        if (!book.Workings.IsEmpty) Line($"Parts of formulas that are used more than once stand on the sheet {book.Workings.Page.Name}.", Role.Note);
        Line(Counted(book), Role.Note);
        Block("Results that are values", [.. book.FixedResults.Select(result => $"{result.Label}: {result.Why}")]);
        page.Widths[1] = 24;
        page.Widths[2] = 100;
        return page;

        void Line(string text, Role role) => page.Add(new PageCell(new CellAddress(1, ++row), Values.Words(text), role));

        void Legend(string sample, Role role, string text)
        {
            Line(sample, role);
            page.Add(new PageCell(new CellAddress(2, row), Values.Words(text), Role.Note));
        }

        void Block(string heading, IReadOnlyList<string> lines)
        {
            if (lines.Count == 0) return;
            row++;
            Line(heading, Role.Heading);
            foreach (string line in lines.Take(MostLines)) Line(line, Role.Note);
            if (lines.Count > MostLines) Line(string.Create(CultureInfo.InvariantCulture, $"and {lines.Count - MostLines} more"), Role.Note);
        }
    }

    private static string Counted(Book book)
    {
        string entries = book.Entries == 0 ? "" : $"; {Count(book.LiveEntries)} of {Count(book.Entries)} entries of tables";
        return $"{Count(book.LiveResults)} of {Count(book.Results)} results follow{entries}.";
    }

    private static string Count(int count) => count.ToString("#,0", CultureInfo.InvariantCulture);

    private static IEnumerable<string> CautionsOf(Calculation calculation) =>
        (from sheet in calculation.Workbook.Sheets
         from cell in calculation.Of(sheet)
         from caution in cell.Cautions
         where caution.Origin is null
         group Book.Label(cell) by caution.Message into same
         select $"{same.Key} ({string.Join(", ", same.Take(5))}{(same.Count() > 5 ? " and more" : "")})").Take(MostLines);

    private static IEnumerable<string> FaultsOf(Calculation calculation) =>
        [.. calculation.Faults.Select(fault => fault.Sentence), .. from sheet in calculation.Workbook.Sheets from cell in calculation.Of(sheet) where cell.Fault is { Cause: null } select $"{Book.Label(cell)}: {cell.Fault!.Sentence}"];
}
