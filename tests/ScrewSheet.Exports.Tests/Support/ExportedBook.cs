using System.Globalization;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using NPOI.SS.UserModel;
using NPOI.XSSF.UserModel;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Exports.Xlsx;
using ScrewSheet.Terminal;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Tests.Support;

/// <summary>A workbook, calculated and exported, and the file read back by other people's code.</summary>
internal sealed class ExportedBook
{
    private const double Agreement = 1e-9;

    // one for each thread: what it found out about the library's formulas is the same for every workbook and takes longer than a workbook
    private static readonly ThreadLocal<ICalculator> Calculators = new(Composition.Calculator);

    private ExportedBook(Calculation calculation, XlsxReport report, byte[] bytes) => (Calculation, Report, Bytes) = (calculation, report, bytes);

    public Calculation Calculation { get; }

    public XlsxReport Report { get; }

    public byte[] Bytes { get; }

    /// <summary>The names of the workbooks that come with the program.</summary>
    public static TheoryData<string> Shipped => [.. Directory.EnumerateFiles(Path.Combine(RepositoryRoot, "workbooks"), "*.screwsheet").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    public static string RepositoryRoot { get; } = Root();

    public static Workbook ReadShipped(string name) => Read(File.ReadAllBytes(Path.Combine(RepositoryRoot, "workbooks", name + ".screwsheet")));

    /// <summary>A workbook of one sheet S, or with its own lines from <c>screwsheet 1</c> on.</summary>
    public static Workbook Read(string text) => Read(System.Text.Encoding.UTF8.GetBytes(text.StartsWith("screwsheet", StringComparison.Ordinal) ? text : "screwsheet 1\n\nsheet S\n" + text));

    public static ExportedBook Of(string text) => Of(Read(text));

    public static ExportedBook Of(Workbook workbook, params (string Name, string Value)[] sets)
    {
        ICalculator calculator = Calculators.Value!;
        Calculation calculation = sets.Length == 0
            ? calculator.Calculate(workbook)
            : Terminal.Commands.Scenario.Calculate(new Shell { Output = TextWriter.Null, Error = TextWriter.Null, Calculator = () => calculator }, workbook, [.. sets.Select(set => $"{set.Name}={set.Value}")]);
        using MemoryStream bytes = new();
        XlsxReport report = XlsxExport.Write(new XlsxRequest
        {
            Calculation = calculation,
            Library = calculator.Library,
            Math = new LibraryMath(calculator, workbook.Head.Units),
            Tables = TablesForExport.Of(calculator.Studies, calculation, new UnitChoice(workbook.Head.Units, All: false), CancellationToken.None),
            Warnings = [TextReport.Caution],
        }, bytes);
        return new ExportedBook(calculation, report, bytes.ToArray());
    }

    /// <summary>What the validator of the standard's own library finds wrong.</summary>
    public string[] Problems()
    {
        using MemoryStream stream = new(Bytes);
        using SpreadsheetDocument document = SpreadsheetDocument.Open(stream, isEditable: false);
        return [.. new OpenXmlValidator(FileFormatVersions.Office2013).Validate(document).Select(error => $"{error.Part?.Uri} {error.Path?.XPath}: {error.Description}")];
    }

    /// <summary>The file as another program reads it.</summary>
    public XSSFWorkbook Open() => new(new MemoryStream(Bytes));

    /// <summary>Every formula outside the sheet of workings whose value there is not the one in the file to 1e-9.</summary>
    public IReadOnlyList<string> Disagreements() => Disagreements(Open(), this);

    /// <summary>Formulas of a file that do not give, when another program works them out, what the workbook gives.</summary>
    /// <param name="file">The file, perhaps with other givens typed in.</param>
    /// <param name="ours">The workbook with those givens, exported.</param>
    public static IReadOnlyList<string> Disagreements(XSSFWorkbook file, ExportedBook ours)
    {
        IFormulaEvaluator evaluator = file.GetCreationHelper().CreateFormulaEvaluator();
        XSSFWorkbook expected = ours.Open();
        List<string> wrong = [];
        foreach (ICell cell in Formulas(file))
        {
            ICell? here = expected.GetSheet(cell.Sheet.SheetName)?.GetRow(cell.RowIndex)?.GetCell(cell.ColumnIndex);
            NPOI.SS.UserModel.CellValue value = evaluator.Evaluate(cell);
            string? problem = Problem(value, here);
            if (problem is not null) wrong.Add($"{cell.Sheet.SheetName}!{new CellAddress(cell.ColumnIndex + 1, cell.RowIndex + 1)}: {problem} ={cell.CellFormula}");
        }
        return wrong;
    }

    /// <summary>All cells with formulas outside the sheet of workings.</summary>
    public static IEnumerable<ICell> Formulas(XSSFWorkbook file) =>
        from index in Enumerable.Range(0, file.NumberOfSheets)
        let sheet = file.GetSheetAt(index)
        where !sheet.SheetName.StartsWith("Workings", StringComparison.Ordinal)
        from at in Enumerable.Range(0, sheet.LastRowNum + 1)
        let row = sheet.GetRow(at)
        where row is not null
        from cell in row.Cells
        where cell.CellType == CellType.Formula
        select cell;

    private static string? Problem(NPOI.SS.UserModel.CellValue value, ICell? expected)
    {
        if (expected is null) return "there is no such cell";
        CellType type = expected.CellType == CellType.Formula ? expected.CachedFormulaResultType : expected.CellType;
        switch (type)
        {
            case CellType.Numeric:
                double ours = expected.NumericCellValue, theirs = value.CellType == CellType.Numeric ? value.NumberValue : double.NaN;
                return Math.Abs(ours - theirs) <= Agreement * Math.Max(Math.Abs(ours), Math.Abs(theirs)) ? null : string.Create(CultureInfo.InvariantCulture, $"ours is {ours}, theirs {value.FormatAsString()}");
            case CellType.Boolean: return value.CellType == CellType.Boolean && value.BooleanValue == expected.BooleanCellValue ? null : $"ours is {expected.BooleanCellValue}, theirs {value.FormatAsString()}";
            case CellType.String: return value.CellType == CellType.String && value.StringValue == expected.StringCellValue ? null : $"ours is {expected.StringCellValue}, theirs {value.FormatAsString()}";
            case CellType.Error: return value.CellType == CellType.Error ? null : $"ours is a fault, theirs {value.FormatAsString()}";
            default: return $"ours is {type}";
        }
    }

    private static Workbook Read(byte[] bytes) => Assert.IsType<WorkbookRead>(WorkbookText.Read(bytes)).Workbook;

    private static string Root()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "ScrewSheet.sln"))) folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
