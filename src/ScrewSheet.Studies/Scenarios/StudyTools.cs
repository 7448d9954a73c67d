using ScrewSheet.Studies.Kernels;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>What every study works with.</summary>
/// <param name="Library">The library of the workbook's functions.</param>
/// <param name="Trials">Which declared formulas may stand for their functions.</param>
/// <param name="Threads">How many threads a study uses.</param>
internal sealed record StudyTools(FunctionLibrary Library, FunctionTrials Trials, int Threads);
