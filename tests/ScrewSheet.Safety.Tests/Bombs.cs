using System.Globalization;
using Xunit.Abstractions;

namespace ScrewSheet.Safety.Tests;

/// <summary>
/// No file of at most 10 MB takes more than 1 GB of memory or keeps the program for ever, whatever it says and whatever is done with it.
/// With SCREWSHEET_BOMBS=all in the environment the heavy ones are tried too, and what was measured is printed.
/// </summary>
public sealed class Bombs(ITestOutputHelper output) : IDisposable
{
    private const long MostMemory = 1L << 30;

    // no check of speed: a run that takes so long hangs
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    private static readonly bool All = Environment.GetEnvironmentVariable("SCREWSHEET_BOMBS") == "all";

    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-bombs-").FullName;

    public static TheoryData<string> Names => [.. BombList.All.Where(bomb => All || !bomb.IsHeavy).Select(bomb => bomb.Name)];

    public static TheoryData<string> Files => [.. Directory.GetFiles(Path.Combine(Watched.Root, "tests", "bombs"), "*.screwsheet").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [MemberData(nameof(Names))]
    public void ALargeBombIsASentence(string name)
    {
        Bomb bomb = BombList.All.Single(bomb => bomb.Name == name);
        string text = bomb.Text();
        Assert.InRange(text.Length, 1, 10_000_000);
        Try(name, text, bomb.Says, bomb.Verbs);
    }

    /// <summary>The first line of a small one says what is expected: <c>// says: …</c> after <c>screwsheet 1</c>.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void ASmallBombIsASentence(string name)
    {
        string text = File.ReadAllText(Path.Combine(Watched.Root, "tests", "bombs", name + ".screwsheet"));
        string says = text.Split('\n')[1]["// says: ".Length..];
        Try(name, text, says, ["check BOOK"]);
    }

    private void Try(string name, string text, string says, IReadOnlyList<string> lines)
    {
        string book = Path.Combine(folder, "book.screwsheet");
        File.WriteAllText(book, text);
        foreach (string line in lines)
        {
            string[] args = [.. line.Split(' ').Select(word => word.Replace("BOOK", book, StringComparison.Ordinal).Replace("OUT", Path.Combine(folder, "out"), StringComparison.Ordinal))];
            Measured run = Measured.Run(folder, Patience, args);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} | {line} | {run.Time.TotalSeconds:F1} s | {run.Peak >> 20} MB | {run.Status}"));
            Assert.True(run.Status is 0 or 1 or 2, $"{line} ended with {run.Status} after {run.Time.TotalSeconds:F0} s and {run.Peak >> 20} MB: {run.Said[..Math.Min(run.Said.Length, 500)]}");
            Assert.True(run.Peak < MostMemory, $"{line} took {run.Peak >> 20} MB");
            Assert.Contains(says, string.Join(' ', run.Said.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        }
    }
}
