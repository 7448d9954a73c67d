using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Workbooks.Tests.Format;

/// <summary>Every example of <c>docs/format.md</c>.</summary>
public sealed class SpecificationTests
{
    public static TheoryData<string> Examples => [.. Blocks("screwsheet")];

    public static TheoryData<string> Faults => [.. Blocks("screwsheet-fault")];

    [Theory]
    [MemberData(nameof(Examples))]
    public void AnExampleHasNoFaultAndIsWrittenBack(string text)
    {
        Assert.Empty(Text.Faults(Text.Read(text)));
        Assert.Equal(text, Text.Write(Text.Read(text)));
    }

    /// <summary>The last line of the block is the sentence.</summary>
    [Theory]
    [MemberData(nameof(Faults))]
    public void AFaultSaysWhatThePageSays(string block)
    {
        int last = block.TrimEnd('\n').LastIndexOf('\n');
        string text = block[..(last + 1)];
        Fault fault = WorkbookText.Read(text) is Refusal refusal ? refusal.Fault : Assert.Single(Text.Faults(Text.Read(text)));
        Assert.Equal(block[(last + 1)..].TrimEnd('\n'), fault.Sentence);
    }

    private static IEnumerable<string> Blocks(string kind)
    {
        string page = File.ReadAllText(Path.Combine(GoldenFile.Root, "docs/format.md")).ReplaceLineEndings("\n");
        string fence = $"```{kind}\n";
        for (int at = page.IndexOf(fence, StringComparison.Ordinal); at >= 0; at = page.IndexOf(fence, at, StringComparison.Ordinal))
        {
            at += fence.Length;
            yield return page[at..page.IndexOf("```", at, StringComparison.Ordinal)];
        }
    }
}
