using System.Globalization;
using System.Text;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Makes names of cells and columns from words written by people.</summary>
public static class CellName
{
    /// <summary>Longer names are cut.</summary>
    private const int Longest = 40;

    private static readonly string[] Greek =
    [
        "alpha", "beta", "gamma", "delta", "epsilon", "zeta", "eta", "theta", "iota", "kappa", "lambda", "mu", "nu", "xi", "omicron", "pi", "rho", "sigma", "sigma", "tau", "upsilon", "phi", "chi", "psi", "omega",
    ];

    /// <summary>
    /// A name near to the words: <c>Peak force</c> becomes <c>peakForce</c>, <c>T1</c> becomes <c>t_1</c>, <c>Δl</c> becomes <c>deltaL</c>. Where nothing of the words can stand
    /// in a name, <paramref name="otherwise"/>; where the name is taken, a number behind it.
    /// </summary>
    /// <param name="words">Any text.</param>
    /// <param name="otherwise">A valid name.</param>
    /// <param name="taken">True for a name that may not be given again.</param>
    public static string From(string words, string otherwise, Func<string, bool> taken)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(taken);
        string name = Valid(Joined(words.Replace('µ', 'μ'))) ?? otherwise;
        if (!taken(name)) return name;
        for (int number = 2; ; number++)
        {
            string numbered = string.Create(CultureInfo.InvariantCulture, $"{name}_{number}");
            if (!taken(numbered)) return numbered;
        }
    }

    /// <summary>Why a word is no sheet's name, with what to write instead; null where it is one.</summary>
    public static string? SheetProblem(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Length == 0 ? "A sheet has a name; write one that begins with a capital." : NameRules.Capital(new LineText(name, 0), 0, name.Length, "sheet")?.Sentence;
    }

    private static string? Valid(string name)
    {
        if (name.Length == 0) return null;
        if (char.IsAsciiDigit(name[0]) || name[0] == '_') name = "no" + name;
        name = SmallFirst(name.Length > Longest ? name[..Longest] : name);
        int digit = name.AsSpan().IndexOfAnyInRange('0', '9');
        foreach (string candidate in (string[])[name, digit > 0 ? $"{name[..digit]}_{name[digit..]}" : name + "_", name + "_"])
            if (NameRules.Cell(new LineText(candidate, 0), 0, candidate.Length) is null) return candidate;
        return null;
    }

    /// <summary>The letters and digits of the words, each word but the first with a capital; Greek beside Latin is spelled out.</summary>
    private static string Joined(string words)
    {
        bool mixed = words.Any(NameRules.IsGreek) && words.Any(c => char.IsLetter(c) && !NameRules.IsGreek(c));
        StringBuilder name = new();
        bool begins = false;
        foreach (char c in words)
        {
            bool greek = NameRules.IsGreek(c);
            if (CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.NonSpacingMark) continue;
            if (c != '_' && !char.IsAsciiDigit(c) && (!NameRules.IsLetter(c) || (greek && mixed && SpelledOut(c) is null)))
            {
                begins = true;
                continue;
            }
            string piece = greek && mixed ? SpelledOut(c)! : c.ToString();
            name.Append(begins && name.Length > 0 ? char.ToUpperInvariant(piece[0]) + piece[1..] : piece);
            begins = greek && mixed;
        }
        return name.ToString();
    }

    private static string? SpelledOut(char c)
    {
        int at = char.ToLowerInvariant(c) - 'α';
        return at >= 0 && at < Greek.Length ? Greek[at] : null;
    }

    private static string SmallFirst(string name) => NameRules.IsGreek(name[0]) ? name : NameRules.SmallFirst(name);
}
