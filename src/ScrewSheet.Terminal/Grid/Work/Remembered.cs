using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.Recovery;

namespace ScrewSheet.Terminal.Grid.Work;

/// <summary>What is remembered from one start to the next: files opened lately, and that the cautions were read. Losing it costs nothing, so trouble with it is passed over.</summary>
/// <param name="folder">The folder it is kept in.</param>
internal sealed class Remembered(string folder)
{
    private const int Most = 10;

    /// <summary>In the reader's own folder for such things.</summary>
    public static Remembered OfUser()
    {
        string? state = Environment.GetEnvironmentVariable("XDG_STATE_HOME");
        string home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        return new Remembered(Path.Combine(string.IsNullOrEmpty(state) ? Path.Combine(home, ".local", "state") : state, "screwsheet"));
    }

    /// <summary>True when the cautions were read once.</summary>
    public bool CautionsRead => File.Exists(Path.Combine(folder, "cautions-read"));

    /// <summary>The files opened lately that are still there, newest first.</summary>
    public IReadOnlyList<string> Recent => Try<IReadOnlyList<string>>(() => [.. File.ReadLines(At("lately")).Where(path => path.Length > 0 && File.Exists(path)).Take(Most)], []);

    /// <summary>Changes that grids have not saved.</summary>
    public Journals Unsaved { get; } = new(Path.Combine(folder, "unsaved"));

    /// <summary>Remembers that the cautions were read.</summary>
    public void ReadCautions() => Try(() => Write("cautions-read", ""), false);

    /// <summary>Remembers a file.</summary>
    public void Opened(string path)
    {
        string whole = Path.GetFullPath(path);
        if (whole.Any(char.IsControl)) return;
        Try(() => Write("lately", string.Join('\n', Recent.Where(other => other != whole).Prepend(whole).Take(Most)) + "\n"), false);
    }

    /// <summary>Puts changes that could not be saved any more into a file of their own.</summary>
    /// <returns>The file, or null where that did not work either.</returns>
    public string? Rescue(byte[] bytes) => Try(() =>
    {
        Directory.CreateDirectory(folder);
        int number = 1;
        while (File.Exists(At($"rescued-{number}.screwsheet"))) number++;
        string path = At($"rescued-{number}.screwsheet");
        SafeWrite.Create(path, bytes);
        return path;
    }, null);

    private string At(string name) => Path.Combine(folder, name);

    private bool Write(string name, string text)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(At(name), text);
        return true;
    }

    private static T Try<T>(Func<T> work, T otherwise)
    {
        try
        {
            return FileTrouble.Guard("", "read", work);
        }
        catch (UserMistake)
        {
            return otherwise;
        }
    }
}
