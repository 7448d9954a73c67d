using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Exports.Xlsx.Naming;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>What all sheets of one export share: names, the writer of formulas, and what has been counted so far.</summary>
internal sealed class Book
{
    private readonly List<FixedResult> fixedResults = [];
    private readonly List<string> left = [];

    /// <summary>For a request; the names of sheets are given out here, the workbook's own first.</summary>
    public Book(XlsxRequest request)
    {
        Request = request;
        FrontName = Sheets.Add("Read first");
        foreach (Sheet sheet in Calculation.Workbook.Sheets) SheetNames.TryAdd(sheet.Name, Sheets.Add(sheet.Name));
        Values = new Values(Calculation.Workbook.Head.Units, request.FormatOf);
        Names = DefinedNames.Of(Calculation.Workbook);
        Cells = new PlacedCells(Calculation, Names, SheetNames, Values);
        Workings = new Workings(Sheets.Add("Workings"), Cells);
        Writer = new FormulaWriter(request.Library, request.Math, Workings);
    }

    /// <summary>What is exported.</summary>
    public XlsxRequest Request { get; }

    /// <summary>The results.</summary>
    public Calculation Calculation => Request.Calculation;

    /// <summary>The name of the first sheet.</summary>
    public string FrontName { get; }

    /// <summary>The name in the file of each sheet of the workbook.</summary>
    public Dictionary<string, string> SheetNames { get; } = [];

    /// <summary>Gives names to sheets.</summary>
    public SheetNames Sheets { get; } = new();

    /// <summary>How values are held.</summary>
    public Values Values { get; }

    /// <summary>The defined names.</summary>
    public DefinedNames Names { get; }

    /// <summary>How formulas read cells.</summary>
    public PlacedCells Cells { get; }

    /// <summary>The sheet of workings.</summary>
    public Workings Workings { get; }

    /// <summary>Writes formulas.</summary>
    public FormulaWriter Writer { get; }

    /// <summary>How many results are live.</summary>
    public int LiveResults { get; private set; }

    /// <summary>How many results there are.</summary>
    public int Results { get; private set; }

    /// <summary>How many entries of tables are live.</summary>
    public int LiveEntries { get; private set; }

    /// <summary>How many entries of tables there are.</summary>
    public int Entries { get; private set; }

    /// <summary>Results that are values, and why.</summary>
    public IReadOnlyList<FixedResult> FixedResults => fixedResults;

    /// <summary>What the file has no place for, one sentence each.</summary>
    public IReadOnlyList<string> Left => left;

    /// <summary>A result was written.</summary>
    public void Count(CellResult cell, bool isLive, string? why)
    {
        Results++;
        if (isLive) LiveResults++;
        else fixedResults.Add(new FixedResult(Label(cell), cell.Fault is { } fault ? fault.Sentence : why ?? ""));
    }

    /// <summary>Entries of a table were written.</summary>
    public void CountEntries(int live, int all)
    {
        LiveEntries += live;
        Entries += all;
    }

    /// <summary>A column of a table holds values.</summary>
    public void FixedColumn(string label, string why) => fixedResults.Add(new FixedResult(label, why));

    /// <summary>The file has no place for it.</summary>
    public void NoPlace(string what) => left.Add(what);

    /// <summary>A cell beyond the last column.</summary>
    public void Unplaced(CellResult cell)
    {
        if (cell.Cell.Content is ResultContent) Count(cell, false, "it lies beyond the last column of such a file");
        NoPlace($"{Label(cell)} lies beyond column XFD, the last one of such a file, and was left out.");
    }

    /// <summary>A result as its cell holds it.</summary>
    public FormulaText Held(FormulaText si, CellResult cell) => Held(si, cell.Value?.Type ?? CellType.Text, Values.UnitOf(cell), cell.IsCheck);

    /// <summary>A value as a cell holds it: in the unit shown, a check as 1 or 0.</summary>
    public static FormulaText Held(FormulaText si, CellType type, CellUnit unit, bool isCheck) => type switch
    {
        NumberType or QuantityType => unit.FromSi(si),
        TruthType when isCheck => FormulaText.Call("IF", si, FormulaText.Number(1), FormulaText.Number(0)),
        _ => si,
    };

    /// <summary>How a cell is called in sentences.</summary>
    public static string Label(CellResult cell) => VisibleText.Of(cell.Label);
}
