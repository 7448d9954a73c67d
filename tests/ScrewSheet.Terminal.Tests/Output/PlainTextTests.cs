using System.Text;
using CsCheck;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Tests.Output;

public sealed class PlainTextTests
{
    [Theory]
    [InlineData("plain ± 5 kN·m “quoted” é 中 🧗", "plain ± 5 kN·m “quoted” é 中 🧗")]
    [InlineData("\u001b[2J", "‹U+001B›[2J")]
    [InlineData("a\rb\nc\td", "a‹U+000D›b‹U+000A›c‹U+0009›d")]
    [InlineData("\u009b31m", "‹U+009B›31m")]
    [InlineData("kN\u202e5.8", "kN‹U+202E›5.8")]
    [InlineData("\u2066a\u2069\u200e\u200f\u061c", "‹U+2066›a‹U+2069›‹U+200E›‹U+200F›‹U+061C›")]
    [InlineData("a\u200bb\u200cc\u200dd\ufeff\u00ad\u2060", "a‹U+200B›b‹U+200C›c‹U+200D›d‹U+FEFF›‹U+00AD›‹U+2060›")]
    [InlineData("\u2028\u2029\u3164\ufe0f\ue000\u115f", "‹U+2028›‹U+2029›‹U+3164›‹U+FE0F›‹U+E000›‹U+115F›")]
    [InlineData("\U000e0041x", "‹U+E0041›x")]
    public void Of_HiddenCharacters_ShowsTheirNumbers(string text, string shown) => Assert.Equal(shown, PlainText.Of(text));

    [Fact]
    public void Of_HalfAPair_ShowsItsNumber() => Assert.Equal("a‹U+D800›b", PlainText.Of("a" + (char)0xD800 + "b"));

    [Fact]
    public void WhateverIsWritten_NothingHiddenIsLeft() => Gen.String.Sample(text => !PlainText.Of(text).EnumerateRunes().Any(PlainText.IsHidden));

    [Fact]
    public void HarmlessTextStaysAsItIs() => Gen.String.Where(text => !text.EnumerateRunes().Any(rune => PlainText.IsHidden(rune) || rune == Rune.ReplacementChar)).Sample(text => PlainText.Of(text) == text);
}
