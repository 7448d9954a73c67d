namespace ScrewSheet.TestKit;

/// <summary>The programs as built, in the configuration of the tests that run.</summary>
public static class BuiltPrograms
{
    /// <summary>A program of a project.</summary>
    public static string At(string project, string program) =>
        Path.Combine(GoldenFile.Root, ".artifacts", "bin", project, Path.GetFileName(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory)), program);
}
