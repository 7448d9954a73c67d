using System.Collections.Immutable;
using ScrewSheet.Engine.Binding;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Graph;

/// <summary>A cell in the graph: what it refers to, what it is bound to, and what became of it.</summary>
/// <remarks>Invariant: <see cref="Result"/> belongs to <see cref="Cell"/> and to the results of all cells in <see cref="Reads"/> once a calculation has ended.</remarks>
internal sealed class Node(Spot spot)
{
    /// <summary>Where it stands.</summary>
    public Spot Spot { get; } = spot;

    public CellId Id => Spot.Id;

    /// <summary>As the author wrote it.</summary>
    public required Cell Cell { get; set; }

    /// <summary>The resolved expression of a result or of a given that is no literal.</summary>
    public ResolvedExpression? Expression { get; set; }

    /// <summary>Why the expression could not be resolved.</summary>
    public Fault? Unresolved { get; set; }

    /// <summary>What it refers to.</summary>
    public ImmutableArray<Reference> Reads => Expression?.References ?? [];

    /// <summary>Where each of <see cref="Reads"/> stands, while the graph knows what it refers to; null for a run.</summary>
    public Spot?[] Sources { get; set; } = [];

    /// <summary>True when one of <see cref="Reads"/> is a run.</summary>
    public bool ReadsRuns { get; set; }

    /// <summary>The bound tree and its code; null while it is not bound to the present types.</summary>
    public Shape? Shape { get; set; }

    /// <summary>The types of the references it is bound to.</summary>
    public ImmutableArray<CellType> SlotTypes { get; set; } = [];

    /// <summary>What became of it; null before the first calculation.</summary>
    public CellResult? Result { get; set; }

    /// <summary>True while it must be looked at in the next calculation whatever became of the cells it reads.</summary>
    public bool IsDirty { get; set; }

    /// <summary>True while its value differs from that of the calculation before; only within a calculation.</summary>
    public bool HasChanged { get; set; }

    /// <summary>The order that last counted <see cref="Waiting"/>.</summary>
    public int Counted { get; set; }

    /// <summary>While cells are put in order: how many it still waits for.</summary>
    public int Waiting { get; set; }
}

/// <summary>A place on a sheet that holds a cell, or that cells refer to.</summary>
internal sealed class Spot(CellId id)
{
    private Node? one;
    private HashSet<Node>? many;

    public CellId Id { get; } = id;

    /// <summary>The cell there, or null.</summary>
    public Node? Node { get; set; }

    /// <summary>True when nobody reads it.</summary>
    public bool IsUnread => one is null && many is null;

    /// <summary>Adds a reader. Most places have one, so one needs no set.</summary>
    public void Add(Node reader)
    {
        if (many is not null) many.Add(reader);
        else if (one is { } other && !ReferenceEquals(other, reader)) (one, many) = (null, new HashSet<Node>(ReferenceEqualityComparer.Instance) { other, reader });
        else one = reader;
    }

    /// <summary>Takes a reader away.</summary>
    public void Remove(Node reader)
    {
        if (ReferenceEquals(one, reader)) one = null;
        if (many is null || !many.Remove(reader) || many.Count > 0) return;
        many = null;
    }

    /// <summary>True where that cell reads it.</summary>
    public bool Has(Node reader) => ReferenceEquals(one, reader) || many?.Contains(reader) == true;

    /// <summary>Adds the readers to a list.</summary>
    public void CopyTo(List<Node> list)
    {
        if (one is not null) list.Add(one);
        if (many is not null) list.AddRange(many);
    }
}
