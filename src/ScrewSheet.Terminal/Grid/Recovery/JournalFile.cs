using ScrewSheet.Terminal.Files;

namespace ScrewSheet.Terminal.Grid.Recovery;

/// <summary>
/// Keeps the newest text of one workbook on the disk. A small text is written anew each time, in place of the one before. Of a large one only the change is added, which costs
/// a hundred bytes instead of ten million; but never so that the file holds what was typed and then typed over: then it is written anew too. So a journal holds what the saved file
/// or the workbook as it stands holds, and nothing else.
/// </summary>
/// <param name="path">The file.</param>
/// <param name="disk">Where.</param>
/// <param name="small">The length of a text up to which it is written anew each time.</param>
internal sealed class JournalFile(string path, IDisk disk, int small)
{
    private readonly TypedParts typed = new();

    // what the file on the disk says; null where that is not known for certain
    private JournalHead? head;
    private JournalHead? followed;
    private ReadOnlyMemory<byte> text;
    private int added, parts;

    /// <summary>Has a text on the disk.</summary>
    /// <param name="now">Whose it is.</param>
    /// <param name="saved">What its file holds.</param>
    /// <param name="bytes">The text.</param>
    /// <param name="at">When.</param>
    /// <exception cref="UserMistake">It cannot be written; what was there before is there still, or is cut off behind it.</exception>
    public void Put(JournalHead now, ReadOnlyMemory<byte> saved, ReadOnlyMemory<byte> bytes, DateTimeOffset at)
    {
        bool known = now == head;
        if (now != followed)
        {
            typed.Clear();
            (followed, text) = (now, saved);
        }
        Splice splice = Splice.Between(text, bytes);
        if (known && splice.Removed == 0 && splice.Put.IsEmpty) return;
        bool anew = !known || bytes.Length <= small || typed.AreLostBy(splice) || parts == JournalText.MostParts || added + splice.Put.Length > bytes.Length / 2;
        typed.Follow(splice);
        text = bytes;
        // where writing is cut short, the next one begins anew
        head = null;
        if (anew) Begin(now, at);
        else Add(splice, at);
        head = now;
    }

    /// <summary>Takes it off the disk.</summary>
    public void Remove()
    {
        head = null;
        disk.Delete(path);
    }

    private void Begin(JournalHead now, DateTimeOffset at)
    {
        SafeWrite.Put(path, (byte[])[.. JournalText.Write(now), .. JournalText.Write(new Splice(0, 0, text), at)], disk);
        (added, parts) = (0, 1);
    }

    private void Add(Splice splice, DateTimeOffset at) => FileTrouble.Guard(path, "written", () =>
    {
        byte[] part = JournalText.Write(splice, at);
        disk.Append(path, part);
        (added, parts) = (added + part.Length, parts + 1);
        return true;
    });
}
