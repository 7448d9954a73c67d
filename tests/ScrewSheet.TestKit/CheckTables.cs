using System.Reflection;

namespace ScrewSheet.TestKit;

/// <summary>Finds the check tables of a test assembly.</summary>
public static class CheckTables
{
    /// <summary>All rows, by group and then in the order written.</summary>
    public static IReadOnlyList<CheckRow> In(Assembly assembly) =>
        [.. assembly.GetTypes()
            .SelectMany(type => type.GetProperties(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(property => property.IsDefined(typeof(CheckTableAttribute)))
            .OrderBy(property => property.DeclaringType!.FullName, StringComparer.Ordinal)
            .SelectMany(property => (IEnumerable<CheckRow>)property.GetValue(null)!)];

    /// <summary>A key for each row, for use as a theory's data.</summary>
    public static IEnumerable<object[]> Keys(Assembly assembly) => In(assembly).Select(row => new object[] { Key(row) });

    /// <summary>The row of that key.</summary>
    public static CheckRow Find(Assembly assembly, string key) => In(assembly).Single(row => Key(row) == key);

    private static string Key(CheckRow row) => $"{row.Group}: {row.What}{(row.IsMisprint ? " (misprint)" : "")}";
}
