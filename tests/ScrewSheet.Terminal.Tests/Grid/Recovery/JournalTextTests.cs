using System.Text;
using CsCheck;
using ScrewSheet.Terminal.Grid.Recovery;

namespace ScrewSheet.Terminal.Tests.Grid.Recovery;

/// <summary>A journal that is cut off, damaged or made up: what can be read is read, the rest is told, and nothing throws.</summary>
public sealed class JournalTextTests
{
    private static readonly DateTimeOffset Then = new(2026, 11, 25, 14, 2, 11, TimeSpan.Zero);
    private static readonly JournalHead Head = new("/home/a b/fall %\n.screwsheet", new string('a', 64));
    private static readonly byte[] First = "screwsheet 1\n\nsheet S\nA1 = 1 kN\n"u8.ToArray();
    private static readonly byte[][] Texts = [First, .. Enumerable.Range(2, 4).Select(i => Encoding.UTF8.GetBytes($"{Encoding.UTF8.GetString(First)}A{i} = {i} kN\n"))];

    [Fact]
    public void WhatWasWritten_IsRead()
    {
        JournalRead read = JournalText.Read(Written())!;
        Assert.Equal(Head, read.Head);
        Assert.Equal(Texts[^1], read.Text);
        Assert.Equal(Then.AddMinutes(Texts.Length - 1), read.At);
        Assert.False(read.IsDamaged);
        Assert.Equal(Head, JournalText.ReadHead(Written()));
    }

    [Fact]
    public void CutOffAnywhere_WhatStoodBefore_IsRead()
    {
        byte[] whole = Written();
        int damaged = 0;
        for (int length = 0; length < whole.Length; length++)
        {
            if (JournalText.Read(whole.AsMemory(0, length)) is not { } read) continue;
            if (read.IsDamaged) damaged++;
            Assert.True(Array.Exists(Texts, text => text.AsSpan().SequenceEqual(read.Text)) || (read.IsDamaged && First.AsSpan().StartsWith(read.Text)), $"cut at {length}");
        }
        Assert.True(damaged > whole.Length / 2);
    }

    [Fact]
    public void WithAnyByteChanged_NoTextIsReadThatNeverWas_ExceptAsDamaged()
    {
        byte[] whole = Written();
        for (int at = 0; at < whole.Length; at++)
        {
            foreach (byte other in (byte[])[0, (byte)'\n', (byte)'9', (byte)(whole[at] ^ 1)])
            {
                byte[] changed = [.. whole[..at], other, .. whole[(at + 1)..]];
                if (JournalText.Read(changed) is not { } read) continue;
                Assert.True(read.IsDamaged || Array.Exists(Texts, text => text.AsSpan().SequenceEqual(read.Text)), $"byte {at} as {other}: {Encoding.UTF8.GetString(read.Text)}");
            }
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("hello\n")]
    [InlineData("screwsheet unsaved 2\n\n")]
    public void WhatIsNoJournal_IsNone(string text) => Assert.Null(JournalText.Read(Encoding.UTF8.GetBytes(text)));

    [Theory]
    [InlineData("screwsheet unsaved 1\n\n")]
    [InlineData("screwsheet unsaved 1\nfile %ff%00%\nsaved\n\npart\n")]
    [InlineData("screwsheet unsaved 1\n\npart 0 0 0 2147483647 0\nx\n")]
    [InlineData("screwsheet unsaved 1\n\npart 0 2147483647 2147483647 0 0\n\n")]
    [InlineData("screwsheet unsaved 1\n\npart 99999999999999999999 0 0 0 0\n\n")]
    [InlineData("screwsheet unsaved 1\n\npart 9223372036854775807 -1 0 1 0\nx\n")]
    [InlineData("screwsheet unsaved 1\n\npart 1 2 3 4 5 6 7 8\nx\n")]
    public void MadeUp_IsDamaged(string text) => Assert.True(JournalText.Read(Encoding.UTF8.GetBytes(text))!.IsDamaged);

    [Fact]
    public void MadeUpFromAnyBytes_ItIsReadOrNot() => Gen.Byte.Array[0, 200].Sample(bytes =>
    {
        _ = JournalText.Read(bytes);
        _ = JournalText.Read((byte[])[.. "screwsheet unsaved 1\n\npart 5 0 0 "u8, .. bytes]);
    }, iter: 2000);

    [Fact]
    public void MoreParts_ThanAreEverWritten_AreNotRead()
    {
        byte[] part = JournalText.Write(new Splice(0, 0, "x"u8.ToArray()), Then);
        JournalRead read = JournalText.Read((byte[])[.. JournalText.Write(Head), .. Enumerable.Repeat(part, JournalText.MostParts + 1).SelectMany(bytes => bytes)])!;
        Assert.True(read.IsDamaged);
        Assert.Equal(JournalText.MostParts, read.Text.Length);
    }

    private static byte[] Written()
    {
        List<byte> all = [.. JournalText.Write(Head)];
        byte[] before = [];
        for (int i = 0; i < Texts.Length; i++)
        {
            all.AddRange(JournalText.Write(Splice.Between(before, Texts[i]), Then.AddMinutes(i)));
            before = Texts[i];
        }
        return [.. all];
    }
}
