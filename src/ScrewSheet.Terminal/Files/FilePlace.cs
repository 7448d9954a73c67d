namespace ScrewSheet.Terminal.Files;

/// <summary>The one path of a file, however it was reached.</summary>
internal static class FilePlace
{
    /// <summary>The whole path of the file that is meant, the links of its own name followed.</summary>
    /// <exception cref="IOException">The links lead round in a circle, or cannot be read.</exception>
    public static string Target(string path) => File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? Path.GetFullPath(path);

    /// <summary>The same; where the links cannot be followed, the path itself.</summary>
    public static string Of(string path)
    {
        try
        {
            return Target(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Path.GetFullPath(path);
        }
    }
}
