using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Tests.Output;

public sealed class ShownDigitsTests
{
    [Theory]
    [InlineData("499.96", "moment < 500 N·m", "499.96 N·m")]
    [InlineData("499.9996", "moment < 500 N·m", "499.9996 N·m")]
    [InlineData("500.04", "moment <= 500 N·m", "500.04 N·m")]
    [InlineData("500.04", "500 N·m >= moment", "500.04 N·m")]
    [InlineData("500.04", "moment > 0.5 kN·m", "500.04 N·m")]
    [InlineData("500.04", "!(moment <= 500 N·m)", "500.04 N·m")]
    [InlineData("499.96", "moment > 100 N·m && moment < 500 N·m", "499.96 N·m")]
    [InlineData("499.86", "moment < 500 N·m", "499.9 N·m")]
    [InlineData("500", "moment <= 500 N·m", "500.0 N·m")]
    public void AFigureNeverContradictsTheCheckBesideIt(string moment, string check, string shown) =>
        Shows($"A1 Torque moment [N·m, 1 decimal] => 1 * {moment} N·m\nA2 strong => {check}\n", shown);

    [Fact]
    public void TwoCellsThatAreComparedDiffer()
    {
        Shows("A1 Torque a [N·m, 1 decimal] => 1 * 500.04 N·m\nA2 Torque b [N·m, 1 decimal] => 1 * 500.01 N·m\nA3 => a > b\n", "500.04 N·m");
        Shows("A1 Torque a [N·m, 1 decimal] => 1 * 500.04 N·m\nA2 Torque b [N·m, 1 decimal] => 1 * 500.01 N·m\nA3 => A1 > A2\n", "500.01 N·m");
    }

    [Theory]
    [InlineData("8.55123 kN", "8.55123 kN")]
    [InlineData("1.1 m", "1100 mm")]
    [InlineData("123456.7 mm", "123456.7 mm")]
    public void AGivenShowsAllItsDigits(string given, string shown) => Shows($"A1 x = {given}\n", shown);

    private static void Shows(string cells, string shown)
    {
        using Session session = new() { Calculator = new EngineCalculator(FunctionLibrary.Of()) };
        session.Run("run", session.File("a.screwsheet", $"screwsheet 1\nunits SI\n\nsheet S\n{cells}"), "--format", "csv");
        Assert.Contains($",{shown},,\n", session.Output, StringComparison.Ordinal);
    }
}
