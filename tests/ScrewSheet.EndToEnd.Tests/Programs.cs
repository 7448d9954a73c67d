using System.Runtime.CompilerServices;

namespace ScrewSheet.EndToEnd.Tests;

/// <summary>The programs as built, in the configuration of these tests.</summary>
internal static class Programs
{
    /// <summary>The product.</summary>
    public static string Screwsheet { get; } = Built("ScrewSheet.Terminal", "screwsheet");

    /// <summary>The grid with a mistake put in.</summary>
    public static string Failing { get; } = Built("ScrewSheet.FailingGrid", "ScrewSheet.FailingGrid");

    /// <summary>What makes every output of the product.</summary>
    public static string EveryOutput { get; } = Built("ScrewSheet.EveryOutput", "ScrewSheet.EveryOutput");

    /// <summary>The root of the repository.</summary>
    public static string Root => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", ".."));

    private static string Built(string project, string program)
    {
        return Path.Combine(Root, ".artifacts", "bin", project, Path.GetFileName(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory)), program);
    }

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
