using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Quantities;

/// <summary>Writes a dimension in coherent SI units.</summary>
internal static class DimensionText
{
    private static readonly string[] Symbols = ["m", "kg", "s", "A", "K", "mol", "cd"];

    /// <summary>Positive exponents joined by dots, then one stroke and the negative ones; <c>1/s</c> where nothing stands above.</summary>
    public static string Coherent(Dimension dimension) => Write(dimension.Twelfths.Zip(Symbols).OrderBy(pair => pair.Second == "m"));

    /// <summary>The same with newtons in place of kilograms where no second is left over: <c>N²</c> for <c>kg²·m²/s⁴</c>.</summary>
    public static string WithNewtons(Dimension dimension)
    {
        IReadOnlyList<int> twelfths = dimension.Twelfths;
        int newtons = twelfths[1];
        if (newtons == 0 || twelfths[2] != -2 * newtons) return Coherent(dimension);
        (int, string)[] parts = [(newtons, "N"), (twelfths[0] - newtons, "m"), .. twelfths.Zip(Symbols).Skip(3)];
        return Write(parts);
    }

    private static string Write(IEnumerable<(int Twelfths, string Symbol)> parts)
    {
        List<string> above = [], below = [];
        foreach ((int twelfths, string symbol) in parts)
        {
            if (twelfths > 0) above.Add(symbol + UnitExponent.Write(twelfths));
            if (twelfths < 0) below.Add(symbol + UnitExponent.Write(-twelfths));
        }
        if (below.Count == 0) return string.Join('·', above);
        string top = above.Count == 0 ? "1" : string.Join('·', above);
        return below.Count == 1 ? $"{top}/{below[0]}" : $"{top}/({string.Join('·', below)})";
    }
}
