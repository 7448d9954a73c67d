using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Tests.Support;

/// <summary>A small workbook on its way through the calculator.</summary>
internal sealed class Book
{
    public static FunctionLibrary Library { get; } = FunctionLibrary.Of(typeof(Toy).Assembly);

    private readonly Calculator calculator = new(Library);

    private Book(Workbook workbook)
    {
        Workbook = workbook;
        Calculation = calculator.Calculate(workbook);
    }

    public Workbook Workbook { get; private set; }

    public Calculation Calculation { get; private set; }

    public Calculator Calculator => calculator;

    /// <summary>A workbook of one sheet S (or with its own sheet lines), cells one a line.</summary>
    public static Book Of(params string[] lines)
    {
        string text = string.Join('\n', lines);
        if (!text.StartsWith("screwsheet", StringComparison.Ordinal)) text = "screwsheet 1\n\n" + (lines.Any(line => line.StartsWith("sheet ", StringComparison.Ordinal)) ? "" : "sheet S\n") + text;
        ReadResult read = WorkbookText.Read(text + "\n");
        return new Book(Assert.IsType<WorkbookRead>(read).Workbook);
    }

    /// <summary>The result of one expression on a sheet of its own.</summary>
    public static CellResult Eval(string expression, params string[] others) => Of([.. others, "Z9 => " + expression])["Z9"];

    public CellResult this[string cell] => Calculation.Cells[Id(cell)];

    public static CellId Id(string cell)
    {
        string[] parts = cell.Split('.');
        Assert.True(CellAddress.TryParse(parts[^1], out CellAddress address), cell);
        return new CellId(parts.Length > 1 ? parts[0] : "S", address);
    }

    /// <summary>Types an entry into a cell and calculates what it asks for.</summary>
    public Book Type(string cell, string entry)
    {
        CellId id = Id(cell);
        Cell typed = Assert.IsType<EntryRead>(CellText.ReadEntry(entry, id.Address)).Cell;
        Workbook = Workbook.WithCell(id.Sheet, typed);
        Calculation = calculator.Calculate(Workbook, [id]);
        calculator.CheckInvariants();
        return this;
    }

    /// <summary>Empties a cell.</summary>
    public Book Clear(string cell)
    {
        CellId id = Id(cell);
        Workbook = Workbook.WithoutCell(id.Sheet, id.Address);
        Calculation = calculator.Calculate(Workbook, [id]);
        calculator.CheckInvariants();
        return this;
    }

    /// <summary>What ran in the last calculation.</summary>
    public string Ran => string.Join(' ', calculator.Events.Where(e => e.Work == CellWork.Ran).Select(e => e.Cell.Address.ToString()).Order(StringComparer.Ordinal));

    /// <summary>What was bound in the last calculation.</summary>
    public string Bound => string.Join(' ', calculator.Events.Where(e => e.Work == CellWork.Bound).Select(e => e.Cell.Address.ToString()).Order(StringComparer.Ordinal));
}

/// <summary>What tests ask of a result.</summary>
internal static class ResultAssertions
{
    public static CellResult Gives(this CellResult result, double si, string type)
    {
        Assert.True(result.Fault is null, result.Fault?.Sentence);
        double actual = result.Value switch { NumberValue number => number.Value, QuantityValue quantity => quantity.Si, _ => double.NaN };
        Assert.True(Math.Abs(actual - si) <= 1e-12 * Math.Max(1e-30, Math.Abs(si)), $"{actual:R} is not {si:R}");
        Assert.Equal(type, result.Type!.Name);
        return result;
    }

    public static CellResult Gives(this CellResult result, string text)
    {
        Assert.True(result.Fault is null, result.Fault?.Sentence);
        Assert.Equal(text, ValueText.Format(result.Value!, result.Cell.Format, default, result.IsCheck).Joined);
        return result;
    }

    public static Fault FaultsWith(this CellResult result, string sentence)
    {
        Assert.Null(result.Value);
        Assert.Equal(sentence, result.Fault!.Sentence);
        return result.Fault;
    }
}
