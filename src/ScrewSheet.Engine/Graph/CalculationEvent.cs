using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine;

/// <summary>What was done to a cell in a calculation.</summary>
public enum CellWork
{
    /// <summary>Its expression was bound, because its text or the type of something it reads changed.</summary>
    Bound,

    /// <summary>It was computed.</summary>
    Ran,
}

/// <summary>One piece of work of a calculation, for those who want to know how little was done.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Work">What was done.</param>
public readonly record struct CalculationEvent(CellId Cell, CellWork Work);
