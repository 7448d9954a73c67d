using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Steps;

/// <summary>How cells are called where they are read.</summary>
internal static class CellNaming
{
    /// <summary>A cell, by its name or address; after its sheet where it is another one.</summary>
    public static Notation Of(Workbook workbook, CellId cell, string sheet)
    {
        string? name = workbook.Find(cell.Sheet)?.Cells.GetValueOrDefault(cell.Address)?.Name;
        Notation own = name is null ? new WordNotation(cell.Address.ToString()) : new SymbolNotation(name);
        return cell.Sheet == sheet ? own : new MemberNotation(new WordNotation(cell.Sheet), name ?? cell.Address.ToString());
    }

    /// <summary>What a reference means: a cell, a run or a column.</summary>
    public static Notation Of(Workbook workbook, CellReference reference, string sheet)
    {
        if (reference.Last is not { } last) return Of(workbook, reference.First, sheet);
        Notation own = reference.Column is { } column ? new SymbolNotation(column) : new WordNotation($"{reference.First.Address} to {last.Address}");
        if (reference.First.Sheet == sheet) return own;
        return reference.Column is { } named ? new MemberNotation(new WordNotation(reference.First.Sheet), named) : new RunNotation([new WordNotation(reference.First.Sheet), own]);
    }
}
