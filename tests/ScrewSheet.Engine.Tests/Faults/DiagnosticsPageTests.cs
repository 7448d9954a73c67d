using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Engine.Tests.Faults;

/// <summary>Every fault of the engine is listed in <c>docs/diagnostics.md</c>, each code once.</summary>
public sealed class DiagnosticsPageTests
{
    private static IReadOnlyList<FaultCode> Codes => FaultCodes.In(typeof(Calculator).Assembly);

    [Fact]
    public void ThePageListsEveryFaultOfTheEngine() => DiagnosticsPage.Holds("Engine", Codes.Select(code => (code.Code, code.Summary)));

    [Fact]
    public void NoCodeIsUsedTwice() =>
        Assert.Empty(Codes.Concat(FaultCodes.In(typeof(Fault).Assembly)).GroupBy(code => code.Code).Where(group => group.Count() > 1).Select(group => group.Key));

    [Fact]
    public void EveryWordedFaultHasItsCodeMarked()
    {
        IEnumerable<string> unmarked = typeof(Calculator).Assembly.GetTypes().Where(type => type.Name.EndsWith("Faults", StringComparison.Ordinal))
            .SelectMany(type => type.GetMethods(System.Reflection.BindingFlags.Static | System.Reflection.BindingFlags.Public))
            .Where(method => method.ReturnType == typeof(Fault) && !method.IsDefined(typeof(FaultCodeAttribute), false)).Select(method => method.Name);
        Assert.Empty(unmarked);
    }
}
