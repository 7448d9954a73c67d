using System.Globalization;
using ScrewSheet.TestKit;
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

    /// <summary>The line after <c>screwsheet 1</c> of a small one says what is expected: <c>// says: …</c>. All are checked by one process.</summary>
    [Fact]
    public void SmallBombsAreSentences()
    {
        string[] files = [.. Directory.GetFiles(Path.Combine(GoldenFile.Root, "tests", "bombs"), "*.screwsheet").Order(StringComparer.Ordinal)];
        Assert.NotEmpty(files);
        string[] plain = [.. files.Where(file => !HasTable(file))];
        string said = Hold("small bombs", ["check", .. plain], []);
        for (int i = 0; i < plain.Length; i++)
        {
            // each file's own part of the report
            int from = said.IndexOf(plain[i], StringComparison.Ordinal) + plain[i].Length, to = i + 1 < plain.Length ? said.IndexOf(plain[i + 1], StringComparison.Ordinal) : said.Length;
            Assert.Contains(Says(plain[i]), said[from..to], StringComparison.Ordinal);
        }
        foreach (string file in files.Where(HasTable)) Hold(Path.GetFileName(file), ["what-if", file], [Says(file)]);
    }

    private static bool HasTable(string file) => File.ReadAllText(file).Contains("\nwhat-if ", StringComparison.Ordinal);

    private static string Says(string file) => File.ReadLines(file).ElementAt(1)["// says: ".Length..];

    private void Try(string name, string text, string says, IReadOnlyList<string> lines)
    {
        string book = Path.Combine(folder, "book.screwsheet");
        File.WriteAllText(book, text);
        foreach (string line in lines)
        {
            string[] args = [.. line.Split(' ').Select(word => word.Replace("BOOK", book, StringComparison.Ordinal).Replace("OUT", Path.Combine(folder, "out"), StringComparison.Ordinal))];
            Hold($"{name} | {line}", args, line == lines[0] ? [says] : []);
        }
    }

    private string Hold(string what, string[] args, IReadOnlyList<string> says)
    {
        Measured run = Measured.Run(folder, Patience, args);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what} | {run.Time.TotalSeconds:F1} s | {run.Peak >> 20} MB | {run.Status}"));
        string said = string.Join(' ', run.Said.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.True(run.Status is 0 or 1 or 2, $"{what} ended with {run.Status} after {run.Time.TotalSeconds:F0} s and {run.Peak >> 20} MB: {said[..Math.Min(said.Length, 500)]}");
        Assert.True(run.Peak < MostMemory, $"{what} took {run.Peak >> 20} MB");
        Assert.All(says, sentence => Assert.Contains(sentence, said, StringComparison.Ordinal));
        return said;
    }
}
