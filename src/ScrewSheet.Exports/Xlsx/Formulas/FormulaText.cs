using System.Globalization;

namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>How tightly the parts of a formula hold together in the formula language of ECMA-376 (Part 1, 18.17.2.2), loosest first.</summary>
internal enum Hold
{
    /// <summary>A comparison.</summary>
    Comparison,

    /// <summary>Texts joined by <c>&amp;</c>.</summary>
    Joined,

    /// <summary>A sum, and a minus before something, which there binds tighter than a power and so never stands bare.</summary>
    Sum,

    /// <summary>A product or quotient.</summary>
    Product,

    /// <summary>A power.</summary>
    Power,

    /// <summary>A number, a reference, a call, or anything in brackets.</summary>
    Atom,
}

/// <summary>A piece of a formula. A number in it is in coherent SI.</summary>
/// <param name="Text">The text, without an equals sign.</param>
/// <param name="Hold">How tightly it holds together.</param>
/// <param name="Constant">Its value where it is a number written out.</param>
internal readonly record struct FormulaText(string Text, Hold Hold, double? Constant = null)
{
    private const int Short = 24;

    /// <summary>True where writing it twice is no burden to a reader.</summary>
    public bool IsShort => Constant is not null || Text.Length <= Short;

    /// <summary>An atom.</summary>
    public static FormulaText Atom(string text) => new(text, Hold.Atom);

    /// <summary>A number written out, all its digits.</summary>
    public static FormulaText Number(double value)
    {
        if (value == Math.PI) return new FormulaText("PI()", Hold.Atom, value);
        string text = value.ToString("R", CultureInfo.InvariantCulture);
        return new FormulaText(text, value < 0 || text[0] == '-' ? Hold.Sum : Hold.Atom, value);
    }

    /// <summary>A text written out.</summary>
    public static FormulaText Words(string words) => Atom($"\"{words.Replace("\"", "\"\"", StringComparison.Ordinal)}\"");

    /// <summary>A call of a function of the standard.</summary>
    public static FormulaText Call(string function, params IEnumerable<FormulaText> arguments) => Atom($"{function}({string.Join(',', arguments.Select(argument => argument.Text))})");

    /// <summary>Two parts with a sign between them; an equal sign on the right keeps its brackets, so that sums are taken in the order written.</summary>
    public static FormulaText Binary(FormulaText left, string sign, FormulaText right, Hold hold) => new(left.At(hold) + sign + right.Above(hold), hold);

    /// <summary>In brackets unless it holds at least as tightly as that.</summary>
    public string At(Hold least) => Hold >= least ? Text : $"({Text})";

    /// <summary>In brackets unless it holds more tightly than that.</summary>
    public string Above(Hold below) => Hold > below ? Text : $"({Text})";

    /// <inheritdoc/>
    public override string ToString() => Text;
}
