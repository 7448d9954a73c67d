using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Format;

public sealed class GivenTests
{
    [Theory]
    [InlineData("8.5 kN", 8500)]
    [InlineData("-18 °C", 255.15)]
    [InlineData("−18 °C", 255.15)]
    [InlineData("5 %", 0.05)]
    [InlineData("40 mm", 0.04)]
    [InlineData("40\tmm", 0.04)]
    [InlineData("1e3", 1000)]
    [InlineData("0.5 in", 0.0127)]
    [InlineData("10 N/mm", 10_000)]
    [InlineData("3 1/s", 3)]
    public void ALiteralIsRead(string text, double si)
    {
        var literal = Assert.IsType<NumberLiteral>(Text.Given($"A1 = {text}").Literal);
        Assert.Equal(si, literal.Si, Math.Abs(si) * 1e-12);
    }

    [Theory]
    [InlineData("true"), InlineData("false")]
    public void AYesOrNoIsRead(string text) => Assert.Equal(new TruthLiteral(text == "true"), Text.Given($"A1 = {text}").Literal);

    [Fact]
    public void ATextIsRead() => Assert.Equal(new TextLiteral("a \"b\" // c"), Text.Given("A1 = \"a \\\"b\\\" // c\"").Literal);

    [Theory]
    [InlineData("Sqrt(2) * 3 kN"), InlineData("2 kN + 3 kN"), InlineData("10 N / mm"), InlineData("(2+3) kN"), InlineData("10.kN"), InlineData("-(3 kN)"), InlineData("3*4"), InlineData("Ice.Cold")]
    public void AConstantExpressionIsLeftToTheEngine(string text)
    {
        GivenContent given = Text.Given($"A1 peak = {text}");
        Assert.Equal((text, 11), (given.Text, given.TextColumn));
        Assert.Null(given.Literal);
    }

    [Theory]
    [InlineData("8.5 kN ± 0.5 kN", 500, false, ToleranceShape.Normal, null)]
    [InlineData("8.5 kN +- 50 daN", 500, false, ToleranceShape.Normal, null)]
    [InlineData("8.5 kN ± 5 %", 0.05, true, ToleranceShape.Normal, null)]
    [InlineData("5 % ± 1 %", 0.01, false, ToleranceShape.Normal, null)]
    [InlineData("0.62 ± 0.02", 0.02, false, ToleranceShape.Normal, null)]
    [InlineData("0.62 ± 5 %", 0.05, true, ToleranceShape.Normal, null)]
    [InlineData("-18 °C ± 2 K", 2, false, ToleranceShape.Normal, null)]
    [InlineData("-18 °C ± 2 °C", 2, false, ToleranceShape.Normal, null)]
    [InlineData("40 mm ± 10 mm rectangular", 0.01, false, ToleranceShape.Rectangular, null)]
    [InlineData("40 mm ± 10 mm triangular", 0.01, false, ToleranceShape.Triangular, null)]
    [InlineData("40 mm ± 10 mm k=1 dof 18", 0.01, false, ToleranceShape.Standard, 18.0)]
    [InlineData("0.62 ± 0.02 k=1", 0.02, false, ToleranceShape.Standard, null)]
    [InlineData("40 mm ± 0 mm", 0, false, ToleranceShape.Normal, null)]
    [InlineData("Sqrt(2) kN ± 0.5 kN", 500, false, ToleranceShape.Normal, null)]
    public void AToleranceIsRead(string text, double half, bool relative, ToleranceShape shape, double? freedom)
    {
        Tolerance tolerance = Text.Given($"A1 = {text}").Tolerance!;
        Assert.Equal(half, tolerance.HalfWidthSi, 1e-12);
        Assert.Equal((relative, shape, freedom), (tolerance.Relative, tolerance.Shape, tolerance.DegreesOfFreedom));
    }

    [Fact]
    public void PercentOnANumberShownInPercentIsAbsolute() => Assert.False(Text.Given("A1 [%] = 0.05 ± 1 %").Tolerance!.Relative);

    [Theory]
    [InlineData("40 mm within 0 mm to 12 cm", 0, 0.12)]
    [InlineData("-18 °C within -40 °C to 0 °C", 233.15, 273.15)]
    [InlineData("40 mm ± 10 mm rectangular within 40 mm to 120 mm", 0.04, 0.12)]
    [InlineData("12 cm within 0 mm to 120 mm", 0, 0.12)]
    [InlineData("2 * 3 mm within 0 mm to 120 mm", 0, 0.12)]
    public void LimitsAreRead(string text, double from, double to)
    {
        Limits limits = Text.Given($"A1 = {text} source \"within ± 3 to 4\" // within 1 to 2").Within!;
        Assert.Equal(from, limits.FromSi, 1e-9);
        Assert.Equal(to, limits.ToSi, 1e-9);
    }

    [Fact]
    public void ASourceIsRead() => Assert.Equal("within ± 3 to 4", Text.Given("A1 = 3 source \"within ± 3 to 4\"").Source);
}
