using System.Text;
using CsCheck;
using ScrewSheet.Terminal.Grid.Recovery;
using ScrewSheet.Terminal.Tests.Files;
using Xunit.Abstractions;

namespace ScrewSheet.Terminal.Tests.Grid.Recovery;

/// <summary>A journal as it is written: always readable, cheap for a large workbook, and never holding what was typed over.</summary>
public sealed class JournalFileTests(ITestOutputHelper output) : IDisposable
{
    private const int AlwaysAdds = 0;

    private static readonly JournalHead Head = new("/a", "b");
    private static readonly string Saved = new('s', 300);

    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-journal-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string At => Path.Combine(folder, "journal");

    [Theory]
    [InlineData(AlwaysAdds)]
    [InlineData(Journals.SmallText)]
    public void CutShortAnywhere_ItHoldsTheTextBeforeOrTheTextAfter_AndTheNextOneWholly(int small)
    {
        int cuts = 0;
        // long enough that a change is added, where that is allowed
        string one = new string('1', 500) + "\n";
        string[] texts = [one, one + "two\n", one + "two\nthree\n"];
        foreach ((Cut cut, double share) in (ReadOnlySpan<(Cut, double)>)[(Cut.Fails, 0), (Cut.Fails, 0.5), (Cut.FailsAfter, 0), (Cut.DiesBefore, 0), (Cut.DiesBefore, 0.5), (Cut.DiesBefore, 0.99), (Cut.DiesAfter, 0)])
        {
            for (int step = 0; ; step++)
            {
                File.Delete(At);
                CutDisk disk = new(step, cut, () => new IOException("No space left on device"), share) { IsQuick = true };
                JournalFile journal = new(At, disk, small);
                string before = "", after = "";
                foreach (string text in texts)
                {
                    (before, after) = (after, text);
                    if (!Put(journal, text)) break;
                }
                if (!disk.IsCut) break;
                // only a write can be done in part
                if (share > 0 && disk.Steps[^1] is not ("write" or "append")) continue;
                cuts++;
                JournalRead? read = File.Exists(At) ? JournalText.Read(File.ReadAllBytes(At)) : null;
                string found = read is null ? "" : Encoding.UTF8.GetString(read.Text);
                Assert.True(found == before || found == after, $"step {step}, {cut}: {found}");
                // where the process goes on, so does the journal, whatever is half there
                if (!disk.IsDead)
                {
                    Assert.True(Put(journal, one + "two\nfour\n"));
                    Assert.Equal(one + "two\nfour\n", Read());
                }
            }
        }
        output.WriteLine($"{cuts} cuts");
        Assert.True(cuts > 40, $"{cuts} cuts");
    }

    [Fact]
    public void OneEntryInALargeWorkbook_CostsAHundredBytes()
    {
        string saved = string.Concat(Enumerable.Range(1, 100_000).Select(row => $"A{row} = {row} kN\n"));
        JournalFile journal = new(At, CutDisk.Whole(), Journals.SmallText);
        journal.Put(Head, Encoding.UTF8.GetBytes(saved), Encoding.UTF8.GetBytes(saved + "B1 = 1 kN\n"), DateTimeOffset.UnixEpoch);
        long before = new FileInfo(At).Length;
        string text = saved + "B1 = 1 kN\nB2 = 2 kN\n";
        journal.Put(Head, Encoding.UTF8.GetBytes(saved), Encoding.UTF8.GetBytes(text), DateTimeOffset.UnixEpoch);
        Assert.InRange(new FileInfo(At).Length - before, 10, 100);
        Assert.Equal(text, Read());
    }

    [Fact]
    public void WhatWasTypedOver_IsNotInIt() => Gen.Select(Gen.Int[0, 4], Gen.Int[0, 9]).Array[1, 12].Sample(entries =>
    {
        File.Delete(At);
        // five places of a saved text, typed into again and again
        string[] lines = [.. Enumerable.Repeat(Saved, 5)];
        byte[] saved = Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n");
        JournalFile journal = new(At, CutDisk.Whole(), AlwaysAdds);
        HashSet<string> gone = [];
        for (int i = 0; i < entries.Length; i++)
        {
            gone.Add(lines[entries[i].Item1]);
            lines[entries[i].Item1] = $"<entry {i:D2} {new string((char)('a' + entries[i].Item2), 3)}>";
            journal.Put(Head, saved, Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n"), DateTimeOffset.UnixEpoch);
        }
        string text = File.ReadAllText(At);
        Assert.Equal(string.Join('\n', lines) + "\n", Read());
        foreach (string entry in gone.Where(entry => entry != Saved)) Assert.DoesNotContain(entry, text, StringComparison.Ordinal);
    }, iter: 300, threads: 1);

    private static bool Put(JournalFile journal, string text)
    {
        try
        {
            journal.Put(Head, ReadOnlyMemory<byte>.Empty, Encoding.UTF8.GetBytes(text), DateTimeOffset.UnixEpoch);
            return true;
        }
        catch (Exception error) when (error is UserMistake or Killed)
        {
            return false;
        }
    }

    private string Read() => Encoding.UTF8.GetString(JournalText.Read(File.ReadAllBytes(At))!.Text);
}
