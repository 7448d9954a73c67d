using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>What a cell of the file is for; each has a look of its own, told apart without colour.</summary>
internal enum Role
{
    /// <summary>Words.</summary>
    Note,

    /// <summary>A title.</summary>
    Title,

    /// <summary>A heading.</summary>
    Heading,

    /// <summary>A given: something to type over.</summary>
    Given,

    /// <summary>A result with a formula.</summary>
    Live,

    /// <summary>A result that is a value.</summary>
    Fixed,

    /// <summary>The head of a table.</summary>
    Head,

    /// <summary>A part of a formula on the sheet of workings.</summary>
    Working,
}

/// <summary>What a cell of the file holds besides a formula. A closed family.</summary>
internal abstract record Content
{
    private protected Content() { }

    /// <summary>A number.</summary>
    /// <param name="Value">Finite.</param>
    public sealed record Number(double Value) : Content;

    /// <summary>Words.</summary>
    /// <param name="Value">Harmless.</param>
    public sealed record Words(string Value) : Content;

    /// <summary>True or false.</summary>
    /// <param name="Value">Which.</param>
    public sealed record Truth(bool Value) : Content;

    /// <summary>No value: the standard's <c>#N/A</c>.</summary>
    public sealed record None : Content;
}

/// <summary>A cell of the file.</summary>
/// <param name="At">Where.</param>
/// <param name="Value">Its value; beside a formula the one it has now.</param>
/// <param name="Role">What it is for.</param>
internal sealed record PageCell(CellAddress At, Content Value, Role Role)
{
    /// <summary>The formula without an equals sign, or null.</summary>
    public string? Formula { get; init; }

    /// <summary>The number format.</summary>
    public string NumberFormat { get; init; } = "General";

    /// <summary>The comment, or null.</summary>
    public string? Comment { get; init; }

    /// <summary>True for a check, which is marked as it holds or fails.</summary>
    public bool IsCheck { get; init; }

    /// <summary>The range a given must stay in, in the unit of the cell, or null.</summary>
    public (double From, double To, string Text)? Within { get; init; }
}

/// <summary>A sheet of the file.</summary>
/// <param name="name">Its name in the file.</param>
internal sealed class Page(string name)
{
    private readonly SortedDictionary<CellAddress, PageCell> cells = [];

    /// <summary>The name.</summary>
    public string Name => name;

    /// <summary>Row by row.</summary>
    public IReadOnlyCollection<PageCell> Cells => cells.Values;

    /// <summary>Widths of columns in characters.</summary>
    public SortedDictionary<int, double> Widths { get; } = [];

    /// <summary>The charts.</summary>
    public List<Charts.Chart> Charts { get; } = [];

    /// <summary>Rows that stay in sight.</summary>
    public int FrozenRows { get; init; }

    /// <summary>Puts a cell there; one that is there already stays.</summary>
    public bool Add(PageCell cell) => cells.TryAdd(cell.At, cell);

    /// <summary>Puts a cell there instead of what is there.</summary>
    public void Replace(PageCell cell) => cells[cell.At] = cell;

    /// <summary>The cell there, or null.</summary>
    public PageCell? At(CellAddress address) => cells.GetValueOrDefault(address);
}
