namespace ScrewSheet.Terminal.Files;

/// <summary>The workbooks that come with the program.</summary>
internal static class ShippedWorkbooks
{
    private const string Ending = ".screwsheet";

    /// <summary>Their names, without the ending.</summary>
    public static IReadOnlyList<string> Names(string folder) => !Directory.Exists(folder)
        ? []
        : [.. Directory.EnumerateFiles(folder, "*" + Ending).Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    /// <summary>The bytes of one.</summary>
    /// <exception cref="UserMistake">None has that name.</exception>
    public static byte[] Read(string folder, string name)
    {
        IReadOnlyList<string> names = Names(folder);
        string bare = name.EndsWith(Ending, StringComparison.Ordinal) ? name[..^Ending.Length] : name;
        if (names.Contains(bare)) return BoundedRead.All(Path.Combine(folder, bare + Ending));
        throw new UserMistake($"No shipped workbook is called {FileTrouble.Quoted(name)}. There are: {string.Join(", ", names)}.");
    }
}
