using ClosedXML.Excel;
using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Exports.Xlsx.Naming;
using ScrewSheet.Exports.Xlsx.Pages;

namespace ScrewSheet.Exports.Xlsx.Sheets;

/// <summary>
/// Writes comments in boxes that have room for their words. When it places a box, ClosedXML makes the rows and columns the box covers, and every cell where one of these crosses
/// a column of given width; on a sheet of few cells far apart that would be very many, so there all boxes stand at the top.
/// </summary>
internal sealed class CommentWriter
{
    private const int Wide = 52, Shortest = 3, Tallest = 24, MostCrossings = 2_000_000;
    private const double LineHeight = 12.75;

    private readonly string author;
    private readonly bool isScattered;

    /// <summary>For a sheet.</summary>
    /// <param name="page">The sheet.</param>
    /// <param name="author">Who speaks.</param>
    public CommentWriter(Page page, string author)
    {
        this.author = author;
        long rows = page.Cells.Where(cell => cell.Comment is not null).Select(cell => cell.At.Row).Distinct().LongCount();
        long columns = page.Cells.Select(cell => cell.At.Column).Concat(page.Widths.Keys).Distinct().LongCount();
        isScattered = rows * columns > MostCrossings && rows * columns > 8L * page.Cells.Count;
    }

    /// <summary>Adds a comment to a cell.</summary>
    public void Add(IXLCell cell, string words)
    {
        IXLComment comment = cell.Comment;
        comment.Author = WrittenText.Of(author);
        comment.AddText(WrittenText.Of(words));
        comment.Style.Size.SetWidth(Wide).Size.SetHeight(LineHeight * Lines(words));
        // a column is at least one character wide, so that the box ends before the sheet does
        if (comment.Position.Column > PlacedCells.LastColumn - Wide - 1) comment.Position.Column = PlacedCells.LastColumn - Wide - 1;
        if (isScattered) comment.Position.Row = 1;
    }

    private static int Lines(string words) => Math.Clamp(words.Split('\n').Sum(line => 1 + (line.Length / Wide)) + 1, Shortest, Tallest);
}
