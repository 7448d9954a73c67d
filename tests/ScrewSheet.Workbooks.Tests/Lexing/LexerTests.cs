using CsCheck;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Lexing;

namespace ScrewSheet.Workbooks.Tests.Lexing;

/// <summary>The lexer: what it reads, and every fault it words with its sentence and place.</summary>
public sealed class LexerTests
{
    public static TheoryData<int, string, string, int> Refused => new()
    {
        { 6001, "1 + #load", "A cell has no # lines. Remove the #.", 5 },
        { 6002, "1 ¤ 2", "\"¤\" has no meaning in an expression. Remove it.", 3 },
        { 6003, "40mm", "40mm is no number. Write 40 mm with a blank between number and unit.", 1 },
        { 6004, "1_000", "1_ is no number. Write digits, perhaps a point and decimals, perhaps an exponent, such as 1.5e3.", 1 },
        { 6005, "007.5", "007.5 begins with a zero that says nothing. Write 7.5.", 1 },
        { 6006, "1e999", "1e999 is larger than any number here.", 1 },
        { 3001, "2 * 10 furlong", "\"furlong\" is no unit.", 8 },
        { 6007, "\"open", "This text has no closing quote. Close it with \".", 1 },
        { 6008, "\"a\\q\"", "\\q is no escape in a text. Known are \\\\ \\\" \\n \\t and \\u with four hexadecimal digits.", 3 },
        { 6009, "'a'", "Texts are written \"…\" or $\"…\". Use one of these.", 1 },
        { 6010, "$\"{\"a\"}\"", "A hole of a composed text holds no text of its own. Put the text into a cell and name the cell.", 4 },
        { 6011, "$\"{1", "This hole is not closed. Close it with }.", 3 },
        { 6012, "$\"a}b\"", "A single } stands in a composed text. Write }} for the character.", 4 },
        { 6013, "$\"{ }\"", "This hole is empty. Write a name or an expression between { and }.", 3 },
        { 6014, "$\"{1:furlong}\"", "\"furlong\" is no unit. Write a unit, digits or both, such as {peak:kN, 1 decimal}.", 6 },
        { 6015, "2 × 3", "× is not written in an expression. Write * for a product.", 3 },
        { 6101, new string('1', 9000), "The expression is longer than 8,192 bytes. Split it over several cells.", 0 },
        { 6102, string.Concat(Enumerable.Repeat("1+", 1500)), "The expression has more than 2,000 words and signs. Split it over several cells.", 2001 },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Read_WhatNoExpressionHolds_SaysWhyAndWhere(int code, string text, string sentence, int column)
    {
        Fault fault = Lexer.Read(text).Fault!;
        Assert.Equal((code, sentence, column), (fault.Code, fault.Sentence, fault.Place?.Column ?? 0));
    }

    [Fact]
    public void EveryFaultOfTheLexerHasACase() =>
        Assert.Equal(FaultCodes.In(typeof(Lexer).Assembly).Select(code => code.Code).Where(code => code >= 3000), Refused.Select(row => (int)row[0]).Distinct().Order());

    [Theory]
    [InlineData("10 N/mm", "10 N/mm")]
    [InlineData("10 N / mm", "10 N|/|mm")]
    [InlineData("10.kN", "10.kN")]
    [InlineData("-18 °C", "-18 °C")]
    [InlineData("a -18 °C", "a|-|18 °C")]
    [InlineData("5 % * 3", "5 %|*|3")]
    [InlineData("x => x switch { > 2 when true => 1 }", "x|=>|x|switch|{|>|2|when|true|=>|1|}")]
    [InlineData("a<=b&&!c", "a|<=|b|&&|!|c")]
    public void Read_AnExpression_IsItsTokens(string text, string tokens) =>
        Assert.Equal(tokens, string.Join('|', Lexer.Read(text).Tokens.Select(token => text.Substring(token.Start, token.Length))));

    [Fact]
    public void Read_AnyTextAtAll_EndsInTokensOrAFault() => Gen.String.Sample(text =>
    {
        LexResult result = Lexer.Read(text);
        int end = 0;
        foreach (Token token in result.Tokens)
        {
            Assert.True(token.Start >= end && token.End <= text.Length);
            end = token.End;
        }
    });
}
