using System.Globalization;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Quantities.Tests;

public sealed class CultureTests
{
    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("fa-IR")]
    [InlineData("sv-SE")]
    [InlineData("en-US")]
    public void TextIsTheSameInEveryCulture(string culture)
    {
        string invariant = Everything();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(invariant, Everything());
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }
    }

    [Fact]
    public void AGeneralQuantityWritesItself()
    {
        Assert.Equal("-0.5 N", Quantity.FromSi(-0.5, Dimension.Of(1, 1, -2)).ToString());
        Assert.Equal("2", Quantity.FromSi(2, Dimension.None).ToString());
    }

    private static string Everything()
    {
        string[] numbers = ["8.5", "-18", "1.5e-7", "8,5", "1,234", "40m", "007"];
        string[] units = ["mm²", "mm2", "IN", "KIP", "Min", "m^0.5", "N^0.3333", "kg/m.s", "1/s", "Nm"];
        string[] digits = ["3 digits", "1 decimal up", "1 DIGIT"];
        return string.Join('\n', numbers.Select(text => NumberText.TryParse(text, out double value, out string? problem) ? NumberText.Exact(value) : problem)
            .Concat(units.Select(text => UnitText.TryParse(text, out Unit? unit, out string? problem) ? unit.Symbol : problem))
            .Concat(digits.Select(text => DigitsText.TryParse(text, out Digits? read, out string? problem) ? DigitsText.Write(read) : problem))
            .Append(NumberText.Format(-1234567.891, new Digits(2, false)))
            .Append(NumberText.Format(-1.5e-9, null))
            .Append(QuantityText.Write(255.15, UnitTable.Get("°C"), null))
            .Append(Quantity.FromSi(-0.5, Dimension.Of(1, 1, -2)).ToString())
            .Append(Dimension.Of(1, 1, -2).Power(1, 3)!.Value.ToString()));
    }
}
