using System.Text;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Tests.Commands;

public sealed class ImportTests : IDisposable
{
    private const string Before = "screwsheet 1\ntitle Rating\n\nsheet Rating\nA1 \"stays\"";

    private readonly Session session = new() { Calculator = new EngineCalculator(ScrewSheet.Workbooks.Expressions.FunctionLibrary.Of(typeof(Statistics.SampleStatistics).Assembly)) };

    public void Dispose() => session.Dispose();

    [Fact]
    public void ATableBecomesASheetOfColumns()
    {
        Assert.Equal(1, Import("Specimen,Date,Force [kN],Mode\n001,2026-01-05,12.40,pull-out\n002,2026-01-06,,\"bent, \"\"then\"\" broke\"\n003,2026-01-06,n/a,pull-out\n004,2026-01-07,1.3e1,pull-out,\n\n,,,\n"));
        Assert.Equal(Before + """


            sheet Tests "from data.csv"
            widths A 10, B 12, C 12, D 20
            column A specimen
            column B date
            column C force [kN]
            column D mode

            A1 "Specimen"
            B1 "Date"
            C1 "Force [kN]"
            D1 "Mode"
            E1 "Rows that could not be read"
            A2 = "001"
            B2 = "2026-01-05"
            C2 = 12.40 kN
            D2 = "pull-out"
            A3 = "002"
            B3 = "2026-01-06"
            D3 = "bent, \"then\" broke"
            E4 "line 4: \"n/a\" in the column force is no number. It reads: 003 | 2026-01-06 | n/a | pull-out"
            A5 = "004"
            B5 = "2026-01-07"
            C5 = 1.3e1 kN
            D5 = "pull-out"

            """, Written());
        Assert.Equal("data.csv, line 4: \"n/a\" in the column force is no number.\n", session.Error);
        Assert.Equal("""
            3 rows of data.csv put on the sheet Tests of w.screwsheet. 1 could not be read and is kept as a note in column E.
            Read as UTF-8, fields between commas, decimal point.
              A  specimen    texts  3 values           from "Specimen"
              B  date        texts  3 values           from "Date"
              C  force [kN]  Force  2 values, 1 empty  from "Force [kN]"
              D  mode        texts  3 values           from "Mode"
            In a cell: Mean(Tests.force.Where(Tests.mode, "pull-out"))

            """, session.Output);
    }

    [Theory]
    [InlineData("n;F [kN]\n1;12,4\n2;,5\n", "B2 = 12.4 kN & B3 = 0.5 kN")]
    [InlineData("n\tF [kN]\n1\t+12.4\n2\t−5.\n", "B2 = 12.4 kN & B3 = -5 kN")]
    [InlineData("n|F (kN)\n1|007\n2|12\n", "B2 = 7 kN & B3 = 12 kN")]
    [InlineData("sep=;\nn;F / kN\n1;2\n", "A2 = 1 & B2 = 2 kN")]
    [InlineData("sep=:\na:b\n1:2\n", "A1 \"sep=:\" & A2 = \"a:b\" & A3 = \"1:2\"")]
    [InlineData("sep=;\nsep=;\n1;\n", "column A sep & A2 = 1")]
    [InlineData("n;m\nsep=|;1\n2;3\n", "A2 = \"sep=|\" & A3 = \"2\"")]
    [InlineData("n,F in kN\n1,2\n", "A2 = 1 & B2 = 2 kN")]
    [InlineData("n,\"F [kN]\"\n1,\"12,4\"\n", "B2 = 12.4 kN")]
    [InlineData("n;Ratio [1]\na;0,5\n", "A2 = \"a\" & B2 = 0.5")]
    [InlineData("n;p [%];T [°C]\na;5;-18\n", "B2 [%] = 5 % & C2 = -18 °C")]
    [InlineData("n;F [lbf]\n1;2500\n", "B2 [lbf] = 2500 lbf")]
    [InlineData("Force [kN]\n12,4\n13,1\n", "A2 = 12.4 kN & A3 = 13.1 kN")]
    [InlineData("n;note\n1;\"two\nlines\"\n2;x\n", "B2 = \"two\\nlines\" & B3 = \"x\"")]
    [InlineData("n;note\r\n1;\u001b[31m\u202e\r\n", "B2 = \"\\u001B[31m\\u202E\"")]
    [InlineData("n;note;\n1;=cmd|x;\n", "B2 = \"=cmd|x\"")]
    [InlineData("n;;x\n1;2;3\n", "B2 = 2 & C2 = 3 & column B column_B")]
    [InlineData("Force [kN];Force [kN]\n1;2\n", "column A force [kN] & column B force_2 [kN]")]
    public void NumbersAndTextsAreReadAsTheyWereMeant(string csv, string lines)
    {
        int status = Import(csv);
        Assert.True(status == 0, session.Error);
        string[] written = Written().Split('\n');
        foreach (string line in lines.Split(" & ")) Assert.Contains(line, written);
    }

