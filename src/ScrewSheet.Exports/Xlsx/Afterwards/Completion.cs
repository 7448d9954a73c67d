using System.IO.Compression;
using DocumentFormat.OpenXml.ExtendedProperties;
using DocumentFormat.OpenXml.Packaging;
using ScrewSheet.Exports.Xlsx.Naming;
using ScrewSheet.Exports.Xlsx.Pages;
using ScrewSheet.Workbooks.Model;
using DefinedName = DocumentFormat.OpenXml.Spreadsheet.DefinedName;
using DefinedNames = DocumentFormat.OpenXml.Spreadsheet.DefinedNames;
using Sheet = DocumentFormat.OpenXml.Spreadsheet.Sheet;

namespace ScrewSheet.Exports.Xlsx.Afterwards;

/// <summary>
/// What ClosedXML has no way to write is added to its finished package with the Open XML SDK, and nothing else:
/// <list type="bullet">
/// <item>the present value beside each formula. It has no way to be told one: it works formulas out anew, as far as it knows their functions, or writes none, and programs that
/// show a file without calculating would show empty cells;</item>
/// <item>numbers with all their digits (it keeps fifteen) and the standard's <c>#N/A</c> (it has no errors as values);</item>
/// <item>charts, which it does not have;</item>
/// <item>comments: it looks for a free number for each among all there are, and makes every cell their boxes cover, so that a hundred thousand of them take four times as long
/// and a gigabyte;</item>
/// <item>defined names: it compares each new one with all there are, so that ten thousand of them take longer than their cells;</item>
/// <item>who made the file, and no date: it names another program, takes the clock where no date is given, and the package beneath it draws its identifiers by lot.</item>
/// </list>
/// </summary>
internal static class Completion
{
    // others than ClosedXML gives out, which are rId and a number
    private const string BookRelation = "rIdBook", ApplicationRelation = "rIdApplication", DescriptionRelation = "rIdDescription";

    // the earliest a package can hold
    private static readonly DateTimeOffset Never = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Completes a package.</summary>
    /// <param name="package">The package, which is changed.</param>
    /// <param name="pages">What its sheets show, in their order.</param>
    /// <param name="names">What the defined names mean.</param>
    /// <param name="title">The title of the file.</param>
    /// <param name="author">Its author.</param>
    public static void Of(Stream package, IReadOnlyList<Page> pages, IEnumerable<(string Name, string Sheet, CellAddress At)> names, string title, string author)
    {
        using (SpreadsheetDocument document = SpreadsheetDocument.Open(package, isEditable: true))
        {
            WorkbookPart book = document.WorkbookPart!;
            Sheet[] sheets = [.. book.Workbook.Sheets!.Elements<Sheet>()];
            for (int i = 0; i < pages.Count; i++) Complete((WorksheetPart)book.GetPartById(sheets[i].Id!), pages[i], author);
            book.Workbook.DefinedNames = Names(names);
            Describe(document, title, author);
        }
        using ZipArchive parts = new(package, ZipArchiveMode.Update, leaveOpen: true);
        foreach (ZipArchiveEntry part in parts.Entries) part.LastWriteTime = Never;
    }

    private static void Complete(WorksheetPart part, Page page, string author)
    {
        string? charts = ChartWriter.Add(part, page.Charts), comments = CommentWriter.Add(part, page, author);
        using MemoryStream saved = new();
        using (Stream stream = part.GetStream(FileMode.Open, FileAccess.Read)) stream.CopyTo(saved);
        saved.Position = 0;
        using Stream completed = part.GetStream(FileMode.Create, FileAccess.Write);
        new PresentValues(page, charts, comments).Copy(saved, completed);
    }

    private static DefinedNames? Names(IEnumerable<(string Name, string Sheet, CellAddress At)> names)
    {
        DefinedName[] defined = [.. names.OrderBy(name => name.Name, StringComparer.OrdinalIgnoreCase).Select(name =>
            new DefinedName($"{SheetNames.Quoted(name.Sheet)}!${CellAddress.ColumnName(name.At.Column)}${name.At.Row}") { Name = name.Name })];
        return defined.Length == 0 ? null : new DefinedNames(defined);
    }

    private static void Describe(SpreadsheetDocument document, string title, string author)
    {
        document.ChangeIdOfPart(document.WorkbookPart!, BookRelation);
        document.ExtendedFilePropertiesPart!.Properties = new Properties(new Application("ScrewSheet"));
        document.ChangeIdOfPart(document.ExtendedFilePropertiesPart!, ApplicationRelation);
        document.DeletePart(document.CoreFilePropertiesPart!);
        CoreFilePropertiesPart description = document.AddCoreFilePropertiesPart();
        document.ChangeIdOfPart(description, DescriptionRelation);
        Markup.Write(description, Markup.Description(title, author));
    }
}
