using CsCheck;
using ScrewSheet.Engine.Tests.Support;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Tests.Graph;

/// <summary>An edit does exactly the work it asks for, and the answer is that of a calculation from nothing.</summary>
public sealed class RecalculationTests
{
    private static Book Chain() => Book.Of("A1 a = 1 kN", "A2 => a * 2", "A3 => A2 + A2", "A4 => A3 > 3 kN", "A5 => A4 ? 1 : 2", "B1 = 7", "B2 => B1 + 1", "C1 \"note\"");

    [Fact]
    public void AnEditRunsOnlyWhatReadsIt()
    {
        Book book = Chain().Type("B1", "= 8");
        Assert.Equal("B2", book.Ran);
        Assert.Equal("", book.Bound);
        book["B2"].Gives(9, "number");
    }

    [Fact]
    public void ASameValueStopsTheChange()
    {
        Book book = Chain().Type("A1", "a = 2 kN");
        Assert.Equal("A2 A3 A4", book.Ran); // the check still holds, so nothing behind it runs
        book["A5"].Gives(1, "number");
    }

    [Fact]
    public void ASameTypeIsNotBoundAgain()
    {
        Book book = Chain().Type("A1", "a => 3 kN + 1 kN");
        Assert.Equal("A1", book.Bound);
    }

    [Fact]
    public void AnotherTypeBindsTheReadersAgain()
    {
        Book book = Chain().Type("A1", "a = 2 mm");
        Assert.Contains("A2", book.Bound, StringComparison.Ordinal);
        book["A4"].FaultsWith("A length and a force cannot be compared.");
        book["A5"].FaultsWith("It waits for A4, which is in fault.");
        Assert.Equal("S.A4", book["A5"].Fault!.Cause);
    }

    [Fact]
    public void EditingANoteRunsNoCell() => Assert.Equal("", Chain().Type("C1", "another").Ran);

    [Fact]
    public void ACellThatComesOrGoesReachesItsReaders()
    {
        Book book = Book.Of("A1 => B1 + 1", "A2 => late * 2");
        book["A1"].FaultsWith("B1 is empty. Fill it or refer to another cell.");
        book.Type("B1", "late = 3");
        book["A1"].Gives(4, "number");
        book["A2"].Gives(6, "number");
        book.Type("B1", "early = 3");
        book["A1"].Gives(4, "number");
        Assert.StartsWith("There is no cell named late", book["A2"].Fault!.Message, StringComparison.Ordinal);
        book.Clear("B1");
        book["A1"].FaultsWith("B1 is empty. Fill it or refer to another cell.");
    }

    [Fact]
    public void ACircleNamesItsCellsInOrderAndGoesWhenItIsBroken()
    {
        Book book = Book.Of("A1 => B1 + 1", "B1 => C1 + 1", "C1 => A1 + 1", "D1 => A1 * 2", "E1 => E1");
        Fault fault = book["A1"].Fault!;
        Assert.Equal(FaultKind.Circle, fault.Kind);
        Assert.Equal("These cells wait for each other: S.A1 → S.B1 → S.C1 → S.A1. Break the circle.", fault.Sentence);
        book["E1"].FaultsWith("These cells wait for each other: S.E1 → S.E1. Break the circle.");
        book["D1"].FaultsWith("It waits for A1, which is in fault.");
        book.Type("C1", "= 1");
        book["D1"].Gives(6, "number");
        book.Type("C1", "=> D1");
        Assert.Equal(FaultKind.Circle, book["B1"].Fault!.Kind);
    }

    [Fact]
    public void ACellThatLeavesACircleWaitsForTheOneItReadsThatStays()
    {
        Book book = Book.Of("A1 => A3 + A5", "A2 => A1 + 1", "A3 => A1", "A5 => A2");
        Assert.Equal(FaultKind.Circle, book["A2"].Fault!.Kind);
        book.Type("A5", "= 1");
        book["A2"].FaultsWith("It waits for A1, which is in fault.");
    }

    [Fact]
    public void ADoubledNameMeansTheFirstCellWhicheverCameFirst()
    {
        Book book = Book.Of("A1 => twice * 2", "A6 twice = 3");
        book.Type("A3", "twice = 4");
        Assert.Equal("S.A3", book["A1"].Fault!.Cause);
        Assert.Equal(new Calculator(Book.Library).Calculate(book.Workbook).Cells[Book.Id("A1")].Fault!.Cause, book["A1"].Fault!.Cause);
        book.Clear("A3");
        book["A1"].Gives(6, "number");
    }

    [Fact]
    public void AColumnOfAlikeCellsPutsEachFaultWhereItStands()
    {
        Book book = Book.Of("A1 = 1", "B1 = 0", "C1 => 1 + A1 / B1", "A10 = 1", "B10 = 0", "C10 => 1 + A10 / B10");
        Assert.Equal((book["C1"].Fault!.Place!.Value.Column + 1, book["C1"].Fault!.Place!.Value.Length + 2), (book["C10"].Fault!.Place!.Value.Column, book["C10"].Fault!.Place!.Value.Length));
    }

