using ScrewSheet.Engine;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Studies.Kernels;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Studies.Solving;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Studies.Uncertainty;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies;

/// <summary>
/// Does studies of a calculated workbook: what-if tables, solving backwards, uncertainty. A study reads the calculation and changes nothing; stopped, it leaves everything as it was.
/// </summary>
/// <remarks>For one study at a time. What it learns about the library it keeps for the next study.</remarks>
public sealed class StudyRunner
{
    private const double OutsideAgreement = 1e-10;

    private readonly StudyTools tools;
    private FunctionTrials? outside;

    /// <summary>A runner for workbooks computed with this library.</summary>
    /// <param name="library">The library.</param>
    /// <param name="threads">How many threads a study may use, 1 to 64. The answer is the same with any number.</param>
    public StudyRunner(FunctionLibrary library, int threads = 1)
    {
        ArgumentNullException.ThrowIfNull(library);
        tools = new StudyTools(library, new FunctionTrials(library), Math.Clamp(threads, 1, 64));
    }

    /// <summary>
    /// Has everything around studies loaded by one of no consequence. A program that is about to do studies runs this on a thread of its own; it changes nothing but how soon the first answer is there.
    /// </summary>
    public static void WarmUp()
    {
        const string trial = "screwsheet 1\nsheet Trial\nA1 a = 1 kN ± 0.1 kN\nA2 b => Sqrt(a * a) / 2 + 3 kN\nA3 c => b > a ? Pow(b / a, 2) : Math.Min(1, 2)\nA4 d => c < 9\n";
        if (WorkbookText.Read(trial) is not WorkbookRead read) return;
        FunctionLibrary library = FunctionLibrary.Of();
        Calculation calculation = new Calculator(library).Calculate(read.Workbook);
        StudyRunner runner = new(library, 2);
        static PlacedText At(string text) => new(text, new Place(0, 1));
        foreach (StudyMethod method in (StudyMethod[])[StudyMethod.CellByCell, StudyMethod.Kernel])
            if (WhatIfRequest.Read([At("a: 1 kN to 2 kN step 0.1 kN")], [At("c, d")]).Answer is { } request) runner.WhatIf(calculation, request with { Method = method });
    }

    /// <summary>
    /// True where a declared formula may stand for the call outside this program: it agrees with the function's code to 1e-10 all over the function's limits and over five powers of ten of each argument, and where the code
    /// refuses, the formula has no value or a condition the function declares between its arguments fails.
    /// </summary>
    /// <param name="call">The call.</param>
    /// <param name="member">The member read of what it gives, or null.</param>
    /// <param name="formula">The formula.</param>
    public bool FormulaStands(BoundCall call, BoundMember? member, FormulaAttribute formula)
    {
        ArgumentNullException.ThrowIfNull(call);
        ArgumentNullException.ThrowIfNull(formula);
        return (outside ??= new FunctionTrials(tools.Library, agreement: OutsideAgreement, withNeeds: true)).Suits(call, member, formula);
    }

    /// <summary>Works a what-if table out.</summary>
    /// <param name="calculation">The workbook, calculated.</param>
    /// <param name="request">What is varied and shown.</param>
    /// <param name="progress">Told what share is done, from 0 to 1, from any thread; null for nobody.</param>
    /// <param name="stop">Stops the study.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public StudyOutcome<WhatIfTable> WhatIf(Calculation calculation, WhatIfRequest request, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(request);
        return Calculator.WithRoom(() => WhatIfStudy.Run(tools, calculation, request, progress, stop));
    }

    /// <summary>Works out how a result spreads with the tolerances of the givens, and what drives it.</summary>
    /// <param name="calculation">The workbook, calculated.</param>
    /// <param name="request">Whose spread.</param>
    /// <param name="progress">Told what share of the draws is done, from 0 to 1, from any thread; null for nobody.</param>
    /// <param name="stop">Stops the study.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public StudyOutcome<UncertaintyReport> Uncertainty(Calculation calculation, UncertaintyRequest request, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(request);
        return Calculator.WithRoom(() => UncertaintyStudy.Run(tools, calculation, request, progress, stop));
    }

    /// <summary>Looks for the value of a given that makes a result equal a value, or a check turn.</summary>
    /// <param name="calculation">The workbook, calculated.</param>
    /// <param name="request">What is to be solved.</param>
    /// <param name="stop">Stops the search.</param>
    /// <returns>What was found, which may be nothing: its notes then say what was searched and what the result reaches there.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public StudyOutcome<Solution> Solve(Calculation calculation, SolveRequest request, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(request);
        return Calculator.WithRoom(() => SolveStudy.Run(tools, calculation, request, stop));
    }
}
