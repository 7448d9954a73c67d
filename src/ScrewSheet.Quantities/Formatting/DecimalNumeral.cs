using System.Globalization;

namespace ScrewSheet.Quantities.Formatting;

/// <summary>
/// The decimal numeral of a number, to 15 significant digits: <c>0.d₁d₂d₃… · 10^(Exponent + 1)</c>. Rounding works on its digits, so that
/// 2.675 to two decimals is the tie it looks like; no <see cref="double"/> is rounded here.
/// </summary>
/// <param name="Negative">True below zero.</param>
/// <param name="Figures">The digits without zeros at either end; empty for zero.</param>
/// <param name="Exponent">The power of ten of the first digit.</param>
internal readonly record struct DecimalNumeral(bool Negative, string Figures, int Exponent)
{
    /// <summary>What a double is sure to carry.</summary>
    public const int Precision = 15;

    private static readonly DecimalNumeral Zero = new(false, "", 0);

    /// <summary>The numeral of a finite number.</summary>
    public static DecimalNumeral Of(double value)
    {
        if (!double.IsFinite(value)) throw new ArgumentOutOfRangeException(nameof(value), value, "Only finite numbers are shown.");
        if (value == 0) return Zero;
        string text = Math.Abs(value).ToString("E14", CultureInfo.InvariantCulture);
        int e = text.IndexOf('E', StringComparison.Ordinal);
        string figures = (text[..1] + text[2..e]).TrimEnd('0');
        return new(value < 0, figures, int.Parse(text[(e + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture));
    }

    /// <summary>Rounded to so many figures; the count may be zero or below where the place lies left of the first digit.</summary>
    public DecimalNumeral Keep(int count, Rounding rounding)
    {
        if (count >= Figures.Length) return this;
        string head = Figures[..Math.Max(count, 0)], tail = count < 0 ? "0" + Figures : Figures[count..];
        bool away = rounding switch
        {
            Rounding.Up => true,
            Rounding.Down => false,
            _ => AwayToEven(head, tail),
        };
        if (away) return Increment(head, count);
        string kept = head.TrimEnd('0');
        return kept.Length == 0 ? Zero : this with { Figures = kept };
    }

    /// <summary>Positional, with at least so many decimals.</summary>
    public string Plain(int decimals)
    {
        string whole = Exponent < 0 || Figures.Length == 0 ? "0" : Figures.PadRight(Exponent + 1, '0')[..(Exponent + 1)];
        string fraction = Exponent < 0 ? new string('0', -Exponent - 1) + Figures : Figures.Length > Exponent + 1 ? Figures[(Exponent + 1)..] : "";
        fraction = fraction.PadRight(decimals, '0');
        return (Negative ? "-" : "") + whole + (fraction.Length > 0 ? "." + fraction : "");
    }

    /// <summary>With an exponent, such as <c>1.50e-7</c>, and at least so many figures.</summary>
    public string Scientific(int figures)
    {
        string padded = Figures.PadRight(Math.Max(figures, 1), '0');
        string mantissa = padded.Length > 1 ? padded[..1] + "." + padded[1..] : padded;
        return (Negative ? "-" : "") + mantissa + "e" + Exponent.ToString(CultureInfo.InvariantCulture);
    }

    private static bool AwayToEven(string head, string tail)
    {
        if (tail[0] != '5') return tail[0] > '5';
        bool odd = head.Length > 0 && (head[^1] - '0') % 2 != 0;
        return tail.Length > 1 || odd;
    }

    /// <summary>One more in the last place kept.</summary>
    private DecimalNumeral Increment(string head, int count)
    {
        string trimmed = head.TrimEnd('9');
        if (trimmed.Length > 0) return this with { Figures = trimmed[..^1] + (char)(trimmed[^1] + 1) };
        return new(Negative, "1", count > 0 ? Exponent + 1 : Exponent - count + 1);
    }
}
