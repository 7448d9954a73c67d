using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ScrewSheet.Engine.Gate;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Lexing;

namespace ScrewSheet.Engine.Binding;

/// <summary>
/// Gives every word of an expression its meaning and writes the C# the compiler binds. No word of the author's but member, argument
/// and lambda names gets through, and those only next to a sign that makes them so.
/// </summary>
internal sealed partial class CodeWriter
{
    /// <summary>More tokens than these are read again from the text where a fault asks for them: a workbook of long expressions would hold a hundred times its size.</summary>
    private const int ManyTokens = 200;

    private readonly INameScope scope;
    private readonly StringBuilder code = new();
    private readonly Dictionary<Reference, int> slots = [];
    private readonly ImmutableArray<Place>.Builder slotPlaces = ImmutableArray.CreateBuilder<Place>();
    private readonly ImmutableArray<Token>.Builder literals = ImmutableArray.CreateBuilder<Token>();
    private readonly ImmutableArray<ComposedPiece>.Builder pieces = ImmutableArray.CreateBuilder<ComposedPiece>();
    private readonly ImmutableArray<(int, int, int, int)>.Builder map = ImmutableArray.CreateBuilder<(int, int, int, int)>();
    private readonly List<OwnFunction> calls = [];
    private ImmutableArray<Token> tokens;
    private Brackets brackets = new();
    private Fault? fault;

    private CodeWriter(INameScope scope, ImmutableArray<Token> tokens)
    {
        this.scope = scope;
        this.tokens = tokens;
    }

    /// <summary>Resolves an expression: gate first, then every word.</summary>
    public static (ResolvedExpression? Expression, Fault? Fault) Resolve(string text, INameScope scope)
    {
        LexResult lexed = Lexer.Read(text);
        if ((lexed.Fault ?? TokenGate.Check(lexed.Tokens)) is { } refused) return (null, refused);
        CodeWriter writer = new(scope, lexed.Tokens);
        writer.Run();
        return writer.fault is null ? (writer.Finish(text, lexed.Tokens), null) : (null, writer.fault);
    }

    private ResolvedExpression Finish(string text, ImmutableArray<Token> all)
    {
        ResolvedExpression expression = Written(text, all);
        if (all.Length > ManyTokens) expression.LetTokensGo();
        return expression;
    }

    private ResolvedExpression Written(string text, ImmutableArray<Token> all) => new()
    {
        Text = text,
        Tokens = all,
        References = [.. slots.OrderBy(slot => slot.Value).Select(slot => slot.Key)],
        ReferencePlaces = slotPlaces.ToImmutable(),
        Code = code.ToString(),
        Literals = literals.ToImmutable(),
        Pieces = pieces.ToImmutable(),
        Map = map.ToImmutable(),
        Calls = [.. calls],
        Parameters = [.. scope.Parameters],
    };

    private void Run()
    {
        for (int i = 0; i < tokens.Length && fault is null; i++)
        {
            int taken = Write(i);
            i += taken - 1;
        }
    }

    /// <summary>Writes one token or more; the answer is how many.</summary>
    private int Write(int i)
    {
        Token token = tokens[i];
        switch (token.Kind)
        {
            case TokenKind.Number: return Put(token, token.Value.ToString("R", CultureInfo.InvariantCulture) + "d");
            case TokenKind.UnitLiteral: return PutLiteral(token);
            case TokenKind.Text: return Put(token, Microsoft.CodeAnalysis.CSharp.SymbolDisplay.FormatLiteral(token.Text, quote: true));
            case TokenKind.ComposedText: return PutComposed(token);
            case TokenKind.Word: return PutWord(i);
            default: return PutSign(i);
        }
    }

    private int Put(Token token, string text, int taken = 1) => Put(token.Start, token.Length, text, taken);

    private int Put(int start, int length, string text, int taken = 1)
    {
        code.Append(' ');
        map.Add((code.Length, text.Length, start, length));
        code.Append(text);
        return taken;
    }

    private int PutLiteral(Token token)
    {
        literals.Add(token);
        return Put(token, "l" + (literals.Count - 1).ToString(CultureInfo.InvariantCulture));
    }

    private int PutSign(int i)
    {
        Token token = tokens[i];
        brackets.Pass(tokens, i);
        if (token.Is("(") && SubjectOfSwitch(i)) return Put(token, "F.N(");
        // «a < b > (c» would read as a generic name; a plus sign after > never changes a number
        if (token.Is(">") && i + 1 < tokens.Length && tokens[i + 1].Is("(")) return Put(token, "> +");
        return Put(token, token.Text);
    }

    /// <summary>A bracket before <c>switch</c> may hold a quotient of two quantities; N makes it the number it is.</summary>
    private bool SubjectOfSwitch(int i)
    {
        if (i > 0 && tokens[i - 1].Kind == TokenKind.Word && !RefusedWords.IsOwnOperator(tokens[i - 1])) return false;
        int depth = 0;
        for (int j = i; j < tokens.Length; j++)
        {
            if (tokens[j].Is("(")) depth++;
            if (tokens[j].Is(")") && --depth == 0) return j + 1 < tokens.Length && tokens[j + 1].IsWord("switch");
        }
        return false;
    }

    private int PutComposed(Token token)
    {
        Put(token, "F.T(");
        ImmutableArray<Token> outer = tokens;
        Brackets outerBrackets = brackets;
        for (int p = 0; p < token.Pieces.Length && fault is null; p++)
        {
            pieces.Add(token.Pieces[p]);
            if (p > 0) code.Append(',');
            code.Append(token.Pieces[p].Hole.IsEmpty ? "F.W()" : "F.H(");
            if (token.Pieces[p].Hole.IsEmpty) continue;
            (tokens, brackets) = (token.Pieces[p].Hole, outerBrackets.Inner());
            Run();
            code.Append(')');
        }
        (tokens, brackets) = (outer, outerBrackets);
        code.Append(')');
        return 1;
    }

    private int Refuse(Fault reason)
    {
        fault ??= reason;
        return 1;
    }
}
