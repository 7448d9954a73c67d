using System.Diagnostics;
using System.Globalization;
using ScrewSheet.Fuzzing.Edits;
using SharpFuzz;

namespace ScrewSheet.Fuzzing;

/// <summary>
/// <c>fuzz TARGET</c> takes one input after another from the fuzzer; <c>replay TARGET PATH…</c> tries files and folders of them and ends with 1 where one is a find;
/// <c>edits STEPS [SEED]</c> edits workbooks at random beside the slow book.
/// </summary>
internal static class Program
{
    private static int Main(string[] words)
    {
        if (words is ["edits", var steps, ..] && long.TryParse(steps, NumberStyles.None, CultureInfo.InvariantCulture, out long count)) return Edit(count, words.Length > 2 ? int.Parse(words[2], CultureInfo.InvariantCulture) : Random.Shared.Next());
        if (words.Length < 2 || Target.Named(words[1]) is not { } target || words[0] is not ("fuzz" or "replay"))
        {
            Console.Error.WriteLine($"Say fuzz or replay, one of {string.Join(", ", Target.All.Select(each => each.Name))}, and for replay the files or folders; or edits, how many steps, and a seed.");
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

    /// <summary>Says every ten seconds how far it is, and at the end what was done.</summary>
    private static int Edit(long steps, int seed)
    {
        EditWalk walk = new(seed);
        Stopwatch time = Stopwatch.StartNew();
        TimeSpan said = TimeSpan.Zero;
        string Far() => string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {walk.Steps:N0} of {steps:N0} steps, {time.Elapsed.TotalSeconds:0} s, {walk.Compared.All:N0} results worked out twice, {walk.Compared.Numbers:N0} of them numbers");
        try
        {
            walk.Take(steps, () =>
            {
                if (time.Elapsed - said < TimeSpan.FromSeconds(10)) return;
                said = time.Elapsed;
                Console.WriteLine(Far());
            });
        }
        catch (BrokenPromiseException find)
        {
            Console.Error.WriteLine($"{Far()}\n{find.Message}");
            return 1;
        }
        Console.WriteLine($"{Far()}\n{string.Join(", ", walk.Counts.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => string.Create(CultureInfo.InvariantCulture, $"{pair.Key} {pair.Value:N0}")))}");
        return 0;
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
