using System.Collections.Frozen;
namespace ScrewSheet.Quantities.Units;

/// <summary>Why a text is no unit, in one sentence with what to write instead where that can be told.</summary>
internal static class UnitProblems
{
    public const string Missing = "The unit is missing.";
    public const string Blanks = "A unit has no blanks inside; write N·m or N/mm².";
    public const string SecondStroke = "A unit has one /; write what stands below together, as in J/(kg·K).";
    public const string TooManyFactors = "A unit has eight factors at most.";
    public const string OutOfRange = "This unit is too large or too small for a number.";

    /// <summary>Words written for units that the table spells otherwise.</summary>
    private static readonly FrozenDictionary<string, string> Spellings = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
    {
        ["lbs"] = "lb", ["lbm"] = "lb", ["sec"] = "s", ["hr"] = "h", ["kph"] = "km/h", ["kmh"] = "km/h", ["Hz"] = "1/s", ["inch"] = "in", ["inches"] = "in",
        ["feet"] = "ft", ["degree"] = "°", ["degrees"] = "°", ["º"] = "°", ["˚"] = "°", ["℃"] = "°C", ["ºC"] = "°C", ["˚C"] = "°C", ["\u212A"] = "K", ["C"] = "°C",
        ["ftlb"] = "ft·lbf", ["ft·lb"] = "ft·lbf", ["ft-lb"] = "ft·lbf", ["ft-lbs"] = "ft·lbf", ["inlb"] = "in·lbf", ["in-lb"] = "in·lbf",
        ["kp"] = "kgf", ["newton"] = "N", ["newtons"] = "N", ["kilonewton"] = "kN", ["meter"] = "m", ["metre"] = "m",
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>For a symbol that is in no table.</summary>
    public static string Unknown(string piece, string symbol, bool below)
    {
        if (symbol.Length == 0) return piece.Length == 0 ? "A factor of the unit is missing." : $"\"{piece}\" has no unit symbol before its exponent.";
        string said = $"\"{symbol}\" is no unit; ";
        string? near = Near(symbol);
        if (below) return said + (near is null ? "put blanks round / to divide by a cell." : $"{near} To divide by a cell put blanks round /.");
        return near is null ? $"\"{symbol}\" is no unit." : said + near;
    }

    /// <summary>For °C and % as factors.</summary>
    public static string StandsAlone(string symbol) =>
        symbol == "°C" ? "°C is a point on a scale and stands alone; write K for a difference." : $"{symbol} stands alone; it is no factor of another unit.";

    /// <summary>For an exponent that is none.</summary>
    public static string Exponent(string piece) =>
        piece.Contains('-', StringComparison.Ordinal) || piece.Contains('⁻', StringComparison.Ordinal) || piece.Contains('−', StringComparison.Ordinal)
            ? $"\"{piece}\" has a negative exponent; write it below a stroke, as in 1/s."
            : $"\"{piece}\" has an exponent that cannot be read; write mm², m^0.5 or m^2.";

    /// <summary>A sentence with the spelling that was probably meant, or null.</summary>
    private static string? Near(string symbol)
    {
        if (Suffixes.TryFind(symbol, out Unit? suffixed)) return $"write {suffixed}.";
        if (UnitTable.All.FirstOrDefault(unit => Squash(unit.Symbol) == Squash(symbol)) is { } dotless) return $"write {dotless}.";
        if (Spellings.TryGetValue(symbol, out string? word)) return $"write {word}.";
        Unit? cased = UnitTable.All.FirstOrDefault(unit => string.Equals(unit.Symbol, symbol, StringComparison.OrdinalIgnoreCase));
        return cased is null ? null : $"did you mean {cased}?";
    }

    private static string Squash(string symbol) =>
        symbol.Replace("·", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal).Replace("²", "", StringComparison.Ordinal);
}
