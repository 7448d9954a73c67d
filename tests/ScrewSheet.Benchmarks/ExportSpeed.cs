using ClosedXML.Excel;
using ScrewSheet.Engine;
using ScrewSheet.Exports.Xlsx;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Terminal;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Benchmarks;

/// <summary>Writes 10,000 calculated results as live formulas, against ClosedXML alone writing the same cells: givens, formulas, number formats and a comment on each of them. Warm; medians of interleaved runs.</summary>
/// <remarks>Ours also makes the formulas out of what was bound, writes the present value beside each of them, and the first sheet. The note compares with ClosedXML leaving the comments out.</remarks>
internal static class ExportSpeed
{
    private const int Repeats = 9, Warm = 4;

    public static void Run()
    {
        Calculation calculation = new Calculator(Library.Shipped).Calculate(TenThousand.Read(TenThousand.File()));
        EngineCalculator calculator = new(Library.Shipped);
        Sample ours = new(), theirs = new(), bare = new();
        for (int i = 0; i < Repeats + Warm; i++)
        {
            Sample none = new();
            Sample.Settle();
            (i >= Warm ? ours : none).Time(() => Ours(calculation, calculator));
            Sample.Settle();
            (i >= Warm ? theirs : none).Time(() => Theirs(comments: true));
            Sample.Settle();
            (i >= Warm ? bare : none).Time(() => Theirs(comments: false));
        }
        Report.Ratio("export", ours.Median / theirs.Median, $"{ours.Median:F0} ms", $"{theirs.Median:F0} ms", 1.5,
            $"medians of {Repeats}; least {ours.Least:F0} / {theirs.Least:F0} ms = {ours.Least / theirs.Least:G3}; processor time {ours.Processor:F0} / {theirs.Processor:F0} ms = {ours.Processor / theirs.Processor:G3}");
        Report.Note($"export: ClosedXML with the bare formulas and no comments: {bare.Median:F0} ms; ours, which has them, against that: {ours.Median / bare.Median:G3}");
    }

    private static void Ours(Calculation calculation, ICalculator calculator)
    {
        using MemoryStream stream = new();
        XlsxReport report = XlsxExport.Write(new XlsxRequest { Calculation = calculation, Library = calculator.Library, Math = new LibraryMath(calculator, UnitSystem.SI) }, stream);
        if (report.LiveResults != TenThousand.Rows * TenThousand.Shapes) throw new InvalidOperationException($"{report.LiveResults} results are formulas.");
    }

    private static void Theirs(bool comments)
    {
        using XLWorkbook workbook = new();
        IXLWorksheet sheet = workbook.AddWorksheet("Work");
        for (int row = 1; row <= TenThousand.Rows; row++)
        {
            for (int column = 1; column < TenThousand.FirstResult; column++)
            {
                IXLCell given = sheet.Cell(row, column);
                given.Value = TenThousand.Given(column, row);
                given.Style.NumberFormat.Format = "General\" mm\"";
                if (comments) given.Comment.AddText($"= {TenThousand.Given(column, row)} mm");
            }
            for (int shape = 0; shape < TenThousand.Shapes; shape++)
            {
                IXLCell cell = sheet.Cell(row, TenThousand.FirstResult + shape);
                cell.FormulaA1 = TenThousand.Formula(shape, row);
                cell.Style.NumberFormat.Format = "0.000\" mm\"";
                if (comments) cell.Comment.AddText("=> " + TenThousand.Formula(shape, row));
            }
        }
        using MemoryStream stream = new();
        workbook.SaveAs(stream, new SaveOptions { EvaluateFormulasBeforeSaving = false, GenerateCalculationChain = false, ValidatePackage = false });
    }
}
