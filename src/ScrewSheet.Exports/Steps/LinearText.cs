using System.Globalization;
using System.Text;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Steps;

/// <summary>Notation as one line of text: fractions with a stroke, roots with their sign, brackets where a line needs them.</summary>
internal sealed class LinearText : NotationVisitor<string>
{
    private const string Digits = "₀₁₂₃₄₅₆₇₈₉", Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private static readonly LinearText Writer = new();

    /// <summary>The line.</summary>
    public static string Of(Notation notation) => notation.Accept(Writer);

    /// <summary>How wide it is, about, in characters.</summary>
    public static int Width(Notation notation) => Of(notation).EnumerateRunes().Count(rune => Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark));

    /// <summary>A symbol with its index: figures as small figures, words after a low line.</summary>
    public static string Symbol(string name)
    {
        SymbolText symbol = SymbolText.Of(VisibleText.Of(name));
        if (symbol.Index.Length == 0) return symbol.Base;
        return symbol.Index.All(char.IsAsciiDigit) ? symbol.Base + string.Concat(symbol.Index.Select(digit => Digits[digit - '0'])) : $"{symbol.Base}_{symbol.Index}";
    }

    /// <summary>A numeral with a true minus.</summary>
    public static string Numeral(string digits) => digits.Replace('-', '−');

    public override string Visit(FigureNotation node) => node.Unit.Length == 0 ? Numeral(node.Digits) : $"{Numeral(node.Digits)}\u00A0{node.Unit}";
    public override string Visit(BlankNotation node) => node.Unit.Length == 0 ? new string('_', node.Width) : $"{new string('_', node.Width)}\u00A0{node.Unit}";
    public override string Visit(SymbolNotation node) => Symbol(node.Name);
    public override string Visit(WordNotation node) => VisibleText.Of(node.Text);
    public override string Visit(SignNotation node) => node.Sign;
    public override string Visit(SignedNotation node) => char.IsLetter(node.Sign[0]) ? $"{node.Sign} {node.Operand.Accept(this)}" : node.Sign + node.Operand.Accept(this);
    public override string Visit(OperationNotation node) => $"{node.Left.Accept(this)} {node.Sign} {node.Right.Accept(this)}";

    public override string Visit(FractionNotation node)
    {
        string top = Bracketed(node.Top, node.Top.Rank < Ranks.Product), bottom = Bracketed(node.Bottom, node.Bottom.Rank <= Ranks.Product && node.Bottom is not (FigureNotation or BlankNotation));
        return $"{top} / {bottom}";
    }

    public override string Visit(PowerNotation node)
    {
        string inner = Bracketed(node.Base, node.Base is FigureNotation { Unit.Length: > 0 });
        if (node.Exponent is FigureNotation { Unit.Length: 0 } figure && figure.Digits.All(char.IsAsciiDigit)) return inner + string.Concat(figure.Digits.Select(digit => Raised[digit - '0']));
        return $"{inner}^{Bracketed(node.Exponent, node.Exponent.Rank < Ranks.Atom)}";
    }

    public override string Visit(RootNotation node)
    {
        string inner = node.Inner.Accept(this);
        string sign = node.Degree is null ? "√" : node.Degree is FigureNotation { Digits: "3" } ? "∛" : $"root {node.Degree.Accept(this)} of ";
        return node.Inner is SymbolNotation or BracketNotation or FigureNotation { Unit.Length: 0 } ? sign + inner : $"{sign}({inner})";
    }

    public override string Visit(BracketNotation node) => node.Open + node.Inner.Accept(this) + node.Close;
    public override string Visit(CallNotation node) => $"{node.Function.Accept(this)}({string.Join(", ", node.Arguments.Select(argument => argument.Accept(this)))})";
    public override string Visit(MemberNotation node) => $"{node.Target.Accept(this)}.{node.Member}";

    public override string Visit(CasesNotation node) =>
        "{ " + string.Join("; ", node.Cases.Select(each => each.When is null ? $"{each.Value.Accept(this)} otherwise" : $"{each.Value.Accept(this)} if {each.When.Accept(this)}")) + " }";

    public override string Visit(RunNotation node)
    {
        StringBuilder text = new();
        Notation? before = null;
        foreach (Notation part in node.Parts)
        {
            string next = part.Accept(this);
            if (next.Length == 0) continue;
            if (before is not null && text.Length > 0 && !IsTight(text[^1], next[0])) text.Append(' ');
            text.Append(next);
            before = part;
        }
        return text.ToString();
    }

    private string Bracketed(Notation notation, bool needed) => needed ? $"({notation.Accept(this)})" : notation.Accept(this);

    private static bool IsTight(char before, char after) => before is '(' || after is ')' or ',' or '.' or ':';
}
