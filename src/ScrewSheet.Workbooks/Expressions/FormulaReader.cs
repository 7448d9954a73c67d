using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>Reads the small language of declared formulas: precedence climbing over numbers, names, calls, comparisons and <c>?:</c>.</summary>
internal sealed class FormulaReader(string text, IReadOnlyDictionary<string, int> names, FunctionLibrary library)
{
    private static readonly (string Sign, int Rank, BinaryOperation Operation)[] Signs =
    [
        ("||", 1, BinaryOperation.Or), ("&&", 2, BinaryOperation.And),
        ("==", 3, BinaryOperation.Equal), ("!=", 3, BinaryOperation.NotEqual),
        ("<=", 4, BinaryOperation.LessOrEqual), (">=", 4, BinaryOperation.GreaterOrEqual), ("<", 4, BinaryOperation.Less), (">", 4, BinaryOperation.Greater),
        ("+", 5, BinaryOperation.Add), ("-", 5, BinaryOperation.Subtract), ("*", 6, BinaryOperation.Multiply), ("/", 6, BinaryOperation.Divide),
    ];

    private int at;

    public BoundExpression Read()
    {
        BoundExpression value = Conditional();
        SkipBlanks();
        return at == text.Length ? value : throw Wrong("an operator or the end");
    }

    private BoundExpression Conditional()
    {
        int start = at;
        BoundExpression test = Binary(1);
        if (!Take("?")) return test;
        BoundExpression yes = Conditional();
        Need(":");
        return new BoundConditional(test, yes, Conditional(), yes.Type, Here(start));
    }

    private BoundExpression Binary(int rank)
    {
        int start = at;
        BoundExpression left = Unary();
        while (Sign(rank) is { } sign)
        {
            at += sign.Sign.Length;
            CellType type = sign.Rank < 5 ? CellType.Truth : CellType.Number;
            left = new BoundBinary(sign.Operation, left, Binary(sign.Rank + 1), type, Here(start));
        }
        return left;
    }

    private (string Sign, int Rank, BinaryOperation Operation)? Sign(int rank)
    {
        SkipBlanks();
        foreach (var sign in Signs)
            if (sign.Rank >= rank && string.CompareOrdinal(text, at, sign.Sign, 0, sign.Sign.Length) == 0) return sign;
        return null;
    }

    private BoundExpression Unary()
    {
        int start = at;
        if (Take("-")) return new BoundUnary(UnaryOperation.Negate, Unary(), CellType.Number, Here(start));
        if (Take("!")) return new BoundUnary(UnaryOperation.Not, Unary(), CellType.Truth, Here(start));
        return Primary();
    }

    private BoundExpression Primary()
    {
        SkipBlanks();
        int start = at;
        if (Take("("))
        {
            BoundExpression inner = Conditional();
            Need(")");
            return inner;
        }
        if (at < text.Length && char.IsAsciiDigit(text[at])) return Number();
        while (at < text.Length && (char.IsLetterOrDigit(text[at]) || text[at] == '_')) at++;
        return at > start ? Name(text[start..at], start) : throw Wrong("a number, a name or a bracket");
    }

    private BoundNumber Number()
    {
        int start = at;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.')) at++;
        if (at < text.Length && text[at] is 'e' or 'E')
        {
            at++;
            if (at < text.Length && text[at] is '+' or '-') at++;
            while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        }
        return new BoundNumber(double.Parse(text.AsSpan(start, at - start), CultureInfo.InvariantCulture), Here(start));
    }

    private BoundExpression Name(string name, int start)
    {
        if (Take("(")) return Call(name, Arguments(), start);
        if (names.TryGetValue(name, out int index)) return new BoundParameter(name, index, CellType.Number, Here(start));
        return name switch
        {
            "pi" => new BoundNumber(Math.PI, Here(start)),
            "gn" => new BoundNumber(9.80665, Here(start)),
            "true" => new BoundTruth(true, Here(start)),
            "false" => new BoundTruth(false, Here(start)),
            _ => throw new FormatException($"The formula \"{text}\" uses {name}, which is neither a parameter nor an intermediate."),
        };
    }

    private ImmutableArray<BoundExpression> Arguments()
    {
        var arguments = ImmutableArray.CreateBuilder<BoundExpression>();
        if (Take(")")) return [];
        do arguments.Add(Conditional());
        while (Take(","));
        Need(")");
        return arguments.ToImmutable();
    }

    private BoundExpression Call(string name, ImmutableArray<BoundExpression> arguments, int start)
    {
        Place place = Here(start);
        switch (name, arguments.Length)
        {
            case ("Sqrt", 1): return new BoundPower(arguments[0], new BoundNumber(0.5, place), PowerForm.Sqrt, CellType.Number, place);
            case ("Cbrt", 1): return new BoundPower(arguments[0], new BoundNumber(1.0 / 3, place), PowerForm.Cbrt, CellType.Number, place);
            case ("Pow", 2): return new BoundPower(arguments[0], arguments[1], PowerForm.Pow, CellType.Number, place);
        }
        if (Enum.TryParse(name, out MathFunction math) && MathFunctions.Arity(math) == arguments.Length) return new BoundMath(math, arguments, place);
        LibraryFunction function = library.Function(name) ?? throw new FormatException($"The formula \"{text}\" calls {name}, which does not exist.");
        if (function.Parameters.Length != arguments.Length) throw new FormatException($"The formula \"{text}\" calls {name} with {arguments.Length} arguments.");
        return new BoundCall(function, arguments, [], CellType.Number, place);
    }

    private void SkipBlanks()
    {
        while (at < text.Length && text[at] == ' ') at++;
    }

    private bool Take(string sign)
    {
        SkipBlanks();
        if (string.CompareOrdinal(text, at, sign, 0, sign.Length) != 0 || (sign == "!" && at + 1 < text.Length && text[at + 1] == '=')) return false;
        at += sign.Length;
        return true;
    }

    private void Need(string sign)
    {
        if (!Take(sign)) throw Wrong($"\"{sign}\"");
    }

    private Place Here(int start) => new(0, start + 1, at - start);

    private FormatException Wrong(string expected) => new($"The formula \"{text}\" cannot be read at column {at + 1}: {expected} is missing.");
}
