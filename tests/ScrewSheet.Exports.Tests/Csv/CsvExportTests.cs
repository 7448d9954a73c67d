using ScrewSheet.Exports.Tests.Support;

namespace ScrewSheet.Exports.Tests.Csv;

/// <summary>Sheets and tables as CSV, and what the verb says.</summary>
public sealed class CsvExportTests
{
    private const string Cells = "screwsheet 1\n\nsheet S\nA1 \"=1+1\"\nA2 peak [kN] = 8.5 kN\nA3 cold [°C] = -4 °C\nB1 m [N·m] => peak * 0.04 m\nB2 small => m < 400 N·m\nB3 bad => 1 / 0\nB4 words = \"a, \\\"b\\\"\"\n";

    [Fact]
    public void ASheetWithoutNamedColumns_IsALineForEachCell()
    {
        using ExportSession session = new(Cells);
        Assert.Equal(1, session.Export("out.csv"));
        Assert.Equal("cell,name,value,unit,fault\nA1,,'=1+1,,\nA2,peak,8.5,kN,\nA3,cold,-4,°C,\nB1,m,340,N·m,\nB2,small,true,,\nB3,bad,,,A division by zero has no answer.\nB4,words,\"a, \"\"b\"\"\",,\n", session.Text("out.csv").Replace(session.Text("out.csv").Split('\n')[6].Split(",,,")[1], "A division by zero has no answer.", StringComparison.Ordinal));
        Assert.Equal("Wrote out.csv.\n", session.Output);
    }

    [Fact]
    public void ASheetWithNamedColumns_IsTheirTable()
    {
        using ExportSession session = new("screwsheet 1\n\nsheet Tests\ncolumn A specimen\ncolumn B force [kN]\ncolumn C lost [mm]\nA1 \"Specimen\"\nA2 = \"@one\"\nB2 = 14.2 kN\nC2 = 4 cm\nA3 = \"two\"\nB3 = 15 kN\nE1 mean => Mean(force)\n");
        Assert.Equal(0, session.Export("out.csv"));
        Assert.Equal("specimen,force [kN],lost [mm]\n'@one,14.2,40\ntwo,15,\n", session.Text("out.csv"));
        Assert.Contains("1 cell stands outside the named columns and is not in the table", session.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void AWhatIfTable_HasALineForEachScenario()
    {
        using ExportSession session = new("screwsheet 1\n\nsheet S\nA1 peak [kN] = 8.5 kN\nA2 arm [mm] = 40 mm\nB1 m [N·m] => peak * arm / (arm > 10 mm ? 1 : 0)\nB2 small => m < 400 N·m\n\nwhat-if D2 \"Moments\"\n  vary arm: 10 mm, 30 mm\n  vary peak: 4 kN, 20 kN\n  show m, small\n");
        session.Export("out.csv", "--table", "D2");
        string[] lines = session.Text("out.csv").TrimEnd('\n').Split('\n');
        Assert.Equal("arm [mm],peak [kN],m [N·m],m fault,small,small fault", lines[0]);
        Assert.StartsWith("10,4,,", lines[1], StringComparison.Ordinal);
        Assert.Equal(["30,4,120,,true,", "30,20,600,,false,"], lines[3..]);
    }

    [Fact]
    public void AnotherFileOfThatName_StaysUnlessToldOtherwise()
    {
        using ExportSession session = new("screwsheet 1\n\nsheet S\nA1 x = 1\nB1 => x + 1\n");
        File.WriteAllText(session.At("out.xlsx"), "mine");
        Assert.Equal(2, session.Export("out.xlsx"));
        Assert.Equal("screwsheet: out.xlsx is there already and was left as it is. Choose another name, or say --replace.\n", session.Error);
        Assert.Equal("mine", session.Text("out.xlsx"));
        Assert.Equal(0, session.Export("out.xlsx", "--replace"));
        Assert.Equal("Replaced out.xlsx.\n1 of 1 results are formulas.\n", session.Output);
        Assert.StartsWith("PK", session.Text("out.xlsx"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("out.ods", "out.ods ends in neither .xlsx nor .csv, which says what to write.")]
    [InlineData("out.csv", "A CSV file holds one sheet: say which with --sheet. There are: S, Other.")]
    [InlineData("out.csv", "No sheet is called Nowhere. There are: S, Other.", "--sheet", "Nowhere")]
    [InlineData("out.csv", "No what-if table has its top left cell at D2. The file has none.", "--table", "D2")]
    [InlineData("out.xlsx", "--sheet and --table go with .csv: an xlsx holds the whole workbook, since its formulas read across sheets.", "--sheet", "S")]
    public void WhatCannotBeDone_IsSaidAndNothingIsWritten(string name, string sentence, params string[] more)
    {
        using ExportSession session = new("screwsheet 1\n\nsheet S\nA1 x = 1\n\nsheet Other\nA1 y = 1\n");
        Assert.Equal(2, session.Export(name, more));
        Assert.Equal($"screwsheet: {sentence}\n", session.Error);
        Assert.False(File.Exists(session.At(name)));
    }
}
