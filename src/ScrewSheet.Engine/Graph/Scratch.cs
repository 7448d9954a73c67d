using System.Collections.Immutable;
using ScrewSheet.Engine.Evaluation;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Graph;

/// <summary>What a cell reads, ready to run, kept until its shape is bound.</summary>
internal sealed record Inputs(ImmutableArray<CellType> Types, double[] Si, object?[] Others, ImmutableArray<Caution> Cautions);

/// <summary>What the cell at hand reads: one room for all cells, since each is run before the next is looked at.</summary>
internal sealed class Scratch
{
    private CellType[] types = new CellType[8];
    private int count;

    /// <summary>Numbers and quantities by slot; NaN where a slot holds something else.</summary>
    public double[] Si { get; private set; } = new double[8];

    /// <summary>Everything else by slot.</summary>
    public object?[] Others { get; private set; } = new object?[8];

    /// <summary>The type of each slot.</summary>
    public ReadOnlySpan<CellType> Types => types.AsSpan(0, count);

    /// <summary>The cautions of what is read, some perhaps more than once.</summary>
    public List<Caution> Cautions { get; } = [];

    /// <summary>The same, each once.</summary>
    public ImmutableArray<Caution> Inherited => InheritedCautions.Of(Cautions);

    /// <summary>Makes room for that many slots.</summary>
    public void Begin(int slots)
    {
        count = slots;
        Cautions.Clear();
        if (slots <= types.Length) return;
        (types, Si, Others) = (new CellType[slots], new double[slots], new object?[slots]);
    }

    /// <summary>Puts a value into a slot.</summary>
    public void Set(int slot, CellValue value)
    {
        types[slot] = value.Type;
        (Si[slot], Others[slot]) = (SiValue.Of(value) ?? double.NaN, Values.Other(value));
    }

    /// <summary>A copy that outlives the next cell.</summary>
    public Inputs Keep() => new(ImmutableArray.Create(Types), Si[..count], Others[..count], Inherited);
}
