using ScrewSheet.Studies.Solving;
using ScrewSheet.Studies.Tests.Support;

namespace ScrewSheet.Studies.Tests.Solving;

public sealed class SolveTests
{
    private const string Book = """
        A1 peak [kN] = 8.5 kN
        A2 exposed [mm] = 40 mm within 0 mm to 120 mm
        A3 Torque moment [N·m, 1 decimal] => peak * exposed
        A4 strong => moment < 500 N·m
        A5 x = 0.3
        A6 square => Pow(x - 1, 2)
        A7 pole => 1 / x
        A8 jump => x < 1 ? 2 : 5
        A9 wave => Sin(x * 1 rad)
        A10 words => $"a load of {peak}"
        A11 band => x > 0.25 && x < 4
        A12 weight => Sqrt(x)
        A13 tilt = 30 °
        """;

    private static StudyOutcome<Solution> Solve(string cell, string equal, string by, string? from = null, string? to = null)
    {
        StudyBook sheet = StudyBook.Of(Book.Replace("Sin(x * 1 rad)", "Pow(x, 3) - 3 * x", StringComparison.Ordinal));
        return sheet.Runner.Solve(sheet.Calculation, new SolveRequest { Cell = StudyBook.At(cell), Equal = StudyBook.At(equal), By = StudyBook.At(by), From = from is null ? null : StudyBook.At(from), To = to is null ? null : StudyBook.At(to) });
    }

    private static Solution Found(string cell, string equal, string by, string? from = null, string? to = null)
    {
        StudyOutcome<Solution> solved = Solve(cell, equal, by, from, to);
        Assert.True(solved.IsAnswered, solved.Fault?.Sentence);
        return solved.Answer;
    }

    [Fact]
    public void AResult_IsMadeEqual_WithinTheLimitsOfTheGiven()
    {
        Solution solution = Found("moment", "425 N·m", "exposed");
        Assert.Equal(0.05, solution.Answer!.Si, 1e-14);
        Assert.InRange(Math.Abs(solution.Answer.ResidualSi), 0, 1e-10);
        Assert.Equal((SearchInterval.Limits, 0, 0.12), (solution.Interval, solution.FromSi, solution.ToSi));
        Assert.Empty(solution.Notes);
    }

    [Fact]
    public void ACheck_TurnsAtTheLastValueForWhichItHolds()
    {
        Root turn = Found("strong", "holds", "exposed").Answer!;
        Assert.Equal(500 / 8500.0, turn.Si, 1e-14);
        Assert.True(turn.HoldsBelow);
        StudyBook book = StudyBook.Of(Book);
        Assert.Equal([1.0, 0.0], new[] { turn.Si, turn.Si * (1 + 1e-12) }.Select(si => book.Made("strong", StudyMethod.CellByCell, $"exposed: {(si * 1000).ToString("R", System.Globalization.CultureInfo.InvariantCulture)} mm").Columns[0].Value(0) is Workbooks.Results.TruthValue { Value: true } ? 1.0 : 0.0));
    }

    [Theory]
    [InlineData("moment", "2 kN·m", "exposed", null, null, "No exposed from 0.0000 mm to 120.00 mm makes moment 2000.0 N·m: there it reaches 0.0000 N·m to 1020.0 N·m. Ask for a value it reaches, or search another interval.")]
    [InlineData("square", "0", "x", "0", "2.3", "At x = 1.0000 square touches the value and turns back; a little less or more of anything, and there is no answer.")]
    [InlineData("pole", "0", "x", "-1", "1.1", "No x from -1.0000 to 1.1000 makes pole 0: there it reaches ")]
    [InlineData("jump", "3", "x", "0", "3", "No x from 0 to 3.0000 makes jump 3.0000: there it reaches 2.0000 to 5.0000.|At x = 1.0000 jump jumps over 3.0000 without taking it.")]
    [InlineData("wave", "0", "x", "-3", "3", "There are several: -1.7321, 0, 1.7321. The answer is the one nearest to the x of the file. Search a smaller interval for another one.")]
    [InlineData("strong", "holds", "exposed", "0 mm", "20 mm", "strong holds for every exposed tried from 0 mm to 20.000 mm. Search another interval.")]
    [InlineData("band", "holds", "x", "0", "9", "There are several: 0.25000, 4.0000. The answer is the one nearest to the x of the file. Search a smaller interval for another one.")]
    [InlineData("weight", "1", "x", "-4", "2", "weight was in fault for ")]
    public void WhatMustBeSaid_IsSaidInOneSentenceEach(string cell, string equal, string by, string? from, string? to, string sentences)
    {
        Solution solution = Found(cell, equal, by, from, to);
        foreach (var (expected, note) in sentences.Split('|').Zip(solution.Notes)) Assert.StartsWith(expected.Replace("0.0000", "0", StringComparison.Ordinal), note.Sentence, StringComparison.Ordinal);
        Assert.True(solution.Notes.Length >= sentences.Split('|').Length);
    }

    [Fact]
    public void APole_IsAJumpAndNoRoot()
    {
        Solution solution = Found("pole", "0", "x", "-1", "1.1");
        Assert.Null(solution.Answer);
        Assert.Equal(0, Assert.Single(solution.Jumps), 1e-12);
    }

    [Theory]
    [InlineData("moment", "5 kN", "exposed", null, null, 3301, "5 kN is a force; moment is a torque. Write a torque, with its unit.")]
    [InlineData("strong", "5 kN", "exposed", null, null, 3301, "5 kN is a value; strong is a check: ask for holds or fails. Write a check: ask for holds or fails, with its unit.")]
    [InlineData("moment", "5 N·m", "moment", null, null, 2303, "moment is a result, so it cannot be varied. Vary the givens it is computed from.")]
    [InlineData("moment", "5 N·m", "x", null, null, 4310, "moment does not depend on x, so no value of it helps. Name a given it is computed from.")]
    [InlineData("moment", "5 N·m", "exposed", "30 mm", "10 mm", 4311, "30 mm is not below 10 mm. Write the lower end first, or leave both away.")]
    [InlineData("moment", "5 N·m", "exposed", "30 mm", null, 4312, "One end of the interval is missing. Write both, or neither.")]
    [InlineData("moment", "5 N·m", "exposed", "30 N", "40 N", 3301, "30 N is a force; exposed is a length. Write a length, with its unit.")]
    [InlineData("words", "5 N·m", "peak", null, null, 3303, "words is a text; this asks about a number, a quantity or a check. Name another result.")]
    [InlineData("nothing", "5 N·m", "peak", null, null, 2301, "No cell is called nothing. Write the name or address of a cell, with its sheet and a dot where it stands on another.")]
    public void WhatCannotBeSolved_IsRefusedInOneSentence(string cell, string equal, string by, string? from, string? to, int code, string sentence)
    {
        StudyOutcome<Solution> solved = Solve(cell, equal, by, from, to);
        Assert.Equal((code, sentence), (solved.Fault?.Code ?? 0, solved.Fault?.Sentence ?? "solved"));
    }
}
