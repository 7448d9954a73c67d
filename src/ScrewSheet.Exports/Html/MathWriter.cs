using System.Collections.Immutable;
using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Html;

/// <summary>Notation as MathML, which browsers show by themselves.</summary>
internal sealed class MathWriter : NotationVisitor<string>
{
    private static readonly MathWriter Writer = new();

    /// <summary>Pieces side by side, each a formula of its own, so that a line breaks between them on paper and on a phone.</summary>
    public static string Of(ImmutableArray<Notation> pieces) => string.Join(' ', pieces.Select(piece => $"<math displaystyle=\"true\">{piece.Accept(Writer)}</math>"));

    /// <summary>One formula in a line of words.</summary>
    public static string Inline(Notation notation) => $"<math>{notation.Accept(Writer)}</math>";

    public override string Visit(FigureNotation node)
    {
        string digits = node.Digits.TrimStart('-'), number = Number(digits) + Unit(node.Unit);
        return node.Digits.Length == digits.Length ? number : $"<mrow><mo form=\"prefix\">−</mo>{number}</mrow>";
    }

    public override string Visit(BlankNotation node) => $"<mrow><mi class=\"blank\">{new string('_', node.Width)}</mi>{Unit(node.Unit)}</mrow>";

    public override string Visit(SymbolNotation node)
    {
        SymbolText symbol = SymbolText.Of(Workbooks.Results.VisibleText.Of(node.Name));
        string name = $"<mi>{HtmlText.Of(symbol.Base)}</mi>";
        if (symbol.Index.Length == 0) return name;
        string index = symbol.Index.All(char.IsAsciiDigit) ? $"<mn>{symbol.Index}</mn>" : Upright(symbol.Index);
        return $"<msub>{name}{index}</msub>";
    }

    public override string Visit(WordNotation node) => node.Text.Length == 0 ? "" : Upright(node.Text);
    public override string Visit(SignNotation node) => Sign(node.Sign);
    public override string Visit(SignedNotation node) => $"<mrow>{(char.IsLetter(node.Sign[0]) ? $"<mtext>{node.Sign}&#xA0;</mtext>" : "<mo form=\"prefix\">−</mo>")}{node.Operand.Accept(this)}</mrow>";
    public override string Visit(OperationNotation node) => $"<mrow>{node.Left.Accept(this)}{Sign(node.Sign)}{node.Right.Accept(this)}</mrow>";
    public override string Visit(FractionNotation node) => $"<mfrac>{One(node.Top)}{One(node.Bottom)}</mfrac>";
    public override string Visit(PowerNotation node) => $"<msup>{One(node.Base)}{One(node.Exponent)}</msup>";
    public override string Visit(RootNotation node) => node.Degree is null ? $"<msqrt>{node.Inner.Accept(this)}</msqrt>" : $"<mroot>{One(node.Inner)}{One(node.Degree)}</mroot>";
    public override string Visit(BracketNotation node) => node.Open.Length == 0 ? node.Inner.Accept(this) : Between(node.Open, node.Inner.Accept(this), node.Close);

    public override string Visit(CallNotation node) =>
        $"<mrow>{node.Function.Accept(this)}{Between("(", string.Join(Sign(","), node.Arguments.Select(argument => argument.Accept(this))), ")")}</mrow>";

    public override string Visit(MemberNotation node) => $"<mrow>{node.Target.Accept(this)}{Upright("." + node.Member)}</mrow>";

    public override string Visit(CasesNotation node)
    {
        IEnumerable<string> rows = node.Cases.Select(each => $"<mtr><mtd>{each.Value.Accept(this)}</mtd><mtd>{(each.When is null ? "<mtext>otherwise</mtext>" : $"<mtext>if&#xA0;</mtext>{each.When.Accept(this)}")}</mtd></mtr>");
        return $"<mrow><mo form=\"prefix\" stretchy=\"true\">{{</mo><mtable class=\"cases\">{string.Concat(rows)}</mtable></mrow>";
    }

    public override string Visit(RunNotation node)
    {
        List<string> parts = [];
        Notation? before = null;
        foreach (Notation part in node.Parts)
        {
            bool tight = part is SignNotation { Sign: "(" or ")" or "," or ":" or "=" } || before is SignNotation { Sign: not "," } || part is WordNotation { Text: ['.', ..] };
            if (before is not null && !tight && (part is WordNotation || before is WordNotation)) parts.Add("<mspace width=\"0.35em\"></mspace>");
            parts.Add(part.Accept(this));
            before = part;
        }
        return $"<mrow>{string.Concat(parts)}</mrow>";
    }

    // a fraction, a root and a power take exactly so many elements
    private string One(Notation notation) => $"<mrow>{notation.Accept(this)}</mrow>";

    private static string Number(string digits)
    {
        int power = digits.IndexOf('e', StringComparison.Ordinal);
        if (power < 0) return $"<mn>{digits}</mn>";
        return $"<mrow><mn>{digits[..power]}</mn><mo>·</mo><msup><mn>10</mn><mn>{LinearText.Numeral(digits[(power + 1)..])}</mn></msup></mrow>";
    }

    // no mtext, which counts as a blank: a sign beside it would lose the room round it
    private static string Upright(string text) => $"<mi mathvariant=\"normal\">{HtmlText.Of(text)}</mi>";

    private static string Unit(string unit) => unit.Length == 0 ? "" : $"<mspace width=\"0.17em\"></mspace>{Upright(unit)}";

    private static string Sign(string sign) => sign switch
    {
        "(" => Bracket(sign, "prefix"),
        ")" => Bracket(sign, "postfix"),
        "," => "<mo separator=\"true\" rspace=\"0.3em\">,</mo>",
        "·" => "<mo>·</mo>",
        ":" => "<mo form=\"postfix\" lspace=\"0\" rspace=\"0.4em\">:</mo>",
        _ when char.IsLetter(sign[0]) => $"<mspace width=\"0.35em\"></mspace><mtext>{sign}</mtext><mspace width=\"0.35em\"></mspace>",
        _ => $"<mo form=\"infix\">{HtmlText.Of(sign)}</mo>",
    };

    // brackets grow round what is taller than a line
    private static string Between(string open, string inner, string close)
    {
        bool tall = inner.Contains("<mfrac", StringComparison.Ordinal) || inner.Contains("<msqrt", StringComparison.Ordinal) || inner.Contains("<mroot", StringComparison.Ordinal) || inner.Contains("<mtable", StringComparison.Ordinal);
        return $"<mrow>{Bracket(open, "prefix", tall)}{inner}{Bracket(close, "postfix", tall)}</mrow>";
    }

    private static string Bracket(string sign, string form, bool grows = false) => $"<mo form=\"{form}\" stretchy=\"{(grows ? "true" : "false")}\">{sign}</mo>";
}
