namespace ScrewSheet.Terminal.Grid.Recovery;

/// <summary>The one path of a file, however it was reached.</summary>
internal static class FilePlace
{
    /// <summary>The whole path, with the links of the file's own name followed.</summary>
    public static string Of(string path)
    {
        try
        {
            return File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? Path.GetFullPath(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Path.GetFullPath(path);
        }
    }
}