    [Theory]
    [InlineData("", "data.csv is empty. A table has a line of headings and rows beneath it.")]
    [InlineData("sep=;", "data.csv is empty. A table has a line of headings and rows beneath it.")]
    [InlineData("sep=,\r\n", "data.csv is empty. A table has a line of headings and rows beneath it.")]
    [InlineData("sep=|\r\r", "data.csv is empty. A table has a line of headings and rows beneath it.")]
    [InlineData("sep=;\n\n\na;b [kN]\n1;x\n", "data.csv: none of its 1 rows can be read. Line 5: \"x\" in the column b is no number.")]
    [InlineData("\n\n;;\n", "data.csv is empty. A table has a line of headings and rows beneath it.")]
    [InlineData("a,b\n", "data.csv has headings and no rows beneath them, so there is nothing to import.")]
    [InlineData("F [kN];d [mm]\n12,4;3.5\n", "data.csv writes decimals with a comma in line 2 and with a point in line 2. Make them one, or say --decimal comma or --decimal point.")]
    [InlineData("a,b\n1,\"open\n2,3\n", "A quote that opens in line 2 is never closed. Close it, or take it out.")]
    [InlineData("Force [kNn],b\n1,a\n", "data.csv: the heading \"Force [kNn]\" names no unit known here. \"kNn\" is no unit. Write the unit as a workbook does, or [1] for pure numbers.")]
    [InlineData("Rig 7\na,b\n1,2\n", "data.csv: line 1 has 1 heading, and no row beneath has as many fields (line 2 has 2). Where the headings stand further down, say --header LINE.")]
    [InlineData("n,F [kN]\n1,x\n2,y\n", "data.csv: none of its 2 rows can be read. Line 2: \"x\" in the column f is no number.")]
    public void WhatIsNoTableIsRefusedAndNothingIsWritten(string csv, string sentence)
    {
        Assert.Equal(2, Import(csv));
        Assert.Equal($"screwsheet: {sentence}\n", session.Error);
        Assert.Equal(Before, Written());
    }

    [Theory]
    [InlineData("1.234,5")]
    [InlineData("1 234,5")]
    [InlineData("12,4 kN")]
    [InlineData("n/a")]
    [InlineData("-")]
    [InlineData("1e999")]
    [InlineData("1e307")]
    [InlineData("-1,7e308")]
    [InlineData("NaN")]
    [InlineData("12,4;13")]
    [InlineData("\"12\"x")]
    public void ARowThatCannotBeRead_IsANoteAndInNoColumn(string field)
    {
        Assert.Equal(1, Import($"F [kN];m\n1,5;a\n{field};b\n2,5;c\n"));
        Sheet sheet = Assert.IsType<WorkbookRead>(WorkbookText.Read(Written())).Workbook.Find("Tests")!;
        Assert.DoesNotContain(sheet.Cells.Values, cell => cell.Address is { Row: 3, Column: < 3 });
        Assert.StartsWith("line 3: ", Assert.IsType<NoteContent>(sheet.Cells[new CellAddress(3, 3)].Content).Text, StringComparison.Ordinal);
        Assert.Contains(sheet.Cells.Keys, address => address == new CellAddress(1, 4));
    }

