namespace ScrewSheet.Exports.Steps;

/// <summary>A name as a symbol: Greek words become letters, what follows an underscore or a single letter an index.</summary>
/// <param name="Base">The symbol itself.</param>
/// <param name="Index">What stands below it, or empty.</param>
internal readonly record struct SymbolText(string Base, string Index)
{
    private static readonly (string Word, string Letter)[] Greek =
    [
        ("alpha", "α"), ("beta", "β"), ("gamma", "γ"), ("delta", "δ"), ("epsilon", "ε"), ("zeta", "ζ"), ("eta", "η"), ("theta", "θ"), ("iota", "ι"), ("kappa", "κ"),
        ("lambda", "λ"), ("mu", "μ"), ("nu", "ν"), ("xi", "ξ"), ("pi", "π"), ("rho", "ρ"), ("sigma", "σ"), ("tau", "τ"), ("upsilon", "υ"), ("phi", "φ"), ("chi", "χ"),
        ("psi", "ψ"), ("omega", "ω"),
    ];

    /// <summary>Of a name such as <c>sigma_max</c>, <c>T_1</c>, <c>w0</c> or <c>exposed</c>.</summary>
    public static SymbolText Of(string name)
    {
        int line = name.IndexOf('_', StringComparison.Ordinal);
        string word = line > 0 ? name[..line] : name, below = line > 0 ? name[(line + 1)..].Trim('_') : "";
        if (line < 0 && Split(name) is { } at)
        {
            word = name[..at];
            below = name[at..];
            below = char.ToLowerInvariant(below[0]) + below[1..];
        }
        return new SymbolText(Letter(word), below);
    }

    // a single letter or a Greek word, then digits or a capital
    private static int? Split(string name)
    {
        int word = Greek.Where(pair => name.StartsWith(pair.Word, StringComparison.Ordinal)).Select(pair => pair.Word.Length).DefaultIfEmpty(0).Max();
        if (word > 0 && word < name.Length && (char.IsAsciiDigit(name[word]) || char.IsAsciiLetterUpper(name[word]))) return word;
        bool indexed = name.Length > 1 && char.IsLetter(name[0]) && name.AsSpan(1).IndexOfAnyExceptInRange('0', '9') < 0;
        return indexed ? 1 : null;
    }

    private static string Letter(string word)
    {
        foreach ((string spelled, string letter) in Greek)
        {
            if (word == spelled) return letter;
            if (word.Length == spelled.Length && char.ToLowerInvariant(word[0]) == spelled[0] && word[1..] == spelled[1..]) return letter.ToUpperInvariant();
        }
        return word;
    }
}
