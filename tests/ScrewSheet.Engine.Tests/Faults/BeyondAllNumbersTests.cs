using ScrewSheet.Engine.Tests.Support;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Tests.Faults;

/// <summary>What grows beyond all numbers is a fault wherever it comes out: no value of a cell is ever infinite or no number.</summary>
public sealed class BeyondAllNumbersTests
{
    private static readonly string[] Givens = ["A1 r = -1e200", "A2 f = 1e200 kN", "A3 t = true", "A4 = 1e200", "A5 = 3"];

    [Theory]
    [InlineData("r * r")]
    [InlineData("-(r * r)")]
    [InlineData("Cbrt(r * r)")]
    [InlineData("-Cbrt(r * r * r)")]
    [InlineData("Sqrt(r * r)")]
    [InlineData("Root(r * r, 5)")]
    [InlineData("Pow(r, 2)")]
    [InlineData("Pow(r * r, 0.1)")]
    [InlineData("Math.Exp(r * r)")]
    [InlineData("Math.Max(1, r * r)")]
    [InlineData("Math.Min(1, r * -r)")]
    [InlineData("Math.Abs(r * r)")]
    [InlineData("Math.Floor(r * r)")]
    [InlineData("t ? r * r : 1")]
    [InlineData("t ? Cbrt(r * r) : 1")]
    [InlineData("r switch { < 0 => r * r, _ => 1 }")]
    [InlineData("r switch { < 0 => Cbrt(r * r), _ => 1 }")]
    [InlineData("Cbrt(f * f)")]
    [InlineData("Sqrt(f * f)")]
    [InlineData("f * 1e200")]
    [InlineData("Cbrt(r * r) - Cbrt(r * r)")]
    [InlineData("Math.Max(1, r * r) / Math.Max(1, r * r)")]
    [InlineData("Sum(Series(A4, A5)) * A4")]
    [InlineData("Sum(Map(Series(A4, A5), x => x * x))")]
    [InlineData("Values(r * r, 1)")]
    [InlineData("Map(Series(A4, A5), x => x * x)")]
    [InlineData("Map(Series(A4, A5), x => Cbrt(x * x))")]
    public void IsAFault(string expression)
    {
        CellResult result = Book.Eval(expression, Givens);
        Assert.Null(result.Value);
        Assert.Equal(4104, result.Fault!.Code);
    }

    [Fact]
    public void InAFunctionOfTheAuthor_Too() =>
        Assert.Equal(4104, Book.Of("screwsheet 1", "function double Square(double a) => a * a", "", "sheet S", "A1 r = 1e200", "A2 => Cbrt(Square(r))")["A2"].Fault!.Code);
}
