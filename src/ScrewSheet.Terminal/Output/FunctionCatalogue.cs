using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Output;

/// <summary>The library by topic: each function with the question it answers.</summary>
internal static class FunctionCatalogue
{
    /// <summary>The lines in a width.</summary>
    public static IEnumerable<StyledLine> Lines(IReadOnlyList<LibraryFunction> functions, int width)
    {
        bool first = true;
        foreach (IGrouping<string, LibraryFunction> topic in functions.GroupBy(function => function.Declaration.Topic).OrderBy(topic => topic.Key, StringComparer.Ordinal))
        {
            if (!first) yield return new StyledLine("");
            first = false;
            yield return new StyledLine(topic.Key, Tone.Strong);
            int longest = topic.Max(function => function.Name.Length);
            foreach (LibraryFunction function in topic.OrderBy(function => function.Name, StringComparer.Ordinal))
            {
                foreach (StyledLine line in Entry(function, longest, width)) yield return line;
            }
        }
    }

    /// <summary>Functions with the word in their name, their topic or their question, a full name alone where it is one.</summary>
    public static IReadOnlyList<LibraryFunction> Find(IReadOnlyList<LibraryFunction> functions, string word)
    {
        if (functions.FirstOrDefault(function => function.Name == word) is LibraryFunction exact) return [exact];
        return [.. functions.Where(function => Has(function.Name, word) || Has(function.Declaration.Topic, word) || Has(function.Declaration.Answers, word))];
    }

    private static bool Has(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);

    // the question beside the name where it has room, else below it
    private static IEnumerable<StyledLine> Entry(LibraryFunction function, int longest, int width)
    {
        if (longest + 4 + 30 <= width) return Wrapping.Hanging("  " + function.Name.PadRight(longest + 2), function.Declaration.Answers, width).Select(line => new StyledLine(line));
        return Wrapping.Hanging("    ", function.Declaration.Answers, width).Prepend("  " + function.Name).Select(line => new StyledLine(line));
    }
}
