using System.Collections.Immutable;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>What a parameter stands for: a piece of formula, or for a record the tree it comes from, which is looked into.</summary>
/// <param name="Text">The piece.</param>
/// <param name="Tree">The tree, or null.</param>
/// <param name="Scope">What is in sight in that tree.</param>
internal readonly record struct Meaning(FormulaText Text, BoundExpression? Tree = null, Scope? Scope = null);

/// <summary>What is in sight where a tree is written: the cell's references and a function's parameters.</summary>
/// <param name="References">By slot; empty inside functions.</param>
/// <param name="Parameters">By index.</param>
/// <param name="Cell">The cell it is written for, as a reader knows it.</param>
internal sealed record Scope(ImmutableArray<CellReference> References, ImmutableArray<Meaning> Parameters, string Cell)
{
    /// <summary>Of a cell.</summary>
    public static Scope Of(CellResult cell) => new(cell.References, [], cell.Cell.Name is { } name ? $"{cell.Id} {name}" : cell.Id.ToString());

    /// <summary>Inside a function that this calls.</summary>
    public Scope Inside(ImmutableArray<Meaning> parameters) => new([], parameters, Cell);
}

/// <summary>How formulas read cells.</summary>
internal interface ICells
{
    /// <summary>The value of a cell as a piece of formula: a number in coherent SI, a condition, or a text.</summary>
    /// <exception cref="NoForm">It has none.</exception>
    FormulaText Read(Workbooks.Model.CellId cell, CellType type);

    /// <summary>True for a cell that may have no number, though it has one now.</summary>
    bool CanFail(Workbooks.Model.CellId cell);

    /// <summary>What is known about a cell, for records that are looked into; null where it changes in a way no formula follows.</summary>
    CellResult? Record(Workbooks.Model.CellId cell);

    /// <summary>The sum of a run of numbers, in coherent SI.</summary>
    /// <exception cref="NoForm">It has none.</exception>
    FormulaText Sum(CellReference run);

    /// <summary>How many numbers a run holds.</summary>
    /// <exception cref="NoForm">It holds something else.</exception>
    FormulaText Count(CellReference run);
}

/// <summary>Where parts of a formula go that would else be written many times over.</summary>
internal interface IWorkings
{
    /// <summary>A cell that works the part out, in coherent SI; the same part gets the same cell.</summary>
    /// <param name="part">The part.</param>
    /// <param name="of">The cell it belongs to.</param>
    /// <param name="what">What the part is.</param>
    FormulaText Put(FormulaText part, string of, string what);
}
