namespace ScrewSheet.EndToEnd.Tests.Walks;

/// <summary>What a person hands to others, and what others left for this person.</summary>
public sealed class PassingWalks
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void AChange_IsCompared_Reviewed_AndPassedOn(int width, int height)
    {
        using Desk desk = new(width, height);
        desk.Open("fall.screwsheet", Books.Fall).Go("exposed").Line("exposed [mm] = 45 mm").Sees("382.5 N·m").SeesNot("calculating");
        desk.Command("7").Sees("The earlier version: fall.screwsheet").Press("Enter").Sees("Since fall.screwsheet").Sees("340.0 N·m → 382.5 N·m (+12.5 %)").Type("moment").Press("Down", "Enter").Sees("── B4 moment");
        desk.Command("8").Sees("None of 6 reviewed").Type("m").Sees("Your initials").Line("KM").Sees("On which day").Line("2026-11-25").Sees("Marked moment as reviewed").Sees("382.5 N·m●").Sees("1 of 6 reviewed");
        desk.Command("6").Sees("Pass this workbook on as").Type("h").Sees("Write to: fall.html").Press("Enter").Sees("Wrote fall.html.").Holds("fall.html", "382.5");
        desk.Command("6").Type("h").Press("Enter").Sees("fall.html is there already.").Type("b").Sees("Nothing was written.");
        desk.Press("C-s").Sees("Saved").Leave().Holds("fall.screwsheet", "reviewed KM 2026-11-25 ");
    }

    [Fact]
    public void AMerge_IsResolved_InTheGrid()
    {
        using Desk desk = new();
        desk.Open("both.screwsheet", Books.Fall.Replace("B3 exposed [mm] = 40 mm ± 10 mm rectangular within 0 mm to 120 mm", "B3 conflict\n  ours exposed [mm] = 40 mm\n  theirs exposed [mm] = 45 mm", StringComparison.Ordinal));
        desk.Go("exposed").Sees("theirs   exposed [mm] = 45 mm").Press("Enter").Sees("Which one counts?").Type("t").Sees("Took theirs for exposed").Sees("382.5 N·m");
        desk.Press("C-z").Sees("Took back the choice of theirs").Press("Enter").Sees("Which one counts?").Type("o").Sees("340.0 N·m").Press("C-s").Sees("Saved").Leave().Holds("both.screwsheet", "B3 exposed [mm] = 40 mm\n");
    }
}
