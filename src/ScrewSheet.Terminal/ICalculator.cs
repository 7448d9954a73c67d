using System.Collections.Immutable;
using ScrewSheet.Studies;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal;

/// <summary>What commands need of the engine; tests put results made by hand in its place.</summary>
internal interface ICalculator
{
    /// <summary>The library's functions, by name.</summary>
    ImmutableArray<LibraryFunction> Functions { get; }

    /// <summary>The library itself.</summary>
    FunctionLibrary Library { get; }

    /// <summary>Does studies of what was calculated.</summary>
    StudyRunner Studies { get; }

    /// <summary>All results of a workbook.</summary>
    Calculation Calculate(Workbook workbook);
}
