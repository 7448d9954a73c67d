using System.Globalization;

namespace ScrewSheet.Quantities;

/// <summary>Writes a dimension in coherent SI units.</summary>
internal static class DimensionText
{
    private static readonly string[] Symbols = ["m", "kg", "s", "A", "K", "mol", "cd"];

    /// <summary>Positive exponents joined by dots, then one stroke and the negative ones; <c>1/s</c> where nothing stands above.</summary>
    public static string Coherent(Dimension dimension)
    {
        List<string> above = [], below = [];
        foreach ((int twelfths, string symbol) in dimension.Twelfths.Zip(Symbols).OrderBy(pair => pair.Second == "m"))
        {
            if (twelfths > 0) above.Add(symbol + Exponent(twelfths));
            if (twelfths < 0) below.Add(symbol + Exponent(-twelfths));
        }
        if (below.Count == 0) return string.Join('·', above);
        string top = above.Count == 0 ? "1" : string.Join('·', above);
        return below.Count == 1 ? $"{top}/{below[0]}" : $"{top}/({string.Join('·', below)})";
    }

    private static string Exponent(int twelfths)
    {
        if (twelfths == Dimension.Parts) return "";
        if (twelfths % Dimension.Parts != 0) return "^" + ((double)twelfths / Dimension.Parts).ToString("0.####", CultureInfo.InvariantCulture);
        int whole = twelfths / Dimension.Parts;
        return whole switch { 2 => "²", 3 => "³", 4 => "⁴", _ => "^" + whole.ToString(CultureInfo.InvariantCulture) };
    }
}
