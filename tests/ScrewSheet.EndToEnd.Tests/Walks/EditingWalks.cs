namespace ScrewSheet.EndToEnd.Tests.Walks;

/// <summary>What a person does to a workbook, at both sizes.</summary>
public sealed class EditingWalks
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void OpenEditUndoSaveReopen(int width, int height)
    {
        using Desk desk = new(width, height);
        desk.Open("fall.screwsheet", Books.Fall).Sees("340.0 N·m");
        desk.Go("C2").Type("extra => peak * 2").Sees("gives    17 kN").Press("Enter").Sees("not saved");
        desk.Press("C-z").Sees("Took back the entry in C2").Press("C-y").Sees("again").Press("C-s").Sees("Saved fall.screwsheet").Leave();
        Assert.Contains("C2 extra => peak * 2 gives 17 kN\n", desk.Read("fall.screwsheet"), StringComparison.Ordinal);
        desk.Start("fall.screwsheet").Sees("17 kN").Go("extra").Sees("numbers  8.5 kN · 2").Leave();
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void FillDown_AndSort(int width, int height)
    {
        using Desk desk = new(width, height);
        desk.Open("rows.screwsheet", Books.Rows).Go("C2").Press("S-Down", "S-Down").Sees("C2 to C4").Command("d").Sees("Filled C2 to C4").Sees("60 N·m");
        desk.Go("A2").Press("S-Down", "S-Down", "S-Right").Command("2").Sees("over the whole width").Type("r").Sees("Sorted A2 to B4 by column B").Press("C-s").Sees("Saved").Leave();
        Assert.Contains("A2 = 20 mm\n", desk.Read("rows.screwsheet"), StringComparison.Ordinal);
        Assert.Contains("B4 = 3 kN\n", desk.Read("rows.screwsheet"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void InsertedRows_AreFollowedByEveryReference(int width, int height)
    {
        using Desk desk = new(width, height);
        desk.Open("fall.screwsheet", Books.Fall).Go("A3").Press("S-Down").Command("i").Sees("Inserted 2 rows").Press("C-s").Sees("Saved").Leave();
        string saved = desk.Read("fall.screwsheet");
        Assert.Contains("B5 exposed [mm] = 40 mm", saved, StringComparison.Ordinal);
        Assert.Contains("A2 => Fall.B6 / Fall.B5 gives", saved, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void RowsMove_AColumnWidens_ByKeysAndByTheMouse(int width, int height)
    {
        using Desk desk = new(width, height);
        desk.Open("fall.screwsheet", Books.Fall).Go("B2").Command("4").Sees("The arrows move row 2").Press("Down").Sees("Moved; now row 3").Press("Enter").Command("+");
        // the head of A ends in column 32 of the screen, counted from 1
        desk.Bytes("\e[<0;32;2M\e[<32;37;2M\e[<0;37;2m").Press("C-s").Sees("Saved").Leave();
        string saved = desk.Read("fall.screwsheet");
        Assert.Contains("widths A 31, B 16, C 12\n", saved, StringComparison.Ordinal);
        Assert.Contains("B3 peak [kN] = 8.5 kN", saved, StringComparison.Ordinal);
        Assert.Contains("A2 => Fall.B4 / Fall.B2 gives", saved, StringComparison.Ordinal);
    }

    [Fact]
    public void CopyPaste_CutPaste_AndAClearedCellTakenBack()
    {
        using Desk desk = new();
        desk.Open("fall.screwsheet", Books.Fall).Go("B7").Press("C-c").Sees("Copied B7").Go("C9").Press("C-v").Sees("Pasted B7");
        desk.Go("B3").Press("C-x").Go("C3").Press("C-v").Sees("every reference follows").SeesNot("calculating");
        desk.Go("B2").Press("DC").Sees("Cleared B2").Press("C-z").Sees("Took back clearing B2").Press("C-s").Sees("Saved").Leave();
        string saved = desk.Read("fall.screwsheet");
        Assert.Contains("C9 => broken * 2", saved, StringComparison.Ordinal);
        Assert.Contains("C3 exposed [mm] = 40 mm", saved, StringComparison.Ordinal);
        Assert.Contains("Fall.B4 / Fall.C3", saved, StringComparison.Ordinal);
    }

    [Fact]
    public void TextFromAnotherProgram_ArrivesAsCells_AndInALineBeingTyped()
    {
        using Desk desk = new(120, 30);
        desk.Open("fall.screwsheet", Books.Fall).Go("C9").Paste("5 kN\tsome words\n=> peak * 3\n").Sees("25.5 kN");
        desk.Go("C12").Type("=> ").Paste("peak * 4").Sees("gives    34 kN").Press("Enter", "C-s").Sees("Saved").Leave();
        string saved = desk.Read("fall.screwsheet");
        Assert.Contains("C9 = 5 kN\n", saved, StringComparison.Ordinal);
        Assert.Contains("D9 \"some words\"\n", saved, StringComparison.Ordinal);
        Assert.Contains("C12 => peak * 4 gives 34 kN\n", saved, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void FindAndReplace(int width, int height)
    {
        using Desk desk = new(width, height);
        desk.Open("fall.screwsheet", Books.Fall).Press("C-f").Line("twice").Sees("Cells that hold twice").Press("Enter").Sees("‹Other›");
        desk.Type("<").Sees("‹Fall›").Command("h").Line("8.5").Line("9.5").Sees("Replaced in 1 cell").Sees("380.0 N·m").Press("C-s").Sees("Saved").Leave();
        Assert.Contains("B2 peak [kN] = 9.5 kN ± 0.5 kN // from the fall sheet", desk.Read("fall.screwsheet"), StringComparison.Ordinal);
    }

    [Fact]
    public void Completion_OffersNames_AndTakesOne()
    {
        using Desk desk = new();
        desk.Open("fall.screwsheet", Books.Fall).Go("C2").Type("=> expo").Sees("B3  40 mm").Press("Down").Sees("▸ exposed").Press("Enter").Type(" * 2").Sees("gives    80 mm");
        desk.Press("Escape").Sees("Left as it was").Leave();
    }
}
