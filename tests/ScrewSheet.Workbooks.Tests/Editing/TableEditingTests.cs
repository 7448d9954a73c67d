using System.Text;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Editing;

public sealed class TableEditingTests
{
    private const string File =
        """
        screwsheet 1

        sheet Fall
        A1 peak = 8 kN
        // above the first
        what-if D2 "First"
          vary peak:  1 kN,   2 kN // spread by hand
          show A2

        A2 => peak * 2 // twice
        plot F2 "drawn" of D2
          what-if Z9 "inside another block"

        // above the second
        what-if D9 // a remark
          vary peak: 3 kN
          show A2

        // last words

        sheet Other
        A1 "words"
        """;

    private static readonly WhatIfBlock Third = new(new CellAddress(8, 2), "Third \"table\"", [At("peak: 1 kN to 3 kN step 1 kN")], [At("A2")], default);

    private static PlacedText At(string text) => new(text, new Place(0, 1));

    private static Workbook Read(string text = File) => Assert.IsType<WorkbookRead>(WorkbookText.Read(text)).Workbook;

    private static string Text(Workbook workbook) => Encoding.UTF8.GetString(WorkbookText.Write(workbook));

    private static string Replace(string old, string now) => File.Contains(old, StringComparison.Ordinal) ? File.Replace(old, now, StringComparison.Ordinal) : throw new ArgumentException(old);

    /// <summary>What a workbook says of its tables is what its text says.</summary>
    private static string Checked(Workbook workbook)
    {
        string text = Text(workbook);
        foreach ((Sheet now, Sheet read) in workbook.Sheets.Zip(Read(text).Sheets))
        {
            static string Said(WhatIfBlock block) => $"{block.Anchor} {block.Title}: {string.Join("; ", block.Vary.Select(vary => vary.Text))} | {string.Join("; ", block.Show.Select(show => show.Text))}";
            Assert.Equal(read.WhatIfs.Select(Said), now.WhatIfs.Select(Said));
        }
        return text;
    }

    [Fact]
    public void ANewTable_StandsBehindTheLastOne_AndNoOtherByteChanges() => Assert.Equal(
        Replace("  show A2\n\n// last words", "  show A2\n\nwhat-if H2 \"Third \\\"table\\\"\"\n  vary peak: 1 kN to 3 kN step 1 kN\n  show A2\n\n// last words"),
        Checked(Read().WithWhatIf("Fall", Third)));

    [Fact]
    public void TheFirstTableOfASheet_StandsBehindItsCells() => Assert.Equal(
        File + "\n\nwhat-if H2 \"Third \\\"table\\\"\"\n  vary peak: 1 kN to 3 kN step 1 kN\n  show A2\n",
        Checked(Read().WithWhatIf("Other", Third)));

    [Fact]
    public void AChangedTable_KeepsTheLinesThatSayTheSame_AndItsRemarks()
    {
        Workbook workbook = Read();
        WhatIfBlock first = workbook.Sheets[0].WhatIfs[0], second = workbook.Sheets[0].WhatIfs[1];
        Assert.Equal(Replace("what-if D2 \"First\"", "what-if E3 \"First\""), Checked(workbook.WithWhatIf("Fall", first with { Anchor = new CellAddress(5, 3) }, 0)));
        Assert.Equal(Replace("what-if D9 // a remark\n  vary peak: 3 kN", "what-if D9 \"Named\" // a remark\n  vary peak: 4 kN"),
            Checked(workbook.WithWhatIf("Fall", second with { Title = "Named", Vary = [At("peak: 4 kN")] }, 1)));
    }

    [Fact]
    public void ATableTakenAway_TakesItsRemarkAlong()
    {
        Assert.Equal(Replace("// above the first\nwhat-if D2 \"First\"\n  vary peak:  1 kN,   2 kN // spread by hand\n  show A2\n", ""), Checked(Read().WithoutWhatIf("Fall", 0)));
        Assert.Equal(Replace("// above the second\nwhat-if D9 // a remark\n  vary peak: 3 kN\n  show A2\n\n", ""), Checked(Read().WithoutWhatIf("Fall", 1)));
    }

    [Fact]
    public void PutInAndTakenAwayAgain_TheFileIsAsItWas() => Assert.Equal(File, Text(Read().WithWhatIf("Fall", Third).WithoutWhatIf("Fall", 2)));

    [Fact]
    public void ALineInFaultOfTheTable_IsForgottenWithIt()
    {
        Workbook workbook = Read(Replace("vary peak: 3 kN", "vary peak 3 kN"));
        Assert.Single(workbook.Faults);
        Assert.Empty(workbook.WithWhatIf("Fall", workbook.Sheets[0].WhatIfs[1] with { Vary = [At("peak: 3 kN")] }, 1).Faults);
        Assert.Empty(workbook.WithoutWhatIf("Fall", 1).Faults);
        Assert.Single(workbook.WithoutWhatIf("Fall", 0).Faults);
    }

    [Fact]
    public void WhatDoesNotReadBack_OrIsNotThere_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => Read().WithWhatIf("Fall", Third with { Vary = [At("peak")] }));
        Assert.Throws<ArgumentException>(() => Read().WithWhatIf("Nowhere", Third));
        Assert.Throws<ArgumentOutOfRangeException>(() => Read().WithoutWhatIf("Fall", 2));
    }

    [Fact]
    public void ASheetMadeInMemory_TakesTables()
    {
        Workbook workbook = new Workbook().WithSheet(new Sheet { Name = "New", Order = [] }).WithCell("New", new Cell { Address = new CellAddress(1, 1), Content = new NoteContent("words") });
        Assert.Contains("\nA1 \"words\"\n\nwhat-if H2", Checked(workbook.WithWhatIf("New", Third)), StringComparison.Ordinal);
    }
}