    /// <summary>A formula filled down in which one row's cell is also named, or written with its sheet: that row says the same twice, the others do not.</summary>
    [Theory]
    [InlineData("A1 total = 8", "A2 = 4", "B1 => A1 / total", "B2 => A2 / total", 0.5)]
    [InlineData("A1 = 4", "A2 total = 8", "B2 => A2 / total", "B1 => A1 / total", 0.5)]
    [InlineData("A1 = 8", "A2 = 4", "B1 => A1 - S.A1", "B2 => A2 - S.A1", -4)]
    [InlineData("A1 first = 8", "A2 = 4", "B1 => first + A1 * S.A1", "B2 => first + A2 * S.A1", 40)]
    [InlineData("A1 first = 8", "A2 = 4", "B1 => A1 > first ? 1 : 2", "B2 => first > A2 ? 3 : 4", 3)]
    public void ANamedCellInAFilledColumnIsThatCell(string one, string two, string before, string filled, double value)
    {
        string last = filled[..2];
        Book.Of(one, two, before, filled)[last].Gives(value, "number");
        Book.Of(one, two, filled, before)[last].Gives(value, "number");
        Book.Of(one, two, before).Type(last, filled[3..])[last].Gives(value, "number");
    }

    [Fact]
    public void AColumnFilledWithNamesAndSheetsIsEachCellByItself() =>
        Gen.Select(Gen.Int[1, 4], Gen.OneOf("total", "S.A1", "S.A2", "A3"), Gen.OneOf("A{0} / {1}", "{1} - A{0}", "A{0} * A{0} + {1}", "A{0} + {1} * B{0}"), Gen.Bool).Sample((named, other, form, upward) =>
        {
            string[] givens = [.. Enumerable.Range(1, 4).SelectMany(row => (string[])[$"A{row} {(row == named ? "total " : "")}= {row + 1}", $"B{row} = {10 * row}"])];
            string[] filled = [.. Enumerable.Range(1, 4).Select(row => $"C{row} => {form.Replace("{0}", row.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal).Replace("{1}", other, StringComparison.Ordinal)}")];
            Book together = Book.Of([.. givens, .. upward ? filled.Reverse() : filled]);
            for (int i = 0; i < filled.Length; i++) Assert.Equal(Book.Of([.. givens, filled[i]])[$"C{i + 1}"].Value, together[$"C{i + 1}"].Value);
        }, iter: 60);

    [Fact]
    public void ASeriesSeesCellsThatComeIntoItsRun()
    {
        Book book = Book.Of("A1 = 1", "A3 = 3", "B1 => Sum(Series(A1, A3))");
        book.Type("A2", "= 2");
        book["B1"].Gives(6, "number");
        book.Clear("A1");
        book["B1"].Gives(5, "number");
    }

    [Fact]
    public void KeptResultsAreComparedAndNeverTrusted()
    {
        Book book = Book.Of("A1 [N·m, 1 decimal] => 8.5 kN * 50 mm gives 425.0 N·m", "A2 => 1 / 3 gives 0.33", "A3 => 1 / 3 gives 0.34", "A4 => 1 < 2 gives holds", "A5 => 1 > 2 gives holds", "A6 => 2 kN gives 2 mm", "A7 => 2 kN", "A8 => 2 kN gives 449.6 lbf");
        Assert.Equal([KeptState.Same, KeptState.Same, KeptState.Changed, KeptState.Same, KeptState.Changed, KeptState.Unreadable, KeptState.NotKept, KeptState.Same],
            Enumerable.Range(1, 8).Select(row => book["A" + row].Kept));
    }

    [Fact]
    public void RandomEditsGiveWhatACalculationFromNothingGives() =>
        Gen.Select(Gen.Int[1, 6], Gen.Int[0, 9], Gen.Int[1, 6], Gen.Int[1, 6]).Array[1, 25].Sample(edits =>
        {
            Book book = Book.Of("A1 = 1", "A2 => A1 + 1", "A3 => A1 * A2", "A4 => Sum(Series(A1, A3))", "A5 => A4 > 3 ? A2 : A3", "A6 named => A5 + 1");
            foreach ((int cell, int kind, int left, int right) in edits)
            {
                string at = "A" + cell;
                if (kind == 0) book.Clear(at);
                else book.Type(at, kind switch { 1 => $"= {left}", 2 => $"=> A{left} + A{right}", 3 => $"=> Sum(Series(A{left}, A{right}))", 4 => $"= {left} kN", 5 => $"named => A{left} / A{right}", 6 => "=> named * 2", 7 => $"=> A{left} > A{right}", 8 => $"=> A{left} * 2 + 1 kN", _ => "words" });
            }
            Calculation fresh = new Calculator(Book.Library).Calculate(book.Workbook);
            foreach ((CellId id, CellResult result) in fresh.Cells)
            {
                CellResult kept = book.Calculation.Cells[id];
                Assert.Equal(WithoutPlace(result.Outcome), WithoutPlace(kept.Outcome));
                Assert.Equal(result.Type, kept.Type);
            }
            Assert.Equal(fresh.Cells.Count, book.Calculation.Cells.Count);
        }, iter: 150);

    /// <summary>A line number is that of the last reading; an edit above does not move it.</summary>
    private static Outcome? WithoutPlace(Outcome? outcome) => outcome is Faulted faulted ? new Faulted(faulted.Fault with { Place = null }) : outcome;
}