    [Theory]
    [InlineData("utf-8", true, "UTF-8")]
    [InlineData("utf-8", false, "UTF-8")]
    [InlineData("utf-16", true, "UTF-16")]
    [InlineData("utf-16", false, "UTF-16")]
    [InlineData("utf-16BE", true, "UTF-16")]
    [InlineData("utf-16BE", false, "UTF-16")]
    [InlineData("utf-32", true, "UTF-32")]
    [InlineData("windows-1252", false, "Windows-1252")]
    public void EncodingsAreFoundOut(string name, bool mark, string said)
    {
        Encoding encoding = name == "windows-1252" ? CodePagesEncodingProvider.Instance.GetEncoding(1252)! : Encoding.GetEncoding(name);
        byte[] bytes = [.. mark ? encoding.GetPreamble() : [], .. encoding.GetBytes("Prüfkörper;Kraft [kN]\nÄ;12,4\n")];
        Assert.Equal(0, Import(bytes));
        Assert.Contains("column A prüfkörper\n", Written(), StringComparison.Ordinal);
        Assert.Contains("A2 = \"Ä\"\n", Written(), StringComparison.Ordinal);
        Assert.Contains($"Read as {said}, ", session.Output, StringComparison.Ordinal);
        Assert.Equal(name == "windows-1252", session.Output.Contains("caution: The file is not UTF-8", StringComparison.Ordinal));
    }

    [Fact]
    public void WhatIsNoTextIsRefused()
    {
        Assert.Equal(2, Import([.. Enumerable.Range(0, 256).Select(i => (byte)i)]));
        Assert.Equal(2, Import("PK\u0003\u0004rest"u8.ToArray()));
        Assert.Equal(2, Import([0xFF, 0xFE, 0x00, 0xD8, 0x41, 0x00]));
        Assert.Equal("""
            screwsheet: data.csv is no text in an encoding known here (UTF-8, UTF-16, Windows-1252). Save the table as CSV in UTF-8.
            screwsheet: data.csv is a packed file, a spreadsheet perhaps, not text. Save the table as CSV and import that.
            screwsheet: data.csv says it is UTF-16 and is not: some of its bytes are no characters. Save it as UTF-8.

            """, session.Error);
        Assert.Equal(Before, Written());
    }

    [Theory]
    [InlineData("Rating", "w.screwsheet has a sheet Rating already, and it was left as it is. Choose another name.")]
    [InlineData("tests", "--sheet tests: The name of a sheet begins with a capital letter, tests does not. Write Tests.")]
    [InlineData("Two words", "--sheet Two words: Two words is no name. A name begins with a letter; Latin or Greek letters, digits and _ follow.")]
    [InlineData("Mean", "--sheet Mean: Mean is a name of the library; a sheet of the same name would hide it. Rename the sheet.")]
    [InlineData("", "--sheet : A sheet has a name; write one that begins with a capital.")]
    public void ASheetThatCannotBe_IsRefused(string sheet, string sentence)
    {
        string data = session.File("data.csv", "a,b\n1,2\n"), into = session.File("w.screwsheet", Before);
        Assert.Equal(2, session.Run("import", data, "--into", into, "--sheet", sheet));
        Assert.Equal($"screwsheet: {sentence}\n", session.Error);
        Assert.Equal(Before, Written());
    }

