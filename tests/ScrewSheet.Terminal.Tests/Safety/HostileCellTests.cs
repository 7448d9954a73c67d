using ScrewSheet.Studies;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Tests.Harmless;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Tests.Safety;

/// <summary>Every text of <c>tests/hostile</c> is refused with a sentence, wherever in a workbook it stands; what is no fault is shown harmlessly.</summary>
public sealed class HostileCellTests
{
    private static ICalculator Calculator => Calculators.OfThread;

    public static TheoryData<string> KindsOfExpressions => Of(HostilePlace.Expression);

    public static TheoryData<string> KindsOfLines => Of(HostilePlace.Line, HostilePlace.Head, HostilePlace.Table);

    public static TheoryData<string> KindsTyped => Of(HostilePlace.Entry, HostilePlace.Expression);

    [Fact]
    public void ThereAreAThousandAtLeastInTwentyKindsAndNoTwoAreTheSame()
    {
        Assert.True(HostileCells.All.Count >= 1000, $"{HostileCells.All.Count} texts");
        Assert.InRange(HostileCells.All.Select(cell => cell.Kind).Distinct().Count(), 20, int.MaxValue);
        Assert.Empty(HostileCells.All.GroupBy(cell => (cell.Place, cell.Text)).Where(group => group.Count() > 1).Select(group => string.Join(" is ", group)));
    }

    [Fact]
    public void TheHonestCellsBesideThemAreFine()
    {
        Workbook workbook = Example.Read(HostileBooks.HonestOnly);
        Calculation calculation = Calculator.Calculate(workbook);
        Assert.Empty(calculation.Faults);
        Assert.Equal("S.A9: This divides by zero. Check the value below the line.", Assert.Single(calculation.Cells.Values.Where(cell => cell.Fault is not null).Select(cell => $"{cell.Id}: {cell.Fault!.Sentence}")));
    }

    [Theory]
    [MemberData(nameof(KindsOfExpressions))]
    public void AnExpressionIsRefusedInAResultAndInAGiven(string kind)
    {
        HostileCell[] cells = [.. HostileCells.At(HostilePlace.Expression).Where(cell => cell.Kind == kind)];
        Calculation calculation = Calculator.Calculate(Example.Read(HostileBooks.Cells([.. cells.Select(cell => cell.Text)])));
        Holds(cells.SelectMany((cell, i) => new[] { ("result", 2), ("given", 3) }.Select(form =>
            (cell, form.Item1, Faults(calculation.Cells.GetValueOrDefault(new CellId("S", new CellAddress(form.Item2, i + 1))))))));
    }

    /// <summary>All kinds but one: what fails only while it runs is no fault of a function that nobody calls.</summary>
    public static TheoryData<string> KindsOfBodies => [.. HostileCells.At(HostilePlace.Expression).Select(cell => cell.Kind).Distinct().Where(kind => kind != "faults")];

    [Theory]
    [MemberData(nameof(KindsOfBodies))]
    public void AnExpressionIsRefusedInAFunction(string kind)
    {
        HostileCell[] cells = [.. HostileCells.At(HostilePlace.Expression).Where(cell => cell.Kind == kind)];
        Calculation calculation = Calculator.Calculate(Example.Read(HostileBooks.Functions([.. cells.Select(cell => cell.Text)])));
        int first = HostileBooks.FirstLine(HostilePlace.Head);
        Holds(cells.Select((cell, i) => (cell, "function", calculation.Faults.Where(fault => fault.Place?.Line == first + i).ToArray())));
    }

    [Theory]
    [MemberData(nameof(KindsOfLines))]
    public void ALineOfAWorkbookIsRefused(string kind)
    {
        HostilePlace[] lines = [HostilePlace.Line, HostilePlace.Head, HostilePlace.Table];
        Holds(HostileCells.All.Where(cell => cell.Kind == kind && lines.Contains(cell.Place)).Select(cell => (cell, "line", FaultsOf(HostileBooks.Of(cell)))));
    }

    [Theory]
    [MemberData(nameof(KindsTyped))]
    public void WhatIsTypedIntoTheGridIsRefused(string kind)
    {
        HostilePlace[] typed = [HostilePlace.Entry, HostilePlace.Expression];
        Holds(HostileCells.All.Where(cell => cell.Kind == kind && typed.Contains(cell.Place)).Select(cell => (cell, "entry", Typed(cell.Place == HostilePlace.Entry ? cell.Text : "=> " + cell.Text))));
    }

