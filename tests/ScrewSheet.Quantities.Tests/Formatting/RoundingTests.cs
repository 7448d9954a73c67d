using System.Globalization;
using CsCheck;
using ScrewSheet.Quantities.Formatting;

namespace ScrewSheet.Quantities.Tests.Formatting;

/// <summary>Rounding against printed examples and against <see cref="decimal"/>.</summary>
public sealed class RoundingTests
{
    // Thompson and Taylor, NIST Special Publication 811 (2008), B.7.1 (read in a text that quotes it)
    [Theory]
    [InlineData(6.9749515, 3, "6.97")]
    [InlineData(6.9749515, 5, "6.9750")]
    [InlineData(6.9749515, 7, "6.974952")]
    [InlineData(6.9749505, 7, "6.974950")]
    public void TheExamplesOfTheGuideToTheSi(double value, int digits, string text) =>
        Assert.Equal(text, NumberText.Format(value, new Digits(digits, true)));

    // ISO 80000-1 Annex B rule A, from memory; 12.251 shows that rounding is done once
    [Theory]
    [InlineData(12.25, "12.2")]
    [InlineData(12.35, "12.4")]
    [InlineData(-12.25, "-12.2")]
    [InlineData(12.251, "12.3")]
    [InlineData(2.449, "2.4")]
    [InlineData(1.15, "1.2")]
    public void TiesGoToTheEvenDigit(double value, string text) => Assert.Equal(text, NumberText.Format(value, new Digits(1, false)));

    // ties of the numeral, where the stored double lies to one side: scaling or formatting the double answers otherwise
    [Theory]
    [InlineData(2.675, "2.68")]
    [InlineData(2.665, "2.66")]
    [InlineData(0.285, "0.28")]
    [InlineData(0.145, "0.14")]
    [InlineData(39.285, "39.28")]
    [InlineData(1.005, "1.00")]
    [InlineData(0.125, "0.12")]
    public void TiesAreThoseOfTheNumeralAndNotOfTheDouble(double value, string text) => Assert.Equal(text, NumberText.Format(value, new Digits(2, false)));

    [Fact]
    public void DecimalsAgreeWithDecimalArithmetic() =>
        Gen.Select(Gen.Long[-999_999_999_999, 999_999_999_999], Gen.Int[0, 9], Gen.Int[0, 6], Gen.Enum<Rounding>()).Sample((whole, scale, decimals, rounding) =>
        {
            decimal written = new decimal(whole) / (decimal)Math.Pow(10, scale);
            double value = double.Parse(written.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            decimal rounded = Round(written, decimals, rounding);
            string expected = rounded.ToString("F" + decimals, CultureInfo.InvariantCulture);
            if (rounded == 0) expected = expected.TrimStart('-');
            Assert.Equal(expected, NumberText.Format(value, new Digits(decimals, false, rounding)));
        }, iter: 20_000);

    [Fact]
    public void SignificantDigitsAgreeWithDecimalArithmetic() =>
        Gen.Select(Gen.Long[1, 999_999_999], Gen.Int[0, 8], Gen.Int[1, 9], Gen.Enum<Rounding>()).Sample((whole, scale, count, rounding) =>
        {
            decimal written = new decimal(whole) / (decimal)Math.Pow(10, scale);
            int power = whole.ToString(CultureInfo.InvariantCulture).Length - 1 - scale;
            decimal step = power - count + 1 >= 0 ? (decimal)Math.Pow(10, power - count + 1) : 1 / (decimal)Math.Pow(10, count - 1 - power);
            decimal expected = Round(written / step, 0, rounding) * step;
            string text = NumberText.Format(double.Parse(written.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), new Digits(count, true, rounding));
            Assert.Equal(expected, decimal.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture));
        }, iter: 20_000);

    [Fact]
    public void DownAndUpEncloseTheNumber() => Gen.Select(Gen.Double[-1e9, 1e9], Gen.Int[0, 5]).Sample((value, decimals) =>
    {
        double down = Shown(value, new Digits(decimals, false, Rounding.Down)), up = Shown(value, new Digits(decimals, false, Rounding.Up));
        Assert.True(Math.Abs(down) <= Math.Abs(value) * (1 + 1e-14) && Math.Abs(value) <= Math.Abs(up) * (1 + 1e-14), $"{down:R} {value:R} {up:R}");
    });

    private static double Shown(double value, Digits digits) => double.Parse(NumberText.Format(value, digits), CultureInfo.InvariantCulture);

    private static decimal Round(decimal value, int decimals, Rounding rounding) => rounding switch
    {
        Rounding.Down => decimal.Round(value, decimals, MidpointRounding.ToZero),
        Rounding.Up => value >= 0 ? decimal.Round(value, decimals, MidpointRounding.ToPositiveInfinity) : decimal.Round(value, decimals, MidpointRounding.ToNegativeInfinity),
        _ => decimal.Round(value, decimals, MidpointRounding.ToEven),
    };
}
