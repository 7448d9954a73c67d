using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports;

/// <summary>What an export must ask somebody who can run the library: exports only write.</summary>
public interface ILibraryMath
{
    /// <summary>True where the declared formula and the function's code agree all over its limits, so that the formula may stand for the call.</summary>
    /// <param name="call">The call.</param>
    /// <param name="member">The member read of what the call gives, or null.</param>
    /// <param name="formula">The formula.</param>
    bool Stands(BoundCall call, BoundMember? member, FormulaAttribute formula);

    /// <summary>The value of a tree that reads no cell and no parameter; null where it has none.</summary>
    /// <param name="tree">The tree.</param>
    CellValue? Constant(BoundExpression tree);
}
