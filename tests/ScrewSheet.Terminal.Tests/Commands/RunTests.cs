using ScrewSheet.TestKit;

namespace ScrewSheet.Terminal.Tests.Commands;

public sealed class RunTests
{
    [Fact]
    public void APageForPeople()
    {
        using Session session = new() { Calculator = Example.Fine };
        Assert.Equal(0, session.Run("run", session.File("a.screwsheet", Example.Text)));
        Assert.Equal("", session.Error);
        GoldenFile.Holds("tests/ScrewSheet.Terminal.Tests/Pages/run-fine.txt", session.Output);
    }

    [Fact]
    public void WhatIsBadIsSaidInWordsAndByTheStatus()
    {
        using Session session = new() { Calculator = Example.Worse, Width = 60 };
        Assert.Equal(1, session.Run("run", session.File("a.screwsheet", Example.Text)));
        GoldenFile.Holds("tests/ScrewSheet.Terminal.Tests/Pages/run-worse-60.txt", session.Output);
    }

    [Fact]
    public void AFaultIsSaidBelowItsCell()
    {
        using Session session = new() { Calculator = Example.Faulty, Width = 60 };
        Assert.Equal(1, session.Run("run", session.File("a.screwsheet", Example.Text)));
        GoldenFile.Holds("tests/ScrewSheet.Terminal.Tests/Pages/run-faulty-60.txt", session.Output);
    }

    [Fact]
    public void ColourChangesNoWord()
    {
        using Session plain = new() { Calculator = Example.Worse };
        using Session coloured = new() { Calculator = Example.Worse, Colour = true };
        plain.Run("run", plain.File("a.screwsheet", Example.Text));
        coloured.Run("run", coloured.File("a.screwsheet", Example.Text));
        Assert.Contains("\e[", coloured.Output, StringComparison.Ordinal);
        Assert.Equal(plain.Output, System.Text.RegularExpressions.Regex.Replace(coloured.Output, "\e\\[[0-9;]*m", ""));
    }

    [Fact]
    public void NoLineIsWiderThan60ColumnsOnATerminalOf60()
    {
        using Session session = new() { Calculator = Example.Worse, Width = 60 };
        session.Run("run", session.File("a.screwsheet", Example.Text));
        Assert.All(session.Output.Split('\n'), line => Assert.InRange(Terminal.Output.DisplayWidth.Of(line), 0, 60));
    }

    [Fact]
    public void OneCellAlone()
    {
        using Session session = new() { Calculator = Example.Worse };
        Assert.Equal(0, session.Run("run", session.File("a.screwsheet", Example.Text), "--cell", "peak", "--cell", "Placement.B3", "--format", "csv"));
        Assert.Equal(
            """
            sheet,cell,name,kind,type,value,unit,si,tolerance,text,fault,cautions
            Placement,B2,peak,given,Force,8.5,kN,8500,0.5,8.5 kN,,
            Placement,B3,exposed,given,Length,40,mm,0.04,10,40 mm,,

            """, session.Output);
    }

    [Fact]
    public void Set_ChangesTheGivenAndComparesOnlyWhatDoesNotMove()
    {
        using Session session = new() { Calculator = Example.Fine };
        string path = session.File("a.screwsheet", Example.Text);
        Assert.Equal(0, session.Run("run", path, "--set", "exposed=50 mm", "--cell", "moment", "--cell", "exposed", "--format", "csv"));
        Assert.Contains("Placement,B3,exposed,given,Length,50,mm,0.05,10,50 mm,,\n", session.Output, StringComparison.Ordinal);
        Assert.Contains("Placement,B5,moment,result,Torque,425,N·m,425,,425.0 N·m,,\n", session.Output, StringComparison.Ordinal);
        Assert.Equal(Example.Text, File.ReadAllText(path));
    }

    [Theory]
    [InlineData("screwsheet: exposed is no NAME=VALUE. Write for example --set \"peak=9 kN\".\n", "--set", "exposed")]
    [InlineData("screwsheet: moment is no given, so it cannot be set. Set the givens it is computed from.\n", "--set", "moment=3 N·m")]
    [InlineData("screwsheet: No cell is called momint. Its name or address stands in the first columns of what run prints.\n", "--cell", "momint")]
    [InlineData("screwsheet: No sheet is called Fall. There are: Placement.\n", "--sheet", "Fall")]
    [InlineData("screwsheet: No sheet is called Fall. There are: Placement.\n", "--cell", "Fall.peak")]
    public void ANameThatIsNotThereIsRefused(string message, params string[] rest)
    {
        using Session session = new() { Calculator = Example.Fine };
        Assert.Equal(2, session.Run(["run", session.File("a.screwsheet", Example.Text), .. rest]));
        Assert.Equal(message, session.Error);
        Assert.Equal("", session.Output);
    }

    [Fact]
    public void Set_OutsideTheGivensRange_IsRefused()
    {
        using Session session = new() { Calculator = Example.Fine };
        Assert.Equal(2, session.Run("run", session.File("a.screwsheet", Example.Text), "--set", "exposed=200 mm"));
        Assert.StartsWith("screwsheet: --set exposed=200 mm: ", session.Error, StringComparison.Ordinal);
        Assert.Contains("120 mm", session.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void ANameOnTwoSheetsNeedsItsSheet()
    {
        using Session session = new();
        string path = session.File("a.screwsheet", "screwsheet 1\nunits SI\n\nsheet One\nB2 peak = 1 kN\n\nsheet Two\nB2 peak = 2 kN\n");
        Assert.Equal(2, session.Run("run", path, "--cell", "peak"));
        Assert.Equal("screwsheet: peak could be One.B2 or Two.B2. Write the sheet's name and a dot before it.\n", session.Error);
    }

    [Fact]
    public void TextFromAFileCannotSteerTheTerminal()
    {
        using Session session = new();
        string path = session.File("a.screwsheet", "screwsheet 1\ntitle a\u202eb\nunits SI\n\nsheet One \"x\u200by\"\nA1 \"\\u001b[2Jgone\"\nB2 t = \"\\u009b31m\"\n");
        session.Run("run", path);
        session.Run("run", path, "--format", "csv");
        session.Run("run", path, "--format", "json");
        session.Run("check", path);
        Assert.DoesNotContain((session.Output + session.Error).EnumerateRunes(), rune => rune.Value != '\n' && Terminal.Output.PlainText.IsHidden(rune));
        Assert.Contains("‹U+001B›[2Jgone", session.Output, StringComparison.Ordinal);
    }
}
