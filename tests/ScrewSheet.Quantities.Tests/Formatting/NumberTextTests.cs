using CsCheck;
using ScrewSheet.Quantities.Formatting;

namespace ScrewSheet.Quantities.Tests.Formatting;

public sealed class NumberTextTests
{
    [Theory]
    [InlineData("0", 0)]
    [InlineData("8.5", 8.5)]
    [InlineData("-18", -18)]
    [InlineData("−18", -18)]
    [InlineData("+3", 3)]
    [InlineData("0.5", 0.5)]
    [InlineData("1e5", 1e5)]
    [InlineData("1.25E-3", 1.25e-3)]
    [InlineData("2e+06", 2e6)]
    public void ANumberReads(string text, double value)
    {
        Assert.True(NumberText.TryParse(text, out double read, out string? problem), problem);
        Assert.Equal(value, read);
    }

    [Theory]
    [InlineData("", "The number is missing.")]
    [InlineData("-", "\"-\" has a sign and no number.")]
    [InlineData("--5", "\"--5\" has two signs; write one.")]
    [InlineData("40m", "\"40m\": a blank stands between number and unit; write 40 m.")]
    [InlineData("-8.5kN", "\"-8.5kN\": a blank stands between number and unit; write -8.5 kN.")]
    [InlineData("1e5m2", "\"1e5m2\": a blank stands between number and unit; write 1e5 m².")]
    [InlineData("5f", "\"5f\": a number has no suffix; write 5.")]
    [InlineData("8,5", "\"8,5\": the decimal sign is a point; write 8.5.")]
    [InlineData("1,234", "\"1,234\" can be read in two ways; write 1.234 or 1234.")]
    [InlineData("1,234.5", "\"1,234.5\": digits are not grouped; write 1234.5.")]
    [InlineData("1,234,567", "\"1,234,567\": digits are not grouped; write 1234567.")]
    [InlineData("1_000", "\"1_000\": digits are not grouped; write 1000.")]
    [InlineData("1'000", "\"1'000\": digits are not grouped; write 1000.")]
    [InlineData("0x1F", "\"0x1F\" is not a decimal number; numbers are decimal.")]
    [InlineData("007", "\"007\": a number has no leading zeros; write 7.")]
    [InlineData("-00.5", "\"-00.5\": a number has no leading zeros; write -0.5.")]
    [InlineData("00", "\"00\": a number has no leading zeros; write 0.")]
    [InlineData(".5", "\".5\": a digit stands before the point; write 0.5.")]
    [InlineData("5.", "\"5.\": digits stand behind the point; write 5.")]
    [InlineData("five", "\"five\" is not a number.")]
    [InlineData("NaN", "\"NaN\" is not a number.")]
    [InlineData("٣", "\"٣\" is not a number.")]
    [InlineData("1.2.3", "\"1.2.3\" is not a number.")]
    [InlineData("1e999", "\"1e999\" is larger than a number can be.")]
    [InlineData("1e-999", "\"1e-999\" is smaller than a number can be; write 0.")]
    public void WhatIsNoNumberSaysWhatToWrite(string text, string sentence)
    {
        Assert.False(NumberText.TryParse(text, out _, out string? problem));
        Assert.Equal(sentence, problem);
    }

    [Theory]
    [InlineData("8.5 kN", 3)]
    [InlineData("10.kN", 2)]
    [InlineData("1e5", 3)]
    [InlineData("1e", 1)]
    [InlineData("2exp", 1)]
    [InlineData("1e-3)", 4)]
    [InlineData("40m", 2)]
    [InlineData("007", 0)]
    [InlineData("x", 0)]
    [InlineData("", 0)]
    public void Scan_FindsTheNumberAtTheStart(string text, int length) => Assert.Equal(length, NumberText.Scan(text));

    [Theory]
    [InlineData(8.5, "8.5")]
    [InlineData(0.1, "0.1")]
    [InlineData(1.0 / 3, "0.3333333333333333")]
    [InlineData(-0.0, "0")]
    [InlineData(8500, "8500")]
    [InlineData(0.1 + 0.2, "0.30000000000000004")]
    [InlineData(1e15, "1e15")]
    [InlineData(1.5e-7, "1.5e-7")]
    [InlineData(0.00001, "0.00001")]
    public void Exact_IsTheShortestText(double value, string text) => Assert.Equal(text, NumberText.Exact(value));

    [Fact]
    public void Exact_ReadsBackAsTheSameNumber() => Gen.Double.Where(double.IsFinite).Sample(value =>
    {
        string text = NumberText.Exact(value);
        Assert.True(NumberText.TryParse(text, out double read, out string? problem), $"{text}: {problem}");
        Assert.Equal(value, read);
    }, iter: 20_000);

    [Theory]
    [InlineData(6441.1, "6441")]
    [InlineData(12345.6, "12346")]
    [InlineData(8.5, "8.5")]
    [InlineData(425.0, "425")]
    [InlineData(2.0 / 3, "0.6667")]
    [InlineData(0.012345, "0.01234")]
    [InlineData(9999.96, "10000")]
    [InlineData(-0.0, "0")]
    [InlineData(1.23456e20, "1.235e20")]
    [InlineData(1.23456e-9, "1.235e-9")]
    public void TheDefaultShowsFourDigitsAndNeverCutsWholeOnes(double value, string text) => Assert.Equal(text, NumberText.Format(value, null));

    [Theory]
    [InlineData(425, "1 decimal", "425.0")]
    [InlineData(425.04, "3 digits", "425")]
    [InlineData(12345, "3 digits", "12300")]
    [InlineData(2, "3 digits", "2.00")]
    [InlineData(9.996, "3 digits", "10.0")]
    [InlineData(99.95, "1 decimal", "100.0")]
    [InlineData(0.04, "1 decimal", "0.0")]
    [InlineData(-0.001, "2 decimals", "0.00")]
    [InlineData(-0.3, "0 decimals", "0")]
    [InlineData(0.0001, "2 decimals up", "0.01")]
    [InlineData(-0.0001, "2 decimals up", "-0.01")]
    [InlineData(1.009, "3 decimals down", "1.009")]
    [InlineData(8.49, "1 decimal down", "8.4")]
    [InlineData(8.41, "1 decimal up", "8.5")]
    [InlineData(8.4, "1 decimal up", "8.4")]
    [InlineData(-8.49, "1 decimal down", "-8.4")]
    [InlineData(0, "3 digits", "0")]
    [InlineData(0, "2 decimals", "0.00")]
    [InlineData(1.5e-300, "3 decimals up", "0.001")]
    [InlineData(1.5e-300, "3 decimals", "0.000")]
    [InlineData(1.5e20, "1 decimal", "1.5e20")]
    [InlineData(1.5e20, "3 digits", "1.50e20")]
    public void DigitsAreShownAsTheFormatSays(double value, string digits, string text)
    {
        Assert.True(DigitsText.TryParse(digits, out Digits? read, out _));
        Assert.Equal(text, NumberText.Format(value, read));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void WhatIsNotFiniteIsNeverShown(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => NumberText.Format(value, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => NumberText.Exact(value));
    }
}
