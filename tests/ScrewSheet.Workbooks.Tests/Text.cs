using System.Text;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests;

/// <summary>Short ways to read texts in tests.</summary>
internal static class Text
{
    /// <summary>The workbook of a text that is not refused.</summary>
    public static Workbook Read(string text) => Assert.IsType<WorkbookRead>(WorkbookText.Read(text)).Workbook;

    /// <summary>What is written for the workbook.</summary>
    public static string Write(Workbook workbook) => Encoding.UTF8.GetString(WorkbookText.Write(workbook));

    /// <summary>One cell of a sheet named A, in line 3.</summary>
    public static Cell Cell(string line) => Assert.Single(Read($"screwsheet 1\nsheet A\n{line}\n").Sheets[0].CellsInOrder);

    /// <summary>The given of such a cell.</summary>
    public static GivenContent Given(string line) => Assert.IsType<GivenContent>(Cell(line).Content);

    /// <summary>All faults of a workbook: those of lines, then those of cells.</summary>
    public static IReadOnlyList<Fault> Faults(Workbook workbook) =>
        [.. workbook.Faults, .. workbook.Sheets.SelectMany(sheet => sheet.CellsInOrder).Select(cell => cell.Content).OfType<BrokenContent>().Select(broken => broken.Fault)];
}
