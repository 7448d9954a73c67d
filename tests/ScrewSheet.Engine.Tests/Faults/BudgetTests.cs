using System.Diagnostics;
using ScrewSheet.Engine.Tests.Support;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Engine.Tests.Faults;

/// <summary>Expressions made to break or hang the program end in one sentence, soon.</summary>
public sealed class BudgetTests
{
    public static TheoryData<string, string> Bombs => new()
    {
        { "a very long sum", string.Join('+', Enumerable.Repeat("1", 60_000)) },
        { "5,000 brackets", new string('(', 5000) + "1" + new string(')', 5000) },
        { "2,000 generics", string.Concat(Enumerable.Repeat("A1<", 2000)) + "A1" },
        { "generics with commas", "Larger(" + string.Join(',', Enumerable.Repeat("A1<A1", 300)) + ">(A1))" },
        { "twenty nested texts", string.Concat(Enumerable.Repeat("$\"{", 20)) + "1" + string.Concat(Enumerable.Repeat("}\"", 20)) },
        { "many signs", new string('-', 3000) + "1" },
        { "many nots", new string('!', 900) + "true" },
        { "nested lambdas", "Map(Series(A1,A1), x => Sum(Map(Series(A1,A1), y => Sum(Map(Series(A1,A1), z => z)))))" },
        { "a ladder of questions", string.Concat(Enumerable.Repeat("true ? 1 : ", 400)) + "1" },
        { "nested calls", string.Concat(Enumerable.Repeat("Larger(1, ", 300)) + "1" + new string(')', 300) },
        { "10,000 names", string.Join('+', Enumerable.Repeat("a", 3900)) },
        { "open braces", string.Concat(Enumerable.Repeat("1 switch {_ => ", 200)) },
        { "open brackets", new string('(', 4000) },
        { "a bare switch", "1 switch { }" },
        { "commas", new string(',', 1500) },
        { "arrows", string.Concat(Enumerable.Repeat("x => ", 300)) + "1" },
    };

