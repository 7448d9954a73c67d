using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Studies.Tests;

/// <summary>Every fault of the studies is listed in <c>docs/diagnostics.md</c>, each code once.</summary>
public sealed class DiagnosticsPageTests
{
    private static IReadOnlyList<FaultCode> Codes => FaultCodes.In(typeof(StudyRunner).Assembly);

    [Fact]
    public void ThePageListsEveryFaultOfTheStudies() => DiagnosticsPage.Holds("Studies", Codes.Select(code => (code.Code, code.Summary)));

    [Fact]
    public void NoCodeIsUsedTwice() => Assert.Empty(
        Codes.Concat(FaultCodes.In(typeof(Fault).Assembly)).Concat(FaultCodes.In(typeof(Engine.Calculator).Assembly)).GroupBy(code => code.Code).Where(group => group.Count() > 1).Select(group => group.Key));
}
