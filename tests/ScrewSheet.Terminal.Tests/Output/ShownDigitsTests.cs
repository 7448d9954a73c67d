namespace ScrewSheet.Terminal.Tests.Output;

public sealed class ShownDigitsTests
{
    [Theory]
    [InlineData(499.96, "moment < 500 N·m", true, "499.96 N·m")]
    [InlineData(499.9996, "moment < 500 N·m", true, "499.9996 N·m")]
    [InlineData(500.04, "moment <= 500 N·m", false, "500.04 N·m")]
    [InlineData(500.04, "500 N·m >= moment", false, "500.04 N·m")]
    [InlineData(500.04, "moment > 0.5 kN·m", true, "500.04 N·m")]
    [InlineData(499.96, "moment > 100 N·m && moment < 500 N·m", true, "499.96 N·m")]
    [InlineData(499.86, "moment < 500 N·m", true, "499.9 N·m")]
    [InlineData(500, "moment <= 500 N·m", true, "500.0 N·m")]
    public void AFigureNeverContradictsTheCheckBesideIt(double moment, string check, bool holds, string shown)
    {
        using Session session = new() { Calculator = new FakeCalculator().Gives("m", FakeCalculator.Quantity(moment, "N·m", "Torque")).Gives(check, FakeCalculator.Truth(holds)) };
        session.Run("run", session.File("a.screwsheet", $"screwsheet 1\nunits SI\n\nsheet S\nA1 Torque moment [N·m, 1 decimal] => m\nA2 strong => {check}\n"), "--cell", "moment", "--format", "csv");
        Assert.Contains($",{shown},,\n", session.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TwoCellsThatAreComparedDiffer()
    {
        using Session session = new() { Calculator = new FakeCalculator().Gives("m", FakeCalculator.Quantity(500.04, "N·m", "Torque")).Gives("n", FakeCalculator.Quantity(500.01, "N·m", "Torque")).Gives("Other.a > b", FakeCalculator.Truth(true)) };
        session.Run("run", session.File("a.screwsheet", "screwsheet 1\nunits SI\n\nsheet Other\nA1 Torque a [N·m, 1 decimal] => m\n\nsheet S\nA1 Torque b [N·m, 1 decimal] => n\nA2 strong => Other.a > b\n"), "--format", "csv");
        Assert.Contains(",500.04 N·m,,\n", session.Output, StringComparison.Ordinal);
        Assert.Contains(",500.01 N·m,,\n", session.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("8.55123 kN", "8.55123 kN")]
    [InlineData("1.1 m", "1100 mm")]
    [InlineData("123456.7 mm", "123456.7 mm")]
    public void AGivenShowsAllItsDigits(string given, string shown)
    {
        using Session session = new();
        session.Run("run", session.File("a.screwsheet", $"screwsheet 1\nunits SI\n\nsheet S\nA1 x = {given}\n"), "--format", "csv");
        Assert.Contains($",{shown},,\n", session.Output, StringComparison.Ordinal);
    }
}
