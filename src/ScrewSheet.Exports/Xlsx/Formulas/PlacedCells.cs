using ScrewSheet.Exports.Xlsx.Naming;
using ScrewSheet.Exports.Xlsx.Pages;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>Cells as formulas read them: by their defined name, else by address; brought into coherent SI.</summary>
/// <param name="calculation">The workbook, calculated.</param>
/// <param name="names">The defined names.</param>
/// <param name="sheets">The name of each sheet in the file.</param>
/// <param name="values">How values are held.</param>
internal sealed class PlacedCells(Calculation calculation, DefinedNames names, IReadOnlyDictionary<string, string> sheets, Values values) : ICells
{
    /// <summary>The last column of a sheet in the standard's sheets as programs read them.</summary>
    public const int LastColumn = 16_384;

    private const int MostTerms = 50;

    /// <summary>Stands before a reference to the formula's own sheet until it is known where the formula goes.</summary>
    public const char Here = '\u0001';

    /// <summary>The sheet whose formulas are written.</summary>
    public string Sheet { get; set; } = "";

    /// <inheritdoc/>
    public FormulaText Read(CellId cell, CellType type)
    {
        if (!calculation.Cells.TryGetValue(cell, out CellResult? result) || result.Value is null) throw new NoForm($"{cell} has no value");
        FormulaText at = FormulaText.Atom(names.Of(cell) is { } name && IsPlaced(cell.Address) ? name : Address(cell.Sheet, cell.Address));
        return type switch
        {
            NumberType or QuantityType => values.UnitOf(result).ToSi(at),
            TruthType when result.IsCheck => new FormulaText($"{at}=1", Hold.Comparison),
            _ => at,
        };
    }

    /// <inheritdoc/>
    public bool CanFail(CellId cell) => calculation.Cells.GetValueOrDefault(cell)?.Cell.Content is ResultContent;

    /// <inheritdoc/>
    public CellResult? Record(CellId cell) => calculation.Cells.GetValueOrDefault(cell);

    /// <inheritdoc/>
    public FormulaText Sum(CellReference run)
    {
        CellResult[] members = Numbers(run);
        CellUnit unit = values.UnitOf(members[0]);
        if (members.All(member => values.UnitOf(member).Shown.Symbol == unit.Shown.Symbol) && unit.Shown.Offset == 0) return unit.ToSi(FormulaText.Call("SUM", Range(run)));
        if (members.Length > MostTerms) throw new NoForm("the cells of a long run are shown in different units");
        return members.Select(member => Read(member.Id, member.Value!.Type)).Aggregate((sum, term) => FormulaText.Binary(sum, "+", term, Hold.Sum));
    }

    /// <inheritdoc/>
    public FormulaText Count(CellReference run)
    {
        Numbers(run);
        return FormulaText.Call("COUNT", Range(run));
    }

    private CellResult[] Numbers(CellReference run)
    {
        CellResult[] members = [.. run.In(calculation.Workbook).Select(id => calculation.Cells[id]).Where(member => member.Cell.Content is not NoteContent)];
        return members.Length > 0 && members.All(member => member.Value is NumberValue or QuantityValue) ? members : throw new NoForm("a series of other things than numbers");
    }

    private FormulaText Range(CellReference run)
    {
        CellBlock block = CellBlock.Between(run.First.Address, run.Last!.Value.Address);
        return FormulaText.Atom($"{Address(run.First.Sheet, block.First)}:{Local(block.Last)}");
    }

    /// <summary>An address as a formula of <see cref="Sheet"/> writes it.</summary>
    public string Address(string sheet, CellAddress at) => (sheet == Sheet ? Here.ToString() : SheetNames.Quoted(sheets[sheet]) + "!") + Local(at);

    /// <summary>The formula for a cell of its own sheet.</summary>
    public static string ForOwnSheet(string formula) => formula.Replace(Here.ToString(), "", StringComparison.Ordinal);

    /// <summary>The formula for a cell of another sheet.</summary>
    public string ForOtherSheet(string formula) => formula.Contains(Here, StringComparison.Ordinal) ? formula.Replace(Here.ToString(), SheetNames.Quoted(sheets[Sheet]) + "!", StringComparison.Ordinal) : formula;

    /// <summary>True where the file has a place for the cell.</summary>
    public static bool IsPlaced(CellAddress at) => at.Column <= LastColumn;

    private static string Local(CellAddress at) => IsPlaced(at) ? at.ToString() : throw new NoForm($"{at} lies beyond the last column of such a file");
}
