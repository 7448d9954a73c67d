using System.Globalization;
using System.Text;
using ScrewSheet.Engine;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Documents.Tests;

/// <summary>The chapter of ready values: each as a cell shows it, with its source; one that sources disagree on shows the fault it gives.</summary>
internal static class ReadyValues
{
    public static void Write(StringBuilder page)
    {
        page.Append("\n## Ready values\n\nWritten in a cell by their whole name. Where sources differ, the value is a fault that lists them, until the author writes the value of their edition as a given.\n");
        (LibraryValues Group, string Path)[] groups = [.. TheLibrary.Functions.Values.OrderBy(values => values.Clr.Name, StringComparer.Ordinal).SelectMany(values => Deep(values, values.Clr.Name))];
        Dictionary<string, CellResult> shown = Compute([.. groups.SelectMany(group => group.Group.Members.SelectMany(member => Expressions(group.Path, member)))]);
        foreach (var (group, path) in groups.Where(group => group.Group.Members.Length > 0))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n### {path}\n\n{Markdown.Plain(group.Meaning)}\n\n");
            foreach (LibraryMember member in group.Members) Member(page, path, member, shown);
        }
    }

    private static void Member(StringBuilder page, string path, LibraryMember member, Dictionary<string, CellResult> shown)
    {
        string name = $"{path}.{member.Name}";
        string symbol = member.Declaration.Symbol.Length == 0 ? "" : $" ({member.Declaration.Symbol})";
        page.Append(CultureInfo.InvariantCulture, $"- `{name}`{Markdown.Plain(symbol)}: {Markdown.Plain(member.Declaration.Meaning)}: {string.Join(", ", Expressions(path, member).Select(expression => Shown(name, expression, shown[expression])))}");
        foreach (var source in member.Sources) page.Append(CultureInfo.InvariantCulture, $"; {Markdown.Plain(source.Work)} *({StandingText.Of(source.Standing)})*");
        page.Append('\n');
    }

    private static string Shown(string name, string expression, CellResult result)
    {
        string value = result.Fault is { } fault ? $"fault: {fault.Sentence}" : ValueText.Format(result.Value!, null, UnitSystem.SI).Joined;
        return Markdown.Plain(expression == name ? value : $"{expression[(name.Length + 1)..]} {value}");
    }

    /// <summary>The value itself, or the members of a record.</summary>
    private static IEnumerable<string> Expressions(string path, LibraryMember member) =>
        member.Type is RecordType record
            ? TheLibrary.Functions.Records.Single(known => known.Clr == record.Clr).Members.Where(inner => inner.Type is QuantityType or NumberType).Select(inner => $"{path}.{member.Name}.{inner.Name}")
            : [$"{path}.{member.Name}"];

    private static IEnumerable<(LibraryValues, string)> Deep(LibraryValues values, string path) =>
        values.Nested.OrderBy(nested => nested.Clr.Name, StringComparer.Ordinal).SelectMany(nested => Deep(nested, $"{path}.{nested.Clr.Name}")).Prepend((values, path));

    private static Dictionary<string, CellResult> Compute(string[] expressions)
    {
        string text = "screwsheet 1\n\nsheet Values\n" + string.Concat(expressions.Select((expression, i) => $"A{i + 1} => {expression}\n"));
        Workbook workbook = Assert.IsType<WorkbookRead>(WorkbookText.Read(text)).Workbook;
        Calculation calculation = new Calculator(TheLibrary.Functions).Calculate(workbook);
        return expressions.Zip(calculation.Of(workbook.Sheets[0])).ToDictionary(pair => pair.First, pair => pair.Second);
    }
}
