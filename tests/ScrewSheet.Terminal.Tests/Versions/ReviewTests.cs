using System.Globalization;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Tests.Versions;

/// <summary>A mark falls when anything its result depends on changes, and only then.</summary>
public sealed class ReviewTests
{
    private const string Text = """
        screwsheet 1
        title Reviewed
        made with 0.0.9

        function Force Half(Force f) => f / 2
        function Torque Moment(Force f, Length arm) => Half(f) * arm * 2
        function Force Other(Force f) => 3 * f

        sheet Givens
        A1 "Peak"
        B1 peak [kN] = 8.5 kN ± 0.5 kN within 0 kN to 20 kN source "tape"
        B2 exposed [mm] = 40 mm
        B3 offset [mm] = 2 * 5 mm
        B4 share [%] = 5 % ± 1 %

        sheet Work
        column A force [kN]
        A1 "Forces"
        A2 = 4 kN
        A3 = 5 kN
        A5 = 6 kN

        C1 arm => Givens.exposed + Givens.offset
        C2 Torque moment [N·m, 1 decimal] => Moment(Givens.peak, arm) gives 425.0 N·m // by hand
        C3 said => $"{arm} and {moment:N·m, 0 decimals}"
        C4 total => Sum(force) + Sum(Series(A2, A5)) + Givens.peak * Givens.share
        C5 deep => C4 > 1 kN && moment < 1 kN·m ? C4 / 2 : C4
        C7 other = 3

        """;

    private static readonly string[] Cells = ["moment", "said", "total", "deep"];

    private static EngineCalculator Engine { get; } = new(FunctionLibrary.Of());

    [Theory]
    [InlineData("8.5 kN", "8.6 kN", "moment said total deep")]
    [InlineData("8.5 kN", "8500 N", "moment said total deep")]
    [InlineData("± 0.5 kN", "± 0.6 kN", "moment said total deep")]
    [InlineData("± 0.5 kN", "± 0.5 kN triangular", "moment said total deep")]
    [InlineData("± 0.5 kN", "± 0.5 kN dof 9", "moment said total deep")]
    [InlineData("0 kN to 20 kN", "0 kN to 30 kN", "moment said total deep")]
    [InlineData("2 * 5 mm", "3 * 5 mm", "moment said deep")]
    [InlineData("40 mm", "41 mm", "moment said deep")]
    [InlineData("± 1 %", "± 2 %", "total deep")]
    [InlineData("Half(f) * arm * 2", "2 * Half(f) * arm", "moment said deep")]
    [InlineData("f / 2", "0.5 * f", "moment said deep")]
    [InlineData("Givens.exposed + Givens.offset", "Givens.offset + Givens.exposed", "moment said deep")]
    [InlineData("C2 Torque moment", "C2 moment", "moment said deep")]
    [InlineData("A3 = 5 kN", "A3 = 5.1 kN", "total deep")]
    [InlineData("A5 = 6 kN", "A4 = 6 kN", "total deep")]
    [InlineData("A5 = 6 kN", "A5 = 6 kN\nA6 = 1 kN", "total deep")]
    [InlineData("Series(A2, A5)", "Series(A2, A3)", "total deep")]
    [InlineData("C4 > 1 kN", "C4 >= 1 kN", "deep")]
    [InlineData("C4 / 2", "C4 / 3", "deep")]
    [InlineData("C1 arm =>", "C1 arm [cm] =>", "said")]
    [InlineData("title Reviewed", "title Reviewed\nunits US", "said")]
    [InlineData("N·m, 0 decimals}", "N·m, 1 decimal}", "said")]
    [InlineData(" and {moment", " or {moment", "said")]
    public void WhatCountsMakesItFall(string was, string now, string fallen) => Assert.Equal(fallen.Split(' '), Fallen(text => text.Replace(was, now)));

