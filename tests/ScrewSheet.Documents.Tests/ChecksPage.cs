using System.Globalization;
using System.Text;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Tests;
using ScrewSheet.TestKit;

namespace ScrewSheet.Documents.Tests;

/// <summary><c>docs/checks.md</c>: every comparison with something outside the code, made from the tests' own tables.</summary>
public sealed class ChecksPage
{
    private const string Head = """
        # Checks against the world

        Every value here is a test of its own; this page is made from the tests' tables, and a test keeps it current. *Allowed* is how far ours may be from the printed value, half a unit of its last digit unless the source truncates or says otherwise; *difference* is ours less the published value. Agreement with a published number shows that a relation is computed as published. It does not show that the relation describes your ice, your rope or your anchor: estimates, not permission.

        """;

    private static readonly Lazy<IReadOnlyList<CheckRow>> Rows = new(() => [.. TheLibrary.Tests.SelectMany(CheckTables.In)]);

    [Fact]
    public void ThePage_ListsEveryCheck() => GoldenFile.Holds("docs/checks.md", Page());

    [Fact]
    public void EveryRow_NamesAWorkAndHowItIsKnown() => Assert.All(Rows.Value, row => Assert.False(string.IsNullOrWhiteSpace(row.Source), row.What));

    [Fact]
    public void WhatIsComparedTwice_IsNamedTwice() => Assert.Empty(Rows.Value.GroupBy(row => (row.Group, row.What, row.IsMisprint)).Where(same => same.Count() > 1).Select(same => same.Key));

    private static string Page()
    {
        CheckRow[] arithmetic = [.. Rows.Value.Where(row => row.IsArithmetic)], misprints = [.. Rows.Value.Where(row => row.IsMisprint)];
        CheckRow[] published = [.. Rows.Value.Where(row => !row.IsArithmetic && !row.IsMisprint)];
        StringBuilder page = new(Head.ReplaceLineEndings("\n") + "\n");
        page.Append(CultureInfo.InvariantCulture, $"- {published.Length} published values: {string.Join(", ", ByStanding(published))}\n- {misprints.Length} known misprints that ours must differ from\n- {arithmetic.Length} rows that test arithmetic only\n");
        page.Append(CultureInfo.InvariantCulture, $"- {CertifiedSets.All.Count} certified figures in {CertifiedSets.FewestDigits().Count()} reference data sets, among the published values\n");
        page.Append("\n## Published values\n");
        Groups(page, published, withSource: true);
        page.Append("\n## Correct digits of certified data sets\n\nThe fewest correct digits (log relative error, rounded down) among the certified figures of each set; a double holds about 15.\n\n| set | figures | correct digits |\n|---|---|---|\n");
        foreach (var (set, digits) in CertifiedSets.FewestDigits().OrderBy(each => each.Set, StringComparer.Ordinal))
            page.Append(CultureInfo.InvariantCulture, $"| {set} | {CertifiedSets.All.Count(figure => figure.Set == set)} | {Math.Floor(digits)} |\n");
        page.Append("\n## Known misprints\n\nPrinted in the source named, and wrong: ours must differ by more than is allowed elsewhere.\n");
        Groups(page, misprints, withSource: true);
        page.Append("\n## Arithmetic only\n\nComputed apart from the program from the same formula, to 1e-6 relative unless *allowed* says otherwise. These rows say nothing about the physics.\n");
        Groups(page, arithmetic, withSource: false);
        return page.ToString();
    }

    private static IEnumerable<string> ByStanding(IEnumerable<CheckRow> rows) =>
        rows.GroupBy(row => row.Standing).OrderBy(group => group.Key).Select(group => string.Create(CultureInfo.InvariantCulture, $"{group.Count()} {StandingText.Of(group.Key)}"));

    private static void Groups(StringBuilder page, IEnumerable<CheckRow> rows, bool withSource)
    {
        foreach (var group in rows.GroupBy(row => row.Group).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n### {Markdown.Plain(group.Key)}\n\n");
            page.Append(withSource ? "| what | published | ours | difference | allowed | source | standing |\n|---|---|---|---|---|---|---|\n" : "| what | apart | ours | difference | allowed |\n|---|---|---|---|---|\n");
            foreach (CheckRow row in group) page.Append(Line(row, withSource));
        }
    }

    private static string Line(CheckRow row, bool withSource)
    {
        double ours = row.Ours(), off = ours - row.PublishedValue;
        string unit = row.Unit.Length == 0 ? "" : " " + row.Unit;
        string source = withSource ? $" {Markdown.Plain(row.Source)} | {StandingText.Of(row.Standing)} |" : "";
        return $"| {Markdown.Plain(row.What)} | {row.Published}{unit} | {Number(ours, 7)}{unit} | {Difference(off, row)} | {Number(row.Allowed, 2)} |{source}\n";
    }

    /// <summary>Differences that are the rounding of doubles are shown as none, so that the page is the same on every machine.</summary>
    private static string Difference(double off, CheckRow row) => Math.Abs(off) <= 1e-9 * Math.Max(Math.Abs(row.PublishedValue), 1e-3) ? "0" : Number(off, 2);

    private static string Number(double value, int digits) => value.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
