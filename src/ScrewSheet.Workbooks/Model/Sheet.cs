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
    public CellMap Cells { get; init; } = CellMap.Empty;

    /// <summary>The cells in the order of the file.</summary>
    public required ImmutableList<CellAddress> Order { get; init; }

    /// <summary>The what-if tables, in order.</summary>
    public ImmutableArray<WhatIfBlock> WhatIfs { get; init; } = [];

    /// <summary>The columns that are series by name, in order. They come and go with their lines.</summary>
    public ImmutableArray<SheetColumn> Columns { get; internal init; } = [];

    /// <summary>Lines the format reserves, in order.</summary>
    public ImmutableArray<ReservedLine> Reserved { get; init; } = [];

    /// <summary>The address of each name. A name two cells have leads to one of them; both are in fault.</summary>
    public ImmutableDictionary<string, CellAddress> Names => Index.Names;

    /// <summary>The lines that belong to no cell, for saving the file as it was.</summary>
    internal Unseen<SheetSource> Source { get; init; }

    /// <summary>The names, worked out when first asked for and carried along by edits.</summary>
    internal NameIndex Index
    {
        get
        {
            if (index.Value is { } known && ReferenceEquals(known.Cells, Cells)) return known;
            index = new(NameIndex.Of(Cells));
            return index.Value!;
        }

        init => index = new(value);
    }

    private Unseen<NameIndex> index;

    /// <summary>The column of that name, or null.</summary>
    public SheetColumn? Column(string name) => Columns.FirstOrDefault(column => column.Name == name);

    /// <summary>True for the name of a cell or a column.</summary>
    public bool Knows(string name) => Names.ContainsKey(name) || Column(name) is not null;

    /// <summary>True where a cell at that address may not have that name: a column or another cell has it.</summary>
    public bool IsTaken(string name, CellAddress at) => Column(name) is not null || (Names.TryGetValue(name, out CellAddress bearer) && bearer != at);

    /// <summary>The cells in the order of the file.</summary>
    public IEnumerable<Cell> CellsInOrder => Order.Select(address => Cells[address]);
}
