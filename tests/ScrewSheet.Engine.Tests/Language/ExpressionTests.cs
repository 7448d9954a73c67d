using ScrewSheet.Engine.Tests.Support;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Tests.Language;

/// <summary>The language of cells: what works.</summary>
public sealed class ExpressionTests
{
    [Theory]
    [InlineData("1/2", 0.5, "number")]
    [InlineData("7 / 2 * 2", 7, "number")]
    [InlineData("2 + 3 * 4 - 6 / 3", 12, "number")]
    [InlineData("-2 - -3", 1, "number")]
    [InlineData("(1 + 2) * 3", 9, "number")]
    [InlineData("((1 + 2))", 3, "number")]
    [InlineData("1e3 + 2.5E-1", 1000.25, "number")]
    [InlineData("1 < 2 ? 3 : 4", 3, "number")]
    [InlineData("Math.PI", Math.PI, "number")]
    [InlineData("Math.Max(2, 3) + Math.Log(Math.E)", 4, "number")]
    [InlineData("Pow(2, 10)", 1024, "number")]
    [InlineData("Root(-27, 3)", -3, "number")]
    [InlineData("(7 kN / 1 kN) switch { < 5 => 1, 7 => 2, _ => 3 }", 2, "number")]
    [InlineData("3 switch { 1 => 10 kN, > 2 when 1 > 2 => 20 kN, _ => 30 kN }", 30000, "Force")]
    [InlineData("\"pull\" switch { \"pull\" => 1, _ => 2 }", 1, "number")]
    [InlineData("Pull.Up switch { Pull.Up => 1, _ => 2 }", 1, "number")]
    [InlineData("Moment(2 kN, 10 mm)", 20, "Torque")]
    [InlineData("Moment(arm: 10 mm, force: 2 kN)", 20, "Torque")]
    [InlineData("Scaled(2 kN)", 4000, "Force")]
    [InlineData("Scaled(2 kN, 3)", 6000, "Force")]
    [InlineData("Scaled(2 kN, way: Pull.Up)", -4000, "Force")]
    [InlineData("Larger(1 kN, 2 kN)", 2000, "Force")]
    [InlineData("Larger(1, 2)", 2, "number")]
    [InlineData("Larger(4 kN / 2 kN, 1)", 2, "number")]
    [InlineData("Stock.Plain.Moment", 200, "Torque")]
    [InlineData("SpanOf(Stock.Plain with { Span = 40 mm })", 0.04, "Length")]
    [InlineData("(Stock.Plain with { Span = 40 mm, Load = 1 kN }).Moment", 40, "Torque")]
    [InlineData("\"abc\".Length + 1", 4, "number")]
    public void AnExpressionHasItsValueAndType(string expression, double si, string type) => Book.Eval(expression).Gives(si, type);

    [Theory]
    [InlineData("1 < 2 && !(3 < 2)", "holds")]
    [InlineData("1 > 2 || \"abc\".StartsWith(\"ab\")", "holds")]
    [InlineData("\"a\" == \"b\"", "fails")]
    [InlineData("\"peak \" + \"load\"", "peak load")]
    [InlineData("$\"{2 kN}, {1/4} and {2500 N:kN, 2 decimals}{{}}\"", "2 kN, 0.25 and 2.50 kN{}")]
    [InlineData("\"a\\\"b\\\\c\\u0041\"", "a\"b\\cA")]
    [InlineData("Pull.Up", "Up")]
    [InlineData("$\"pull {Pull.Up}\"", "pull Up")]
    public void TextsAndChecksShow(string expression, string shown) => Book.Eval(expression).Gives(shown);

    [Fact]
    public void AHoleShowsAValueAsItsCellDoes()
    {
        Book book = Book.Of("A1 fall [m, 2 decimals] = 4.5 m", "A2 => $\"falls {fall}, {fall:mm}, {fall * 2}\"");
        book["A2"].Gives("falls 4.50 m, 4500 mm, 9000 mm");
        book.Type("A1", "fall [cm] = 4.5 m");
        book["A2"].Gives("falls 450 cm, 4500 mm, 9000 mm");
    }

    [Fact]
    public void ASeriesMayBeWrittenOut()
    {
        Book.Eval("Mean(Values(1 kN, 2 kN, 6 kN))").Gives(3000, "Force");
        Book.Eval("Sum(Values(1, 4 kN / 2 kN))").Gives(3, "number");
        Book.Eval("Values(1 kN, 2 mm)").FaultsWith("Values takes values of one kind; a force and a length were given.");
    }

    [Fact]
    public void OnlyRecordsThatAuthorsFillInAreChangedByWith() =>
        Assert.NotNull(Book.Eval("SpreadOf(Values(1, 2, 3)) with { Most = 9 }").Fault);

