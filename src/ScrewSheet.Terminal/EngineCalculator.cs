using System.Collections.Immutable;
using ScrewSheet.Engine;
using ScrewSheet.Studies;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal;

/// <summary>The engine with one library.</summary>
/// <param name="library">The library.</param>
/// <param name="studies">What does studies of what it calculated; null for one of its own.</param>
internal sealed class EngineCalculator(FunctionLibrary library, StudyRunner? studies = null) : ICalculator
{
    private readonly Calculator calculator = new(library);

    /// <inheritdoc/>
    public ImmutableArray<LibraryFunction> Functions => library.Functions;

    /// <inheritdoc/>
    public FunctionLibrary Library => library;

    /// <inheritdoc/>
    public StudyRunner Studies { get; } = studies ?? new StudyRunner(library, Environment.ProcessorCount);

    /// <inheritdoc/>
    public Calculation Calculate(Workbook workbook) => calculator.Calculate(workbook, CancellationToken.None);
}
