using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Workbooks.Results;

/// <summary>Results as they are kept in the file after <c>gives</c>, and how a kept one is compared with the present one.</summary>
public static class KeptText
{
    /// <summary>What is written after <c>gives</c>; null for values that are not kept (records, series).</summary>
    public static string? Write(CellValue value, DisplayFormat? format, UnitSystem system, bool isCheck) => value switch
    {
        TextValue text => CellText.Quote(text.Value),
        RecordValue or SeriesValue or TextSeriesValue => null,
        _ => ValueText.Format(value, format, system, isCheck).Joined,
    };

    /// <summary>Compares after rounding the present value to the kept one's own digits and unit.</summary>
    public static KeptState Compare(CellValue value, string? kept, DisplayFormat? format, UnitSystem system, bool isCheck)
    {
        if (kept is null) return KeptState.NotKept;
        if (SiValue.Of(value) is not { } si) return Write(value, format, system, isCheck) == kept ? KeptState.Same : KeptState.Changed;
        int blank = kept.IndexOf(' ');
        string numeral = blank < 0 ? kept : kept[..blank], symbol = blank < 0 ? "" : kept[(blank + 1)..].Trim();
        if (!NumberText.TryParse(numeral, out double number, out _)) return KeptState.Unreadable;
        Unit? unit = UnitTable.Number;
        if (symbol.Length > 0 && !UnitText.TryParse(symbol, out unit, out _)) return KeptState.Unreadable;
        if (unit!.Dimension != DimensionOf(value)) return KeptState.Unreadable;
        string now = NumberText.Format(unit.FromSi(si), DigitsOf(numeral, format));
        return NumberText.TryParse(now, out double present, out _) && present == number ? KeptState.Same : KeptState.Changed;
    }

    private static Quantities.Dimension DimensionOf(CellValue value) => value is QuantityValue quantity ? quantity.Quantity.Dimension : Quantities.Dimension.None;

    /// <summary>The digits a numeral was written with; the direction of rounding is the cell's.</summary>
    private static Digits DigitsOf(string numeral, DisplayFormat? format)
    {
        Rounding rounding = format?.Digits?.Rounding ?? Rounding.HalfEven;
        string mantissa = numeral.Split('e', 'E')[0];
        int point = mantissa.IndexOf('.', StringComparison.Ordinal);
        if (mantissa.Length == numeral.Length) return new Digits(point < 0 ? 0 : Math.Min(mantissa.Length - point - 1, 15), false, rounding);
        int significant = mantissa.Count(char.IsAsciiDigit);
        return new Digits(Math.Clamp(significant, 1, 15), true, rounding);
    }
}