    [Fact]
    public void WordsForPeopleAreNoFaultAndAreShownHarmlessly()
    {
        HostileCell[] harmless = [.. HostileCells.All.Where(cell => cell.Place is HostilePlace.HarmlessLine or HostilePlace.HarmlessHead)];
        Assert.NotEmpty(harmless);
        Assert.Empty(harmless.Where(cell => FaultsOf(HostileBooks.Of(cell)).Length > 0).Select(cell => $"{cell}: {FaultsOf(HostileBooks.Of(cell))[0].Sentence}"));
        Assert.All(harmless, IsShownHarmlessly);
    }

    /// <summary>Fails where a terminal or a page would obey anything the program prints or writes of it.</summary>
    private static void IsShownHarmlessly(HostileCell cell)
    {
        using Session session = new() { Calculator = Calculator };
        string book = session.File("book.screwsheet", HostileBooks.Of(cell)), other = session.File("other.screwsheet", HostileBooks.HonestOnly);
        string[][] lines = [["run", book], ["run", book, "--format", "json"], ["run", book, "--format", "csv"], ["check", book], ["diff", other, book], ["diff", other, book, "--format", "json"], ["review", book], ["handout", book, "-o", session.At("out.html")], ["handout", book, "-o", session.At("out.md")]];
        foreach (string[] line in lines) session.Run(line);
        Seen.Only($"{cell}, printed", session.Output);
        Seen.Only($"{cell}, messages", session.Error);
        HarmlessFiles.Html(File.ReadAllText(session.At("out.html")));
        HarmlessFiles.Markdown(File.ReadAllText(session.At("out.md")));
    }

    private static Fault[] Typed(string entry)
    {
        if (CellText.ReadEntry(entry, new CellAddress(2, 1)) is not EntryRead read) return [((EntryRefused)CellText.ReadEntry(entry, new CellAddress(2, 1))).Fault];
        Workbook workbook = Example.Read(HostileBooks.HonestOnly).WithCell("S", read.Cell);
        return Faults(Calculator.Calculate(workbook).Cells[new CellId("S", new CellAddress(2, 1))]);
    }

    private static Fault[] FaultsOf(string text)
    {
        if (WorkbookText.Read(text) is Refusal refused) return [refused.Fault];
        Calculation calculation = Calculator.Calculate(Example.Read(text));
        return [.. calculation.Faults, .. calculation.Cells.Values.Where(cell => cell.Cell.Name != "broken").SelectMany(Faults), .. calculation.Workbook.Sheets.SelectMany(sheet => sheet.WhatIfs.SelectMany(table => FaultsOf(calculation, sheet, table)))];
    }

    private static IEnumerable<Fault> FaultsOf(Calculation calculation, Sheet sheet, WhatIfBlock table)
    {
        if (table.Vary.IsEmpty && table.Show.IsEmpty) return [];
        StudyOutcome<WhatIfRequest> request = WhatIfRequest.Of(table, sheet.Name);
        StudyOutcome<WhatIfTable> answer = request.IsAnswered ? Calculator.Studies.WhatIf(calculation, request.Answer, null, CancellationToken.None) : request.Fault;
        return answer.IsAnswered ? answer.Answer.Columns.SelectMany(column => Enumerable.Range(0, answer.Answer.Scenarios).Select(column.Fault).OfType<Fault>()) : [answer.Fault];
    }

    private static Fault[] Faults(CellResult? result) => result?.Fault is { } fault ? [fault] : [];

    private static TheoryData<string> Of(params HostilePlace[] places) => [.. HostileCells.All.Where(cell => places.Contains(cell.Place)).Select(cell => cell.Kind).Distinct()];

    private static void Holds(IEnumerable<(HostileCell Cell, string Form, Fault[] Faults)> all)
    {
        (HostileCell Cell, string Form, Fault[] Faults)[] tried = [.. all];
        Assert.NotEmpty(tried);
        List<string> wrong = [];
        foreach ((HostileCell cell, string form, Fault[] faults) in tried)
        {
            if (faults.Length == 0) wrong.Add($"{cell} as a {form} is let in: {VisibleText.Of(cell.Text)}");
            wrong.AddRange(faults.Select(fault => (fault, problem: PlainSentence.Problem(fault, cell.Text))).Where(pair => pair.problem is not null).Select(pair => $"{cell} as a {form}: {pair.problem}: {pair.fault.Sentence}"));
        }
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }
}
