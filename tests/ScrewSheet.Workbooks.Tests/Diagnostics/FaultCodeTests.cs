using System.Reflection;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Diagnostics;

public sealed class FaultCodeTests
{
    private static IReadOnlyList<FaultCode> Rows => FaultCodes.In(typeof(Workbook).Assembly);

    [Fact]
    public void ThePageListsEveryFault() => DiagnosticsPage.Holds("Workbooks", Rows.Select(row => (row.Code, row.Summary)));

    [Fact]
    public void NoCodeIsUsedTwice() => Assert.Equal(Rows.Select(row => row.Code).Distinct(), Rows.Select(row => row.Code));

    [Fact]
    public void EveryWordingGivesItsOwnCode() =>
        Assert.All(Rows, row => Assert.Equal(row.Code, ((Fault)row.Wording.Invoke(null, [.. row.Wording.GetParameters().Select(Sample)])!).Code));

    [Fact]
    public void EverySentenceEndsWithAPoint() =>
        Assert.All(Rows, row => Assert.EndsWith(".", ((Fault)row.Wording.Invoke(null, [.. row.Wording.GetParameters().Select(Sample)])!).Sentence, StringComparison.Ordinal));

    private static object Sample(ParameterInfo parameter) => parameter.ParameterType switch
    {
        var type when type == typeof(Place) => new Place(1, 1),
        var type when type == typeof(string) => "a.",
        var type when type == typeof(long) => 1L,
        _ => 1,
    };
}
