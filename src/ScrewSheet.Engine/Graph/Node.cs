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
internal sealed class Node(CellId id)
{
    public CellId Id { get; } = id;

    /// <summary>As the author wrote it.</summary>
    public required Cell Cell { get; set; }

    /// <summary>The resolved expression of a result or of a given that is no literal.</summary>
    public ResolvedExpression? Expression { get; set; }

    /// <summary>Why the expression could not be resolved.</summary>
    public Fault? Unresolved { get; set; }

    /// <summary>What it refers to.</summary>
    public ImmutableArray<Reference> Reads => Expression?.References ?? [];

    /// <summary>The bound tree and its code; null while it is not bound to the present types.</summary>
    public Shape? Shape { get; set; }

    /// <summary>The types of the references it is bound to.</summary>
    public ImmutableArray<CellType> SlotTypes { get; set; } = [];

    /// <summary>What became of it; null before the first calculation.</summary>
    public CellResult? Result { get; set; }
}
