using CsCheck;
using ScrewSheet.Terminal.Grid.Recovery;

namespace ScrewSheet.Terminal.Tests.Grid.Recovery;

public sealed class SpliceTests
{
    private static readonly Gen<byte[]> Text = Gen.Byte[0, 2].Array[0, 12];

    [Fact]
    public void WhatLiesBetweenTwoTexts_MakesTheSecondOfTheFirst() => Gen.Select(Text, Text).Sample((before, after) =>
    {
        Splice splice = Splice.Between(before, after);
        Assert.True(splice.Fits(before.Length));
        Assert.Equal(after, splice.On(before));
        Assert.Equal(before.AsSpan().SequenceEqual(after), splice.Removed + splice.Put.Length == 0);
    }, iter: 5000);

    [Fact]
    public void WhatWasTyped_IsFollowedThroughEveryChange() => Text.Array[1, 8].Sample(texts =>
    {
        TypedParts parts = new();
        // the slow way: a mark beside every byte
        List<bool> typed = [.. texts[0].Select(_ => false)];
        for (int i = 1; i < texts.Length; i++)
        {
            Splice splice = Splice.Between(texts[i - 1], texts[i]);
            Assert.Equal(typed.GetRange(splice.At, splice.Removed).Contains(true), parts.AreLostBy(splice));
            parts.Follow(splice);
            typed.RemoveRange(splice.At, splice.Removed);
            typed.InsertRange(splice.At, Enumerable.Repeat(true, splice.Put.Length));
        }
    }, iter: 5000);
}
