using ScrewSheet.Engine.Tests.Support;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Tests.Faults;

/// <summary>Where the gate's limits lie, to the one, and that no word or sign of the compiler's language slips past it.</summary>
public sealed class GateEdgeTests
{
    private const int Refused = 6204, TooDeep = 6103, LambdaTooDeep = 6104, Chain = 6205;

    /// <summary>ECMA-334, C# language specification, 6th edition (2022), 6.4.4, keywords; without true, false and switch, which cells use.</summary>
    private static readonly string[] Keywords =
    [
        "abstract", "as", "base", "bool", "break", "byte", "case", "catch", "char", "checked", "class", "const", "continue", "decimal", "default", "delegate", "do", "double", "else", "enum",
        "event", "explicit", "extern", "finally", "fixed", "float", "for", "foreach", "goto", "if", "implicit", "in", "int", "interface", "internal", "is", "lock", "long", "namespace", "new",
        "null", "object", "operator", "out", "override", "params", "private", "protected", "public", "readonly", "ref", "return", "sbyte", "sealed", "short", "sizeof", "stackalloc", "static",
        "string", "struct", "this", "throw", "try", "typeof", "uint", "ulong", "unchecked", "unsafe", "ushort", "using", "virtual", "void", "volatile", "while",
    ];

    /// <summary>The same, 6.4.6, operators and punctuators, without those cells use; and those of later versions, from memory: ?. .. ??= >>> >>>=.</summary>
    private static readonly string[] Signs =
        ["[", "]", ";", "&", "|", "^", "~", "=", "??", "::", "++", "--", "->", "+=", "-=", "*=", "/=", "%=", "&=", "|=", "^=", "<<", "<<=", ">>", ">>=", "?.", "..", "??=", "{", "}", ">>>", ">>>="];

