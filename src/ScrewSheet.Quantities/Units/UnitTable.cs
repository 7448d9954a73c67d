using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace ScrewSheet.Quantities.Units;

/// <summary>Every unit with a symbol of its own; the only place symbols come from, exact and case-sensitive.</summary>
public static class UnitTable
{
    private static readonly FrozenDictionary<string, Atom> AtomTable = UnitDefinitions.Atoms.ToFrozenDictionary(atom => atom.Symbol, StringComparer.Ordinal);

    /// <summary>The unit of a pure number: no symbol, factor one.</summary>
    public static Unit Number { get; } = new("", Dimension.None, null, 1);

    /// <summary>All of them, in the order of the documentation.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        .. UnitDefinitions.Atoms.Select(OfAtom),
        .. UnitDefinitions.Composed.Select(Compose),
        UnitDefinitions.KilometresPerHour,
    ];

    private static readonly FrozenDictionary<string, Unit> BySymbol = All.ToFrozenDictionary(unit => unit.Symbol, StringComparer.Ordinal);

    /// <summary>The unit with exactly this canonical symbol.</summary>
    public static bool TryFind(string symbol, [NotNullWhen(true)] out Unit? unit) => BySymbol.TryGetValue(symbol, out unit);

    /// <summary>The unit with exactly this canonical symbol, which must be there.</summary>
    /// <exception cref="KeyNotFoundException">No unit has that symbol.</exception>
    public static Unit Get(string symbol) => BySymbol[symbol];

    internal static bool TryFindAtom(string symbol, [NotNullWhen(true)] out Atom? atom) => AtomTable.TryGetValue(symbol, out atom);

    private static Unit OfAtom(Atom atom)
    {
        (double multiplier, double divisor) = atom.Factor.Split();
        return new Unit(atom.Symbol, atom.Dimension, atom.Kind, multiplier, divisor, atom.Offset);
    }

    private static Unit Compose(string text) =>
        UnitGrammar.TryRead(text, out IReadOnlyList<UnitFactor>? factors, out _) && UnitComposer.Compose(factors) is { } unit
            ? unit
            : throw new InvalidOperationException($"The unit table cannot build {text}.");
}