    [Fact]
    public void HeadingsFurtherDown_KeepWhatStandsAbove()
    {
        Assert.Equal(0, Import("Rig 7, operator KM\nstarted,2026-11-25\n\nx [mm],F [kN]\n0,0\n1,2\n2,1\n", "--header", "4", "--rows", "2-3"));
        Assert.Contains("// Rig 7 | operator KM\n// started | 2026-11-25\n", Written(), StringComparison.Ordinal);
        Assert.Contains("A2 = 1 mm\nB2 = 2 kN\nA3 = 2 mm\nB3 = 1 kN\n", Written(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2 rows, so there is no row 5.", "5-9")]
    [InlineData("3-2 are no rows. Write --rows 1-50000.", "3-2")]
    [InlineData("0-2 are no rows. Write --rows 1-50000.", "0-2")]
    [InlineData("x are no rows. Write --rows 1-50000.", "x")]
    public void RowsThatAreNone_AreRefused(string sentence, string rows)
    {
        Assert.Equal(2, Import("a,b\n1,2\n3,4\n", "--rows", rows));
        Assert.EndsWith(sentence + "\n", session.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void AFileOfAHundredThousandRows_IsRefusedWithTheWayRound_AndFitsInParts()
    {
        string csv = "Time [s],Force [kN]\n" + string.Concat(Enumerable.Range(0, 100_000).Select(i => $"{i}e-3,{i % 17}\n"));
        Assert.Equal(2, Import(csv));
        Assert.Equal("screwsheet: data.csv has 100,000 rows; a sheet has room for 99,998. Import it in parts, each onto a sheet of its own: --rows 1-99998, then --rows 99999-100000.\n", session.Error);
        Assert.Equal(0, Import(csv, "--rows", "1-99998"));
        Assert.Contains("99,998 rows of data.csv", session.Output, StringComparison.Ordinal);
        Assert.EndsWith("A99999 = 99997e-3 s\nB99999 = 3 kN\n", Written(), StringComparison.Ordinal);
    }

    [Fact]
    public void MoreCellsThanAWorkbookHolds_AreRefused()
    {
        Assert.Equal(2, Import("a,b,c,d,e,f\n" + string.Concat(Enumerable.Repeat("1,2,3,4,5,6\n", 90_000))));
        Assert.Equal("screwsheet: The table needs 540,006 cells; w.screwsheet has 1 and holds 500,000 at most. Take fewer rows with --rows, or another workbook.\n", session.Error);
    }

    [Fact]
    public void ARigRecordIsReadInCells()
    {
        Assert.Equal(0, Import("Travel [mm];Force [kN]\n0;0\n1;2,1\n2;3,9\n3;6,2\n4;5\n5;7\n"));
        File.AppendAllText(session.At("w.screwsheet"), """

            sheet Use
            A1 peak [kN] => RecordPeak(Tests.travel, Tests.force).Value
            A2 energy [J] => RecordEnergy(Tests.travel, Tests.force).Total
            A3 stiffness [kN/m] => RecordStiffness(Tests.travel, Tests.force, 1 kN, 6.5 kN).Stiffness
            A4 drop [kN] => RecordFirstDrop(Tests.travel, Tests.force).Before
            """);
        Assert.Equal(0, session.Run("run", session.At("w.screwsheet"), "--sheet", "Use", "--format", "csv"));
        Assert.Contains(",peak,result,Force,7,kN", session.Output, StringComparison.Ordinal);
        Assert.Contains(",energy,result,Energy,20.7,J", session.Output, StringComparison.Ordinal);
        Assert.Contains(",drop,result,Force,6.2,kN", session.Output, StringComparison.Ordinal);
    }

    /// <summary>Whatever the file holds: a sentence and nothing written, or a sheet that reads back behind the bytes that were there.</summary>
    [Fact]
    public void AnyFileIsImportedOrRefused()
    {
        string[] pieces = ["Force [kN]", "Mode", "T1", "Δl / mm", "[", "]", "(kN)", "12,4", "12.4", "-3", "1e9", "1e999", "\"", "\"\"", ";", ";", ",", "\t", "|", "\n", "\n", "\r\n", "\r", " ", "\u00A0", "\uFEFF", "\0", "\u001b[2J", "\u202e", "\\", "//", "x\ny", "sep=;\n", "=> 1", "gives", "é", "力", "𝛼", "A1 = 3"];
        Random random = new(11);
        int taken = 0;
        for (int i = 0; i < 600; i++)
        {
            string csv = string.Concat(Enumerable.Range(0, random.Next(1, 40)).Select(_ => pieces[random.Next(pieces.Length)]));
            int status = Import(csv, random.Next(4) == 0 ? ["--decimal", "comma"] : random.Next(4) == 0 ? ["--header", "2"] : []);
            Assert.True(status is 0 or 1 or 2, csv);
            if (status == 2) Assert.True(Before == Written(), csv);
            else Assert.True(Written().StartsWith(Before + "\n\nsheet Tests ", StringComparison.Ordinal), csv);
            if (status < 2) taken++;
        }
        Assert.InRange(taken, 80, 520);
    }

    private int Import(string csv, params string[] more) => Import(Encoding.UTF8.GetBytes(csv), more);

    private int Import(byte[] csv, params string[] more)
    {
        File.WriteAllBytes(session.At("data.csv"), csv);
        string into = session.File("w.screwsheet", Before);
        return session.Run(["import", session.At("data.csv"), "--into", into, "--sheet", "Tests", .. more]);
    }

    private string Written() => File.ReadAllText(session.At("w.screwsheet"));
}
