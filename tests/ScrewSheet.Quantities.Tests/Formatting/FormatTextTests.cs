using CsCheck;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Quantities.Tests.Formatting;

public sealed class FormatTextTests
{
    private static readonly Gen<Digits> AnyDigits =
        from significant in Gen.Bool
        from count in Gen.Int[significant ? 1 : 0, 15]
        from rounding in Gen.Enum<Rounding>()
        select new Digits(count, significant, rounding);

    [Theory]
    [InlineData("3 digits", 3, true, Rounding.HalfEven)]
    [InlineData("1 digit", 1, true, Rounding.HalfEven)]
    [InlineData("1 digits", 1, true, Rounding.HalfEven)]
    [InlineData("1 decimal", 1, false, Rounding.HalfEven)]
    [InlineData("2 decimals down", 2, false, Rounding.Down)]
    [InlineData("0 decimals up", 0, false, Rounding.Up)]
    public void Digits_Read(string text, int count, bool significant, Rounding rounding)
    {
        Assert.True(DigitsText.TryParse(text, out Digits? digits, out string? problem), problem);
        Assert.Equal(new Digits(count, significant, rounding), digits);
    }

    [Theory]
    [InlineData("3", "\"3\" does not say how many digits; write 3 digits, 1 decimal or 2 decimals, then down or up if wanted.")]
    [InlineData("3 places", "\"3 places\" does not say how many digits; write 3 digits, 1 decimal or 2 decimals, then down or up if wanted.")]
    [InlineData("3 digits sideways", "\"3 digits sideways\" does not say how many digits; write 3 digits, 1 decimal or 2 decimals, then down or up if wanted.")]
    [InlineData("0 digits", "A number shows 1 to 15 digits, not 0.")]
    [InlineData("16 digits", "A number shows 1 to 15 digits, not 16.")]
    [InlineData("16 decimals", "A number shows 0 to 15 decimals, not 16.")]
    public void Digits_ThatDoNotReadSayWhatToWrite(string text, string sentence)
    {
        Assert.False(DigitsText.TryParse(text, out _, out string? problem));
        Assert.Equal(sentence, problem);
    }

    [Fact]
    public void Digits_ReadBackAsWritten() => AnyDigits.Sample(digits =>
    {
        Assert.True(DigitsText.TryParse(DigitsText.Write(digits), out Digits? read, out string? problem), problem);
        Assert.Equal(digits, read);
    });

    [Theory]
    [InlineData("kN, 1 decimal", "kN", "1 decimal")]
    [InlineData("kN,1 decimal", "kN", "1 decimal")]
    [InlineData("%", "%", null)]
    [InlineData("mm2", "mm²", null)]
    [InlineData("1/s", "1/s", null)]
    [InlineData("2 decimals", null, "2 decimals")]
    [InlineData("N.m , 3 digits up", "N·m", "3 digits up")]
    public void AFormatReads(string text, string? unit, string? digits)
    {
        Assert.True(DisplayFormatText.TryParse(text, out DisplayFormat? format, out string? problem), problem);
        Assert.Equal(unit, format.Unit?.Symbol);
        Assert.Equal(digits, format.Digits is null ? null : DigitsText.Write(format.Digits));
    }

    [Theory]
    [InlineData("", "The unit is missing.")]
    [InlineData("Nm, 1 decimal", "\"Nm\" is no unit; write N·m.")]
    [InlineData("kN, 1", "\"1\" does not say how many digits; write 3 digits, 1 decimal or 2 decimals, then down or up if wanted.")]
    [InlineData("kN, 1 decimal, up", "A format is a unit, then a comma and its digits, as in kN, 1 decimal.")]
    public void AFormatThatDoesNotReadSaysWhatToWrite(string text, string sentence)
    {
        Assert.False(DisplayFormatText.TryParse(text, out _, out string? problem));
        Assert.Equal(sentence, problem);
    }

    [Fact]
    public void AFormatReadsBackAsWritten() =>
        Gen.Select(Gen.OneOf<Unit?>([null, .. UnitTable.All]), Gen.OneOf(AnyDigits, Gen.Const<Digits>(() => null!))).Where((unit, digits) => unit is not null || digits is not null).Sample((unit, digits) =>
        {
            DisplayFormat format = new(unit, digits);
            Assert.True(DisplayFormatText.TryParse(DisplayFormatText.Write(format), out DisplayFormat? read, out string? problem), problem);
            Assert.Equal(format, read);
        });

    [Theory]
    [InlineData(8500, "kN", null, "8.5 kN")]
    [InlineData(255.15, "°C", null, "-18 °C")]
    [InlineData(0.05, "%", null, "5 %")]
    [InlineData(425, "N·m", "1 decimal", "425.0 N·m")]
    [InlineData(-0.0, "kN", null, "0 kN")]
    [InlineData(1e308, "mm", null, "1e308 m")]
    [InlineData(Math.PI / 3, "°", null, "60 °")]
    public void AValueIsShownInItsUnit(double si, string symbol, string? digits, string text)
    {
        Digits? read = null;
        Assert.True(digits is null || DigitsText.TryParse(digits, out read, out _));
        Assert.Equal(text, QuantityText.Write(si, UnitTable.Get(symbol), read));
    }

    [Fact]
    public void APureNumberHasNoSymbol() => Assert.Equal(("0.5", ""), QuantityText.Format(0.5, UnitTable.Number, null));

    [Fact]
    public void OneMoreDigitIsFiveAfterTheDefault()
    {
        Assert.Equal(new Digits(5, true), DigitsText.OneMore(null));
        Assert.Equal(new Digits(2, false, Rounding.Up), DigitsText.OneMore(new Digits(1, false, Rounding.Up)));
        Assert.Equal(15, DigitsText.OneMore(new Digits(15, true)).Count);
    }

    [Fact]
    public void AnyFiniteValueIsShownInAnyUnitWithoutANaN() => Gen.Select(Gen.Double.Where(double.IsFinite), Gen.OneOf<Unit>([.. UnitTable.All]), AnyDigits).Sample((si, unit, digits) =>
    {
        (string number, _) = QuantityText.Format(si, unit, digits);
        Assert.True(NumberText.TryParse(number, out double value, out string? problem), $"{number}: {problem}");
        Assert.False(value == 0 && number.StartsWith('-'), number);
    });
}
