using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Lexing;

/// <summary>Cuts the text of an expression into tokens; units are read here, so that what follows a number is always a unit.</summary>
/// <remarks>Never throws for any text; the first thing it cannot read becomes the fault.</remarks>
public sealed partial class Lexer
{
    /// <summary>The longest expression, in UTF-8 bytes.</summary>
    public const int MaximumBytes = 8192;

    /// <summary>The most tokens of an expression, holes of texts included.</summary>
    public const int MaximumTokens = 2000;

    private static readonly string[] LongSigns = ["?.", "??", "<=", ">=", "==", "!=", "&&", "||", "=>", "<<", ">>", "++", "--", "..", "::", "->", "+=", "-=", "*=", "/="];
    private const string ShortSigns = "+-*/()[]{},.?:;<>!&|^~%=";
    private static readonly HashSet<string> WordsAfterNumbers = ["when", "switch", "with", "and", "or", "is", "as"];

    private readonly string text;
    private readonly ImmutableArray<Token>.Builder tokens = ImmutableArray.CreateBuilder<Token>();
    private readonly bool inHole;
    private readonly Counter count;
    private int at;
    private Fault? fault;

    private Lexer(string text, int start, bool inHole, Counter count)
    {
        this.text = text;
        this.inHole = inHole;
        this.count = count;
        at = start;
    }

    /// <summary>The tokens of an expression.</summary>
    public static LexResult Read(string text)
    {
        if (text.Length > MaximumBytes || Encoding.UTF8.GetByteCount(text) > MaximumBytes) return new LexResult([], LexingFaults.TooLong(MaximumBytes));
        Lexer lexer = new(text, 0, false, new Counter());
        lexer.Run();
        return new LexResult(lexer.tokens.ToImmutable(), lexer.fault);
    }

    private void Run()
    {
        int braces = 0, brackets = 0;
        while (fault is null && at < text.Length)
        {
            char c = text[at];
            if (c is ' ' or '\t') at++;
            else if (inHole && brackets == 0 && braces == 0 && c is '}' or ':') return;
            else
            {
                if (c is '{' or '}') braces += c == '{' ? 1 : -1;
                if (c is '(' or ')') brackets += c == '(' ? 1 : -1;
                Next(c);
            }
        }
    }

    private void Next(char c)
    {
        if (char.IsAsciiDigit(c)) ReadNumber();
        else if (c == '_' || char.IsLetter(c)) ReadWord();
        else if (c == '"') ReadText();
        else if (c == '$') ReadComposed();
        else if (c is '−') Add(TokenKind.Sign, 1, "-");
        else ReadSign(c);
    }

    private void Add(TokenKind kind, int length, string content) => Add(new Token(kind, at, length, content));

    private void Add(Token token)
    {
        if (++count.Value > MaximumTokens) fault ??= LexingFaults.TooManyTokens(MaximumTokens, token.Place);
        tokens.Add(token);
        at = token.End;
    }

    private void Refuse(Fault reason) => fault ??= reason;

    private Place Here(int length = 1) => new(0, at + 1, length);

    private void ReadWord()
    {
        int end = at;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] == '_' || IsMark(text[end]))) end++;
        Add(TokenKind.Word, end - at, text[at..end]);
    }

    private static bool IsMark(char c) => CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark;

    private void ReadSign(char c)
    {
        foreach (string sign in LongSigns)
        {
            if (string.CompareOrdinal(text, at, sign, 0, sign.Length) != 0) continue;
            Add(TokenKind.Sign, sign.Length, sign);
            return;
        }
        if (ShortSigns.Contains(c)) Add(TokenKind.Sign, 1, c.ToString());
        else Refuse(Unknown(c));
    }

    private Fault Unknown(char c) => c switch
    {
        '#' => LexingFaults.Preprocessor(Here()),
        '\'' or '@' => LexingFaults.TextForm(Here()),
        '×' or '·' or '⋅' => LexingFaults.TypedSign(c.ToString(), "Write * for a product.", Here()),
        '÷' => LexingFaults.TypedSign("÷", "Write / for a quotient.", Here()),
        '≤' => LexingFaults.TypedSign("≤", "Write <=.", Here()),
        '≥' => LexingFaults.TypedSign("≥", "Write >=.", Here()),
        '≠' => LexingFaults.TypedSign("≠", "Write !=.", Here()),
        '°' => LexingFaults.TypedSign("°", "Write a number, a blank and the unit, such as 15 °.", Here()),
        '²' or '³' or '⁴' => LexingFaults.TypedSign(c.ToString(), "Write Pow(x, 2) for a power.", Here()),
        '√' => LexingFaults.TypedSign("√", "Write Sqrt(x).", Here()),
        '±' => LexingFaults.TypedSign("±", "A tolerance belongs to a given, after =.", Here()),
        _ => LexingFaults.Character(Shown(c), Here()),
    };

    private static string Shown(char c) => char.IsSurrogate(c) || Results.VisibleText.IsHidden(new Rune(c)) ? $"The character U+{(int)c:X4}" : $"\"{c}\"";

    /// <summary>Counts tokens over a text and its holes.</summary>
    private sealed class Counter
    {
        public int Value { get; set; }
    }
}
