using System.Globalization;
using System.Text;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Tests.Harmless;

/// <summary>What is shown by number, against the lists of the Unicode Character Database.</summary>
public sealed class CharacterTests
{
    [Fact]
    public void EveryCharacterThatMustNotBeShown_IsShownByItsNumber()
    {
        foreach (int code in Seen.All)
        {
            string text = code is >= 0xD800 and <= 0xDFFF ? ((char)code).ToString() : char.ConvertFromUtf32(code);
            Assert.Equal($"a‹U+{code:X4}›b", PlainText.Of($"a{text}b"));
        }
    }

    [Fact]
    public void AWordWiderThanALine_StandsInPieces_AndNoNumberIsCut()
    {
        string word = string.Concat(Enumerable.Repeat("ab‹U+202E›c-12.5e3", 20));
        for (int width = 8; width < 60; width++)
        {
            IReadOnlyList<string> lines = Wrapping.Lines(word, width);
            Assert.All(lines, line => Assert.InRange(DisplayWidth.Of(line), 1, width));
            Assert.Equal(word, string.Concat(lines));
            foreach (string whole in (string[])["‹U+202E›", "-12.5e3"]) Assert.Equal(20, lines.Sum(line => (line.Length - line.Replace(whole, "", StringComparison.Ordinal).Length) / whole.Length));
        }
    }

    [Fact]
    public void LettersDigitsSignsAndCurrencies_AreLeftAlone()
    {
        for (int code = 0x20; code < 0x30000; code++)
        {
            UnicodeCategory category = CharUnicodeInfo.GetUnicodeCategory(code);
            bool isSeen = category is UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter or UnicodeCategory.DecimalDigitNumber or UnicodeCategory.MathSymbol or UnicodeCategory.CurrencySymbol;
            if (isSeen) Assert.Equal(new Rune(code).ToString(), PlainText.Of(new Rune(code).ToString()));
        }
    }
}