    [Theory]
    [InlineData("title Reviewed", "title Another")]
    [InlineData("made with 0.0.9", "made with 0.1.0")]
    [InlineData("// by hand", "// by two hands")]
    [InlineData("\"Peak\"", "\"Load\"")]
    [InlineData("source \"tape\"", "source \"scale\"")]
    [InlineData("gives 425.0 N·m", "gives 426.0 N·m")]
    [InlineData("[N·m, 1 decimal] =>", "[N·m, 2 decimals] =>")]
    [InlineData("peak [kN]", "peak [N]")]
    [InlineData("3 * f", "4 * f")]
    [InlineData("C7 other = 3", "C7 other = 4")]
    [InlineData("Givens.exposed + Givens.offset", " Givens.exposed  +  Givens.offset ")]
    [InlineData("peak", "load")]
    [InlineData("exposed", "bared")]
    [InlineData("arm", "lever")]
    [InlineData("moment", "bending")]
    [InlineData("Givens", "Inputs")]
    [InlineData("Half", "Halved")]
    [InlineData("Force f)", "Force x)")]
    [InlineData("\n", "\r\n")]
    [InlineData("sheet Givens\n", "sheet Givens\n// a remark\n\n")]
    [InlineData("sheet Work\n", "sheet New\nA1 = 3\n\nsheet Work\n")]
    public void WhatDoesNotCountLeavesIt(string was, string now)
    {
        // the bodies name the parameter that is renamed
        string Change(string text) => was == "Force f)" ? text.Replace("Half(Force f) => f / 2", "Half(Force x) => x / 2") : text.Replace(was, now);
        Assert.Empty(Fallen(Change, was == "moment" ? "bending" : "moment"));
    }

    [Fact]
    public void RowsMayComeAndGoAboveIt()
    {
        Assert.Empty(Fallen(text => System.Text.RegularExpressions.Regex.Replace(text, @"(?<=^|[ (])([AC])([1-7])\b", match => $"{match.Groups[1].Value}{int.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture) + 3}", System.Text.RegularExpressions.RegexOptions.Multiline), sheet: "sheet Work"));
    }

