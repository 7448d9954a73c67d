using SharpFuzz;

namespace ScrewSheet.Fuzzing;

/// <summary>
/// <c>fuzz TARGET</c> takes one input after another from the fuzzer; <c>replay TARGET PATH…</c> tries files and folders of them and ends with 1 where one is a find.
/// </summary>
internal static class Program
{
    private static int Main(string[] words)
    {
        if (words.Length < 2 || Target.Named(words[1]) is not { } target || words[0] is not ("fuzz" or "replay"))
        {
            Console.Error.WriteLine($"Say fuzz or replay, one of {string.Join(", ", Target.All.Select(each => each.Name))}, and for replay the files or folders.");
            return 2;
        }
        return words[0] == "fuzz" ? Fuzz(target) : Replay(target, words[2..]);
    }

    /// <summary>The work is done in a process of its own, so that one that overflows its stack or never ends is noticed as well.</summary>
    private static int Fuzz(Target target)
    {
        Fuzzer.OutOfProcess.Run(stream =>
        {
            using MemoryStream input = new();
            stream.CopyTo(input);
            target.Try(input.ToArray());
        });
        return 0;
    }

    /// <summary>Says of each kind of find how often it came and where the first one is.</summary>
    private static int Replay(Target target, string[] paths)
    {
        string[] files = [.. paths.SelectMany(path => Directory.Exists(path) ? Directory.EnumerateFiles(path).Order(StringComparer.Ordinal) : (IEnumerable<string>)[path])];
        var finds = files.Select(file => (File: file, Wrong: Wrong(target, file))).Where(find => find.Wrong is not null).ToList();
        foreach (var kind in finds.GroupBy(find => find.Wrong))
            Console.Error.WriteLine($"{kind.Count()}x {kind.First().File}: {kind.Key}");
        Console.WriteLine($"{files.Length} inputs tried, {finds.Count} finds");
        return finds.Count == 0 ? 0 : 1;
    }

    private static string? Wrong(Target target, string file)
    {
        try
        {
            target.Try(File.ReadAllBytes(file));
            return null;
        }
        catch (Exception find)
        {
            string where = (find.StackTrace ?? "").Split('\n').Select(line => line.Trim()).FirstOrDefault(line => line.StartsWith("at ScrewSheet.", StringComparison.Ordinal) && !line.Contains("Promise", StringComparison.Ordinal)) ?? "";
            return $"{find.GetType().Name}: {find.Message} {where}";
        }
    }
}