    [Theory]
    [MemberData(nameof(Bombs))]
    public void ABombIsASentence(string what, string expression)
    {
        Stopwatch watch = Stopwatch.StartNew();
        Fault? fault = Book.Eval(expression, "A1 = 1").Fault;
        Assert.True(fault is not null, what);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(20), $"{what} took {watch.Elapsed}");
    }

    [Fact]
    public void AFunctionChainThatDoublesFortyTimesStopsAtItsBudget()
    {
        string[] functions = ["function double F0(double x) => x", .. Enumerable.Range(1, 40).Select(i => $"function double F{i}(double x) => F{i - 1}(x) + F{i - 1}(x)")];
        Book book = Book.Of(["screwsheet 1", .. functions.Select(f => System.Text.RegularExpressions.Regex.Replace(f, @"\bF(\d+)", "Fx$1_")), "", "sheet S", "A1 => Fx40_(1)", "A2 => Fx5_(1)"]);
        Assert.Empty(book.Calculation.Faults);
        book["A1"].FaultsWith("This cell needs more than 10,000,000 steps. Make its functions call less or its series shorter.");
        book["A2"].Gives(32, "number");
    }

    [Fact]
    public void ATextCannotGrowWithoutEnd()
    {
        string[] doubling = [.. Enumerable.Range(2, 12).Select(i => $"A{i} => A{i - 1} + A{i - 1}")];
        Book book = Book.Of(["A1 = \"abcdefgh\"", .. doubling]);
        book["A11"].FaultsWith("This text is longer than 4,096 characters. Shorten it.");
    }

    [Fact]
    public void TheSeriesOfAWorkbookAreLimitedTogether()
    {
        // 25 series of 200,000 empty cells each, all different, and a short one more
        string[] series = [.. Enumerable.Range(1, 26).Select(i => $"A{i} => Count(Series(C{i}, D{i + 99_899}))"), "B1 => Count(Series(C1, D99900))"];
        Book book = Book.Of(["C1 = 1", .. series]);
        book["A1"].Gives(1, "number");
        book["A26"].FaultsWith("With this series those of the workbook span more than 5,000,000 cells together. Make some shorter, or give a column a name.");
        book["B1"].Gives(1, "number"); // the same as A1
        book.Clear("A2").Type("A26", "=> Count(Series(C1, D99900)) + 0")["A26"].Gives(1, "number");
    }

    [Fact]
    public void TheValuesHeldByAWorkbookAreLimited()
    {
        string[] doubling = [.. Enumerable.Range(2, 9).Select(i => $"A{i} => A{i - 1} + A{i - 1}")];
        Book book = Book.Of(["A1 = \"abcdefgh\"", .. doubling, .. Enumerable.Range(1, 20_000).Select(i => $"B{i} => A9 + A9")]);
        Assert.Null(book["B19000"].Fault);
        book["B20000"].FaultsWith("With this cell the workbook would hold more than 20,000,000 values. Compute a number from the series in the cell that makes it.");
        Assert.Null(book.Clear("B1").Type("B20000", "=> A9 + A9 + \"\"")["B20000"].Fault); // one has made room
    }

    [Fact]
    public void ARingOfManyCellsIsNamedInOneSentenceOfBoundedLength()
    {
        Book book = Book.Of(["A1 => A3000", .. Enumerable.Range(2, 2999).Select(i => $"A{i} => A{i - 1}")]);
        Assert.StartsWith("These cells wait for each other: S.A1 → S.A3000 → ", book["A1"].Fault!.Sentence, StringComparison.Ordinal);
        Assert.EndsWith(" and 2,936 more. Break the circle.", book["A1"].Fault!.Sentence, StringComparison.Ordinal);
        Assert.Same(book["A1"].Fault, book["A2000"].Fault);
    }

    [Fact]
    public void CautionsDoNotPileUpWithoutEnd()
    {
        string[] chain = ["A1 => Ratio(0.1, 90 deg)", .. Enumerable.Range(2, 199).Select(i => $"A{i} => A{i - 1} + Ratio(0.1, 90 deg)")];
        Book book = Book.Of(chain);
        Assert.Equal(63, book["A63"].Cautions.Length);
        Assert.All(chain.Select((_, i) => book[$"A{i + 1}"]), result => Assert.True(result.Cautions.Length <= 65));
        Assert.Equal("More cautions than are listed here belong to the cells this one depends on; look at those.", book["A200"].Cautions[^1].Message);
    }

    [Fact]
    public void ALongLambdaWeighsMoreThanAShortOne()
    {
        string[] values = [.. Enumerable.Range(1, 50_000).Select(i => $"A{i} = 1")];
        Book book = Book.Of([.. values, "B1 => Sum(Map(Series(A1, A50000), x => x + 1))", $"B2 => Sum(Map(Series(A1, A50000), x => {string.Join(" + ", Enumerable.Repeat("x", 900))}))"]);
        book["B1"].Gives(100_000, "number");
        book["B2"].FaultsWith("This cell needs more than 10,000,000 steps. Make its functions call less or its series shorter.");
    }

    [Fact]
    public void ALongChainOfCellsNeedsNoStack()
    {
        string[] chain = ["A1 = 1", .. Enumerable.Range(2, 20_000).Select(i => $"A{i} => A{i - 1} + 1")];
        Book.Of(chain)["A20001"].Gives(20_001, "number");
    }

    [Fact]
    public void AStoppedCalculationThrowsAndTheNextOneIsRight()
    {
        Book book = Book.Of("A1 = 1", "A2 => A1 + 1");
        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        Assert.Throws<OperationCanceledException>(() => new Calculator(Book.Library).Calculate(book.Workbook, stopped.Token));
        book["A2"].Gives(2, "number");
    }
}
