using System.Collections.Frozen;
using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Lexing;

namespace ScrewSheet.Engine.Gate;

/// <summary>
/// The door before the compiler: what passes is short, shallow, balanced and free of every sign and word that is not part of the language of cells.
/// </summary>
/// <remarks>The compiler's parser ends the process on deep nesting and opens files on #load, so nothing reaches it that has not passed here.</remarks>
internal sealed class TokenGate
{
    /// <summary>The deepest nesting over brackets, signs before values and ?:.</summary>
    public const int MaximumDepth = 64;

    private const int MaximumLambdas = 2;

    private static readonly FrozenDictionary<string, (string What, string Remedy)> RefusedSigns = new Dictionary<string, (string What, string Remedy)>()
    {
        ["?."] = ("?.", "Every value is there or in fault; write ."), ["??"] = ("??", "Every value is there or in fault."),
        ["["] = ("A bracket [", "Use Series(first, last) and the functions over it."), ["]"] = ("A bracket ]", "Use Series(first, last) and the functions over it."),
        [";"] = ("; as an end of statement", "A cell holds one expression."), ["++"] = ("++", "Write + 1."), ["--"] = ("--", "Write - 1."),
        [".."] = ("..", "Use Series(first, last)."), ["::"] = ("::", "Write the name alone."), ["->"] = ("->", "Write ."),
        ["+="] = ("Assignment", "A cell holds one expression."), ["-="] = ("Assignment", "A cell holds one expression."),
        ["*="] = ("Assignment", "A cell holds one expression."), ["/="] = ("Assignment", "A cell holds one expression."),
        ["^"] = ("^", "Write Pow(x, 2) for a power, Root(x, 3) for a root."), ["&"] = ("&", "Write && for and."), ["|"] = ("|", "Write || for or."),
        ["<<"] = ("<<", "Write * Pow(2, n)."), [">>"] = (">>", "Write / Pow(2, n)."), ["~"] = ("~", "Write ! for not."),
    }.ToFrozenDictionary();

    private readonly ImmutableArray<Token> tokens;
    private readonly Stack<(Token Bracket, Level Level)> open = new();
    private Level level;

    private TokenGate(ImmutableArray<Token> tokens) => this.tokens = tokens;

    /// <summary>Why the tokens may not pass, or null.</summary>
    public static Fault? Check(ImmutableArray<Token> tokens)
    {
        if (tokens.IsEmpty) return GateFaults.Empty();
        Fault? fault = new TokenGate(tokens).Run();
        foreach (Token token in tokens)
            foreach (ComposedPiece piece in token.Pieces)
                if (fault is null && !piece.Hole.IsEmpty) fault = Check(piece.Hole);
        return fault;
    }

    private Fault? Run()
    {
        for (int i = 0; i < tokens.Length; i++)
            if ((tokens[i].Kind == TokenKind.Sign ? Sign(i) : Operand(i)) is { } fault) return fault;
        return open.Count > 0 ? GateFaults.NotClosed(open.Peek().Bracket.Text, open.Peek().Bracket.Place) : null;
    }

    private Fault? Operand(int i)
    {
        level = level with { Signs = 0 };
        Token token = tokens[i];
        if (token.Kind == TokenKind.Word && Before(i)?.Is(".") != true && RefusedWords.Contains(token.Text))
            return GateFaults.Refused($"\"{token.Text}\"", RefusedWords.Remedy(token.Text), token.Place);
        if (token.Kind == TokenKind.UnitLiteral && Before(i)?.Is("/") == true && Before(i - 1) is { Kind: TokenKind.Number } top && !EndsOperand(i - 3))
            return GateFaults.HalfAndUnit(top.Value, token.Value, token.Unit!.Symbol, Half(top.Value / token.Value, token), new Place(0, top.Start + 1, token.End - top.Start));
        return EndsOperand(i - 1) && !RefusedWords.IsOwnOperator(token) ? Adjacent(tokens[i - 1], token) : null;
    }

    private static string Half(double value, Token token) => $"{value:R} {token.Unit!.Symbol}";

    private static Fault Adjacent(Token left, Token right) =>
        left.Is(")") && right.Kind == TokenKind.Word && Quantities.Units.UnitText.TryParse(right.Text, out _, out _)
            ? GateFaults.UnitAfterBracket(right.Text, right.Place)
            : GateFaults.MissingOperator(Shown(left), Shown(right), right.Place);

