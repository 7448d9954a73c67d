using System.Runtime.CompilerServices;

namespace ScrewSheet.Benchmarks;

/// <summary>Where things are built.</summary>
internal static class Places
{
    /// <summary>The root of the repository.</summary>
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", ".."));

    /// <summary>A program in the build output, beside this one in the same configuration.</summary>
    public static string Built(string project, string program)
    {
        string configuration = Path.GetFileName(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory));
        return Path.Combine(Root, ".artifacts", "bin", project, configuration, Executable(program));
    }

    /// <summary>The name of a program file on this system.</summary>
    public static string Executable(string program) => OperatingSystem.IsWindows() ? program + ".exe" : program;

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
