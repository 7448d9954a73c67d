using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Files;

/// <summary>A file a command is to write: one that is there already is left as it is, unless it may be replaced.</summary>
internal sealed class OutputFile
{
    private readonly string path;
    private readonly byte[]? before;

    private OutputFile(string path, byte[]? before) => (this.path, this.before) = (path, before);

    /// <summary>Looks before anything is computed whether the file may be written.</summary>
    /// <exception cref="UserMistake">It is there and may not be replaced, or cannot be read.</exception>
    public static OutputFile Claim(string path, bool replace)
    {
        if (!File.Exists(path)) return new OutputFile(path, null);
        return replace ? new OutputFile(path, BoundedRead.All(path)) : throw new UserMistake($"{FileTrouble.Quoted(path)} is there already and was left as it is. Choose another name, or say --replace.");
    }

    /// <summary>Writes it.</summary>
    /// <returns>A sentence that says so.</returns>
    /// <exception cref="UserMistake">It cannot be written, or changed since it was claimed.</exception>
    public string Write(byte[] bytes)
    {
        if (before is null) SafeWrite.Create(path, bytes);
        else SafeWrite.Replace(path, before, bytes);
        return $"{(before is null ? "Wrote" : "Replaced")} {PlainText.Of(path)}.";
    }
}
