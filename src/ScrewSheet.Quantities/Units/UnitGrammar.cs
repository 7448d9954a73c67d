using System.Diagnostics.CodeAnalysis;

namespace ScrewSheet.Quantities.Units;

/// <summary>
/// Takes a unit text apart: factors joined by <c>·</c> (typed also <c>. ⋅ *</c>), at most one stroke, everything after it below,
/// with or without brackets.
/// </summary>
internal static class UnitGrammar
{
    /// <summary>More factors than any unit needs.</summary>
    private const int MostFactors = 8;

    public static bool TryRead(string text, [NotNullWhen(true)] out IReadOnlyList<UnitFactor>? factors, [NotNullWhen(false)] out string? problem)
    {
        factors = null;
        string[] sides = text.Split('/');
        problem = sides.Length > 2 ? UnitProblems.SecondStroke : null;
        if (problem is not null) return false;
        List<UnitFactor> read = [];
        if (sides.Length == 1 || sides[0] != "1") problem = ReadSide(sides[0], below: false, read);
        if (problem is null && sides.Length == 2) problem = ReadSide(Unbracket(sides[1]), below: true, read);
        if (problem is null && read.Count > MostFactors) problem = UnitProblems.TooManyFactors;
        if (problem is not null) return false;
        factors = read;
        return true;
    }

    private static string? ReadSide(string side, bool below, List<UnitFactor> read)
    {
        foreach (string piece in Pieces(side))
        {
            int end = SymbolLength(piece);
            string symbol = UnitSpelling.Symbol(piece[..end]);
            if (!UnitTable.TryFindAtom(symbol, out Atom? atom)) return UnitProblems.Unknown(piece, piece[..end], below);
            if (atom.Alone) return UnitProblems.StandsAlone(atom.Symbol);
            if (ExponentOf(piece[end..]) is not { } twelfths) return UnitProblems.Exponent(piece);
            read.Add(new UnitFactor(atom, twelfths, below));
        }
        return null;
    }

    /// <summary>A point between digits belongs to an exponent; every other point is a dot between factors.</summary>
    private static IEnumerable<string> Pieces(string side)
    {
        int start = 0;
        for (int i = 0; i < side.Length; i++)
        {
            bool inExponent = side[i] == '.' && i > 0 && char.IsAsciiDigit(side[i - 1]) && i + 1 < side.Length && char.IsAsciiDigit(side[i + 1]);
            if (!UnitSpelling.IsDot(side[i]) || inExponent) continue;
            yield return side[start..i];
            start = i + 1;
        }
        yield return side[start..];
    }

    private static int SymbolLength(string piece)
    {
        int caret = piece.IndexOf('^', StringComparison.Ordinal);
        if (caret >= 0) return caret;
        int end = piece.Length;
        while (end > 0 && (char.IsAsciiDigit(piece[end - 1]) || UnitExponent.IsSuperscript(piece[end - 1]) || piece[end - 1] == '⁻')) end--;
        return end;
    }

    private static int? ExponentOf(string text) => text.Length == 0 ? Dimension.Parts : UnitExponent.Read(text.AsSpan(text[0] == '^' ? 1 : 0));

    private static string Unbracket(string side) => side.Length > 2 && side[0] == '(' && side[^1] == ')' ? side[1..^1] : side;
}
