using System.Diagnostics.CodeAnalysis;

namespace ScrewSheet.Quantities.Units;

/// <summary>
/// Unit texts: a symbol, an optional exponent (<c>²</c>, <c>2</c>, <c>^0.5</c>), further factors after <c>·</c> or <c>.</c>, and at most one <c>/</c>
/// with everything after it below: <c>kg/m·s</c> and <c>kg/(m·s)</c> are the same and the second is its canonical spelling. No blanks.
/// </summary>
public static class UnitText
{
    /// <summary>Longer texts are refused unread.</summary>
    public const int MaxLength = 64;

    /// <summary>Reads a whole unit text.</summary>
    /// <param name="text">The text, without blanks around it.</param>
    /// <param name="unit">The unit with its canonical symbol; a symbol of the table keeps the table's kind.</param>
    /// <param name="problem">Otherwise a sentence with what to write instead.</param>
    public static bool TryParse(string text, [NotNullWhen(true)] out Unit? unit, [NotNullWhen(false)] out string? problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        problem = null;
        if (UnitTable.TryFind(text, out unit)) return true;
        if (text.Length == 0) problem = UnitProblems.Missing;
        else if (text.Length > MaxLength) problem = $"A unit is {MaxLength} characters long at most.";
        else if (text.Any(char.IsWhiteSpace)) problem = UnitProblems.Blanks;
        else if (UnitSpelling.Symbol(text) is var spelled && UnitTable.TryFind(spelled, out unit)) return true;
        else if (UnitGrammar.TryRead(text, out IReadOnlyList<UnitFactor>? factors, out problem)) unit = Make(factors, out problem);
        return unit is not null;
    }

    /// <summary>
    /// How many characters from the start could be a unit text: 0 where none could, or where the first word is one of the language or the file format
    /// (<c>when</c>, <c>to</c>, <c>within</c>, …). A dot or stroke is taken only with a letter right behind it, so <c>N / mm</c> ends after <c>N</c>.
    /// What is found may still be no unit: <see cref="TryParse"/> says why.
    /// </summary>
    public static int Scan(ReadOnlySpan<char> text) => UnitScanner.Length(text);

    private static Unit? Make(IReadOnlyList<UnitFactor> factors, out string? problem)
    {
        problem = null;
        if (UnitTable.TryFind(UnitComposer.Write(factors), out Unit? listed)) return listed;
        Unit? composed = UnitComposer.Compose(factors);
        if (composed is null) problem = UnitProblems.OutOfRange;
        return composed;
    }
}
