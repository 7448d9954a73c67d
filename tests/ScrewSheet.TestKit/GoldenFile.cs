using System.Runtime.CompilerServices;
using Xunit;

namespace ScrewSheet.TestKit;

/// <summary>Compares generated text with a file of the repository; with SCREWSHEET_WRITE=1 in the environment it writes the file instead.</summary>
public static class GoldenFile
{
    /// <summary>The repository's folder.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Fails when the file at that path below the repository differs from <paramref name="text"/>.</summary>
    public static void Holds(string path, string text)
    {
        string full = Path.Combine(Root, path);
        if (Environment.GetEnvironmentVariable("SCREWSHEET_WRITE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            File.WriteAllText(full, text);
        }
        Assert.True(File.Exists(full), $"{path} is missing; run the tests once with SCREWSHEET_WRITE=1.");
        Assert.Equal(File.ReadAllText(full).ReplaceLineEndings("\n"), text.ReplaceLineEndings("\n"));
    }

    private static string FindRoot([CallerFilePath] string here = "")
    {
        DirectoryInfo? folder = new(Path.GetDirectoryName(here)!);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ScrewSheet.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The repository's folder was not found.");
    }
}
