using System.Text;
using System.Text.RegularExpressions;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Tests;

/// <summary>What the README shows is what the program prints.</summary>
public sealed partial class ReadmeTests
{
    private static string Readme { get; } = File.ReadAllText(Path.Combine(GoldenFile.Root, "README.md"));

    [Fact]
    public void TheTourIsWhatHappens()
    {
        using Session session = new() { Width = 76, Calculator = new EngineCalculator(FunctionLibrary.Of()) };
        string[] blocks = [.. Block().Matches(Readme).Select(match => match.Groups[1].Value)];
        session.File("screw.screwsheet", blocks.Single(block => block.StartsWith("screwsheet 1\n", StringComparison.Ordinal)));
        string[] shown = [.. blocks.Where(block => block.StartsWith("$ ", StringComparison.Ordinal))];
        Assert.NotEmpty(shown);
        foreach (string block in shown) Assert.Equal(block, Replay(session, block));
    }

    [Fact]
    public void TheGateRunsTheReadmesCommands()
    {
        string gate = File.ReadAllText(Path.Combine(GoldenFile.Root, ".ci/run"));
        Assert.Contains("dotnet test ScrewSheet.sln -c Release --nologo\n", Readme, StringComparison.Ordinal);
        Assert.Contains("dotnet test \"$1\" -c Release --nologo", gate, StringComparison.Ordinal);
        Assert.Contains("run_tests ScrewSheet.sln\n", gate, StringComparison.Ordinal);
        string job = Readme.Split('\n').First(line => line.StartsWith("dotnet run ", StringComparison.Ordinal));
        Assert.Contains(job, gate, StringComparison.Ordinal);
    }

    private static string Replay(Session session, string block)
    {
        StringBuilder replayed = new();
        foreach (string line in block.Split('\n').Where(line => line.StartsWith("$ ", StringComparison.Ordinal)))
        {
            replayed.Append(line).Append('\n');
            replayed.Append(Run(session, [.. Word().Matches(line[2..]).Select(match => match.Groups[1].Value + match.Groups[2].Value + match.Groups[3].Value)]));
        }
        return replayed.ToString();
    }

    private static string Run(Session session, string[] words)
    {
        string path = session.At(words.First(word => word.EndsWith(".screwsheet", StringComparison.Ordinal)));
        switch (words[0])
        {
            case "screwsheet":
                int before = session.Output.Length;
                session.Run([.. words.Skip(1).Select(word => word == Path.GetFileName(path) ? path : word)]);
                return session.Output[before..];
            case "tail":
                return string.Concat(File.ReadAllLines(path).TakeLast(int.Parse(words[2], System.Globalization.CultureInfo.InvariantCulture)).Select(line => line + "\n"));
            case "sed":
                string[] parts = words[2].Split('/');
                File.WriteAllText(path, new Regex(Regex.Escape(parts[1].Replace("\\*", "*", StringComparison.Ordinal))).Replace(File.ReadAllText(path), parts[2]));
                return "";
            default:
                throw new InvalidOperationException($"The README runs {words[0]}, which this test does not know.");
        }
    }

    [GeneratedRegex("^```\n(.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex("\"([^\"]*)\"|'([^']*)'|(\\S+)")]
    private static partial Regex Word();
}
