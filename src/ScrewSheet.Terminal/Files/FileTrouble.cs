using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Files;

/// <summary>What goes wrong with files, as one sentence with what to do.</summary>
internal static class FileTrouble
{
    /// <summary>Runs <paramref name="work"/> and turns what the file system says into a <see cref="UserMistake"/>.</summary>
    /// <param name="path">The file as the user wrote it.</param>
    /// <param name="verb">What was tried: <c>read</c> or <c>written</c>.</param>
    /// <param name="work">What touches the file system.</param>
    public static T Guard<T>(string path, string verb, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new UserMistake(Sentence(path, verb, error));
        }
    }

    /// <summary>The sentence for what the file system said.</summary>
    public static string Sentence(string path, string verb, Exception error)
    {
        string name = Quoted(path);
        if (path.Length == 0 || error is ArgumentException and not ArgumentOutOfRangeException) return $"{name} is no file name. Name a workbook file.";
        if (Directory.Exists(path)) return $"{name} is a folder, not a workbook. Name a file inside it.";
        return error switch
        {
            FileNotFoundException or DirectoryNotFoundException => Missing(path, name, verb),
            UnauthorizedAccessException when verb == "read" => $"{name} cannot be read: you have no permission. Ask its owner, or change its permissions.",
            UnauthorizedAccessException => $"{name} cannot be written: you have no permission. Choose another folder, or change the permissions of the file or its folder.",
            // what the system says of a file that outgrows a limit
            ArgumentOutOfRangeException => $"{name} cannot be {verb}: it would be larger than the system allows. Check the limits on files and the room on the disk.",
            PathTooLongException => $"{name} is too long for a file name. Choose a shorter one.",
            _ => $"{name} cannot be {verb}: {Reason(error)} Check that the disk is there, is not full and allows it.",
        };
    }

    /// <summary>A name as it may be shown in a sentence.</summary>
    public static string Quoted(string path) => path.Length == 0 ? "\"\"" : PlainText.Of(path);

    private static string Missing(string path, string name, string verb)
    {
        if (verb == "read") return $"There is no file {name}. Check the spelling and the folder.";
        string? folder = Path.GetDirectoryName(path);
        return string.IsNullOrEmpty(folder) || Directory.Exists(folder)
            ? $"{name} cannot be written: it is not there any more. Check the folder."
            : $"{name} cannot be written: there is no folder {Quoted(folder)}. Create the folder first.";
    }

    /// <summary>What the system said; it names the full path once more after a colon, which is left out.</summary>
    internal static string Reason(Exception error) => PlainText.Of(error.Message.Split(" : ")[0].TrimEnd('.')).ToLowerInvariant() + ".";
}
