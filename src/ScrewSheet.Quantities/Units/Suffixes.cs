using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace ScrewSheet.Quantities.Units;

/// <summary>
/// The C# names of units, as in <c>10.kN</c>: the symbol where it is an identifier; <c>_</c> for a dot, <c>_per_</c> for a stroke, plain exponents;
/// <c>inch percent deg degC per_s</c> for those that no rule names; densities have the short form <c>kg_m3</c> besides.
/// </summary>
public static class Suffixes
{
    private static readonly FrozenDictionary<string, Unit> Table = Identifiers().ToFrozenDictionary(pair => pair.Identifier, pair => pair.Unit, StringComparer.Ordinal);

    /// <summary>Every name with its unit.</summary>
    public static IReadOnlyDictionary<string, Unit> All => Table;

    /// <summary>The unit of that name, exactly spelled.</summary>
    public static bool TryFind(string identifier, [NotNullWhen(true)] out Unit? unit) => Table.TryGetValue(identifier, out unit);

    private static IEnumerable<(string Identifier, Unit Unit)> Identifiers() =>
        UnitTable.All.SelectMany(unit => NamesOf(unit.Symbol).Select(name => (name, unit)));

    private static string[] NamesOf(string symbol) => symbol switch
    {
        "in" => ["inch"],
        "%" => ["percent"],
        "°" => ["deg"],
        "°C" => ["degC"],
        "1/s" => ["per_s"],
        "kPa·m^0.5" => ["kPa_sqrt_m"],
        "MPa·m^0.5" => ["MPa_sqrt_m"],
        "kg/m³" or "g/cm³" or "lb/ft³" or "lb/in³" => [Spell(symbol, "_per_"), Spell(symbol, "_")],
        _ => [Spell(symbol, "_per_")],
    };

    private static string Spell(string symbol, string stroke) =>
        symbol.Replace("/", stroke, StringComparison.Ordinal).Replace('·', '_').Replace('²', '2').Replace('³', '3').Replace('⁴', '4');
}
