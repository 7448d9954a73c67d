using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using ScrewSheet.Workbooks.Reviewing;
using System.Collections.Immutable;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>What a calculation found out, with what the screen needs besides: how many digits each value is shown with, and who reads whom.</summary>
internal sealed class Known
{
    private volatile Readers? readers;
    private volatile ReviewOverview? reviewed;

    private Known(Calculation calculation, FunctionLibrary library, Readers? before)
    {
        Calculation = calculation;
        Digits = ShownDigits.Of(calculation);
        Steps = new CellSteps(calculation, library, Digits);
        Tables = TableInputs.Of(calculation);
        readers = before;
    }

    /// <summary>The results.</summary>
    public Calculation Calculation { get; }

    /// <summary>How each value is shown.</summary>
    public ShownDigits Digits { get; }

    /// <summary>How results came about.</summary>
    public CellSteps Steps { get; }

    /// <summary>The review marks and which of them hold; null until <see cref="FindReaders"/>.</summary>
    public ReviewOverview? Reviewed => reviewed;

    /// <summary>True once <see cref="FindReaders"/> was done.</summary>
    public bool HasReaders { get; private set; }

    /// <summary>From a calculation; until <see cref="FindReaders"/>, who reads whom is as it was before.</summary>
    /// <param name="calculation">The calculation.</param>
    /// <param name="library">The library it was made with.</param>
    /// <param name="before">What was known before.</param>
    public static Known Of(Calculation calculation, FunctionLibrary library, Known? before = null) => new(calculation, library, before?.readers);

    /// <summary>Finds out who reads whom and which review marks hold, on any thread; it takes time with the number of cells, so results are shown before.</summary>
    public void FindReaders()
    {
        reviewed = new Reviews(Calculation).Overview();
        readers = new Readers(Calculation);
        HasReaders = true;
    }

    /// <summary>The what-if tables, and what they depend on.</summary>
    public ImmutableArray<TableInputs> Tables { get; }

    /// <summary>What is known of a cell, or null: nothing yet, or no cell.</summary>
    public CellResult? Find(CellId id) => Calculation.Cells.GetValueOrDefault(id);

    /// <summary>The value of a cell as it is shown, or null where it has none.</summary>
    public PrintedValue? Shown(CellResult cell) => cell.Value is null ? null : PrintedText.Of(cell.Value, Digits.FormatOf(cell), Calculation.Workbook.Head.Units, cell.IsCheck);

    /// <summary>The cells that read a cell, by address.</summary>
    public IReadOnlyList<CellId> ReadersOf(CellId id) => readers?.Of(id) ?? [];

    /// <summary>Who reads whom.</summary>
    private sealed class Readers
    {
        private readonly Dictionary<CellId, List<CellId>> single = [];
        private readonly List<(CellReference Run, CellId Reader)> runs = [];

        public Readers(Calculation calculation)
        {
            foreach (CellResult cell in calculation.Cells.Values)
            {
                foreach (CellReference reference in cell.References) Add(reference, cell.Id);
            }
        }

        public IReadOnlyList<CellId> Of(CellId id)
        {
            List<CellId> all = [.. single.GetValueOrDefault(id, [])];
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
            if (!single.TryGetValue(reference.First, out List<CellId>? list)) single[reference.First] = list = [];
            list.Add(reader);
        }
    }
}
