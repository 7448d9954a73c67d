using System.Reflection;
using ScrewSheet.TestKit;

namespace ScrewSheet.Studies.Tests.Checks;

/// <summary>Every row of every check table of this project, one test each.</summary>
public sealed class PublishedChecks
{
    private static readonly Dictionary<string, CheckRow> Rows =
        CheckTables.Keys(Here).Zip(CheckTables.In(Here)).ToDictionary(pair => (string)pair.First[0], pair => pair.Second);

    private static Assembly Here => typeof(PublishedChecks).Assembly;

    public static IEnumerable<object[]> Keys => CheckTables.Keys(Here);

    [Theory]
    [MemberData(nameof(Keys))]
    public void Agrees(string key) => Rows[key].Hold();
}
