using System.Reflection;
using ScrewSheet.TestKit;

namespace ScrewSheet.Quantities.Tests;

/// <summary>Every row of every check table of this project, one test each.</summary>
public sealed class PublishedChecks
{
    private static Assembly Here => typeof(PublishedChecks).Assembly;

    public static IEnumerable<object[]> Keys => CheckTables.Keys(Here);

    [Theory]
    [MemberData(nameof(Keys))]
    public void Agrees(string key) => CheckTables.Find(Here, key).Hold();
}