    [Fact]
    public void NoKeywordOfTheCompilersLanguage_Passes()
    {
        foreach ((string word, CellResult cell) in Each(Keywords.SelectMany(word => (string[])[word, $"1 + {word}", $"{word}(1)", $"$\"{{{word}}}\""])))
        {
            Assert.True(cell.Fault is { Code: Refused, CompilerId: null }, $"{word}: {cell.Fault?.Sentence}");
            Assert.Contains("is not part of the language of cells. ", cell.Fault!.Sentence, StringComparison.Ordinal);
            Assert.EndsWith(".", cell.Fault.Sentence, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void NoSignOutsideTheLanguageOfCells_ReachesTheCompiler()
    {
        foreach ((string text, CellResult cell) in Each(Signs.SelectMany(sign => (string[])[$"1 {sign} 2", $"{sign} 1", $"1 {sign}"])))
            Assert.True(cell.Fault is { CompilerId: null }, $"{text}: {cell.Fault?.Sentence} {cell.Fault?.CompilerId}");
    }

    /// <summary>A fault names the sort it is and the very letters it is about.</summary>
    [Theory]
    [InlineData("2 + 1/2 kN", 6206, "1/2 kN")]
    [InlineData("A1 m", 6207, "m")]
    [InlineData("(A1) m", 6208, "m")]
    [InlineData("(A1) 5", 6207, "5")]
    [InlineData("1,5", 6210, ",")]
    [InlineData("1, A1", Refused, ",")]
    [InlineData("1,", Refused, ",")]
    [InlineData("A1, 5", Refused, ",")]
    [InlineData("2 * new", Refused, "new")]
    public void AFault_StandsWhereItBelongs(string text, int code, string at)
    {
        Fault fault = Book.Eval(text, "A1 = 2").Fault!;
        Assert.Equal(code, fault.Code);
        const int begin = 7; // Z9 => comes before
        Assert.Equal((text.LastIndexOf(at, StringComparison.Ordinal) + begin, at.Length), (fault.Place!.Value.Column, fault.Place.Value.Length));
    }

    [Theory]
    [InlineData("\"new\"")]
    [InlineData("$\"{A1} new\"")]
    public void ARefusedWord_IsFineAsAText(string text) => Assert.Null(Book.Eval(text, "A1 = 2").Fault);

    [Fact]
    public void OnlyABracketWithoutItsEnd_MayGoOn()
    {
        foreach (string open in (string[])["(1 + 2", "Math.Min(1, (2)", "A1 switch { > 1 => 2"]) Assert.True(Book.Eval(open, "A1 = 2").Fault is { Code: 6201, IsOpen: true }, open);
        foreach (string shut in (string[])["1 + 2)", "(1 }", "(1) 2", "(A1) m"]) Assert.True(Book.Eval(shut, "A1 = 2").Fault is { IsOpen: false }, shut);
    }

    /// <summary>64 levels pass and no more, whatever they are made of: brackets, signs before a value, questions, or all of them (the limit stands in docs/diagnostics.md under 6103).</summary>
    [Theory]
    [InlineData("(", "1", ")", 64)]
    [InlineData("- ", "1", "", 64)]
    [InlineData("!", "true", "", 64)]
    [InlineData("true ? 1 : ", "1", "", 64)]
    [InlineData("(true ? ", "1", " : 0)", 32)]
    [InlineData("(- ", "1", ")", 32)]
    [InlineData("(1 + - ", "1", ")", 32)]
    [InlineData("-(true ? 1 : ", "1", ")", 21)]
    public void NestingEnds_AfterSixtyFourLevels(string before, string inside, string after, int most)
    {
        string Nested(int levels) => string.Concat(Enumerable.Repeat(before, levels)) + inside + string.Concat(Enumerable.Repeat(after, levels));
        Assert.Null(Book.Eval(Nested(most)).Fault);
        Assert.Equal(TooDeep, Book.Eval(Nested(most + 1)).Fault?.Code);
    }

    [Fact]
    public void ANestBesideANest_IsNoDeeper()
    {
        string one = new string('(', 60) + "1" + new string(')', 60), questions = string.Concat(Enumerable.Repeat("false ? 1 : ", 60)) + "1";
        Book.Eval($"{one} + {one} + ({questions}) + ({questions})").Gives(4, "number");
        Book.Eval(string.Concat(Enumerable.Repeat("-(1) + - ", 100)) + "1").Gives(97, "number");
    }

    [Fact]
    public void TwoLambdasPass_AThirdInThemDoesNot()
    {
        Assert.Null(Book.Eval("Sum(Map(Series(A1, A1), x => Sum(Map(Series(A1, A1), y => x + y))))", "A1 = 1").Fault);
        Assert.Null(Book.Eval("Sum(Map(Series(A1, A1), x => x)) + Sum(Map(Series(A1, A1), y => y)) + Sum(Map(Series(A1, A1), z => z))", "A1 = 1").Fault);
        Assert.Equal(LambdaTooDeep, Book.Eval("Sum(Map(Series(A1, A1), x => Sum(Map(Series(A1, A1), y => Sum(Map(Series(A1, A1), z => z))))))", "A1 = 1").Fault?.Code);
    }

    [Theory]
    [InlineData("1 < 2 && 2 < 3 || 4 < 3")]
    [InlineData("1 < 2 ? 3 < 4 : 5 < 6")]
    [InlineData("(1 < 2) == (3 < 4)")]
    [InlineData("3 switch { < 2 => 1 < 2, > 2 => 2 < 3, _ => 4 < 3 }")]
    [InlineData("!(1 > 2) && 3 >= 3 && 1 != 2")]
    public void OneComparisonAtATime_Passes(string expression) => Book.Eval(expression).Gives("holds");

    [Theory]
    [InlineData("1 < 2 < 3")]
    [InlineData("1 < 2 == true")]
    [InlineData("1 == 1 == true")]
    [InlineData("1 != 2 > 3")]
    [InlineData("true && 1 >= 2 >= 3")]
    [InlineData("(1 <= 2 <= 3)")]
    public void AChainOfComparisons_DoesNot(string expression) => Assert.Equal(Chain, Book.Eval(expression).Fault?.Code);

    [Theory]
    [InlineData("(1 switch { _ => 2 )", "The bracket { is closed by ). Close it with }.")]
    [InlineData("(1 }", "The bracket ( is closed by }. Close it with ).")]
    [InlineData("1 switch { _ => 2", "The bracket { is not closed. Add } where it ends.")]
    [InlineData("1 }", "The bracket } closes nothing. Remove it or add its opening bracket.")]
    [InlineData("{ 1 }", "A block { } is not part of the language of cells. A cell holds one expression.")]
    [InlineData("1 kN, 2 kN", "A comma outside brackets is not part of the language of cells. A cell holds one value.")]
    [InlineData("\"a\" \"b\"", "Between the text and the text an operator is missing.")]
    [InlineData("A1 A1", "Between A1 and A1 an operator is missing.")]
    [InlineData("(A1) A1", "Between ) and A1 an operator is missing.")]
    [InlineData("3/4 mm", "3/4 mm can be read two ways. Write 0.75 mm or 3 / (4 mm).")]
    public void WhatIsWrittenWrongly_IsRefusedWithASentence(string expression, string sentence) => Assert.Equal(sentence, Book.Eval(expression, "A1 = 1").Fault?.Sentence);

    private static IEnumerable<(string Text, CellResult Cell)> Each(IEnumerable<string> expressions)
    {
        string[] all = [.. expressions];
        Book book = Book.Of([.. all.Select((expression, i) => $"A{i + 1} => {expression}")]);
        return all.Select((expression, i) => (expression, book[$"A{i + 1}"]));
    }
}
