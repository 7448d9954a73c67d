using ScrewSheet.Engine;
using ScrewSheet.Exports;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal;

/// <summary>Answers for exports, which do not know the engine: by the trials of studies and the engine's own code.</summary>
internal sealed class LibraryMath(ICalculator calculator, UnitSystem units) : ILibraryMath
{
    private readonly TreeEvaluation trees = new(calculator.Library, units);

    /// <inheritdoc/>
    public bool Stands(BoundCall call, BoundMember? member, FormulaAttribute formula) => calculator.Studies.FormulaStands(call, member, formula);

    /// <inheritdoc/>
    public CellValue? Constant(BoundExpression tree) => trees.Run(tree, []).Value;
}