    [Fact]
    public void AnotherFormulaInTheLibraryMakesItFall()
    {
        string twice = "screwsheet 1\nsheet A\nA1 x = 3\nA2 y => Twice(x)\nA3 z => y + 1\nA4 w => x\n";
        using Session session = new() { Calculator = new EngineCalculator(ToyVersions.Library("2 * x")) };
        string file = session.File("w.screwsheet", twice);
        Assert.Equal(0, session.Run("review", file, "--cell", "y", "--cell", "z", "--cell", "w", "--by", "KM", "--date", "2026-11-25"));
        using Session same = new() { Calculator = new EngineCalculator(ToyVersions.Library("2 * x")) };
        same.Run("check", file);
        Assert.Contains("3 of 3 reviewed.", same.Output, StringComparison.Ordinal);
        using Session late = new() { Width = 200, Calculator = new EngineCalculator(ToyVersions.Library("x + x")) };
        late.Run("check", file);
        Assert.Contains("A.A2 y: the review by KM of 2026-11-25 no longer holds: the library was changed.", late.Output, StringComparison.Ordinal);
        Assert.Contains("A.A3 z: the review by KM of 2026-11-25 no longer holds: the library was changed.", late.Output, StringComparison.Ordinal);
        Assert.Contains("1 of 3 reviewed. 2 reviews no longer hold.", late.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(""), InlineData("de-DE"), InlineData("tr-TR"), InlineData("ar-SA"), InlineData("sv-SE")]
    public void TheHashIsTheSameEverywhere(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            using Session session = new() { Calculator = new EngineCalculator(FunctionLibrary.Of()) };
            string file = session.File("w.screwsheet", "screwsheet 1\nfunction Torque M(Force f, Length l) => f * l\nsheet P\nB2 peak [kN] = 8.5 kN ± 0.5 kN\nB3 exposed [mm] = 40 mm\nB4 Torque moment [N·m, 1 decimal] => M(B2, exposed)\n");
            session.Run("review", file, "--cell", "moment", "--by", "KM", "--date", "2026-11-25");
            Assert.Contains("\nreviewed KM 2026-11-25 5c5d54a4b25aa680-653c7bcbab08e3b0\nB4 ", File.ReadAllText(file), StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void WhatWasChangedIsSaid()
    {
        using Session session = new() { Width = 200, Calculator = Engine };
        string file = session.File("w.screwsheet", Text);
        session.Run("review", file, "--cell", "moment", "--by", "KM", "--date", "2026-11-25");
        File.WriteAllText(file, File.ReadAllText(file).Replace("40 mm", "41 mm").Replace("f / 2", "f * 0.5").Replace("Moment(Givens.peak, arm)", "1 * Moment(Givens.peak, arm)"));
        session.Run("run", file);
        Assert.Contains("review: the review by KM of 2026-11-25 no longer holds: the expression, a cell it depends on and a function of the workbook were changed.", session.Output, StringComparison.Ordinal);
        Assert.Contains(" 1 review no longer holds.\n", session.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void AResultInFaultHoldsNoMark()
    {
        using Session session = new() { Width = 200, Calculator = Engine };
        string file = session.File("w.screwsheet", Text);
        session.Run("review", file, "--cell", "moment", "--by", "KM", "--date", "2026-11-25");
        File.WriteAllText(file, File.ReadAllText(file).Replace("B2 exposed [mm] = 40 mm", "B2 conflict\n  ours exposed [mm] = 40 mm\n  theirs exposed [mm] = 41 mm"));
        Assert.Equal(1, session.Run("check", file));
        Assert.Contains("review: Work.C2 moment: the review by KM of 2026-11-25 no longer holds: the cell is in fault.", session.Output, StringComparison.Ordinal);
        Assert.Contains("fault: Givens.B2 exposed: Two versions of this cell meet here: ours is exposed [mm] = 40 mm, theirs is exposed [mm] = 41 mm.", session.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void AnotherPersonsMarkIsAddedAndOnesOwnReplaced()
    {
        using Session session = new() { Calculator = Engine };
        string file = session.File("w.screwsheet", Text);
        foreach ((string by, string date) in ((string, string)[])[("KM", "2026-11-25"), ("AB", "2026-11-26"), ("KM", "2026-11-27")]) session.Run("review", file, "--cell", "moment", "--by", by, "--date", date);
        string[] marks = [.. File.ReadAllLines(file).Where(line => line.StartsWith("reviewed", StringComparison.Ordinal)).Select(line => line[..22])];
        Assert.Equal(["reviewed AB 2026-11-26", "reviewed KM 2026-11-27"], marks);
        Assert.Contains("Marked Work.C2 moment as reviewed by KM, 2026-11-27.\n1 of 5 reviewed.\n", session.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void NothingButTheLineIsWritten()
    {
        using Session session = new() { Calculator = Engine };
        string file = session.File("w.screwsheet", Text);
        session.Run("review", file, "--cell", "moment", "--by", "KM", "--date", "2026-11-25");
        Assert.Equal(Text, string.Join('\n', File.ReadAllText(file).Split('\n').Where(line => !line.StartsWith("reviewed ", StringComparison.Ordinal))));
    }

    [Fact]
    public void MarksPutOnAndTakenAway_LeaveTheFileAsItWas()
    {
        string text = Text.Replace("C2 Torque", "// twice the same\n// twice the same\nC2 Torque", StringComparison.Ordinal);
        Workbook workbook = Example.Read(text);
        CellId[] cells = [new("Work", new CellAddress(3, 2)), new("Work", new CellAddress(3, 4)), new("Work", new CellAddress(3, 7))];
        Workbook marked = new Reviews(Engine.Calculate(workbook)).Mark(cells, "KM", "2026-11-25", out var left);
        Assert.Equal(cells[2], Assert.Single(left));
        Assert.Equal(0, Reviews.Unattached(marked));
        Workbook again = Example.Read(System.Text.Encoding.UTF8.GetString(WorkbookText.Write(marked)));
        Assert.Equal([cells[0], cells[1]], new Reviews(Engine.Calculate(again)).Overview().Marks.Keys.Order(Comparer<CellId>.Create((one, other) => one.Address.CompareTo(other.Address))));
        Assert.Equal(2, new Reviews(Engine.Calculate(marked)).Tally().Reviewed);
        Assert.Equal(again.Sheets.Sum(sheet => sheet.Reserved.Length), marked.Sheets.Sum(sheet => sheet.Reserved.Length));
        Workbook without = Reviews.Without(marked, cells);
        Assert.Equal(text, System.Text.Encoding.UTF8.GetString(WorkbookText.Write(without)));
        Assert.Same(without, Reviews.Without(without, cells));
    }

    [Fact]
    public void OfSeveralMarks_TheOneNamedGoes()
    {
        CellId cell = new("Work", new CellAddress(3, 2));
        Workbook one = new Reviews(Engine.Calculate(Example.Read(Text))).Mark(cell, "KM", "2026-11-25", out _);
        Workbook both = new Reviews(Engine.Calculate(one)).Mark(cell, "AB", "2026-11-26", out _);
        ReviewMark first = new Reviews(Engine.Calculate(both)).Of(cell)[0].Mark;
        Assert.Equal("KM", first.Initials);
        Workbook left = Reviews.Without(both, [cell], first);
        Assert.Equal("AB", Assert.Single(new Reviews(Engine.Calculate(left)).Of(cell)).Mark.Initials);
    }

    [Theory]
    [InlineData("peak", "KM", "2026-11-25", "Givens.B1 cannot be marked as reviewed. Mark a result that has a value. Nothing was written.")]
    [InlineData("moment", "K M", "2026-11-25", "K M are no initials. Write one to twelve letters, like --by KM.")]
    [InlineData("moment", "KM", "25.11.2026", "25.11.2026 is no day. Write year, month and day, like --date 2026-11-25.")]
    [InlineData("moment", "KM", "2026-02-30", "2026-02-30 is no day. Write year, month and day, like --date 2026-11-25.")]
    [InlineData("nothing", "KM", "2026-11-25", "No cell is called nothing. Its name or address stands in the first columns of what run prints.")]
    public void WhatCannotBeMarkedIsSaid(string cell, string by, string date, string sentence)
    {
        using Session session = new() { Calculator = Engine };
        string file = session.File("w.screwsheet", Text);
        Assert.Equal(2, session.Run("review", file, "--cell", cell, "--by", by, "--date", date));
        Assert.Equal($"screwsheet: {sentence}\n", session.Error);
        Assert.Equal(Text, File.ReadAllText(file));
    }

    [Fact]
    public void AMarkAboveNoResultIsSaid()
    {
        using Session session = new() { Width = 200, Calculator = Engine };
        session.Run("check", session.File("w.screwsheet", "screwsheet 1\nsheet A\nreviewed KM 2026-11-25 0123456789abcdef\nA1 = 3\nreviewed KM 2026-11-25 0123456789abcdef\n"));
        Assert.Contains("review: A.A1: the review by KM of 2026-11-25 no longer holds: the cell is no result any more.", session.Output, StringComparison.Ordinal);
        Assert.Contains("1 reviewed line is without effect: a mark stands directly above its cell.", session.Error, StringComparison.Ordinal);
    }

    /// <summary>The marked cells whose mark no longer holds after a change.</summary>
    private static string[] Fallen(Func<string, string> change, string moment = "moment", string? sheet = null)
    {
        using Session session = new() { Width = 300, Calculator = Engine };
        string file = session.File("w.screwsheet", Text);
        Assert.Equal(0, session.Run(["review", file, .. Cells.SelectMany(cell => (string[])["--cell", cell]), "--by", "KM", "--date", "2026-11-25"]));
        string marked = File.ReadAllText(file);
        int from = sheet is null ? 0 : marked.IndexOf(sheet, StringComparison.Ordinal);
        string changed = marked[..from] + change(marked[from..]);
        Assert.NotEqual(marked, changed);
        File.WriteAllText(file, changed);
        using Session late = new() { Width = 300, Calculator = Engine };
        late.Run("check", file);
        Assert.DoesNotContain("fault:", late.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("waits:", late.Output, StringComparison.Ordinal);
        string[] fallen = [.. Cells.Where(cell => late.Output.Contains($" {(cell == "moment" ? moment : cell)}: the review by KM", StringComparison.Ordinal))];
        string counted = fallen.Length switch { 0 => "4 of 5 reviewed.\n", 1 => "3 of 5 reviewed. 1 review no longer holds.\n", _ => $"{(fallen.Length == 4 ? "None" : $"{4 - fallen.Length}")} of 5 reviewed. {fallen.Length} reviews no longer hold.\n" };
        Assert.EndsWith(counted, late.Output, StringComparison.Ordinal);
        return fallen;
    }
}