    private static string Shown(Token token) => token.Kind is TokenKind.Text or TokenKind.ComposedText ? "the text" : token.Kind == TokenKind.Number ? $"{token.Value:R}" : token.Text;

    private Fault? Sign(int i)
    {
        Token token = tokens[i];
        if (RefusedSigns.TryGetValue(token.Text, out var refused)) return GateFaults.Refused(refused.What, refused.Remedy, token.Place);
        return token.Text switch
        {
            "(" or "{" => Open(i),
            ")" or "}" => Close(token),
            "?" => Nested(token, level with { Questions = level.Questions + 1, Comparisons = 0 }),
            "," => Comma(i),
            "&&" or "||" or ":" => Separate(),
            "<" or ">" or "<=" or ">=" or "==" or "!=" => Compare(i),
            "=>" => Arrow(i),
            "%" => GateFaults.Remainder(token.Place),
            "=" => open.TryPeek(out var brace) && brace.Bracket.Is("{") ? null : GateFaults.Refused("Assignment", "Write == to compare.", token.Place),
            "-" or "+" or "!" => EndsOperand(i - 1) ? null : Nested(token, level with { Signs = level.Signs + 1 }),
            _ => null,
        };
    }

    private Fault? Open(int i)
    {
        Token token = tokens[i];
        if (token.Is("{") && Before(i)?.IsWord("switch") != true && Before(i)?.IsWord("with") != true)
            return GateFaults.Refused("A block { }", "A cell holds one expression.", token.Place);
        open.Push((token, level));
        return Nested(token, default);
    }

    private Fault? Close(Token token)
    {
        if (!open.TryPop(out var opened)) return GateFaults.NotOpened(token.Text, token.Place);
        if (opened.Bracket.Is("(") != token.Is(")")) return GateFaults.Crossed(opened.Bracket.Text, token.Text, token.Place);
        level = opened.Level with { Signs = 0 };
        return null;
    }

    private Fault? Nested(Token token, Level now)
    {
        level = now;
        int depth = open.Count + level.Signs + level.Questions + open.Sum(outer => outer.Level.Signs + outer.Level.Questions);
        return depth > MaximumDepth ? GateFaults.TooDeep(MaximumDepth, token.Place) : null;
    }

    private Fault? Comma(int i)
    {
        level = default;
        bool numbers = open.Count == 0 && Before(i)?.Kind == TokenKind.Number && i + 1 < tokens.Length && tokens[i + 1].Kind is TokenKind.Number or TokenKind.UnitLiteral;
        if (numbers) return GateFaults.DecimalComma($"{tokens[i - 1].Text}.{tokens[i + 1].Text}", tokens[i].Place);
        return open.Count == 0 ? GateFaults.Refused("A comma outside brackets", "A cell holds one value.", tokens[i].Place) : null;
    }

    private Fault? Separate()
    {
        level = level with { Comparisons = 0 };
        return null;
    }

    private Fault? Compare(int i)
    {
        bool pattern = Before(i) is { } before && (before.Is("{") || before.Is(","));
        if (!pattern) level = level with { Comparisons = level.Comparisons + 1 };
        return level.Comparisons > 1 ? GateFaults.ComparisonChain(tokens[i].Place) : null;
    }

    private Fault? Arrow(int i)
    {
        bool arm = open.TryPeek(out var brace) && brace.Bracket.Is("{");
        level = level with { Comparisons = 0, Lambdas = level.Lambdas + (arm ? 0 : 1) };
        return level.Lambdas + open.Sum(outer => outer.Level.Lambdas) > MaximumLambdas ? GateFaults.LambdaTooDeep(tokens[i].Place) : null;
    }

    private Token? Before(int i) => i > 0 ? tokens[i - 1] : null;

    private bool EndsOperand(int i)
    {
        if (i < 0) return false;
        Token token = tokens[i];
        return token.Kind switch
        {
            TokenKind.Sign => token.Text is ")" or "}",
            TokenKind.Word => !RefusedWords.IsOwnOperator(token),
            _ => true,
        };
    }

    /// <summary>What is open at one bracket: signs before a value, questions, comparisons since the last join, lambdas.</summary>
    private readonly record struct Level(int Signs, int Questions, int Comparisons, int Lambdas);
}
