using System.Globalization;
using System.Text;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Terminal.Output;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Documents.Tests;

/// <summary><c>docs/functions.md</c>: everything the library says of itself, with the help's own words.</summary>
public sealed class FunctionsPage
{
    private const string Head = """
        # Functions

        Everything a cell may call or read, made from the declarations in the code; `screwsheet functions WORD` shows the same facts.

        **Estimates, not permission.** A formula holds inside its assumptions and the range stated beside it. Outside the usual range a function still answers, and the answer carries a caution; outside its limits it refuses. The manufacturer's instructions, local codes and licensed or certified practice decide what may be loaded.

        Formulas are over the parameters in coherent SI: N, m, kg, s, Pa, N·m, angles in rad, temperatures in K. `gn` is 9.80665 m/s². In a cell every argument carries its own unit, whichever of its kind it is. Limits and usual ranges are in the unit that stands beside the parameter.

        How well a source is known is said behind it: *read in the source*, *read in a text that quotes it*, *from memory; check it before use*, *common practice*, *derived from first principles*.

        """;

    [Fact]
    public void ThePage_SaysWhatTheLibrarySays() => GoldenFile.Holds("docs/functions.md", Page());

    [Fact]
    public void TheHelpOnTheTerminal_SaysEverythingThePageSays() => Assert.All(TheLibrary.Functions.Functions, function =>
    {
        string help = string.Join(' ', new FunctionHelp(function, 100).Lines().SelectMany(line => line.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries)));
        Assert.All(FunctionFacts.Of(function), fact => Assert.Contains(string.Join(' ', fact.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries)), help, StringComparison.Ordinal));
    });

    private static string Page()
    {
        StringBuilder page = new(Head.ReplaceLineEndings("\n") + "\n");
        var topics = TheLibrary.Functions.Functions.GroupBy(function => function.Declaration.Topic).OrderBy(topic => topic.Key, StringComparer.Ordinal).ToList();
        page.Append(CultureInfo.InvariantCulture, $"{TheLibrary.Functions.Functions.Length} functions in {topics.Count} topics.\n\n");
        foreach (var topic in topics) page.Append(CultureInfo.InvariantCulture, $"- **{topic.Key}**: {string.Join(", ", topic.Select(function => $"[{function.Name}](#{Anchor(function.Name)})"))}\n");
        page.Append("- [Records](#records), [ready values](#ready-values), [options](#options)\n");
        foreach (var topic in topics)
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {topic.Key}\n");
            foreach (LibraryFunction function in topic) Function(page, function);
        }
        Records(page);
        ReadyValues.Write(page);
        Options(page);
        return page.ToString();
    }

    private static void Function(StringBuilder page, LibraryFunction function)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n### {function.Name}\n\n{Markdown.Plain(function.Declaration.Answers)}\n\n");
        foreach (FunctionFact fact in FunctionFacts.Of(function).Where(fact => fact.Word != "answers"))
            page.Append(CultureInfo.InvariantCulture, $"- {fact.Word}: {Markdown.Plain(fact.Before)}{Markdown.Code(fact.Code)}{Markdown.Plain(fact.After)}\n");
    }

    private static void Records(StringBuilder page)
    {
        page.Append("\n## Records\n\nWhat functions take and give that has several members; a member is read as `record.Member`. Members marked *settable* may be changed by `with`.\n");
        foreach (LibraryRecord record in TheLibrary.Functions.Records.OrderBy(record => record.Clr.Name, StringComparer.Ordinal))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n### {record.Clr.Name.Split('`')[0]}\n\n{Markdown.Plain(record.Meaning)}\n\n");
            foreach (LibraryMember member in record.Members)
            {
                string symbol = member.Declaration.Symbol.Length == 0 ? "" : $" ({member.Declaration.Symbol})", unit = member.Declaration.Unit.Length == 0 ? "" : $" in {member.Declaration.Unit}";
                page.Append(CultureInfo.InvariantCulture, $"- `{member.Name}`{Markdown.Plain(symbol + unit)}: {Markdown.Plain(member.Declaration.Meaning)}{(LibraryRecords.CanSet(record.Clr, member) ? " *settable*" : "")}\n");
            }
        }
    }

    private static void Options(StringBuilder page)
    {
        page.Append("\n## Options\n\n");
        foreach (Type option in TheLibrary.Functions.Options.OrderBy(option => option.Name, StringComparer.Ordinal))
        {
            string meaning = ((SheetOptionAttribute)Attribute.GetCustomAttribute(option, typeof(SheetOptionAttribute))!).Meaning;
            page.Append(CultureInfo.InvariantCulture, $"- {Markdown.Plain(meaning)}: {string.Join(", ", Enum.GetNames(option).Select(name => $"`{option.Name}.{name}`"))}\n");
        }
    }

    private static string Anchor(string heading) => heading.ToLowerInvariant();
}

/// <summary>Text in a markdown page.</summary>
internal static class Markdown
{
    /// <summary>Plain words: signs that would be read as markup are escaped.</summary>
    public static string Plain(string text)
    {
        StringBuilder plain = new();
        foreach (char sign in text)
        {
            if (sign is '*' or '_' or '`' or '<' or '>' or '[' or ']' or '|' or '\\') plain.Append('\\');
            plain.Append(sign);
        }
        return plain.ToString();
    }

    /// <summary>Code between backticks, or nothing.</summary>
    public static string Code(string code) => code.Length == 0 ? "" : $"`{code}`";

    /// <summary>A cell of a table that holds code.</summary>
    public static string CodeCell(string code) => Code(code.Replace("|", "\\|", StringComparison.Ordinal));
}
