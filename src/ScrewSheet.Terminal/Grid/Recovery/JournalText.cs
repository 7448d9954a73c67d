using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace ScrewSheet.Terminal.Grid.Recovery;

/// <summary>Whose changes a journal holds.</summary>
/// <param name="Path">The whole path of the workbook's file; null where it has none.</param>
/// <param name="Saved">The hash of what that file held; null where it has none.</param>
internal sealed record JournalHead(string? Path, string? Saved)
{
    /// <summary>The hash of a file.</summary>
    public static string HashOf(ReadOnlySpan<byte> file) => Convert.ToHexStringLower(SHA256.HashData(file));
}

/// <summary>What could be read of a journal.</summary>
/// <param name="Head">Whose it is.</param>
/// <param name="Text">The workbook's text at its end.</param>
/// <param name="At">When that was written.</param>
/// <param name="IsDamaged">True where some of it could not be read; the text is what stood before that, or its beginning.</param>
internal sealed record JournalRead(JournalHead Head, byte[] Text, DateTimeOffset At, bool IsDamaged);

/// <summary>
/// A journal as a file: whose it is, then parts, each a change of the text made by those before it; the first one puts the whole text of a workbook.
/// Each part tells its length and a checksum, so one that was cut off or damaged is known.
/// </summary>
internal static class JournalText
{
    /// <summary>The most parts; more are written anew as one.</summary>
    public const int MostParts = 500;

    private const string First = "screwsheet unsaved 1", File = "file ", Saved = "saved ", Part = "part ";
    private const int LongestLine = 16 * 1024, CheckLength = 16;

    /// <summary>What stands before the parts.</summary>
    public static byte[] Write(JournalHead head)
    {
        // a path may hold anything, line ends too
        string file = head.Path is null ? "" : $"{File}{Uri.EscapeDataString(head.Path).Replace("%2F", "/", StringComparison.Ordinal)}\n";
        return Encoding.UTF8.GetBytes($"{First}\n{file}{(head.Saved is null ? "" : $"{Saved}{head.Saved}\n")}\n");
    }

    /// <summary>A part.</summary>
    public static byte[] Write(Splice splice, DateTimeOffset at)
    {
        string facts = string.Create(CultureInfo.InvariantCulture, $"{at.ToUnixTimeMilliseconds()} {splice.At} {splice.Removed} {splice.Put.Length}");
        return [.. Encoding.ASCII.GetBytes($"{Part}{facts} {Check(facts, splice.Put.Span)}\n"), .. splice.Put.Span, (byte)'\n'];
    }

    /// <summary>Reads the head alone.</summary>
    /// <returns>Null where it is no journal.</returns>
    public static JournalHead? ReadHead(ReadOnlySpan<byte> file) => Head(ref file);

    /// <summary>Reads as much as can be read.</summary>
    /// <returns>Null where it is no journal.</returns>
    public static JournalRead? Read(ReadOnlyMemory<byte> file)
    {
        ReadOnlySpan<byte> rest = file.Span;
        if (Head(ref rest) is not { } head) return null;
        byte[] text = [];
        long at = 0;
        for (int part = 0; !rest.IsEmpty; part++)
        {
            ReadOnlyMemory<byte> here = file[^rest.Length..];
            if (part == MostParts || Next(ref rest, here, out long time) is not { } splice || !splice.Fits(text.Length))
            {
                return new JournalRead(head, part == 0 ? Beginning(here) : text, Moment(at), IsDamaged: true);
            }
            text = splice.On(text);
            at = time;
        }
        return new JournalRead(head, text, Moment(at), IsDamaged: text.Length == 0);
    }

    private static DateTimeOffset Moment(long milliseconds) => DateTimeOffset.UnixEpoch.AddMilliseconds(Math.Clamp(milliseconds, 0, 4e12));

    private static JournalHead? Head(ref ReadOnlySpan<byte> rest)
    {
        if (Line(ref rest) != First) return null;
        string? path = null, saved = null;
        while (Line(ref rest) is { Length: > 0 } line)
        {
            if (line.StartsWith(File, StringComparison.Ordinal)) path = Uri.UnescapeDataString(line[File.Length..]);
            if (line.StartsWith(Saved, StringComparison.Ordinal)) saved = line[Saved.Length..];
        }
        return new JournalHead(path, saved);
    }

    /// <summary>The next part; null where it is none, is cut off, or is not what was written.</summary>
    private static Splice? Next(ref ReadOnlySpan<byte> rest, ReadOnlyMemory<byte> here, out long time)
    {
        time = 0;
        if (Line(ref rest) is not { } line || !line.StartsWith(Part, StringComparison.Ordinal)) return null;
        string[] words = line[Part.Length..].Split(' ');
        if (words.Length != 5 || !Number(words[1], out int at) || !Number(words[2], out int removed) || !Number(words[3], out int length)
            || !long.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out time)) return null;
        if (rest.Length <= length || rest[length] != '\n') return null;
        Splice splice = new(at, removed, here.Slice(here.Length - rest.Length, length));
        rest = rest[(length + 1)..];
        return Check(string.Join(' ', words[..4]), splice.Put.Span) == words[4] ? splice : null;
    }

    private static bool Number(string text, out int number) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number);

    /// <summary>What there is of the whole lines of a first part that is damaged.</summary>
    private static byte[] Beginning(ReadOnlyMemory<byte> here)
    {
        ReadOnlySpan<byte> rest = here.Span;
        string? line = Line(ref rest);
        if (line is null || !line.StartsWith(Part, StringComparison.Ordinal)) return [];
        int length = line.Split(' ') is { Length: > 4 } words && Number(words[4], out int told) ? Math.Min(told, rest.Length) : rest.Length;
        return rest[..(rest[..length].LastIndexOf((byte)'\n') + 1)].ToArray();
    }

    private static string? Line(ref ReadOnlySpan<byte> rest)
    {
        int end = rest[..Math.Min(rest.Length, LongestLine)].IndexOf((byte)'\n');
        if (end < 0) return null;
        string line = Encoding.UTF8.GetString(rest[..end]);
        rest = rest[(end + 1)..];
        return line;
    }

    private static string Check(string facts, ReadOnlySpan<byte> bytes)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.ASCII.GetBytes(facts));
        hash.AppendData(bytes);
        return Convert.ToHexStringLower(hash.GetHashAndReset())[..CheckLength];
    }
}