    [Fact]
    public void ADeclaredBoolIsAPlainValue()
    {
        Book book = Book.Of("A1 bool strong => 1 < 2", "A2 weak => 1 < 2");
        Assert.False(book["A1"].IsCheck);
        Assert.True(book["A2"].IsCheck);
        book["A1"].Gives("true");
    }

    [Fact]
    public void AddressesNamesAndOtherSheetsAreReferences()
    {
        Book book = Book.Of("sheet Fall", "B7 peak = 4 kN", "sheet S", "A1 μ = 0.3", "A2 => Fall.peak * μ + Fall.B7 * A1", "A3 überhang = 2 mm", "A4 => überhang * 2");
        book["A2"].Gives(2400, "Force");
        book["A4"].Gives(0.004, "Length");
    }

    [Fact]
    public void ABlankTellsAUnitFromACell()
    {
        Book book = Book.Of("A1 mm = 4 m", "A2 => 10 N / mm", "A3 => 10 N/mm");
        book["A2"].Gives(2.5, "ForcePerLength");
        book["A3"].Gives(10000, "ForcePerLength");
        Assert.Empty(book["A2"].Cautions);
        Book second = Book.Of("A1 m = 3 kN", "A2 => 2 m * 2");
        Assert.Contains("m after a number is the unit, though a cell has that name.", second["A2"].Cautions.Select(caution => caution.Message));
    }

    [Fact]
    public void AColdGivenIsATemperature() => Book.Of("A1 = -18 °C")["A1"].Gives(255.15, "Temperature");

    [Fact]
    public void AuthorsFunctionsSeeTheirParametersOtherFunctionsAndTheLibrary()
    {
        Book book = Book.Of("screwsheet 1", "function Torque HingeMoment(Force f, Length arm) => Twice(Moment(f, arm)) / 2", "function Torque Twice(Torque t) => t * 2", "", "sheet S", "A1 => HingeMoment(8.5 kN, 50 mm)");
        Assert.Empty(book.Calculation.Faults);
        book["A1"].Gives(425, "Torque");
    }

    [Fact]
    public void ASeriesSkipsBlanksAndLambdasWorkOverIt()
    {
        Book book = Book.Of("A1 = 1 kN", "A2 = 2 kN", "A4 = 6 kN", "B1 => Sum(Series(A1, A4))", "B2 => Count(Series(A1, A4))", "B3 => Mean(Series(A1, A4))",
            "B4 => Sum(Map(Series(A1, A4), x => x * 2))", "B5 => Count(Where(Series(A1, A4), x => x > 1 kN))", "B6 => All(Series(A1, A4), x => x > 0 kN)",
            "B7 => Any(Series(A1, A4), x => x > A4)", "B8 => SpreadOf(Series(A1, A4)).Most", "B9 => Mean(Map(Series(A1, A4), x => x / 1 kN))", "C1 => Series(A1, A4)");
        book["B1"].Gives(9000, "Force");
        book["B2"].Gives(3, "number");
        book["B3"].Gives(3000, "Force");
        book["B4"].Gives(18000, "Force");
        book["B5"].Gives(2, "number");
        book["B6"].Gives("holds");
        book["B7"].Gives("fails");
        book["B8"].Gives(6000, "Force");
        book["B9"].Gives(3, "number");
        Assert.Equal("Series<Force>", book["C1"].Type!.Name);
    }

    [Fact]
    public void CautionsRideAlongWithTheirOrigin()
    {
        Book book = Book.Of("A1 => Ratio(0.3, 90 °)", "A2 => A1 * 2", "A3 => A2 + 1", "B1 => Moment(60 kN, 1 mm)", "B2 => Stock.Rating", "B3 => SpreadOf(Series(C1, C2)).Least", "C1 = 1 kN", "C2 = 2 kN");
        Assert.Equal([new Caution("Ratio: friction helps here; set 0 for design")], book["A1"].Cautions.ToArray());
        Assert.Equal([new Caution("Ratio: friction helps here; set 0 for design", "S.A1")], book["A3"].Cautions.ToArray());
        Assert.Equal(["Moment: force is 60000 N, outside the usual range up to 50000 N."], book["B1"].Cautions.Select(caution => caution.Message));
        Assert.Equal(["Stock.Rating is from memory; check it against a toy standard, 2020, table 1."], book["B2"].Cautions.Select(caution => caution.Message));
        Assert.Equal(["fewer than three values"], book["B3"].Cautions.Select(caution => caution.Message));
        Assert.Empty(Book.Eval("Ratio(0, 90 °)").Cautions);
    }
}
