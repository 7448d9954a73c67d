using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Results;

/// <summary>Something the reader must know about a value that was computed all the same.</summary>
/// <param name="Message">One plain sentence.</param>
/// <param name="Origin">The cell it arose in, as text such as <c>Fall.B7</c>; null when it is the cell itself.</param>
public sealed record Caution(string Message, string? Origin = null);

/// <summary>What became of a cell. A closed family.</summary>
public abstract record Outcome
{
    private protected Outcome() { }
}

/// <summary>It has a value.</summary>
/// <param name="Value">The value.</param>
public sealed record Computed(CellValue Value) : Outcome;

/// <summary>It is in fault, of its own or because it waits for a cell that is (<see cref="FaultKind.Waiting"/>).</summary>
/// <param name="Fault">Why.</param>
public sealed record Faulted(Fault Fault) : Outcome;

/// <summary>What the file says a result was, against what it is.</summary>
public enum KeptState
{
    /// <summary>Nothing was kept, or the file leaves results out.</summary>
    NotKept,

    /// <summary>The same after rounding to the kept digits and unit.</summary>
    Same,

    /// <summary>Different: shown, never trusted.</summary>
    Changed,

    /// <summary>The kept text cannot be read as a value of this cell.</summary>
    Unreadable,
}

/// <summary>What a reference of a bound expression means: one cell, or a run from one corner to the other.</summary>
/// <param name="First">The cell, or the run's first corner.</param>
/// <param name="Last">The run's last corner, or null for one cell.</param>
public readonly record struct CellReference(CellId First, CellId? Last = null)
{
    /// <summary>The column's name, where the run is a column of the sheet from top to bottom; else null.</summary>
    public string? Column { get; init; }

    /// <summary>The cell itself, there or not; of a run the cells that are there, notes among them, row by row.</summary>
    public IEnumerable<CellId> In(Workbook workbook)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        if (Last is not { } last) return [First];
        string sheet = First.Sheet;
        return workbook.Find(sheet) is { } found ? CellBlock.Between(First.Address, last.Address).CellsOf(found).Select(cell => new CellId(sheet, cell.Address)) : [];
    }
}

/// <summary>An expression that knows what it refers to. Results ask only when somebody asks them: a workbook has many cells and few that are looked at.</summary>
public interface IReferring
{
    /// <summary>What it refers to, by slot.</summary>
    ImmutableArray<CellReference> Refers();
}

/// <summary>Everything known about one cell after a calculation.</summary>
public sealed record CellResult
{
    /// <summary>The cell.</summary>
    public required CellId Id { get; init; }

    /// <summary>As written.</summary>
    public required Cell Cell { get; init; }

    /// <summary>Its address and its name where it has one, such as <c>Fall.B7 force</c>.</summary>
    public string Label => Cell.Name is { } name ? $"{Id} {name}" : Id.ToString();

    /// <summary>Its type, or null when it is a note or could not be bound.</summary>
    public CellType? Type { get; init; }

    /// <summary>What became of it; null for a note.</summary>
    public Outcome? Outcome { get; init; }

    /// <summary>Cautions that ride with the value, its own first.</summary>
    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>True for an untyped result that is a bool: it holds or fails.</summary>
    public bool IsCheck { get; init; }

    /// <summary>How the value compares with what the file kept.</summary>
    public KeptState Kept { get; init; }

    /// <summary>What the bound expression's references mean, by slot.</summary>
    public ImmutableArray<CellReference> References
    {
        get => field.IsDefault ? Referring?.Refers() ?? [] : field;
        init;
    }

    /// <summary>The expression that says <see cref="References"/> where they are not given.</summary>
    public IReferring? Referring { get; init; }

    /// <summary>The bound expression, or null for a note, a literal given and a cell that could not be bound.</summary>
    public BoundExpression? Bound { get; init; }

    /// <summary>The value, or null where there is none.</summary>
    public CellValue? Value => (Outcome as Computed)?.Value;

    /// <summary>The fault, or null where there is none.</summary>
    public Fault? Fault => (Outcome as Faulted)?.Fault;
}

/// <summary>All results of a workbook.</summary>
/// <param name="Workbook">What was calculated.</param>
/// <param name="Cells">One result for each cell.</param>
/// <param name="Faults">Faults that belong to no cell: unreadable lines, the author's functions, names that hide the library's.</param>
public sealed record Calculation(Workbook Workbook, CellResults Cells, ImmutableArray<Fault> Faults)
{
    /// <summary>The results of one sheet in the order of its cells in the file.</summary>
    public IEnumerable<CellResult> Of(Sheet sheet) => sheet.CellsInOrder.Select(cell => Cells[new CellId(sheet.Name, cell.Address)]);
}
