using System.Collections.Immutable;

namespace ScrewSheet.Workbooks.Model;

/// <summary>A sheet: its name, its title and its cells.</summary>
public sealed record Sheet
{
    /// <summary>The name, unique in the workbook, upper-case first.</summary>
    public required string Name { get; init; }

    /// <summary>The words after the name, or null.</summary>
    public string? Title { get; init; }

    /// <summary>Column widths as written, by column number.</summary>
    public ImmutableDictionary<int, int> Widths { get; init; } = ImmutableDictionary<int, int>.Empty;

    /// <summary>The cells by address.</summary>
    public ImmutableDictionary<CellAddress, Cell> Cells { get; init; } = ImmutableDictionary<CellAddress, Cell>.Empty;

    /// <summary>The cells in the order of the file.</summary>
    public required ImmutableList<CellAddress> Order { get; init; }

    /// <summary>The cells in the order of the file.</summary>
    public IEnumerable<Cell> CellsInOrder => Order.Select(address => Cells[address]);
}
