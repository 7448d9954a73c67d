using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using System.Collections.Immutable;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>What a calculation found out, with what the screen needs besides: how many digits each value is shown with, and who reads whom.</summary>
internal sealed class Known
{
    private readonly Dictionary<CellId, List<CellId>> readers = [];
    private readonly List<(CellReference Run, CellId Reader)> runs = [];

    private Known(Calculation calculation)
    {
        Calculation = calculation;
        Digits = ShownDigits.Of(calculation);
        Tables = TableInputs.Of(calculation);
        foreach (CellResult cell in calculation.Cells.Values)
        {
            foreach (CellReference reference in cell.References) Add(reference, cell.Id);
        }
    }

    /// <summary>The results.</summary>
    public Calculation Calculation { get; }

    /// <summary>How each value is shown.</summary>
    public ShownDigits Digits { get; }

    /// <summary>The what-if tables, and what they depend on.</summary>
    public ImmutableArray<TableInputs> Tables { get; }

    /// <summary>From a calculation; it takes time with its number of cells, so it is made where the calculation was.</summary>
    public static Known Of(Calculation calculation) => new(calculation);

    /// <summary>What is known of a cell, or null: nothing yet, or no cell.</summary>
    public CellResult? Find(CellId id) => Calculation.Cells.GetValueOrDefault(id);

    /// <summary>The value of a cell as it is shown, or null where it has none.</summary>
    public PrintedValue? Shown(CellResult cell) => cell.Value is null ? null : PrintedText.Of(cell.Value, Digits.FormatOf(cell), Calculation.Workbook.Head.Units, cell.IsCheck);

    /// <summary>The cells that read a cell, by address.</summary>
    public IReadOnlyList<CellId> ReadersOf(CellId id)
    {
        List<CellId> all = [.. readers.GetValueOrDefault(id, [])];
        foreach ((CellReference run, CellId reader) in runs)
        {
            if (run.First.Sheet == id.Sheet && CellBlock.Between(run.First.Address, run.Last!.Value.Address).Contains(id.Address)) all.Add(reader);
        }
        return [.. all.Distinct().OrderBy(reader => reader.Sheet == id.Sheet ? "" : reader.Sheet, StringComparer.Ordinal).ThenBy(reader => reader.Address)];
    }

    private void Add(CellReference reference, CellId reader)
    {
        if (reference.Last is not null)
        {
            runs.Add((reference, reader));
            return;
        }
        if (!readers.TryGetValue(reference.First, out List<CellId>? list)) readers[reference.First] = list = [];
        list.Add(reader);
    }
}
