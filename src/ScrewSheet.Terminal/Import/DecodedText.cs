using System.Text;
using ScrewSheet.Terminal.Files;

namespace ScrewSheet.Terminal.Import;

/// <summary>The text of a file from elsewhere, whose encoding nobody says.</summary>
/// <param name="Text">The text, without a byte-order mark.</param>
/// <param name="Encoding">The encoding's name.</param>
/// <param name="IsGuessed">True where the bytes fit nothing better.</param>
internal sealed record DecodedText(string Text, string Encoding, bool IsGuessed)
{
    /// <summary>Decodes UTF-8, UTF-16 and UTF-32 by their mark, UTF-8 and UTF-16 without one, and anything else that looks like text as Windows-1252.</summary>
    /// <exception cref="UserMistake">It is no text.</exception>
    public static DecodedText Of(ReadOnlySpan<byte> bytes, string path)
    {
        string name = FileTrouble.Quoted(path);
        if (bytes.StartsWith("PK\u0003\u0004"u8)) throw new UserMistake($"{name} is a packed file, a spreadsheet perhaps, not text. Save the table as CSV and import that.");
        return Marked(bytes, name) ?? Unmarked(bytes, name);
    }

    private static DecodedText? Marked(ReadOnlySpan<byte> bytes, string name)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF])) return Strict(bytes[3..], new UTF8Encoding(false, true), "UTF-8", name);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE, 0, 0])) return Strict(bytes[4..], new UTF32Encoding(false, false, true), "UTF-32", name);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE])) return Strict(bytes[2..], new UnicodeEncoding(false, false, true), "UTF-16", name);
        return bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) ? Strict(bytes[2..], new UnicodeEncoding(true, false, true), "UTF-16", name) : null;
    }

    private static DecodedText Unmarked(ReadOnlySpan<byte> bytes, string name)
    {
        int zeros = bytes.Count((byte)0);
        if (zeros > 0 && Zeros(bytes, 1) == zeros && zeros * 3 > bytes.Length) return Strict(bytes, new UnicodeEncoding(false, false, true), "UTF-16", name);
        if (zeros > 0 && Zeros(bytes, 0) == zeros && zeros * 3 > bytes.Length) return Strict(bytes, new UnicodeEncoding(true, false, true), "UTF-16", name);
        if (zeros > 0) throw NoText(name);
        try
        {
            return new DecodedText(new UTF8Encoding(false, true).GetString(bytes), "UTF-8", false);
        }
        catch (DecoderFallbackException)
        {
            string text = CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes);
            return text.Any(c => c is (>= '\u0080' and <= '\u009F') or (< ' ' and not ('\t' or '\r' or '\n' or '\f' or '\u001A'))) ? throw NoText(name) : new DecodedText(text, "Windows-1252", true);
        }
    }

    private static int Zeros(ReadOnlySpan<byte> bytes, int from)
    {
        int count = 0;
        for (int i = from; i < bytes.Length; i += 2)
            if (bytes[i] == 0) count++;
        return count;
    }

    private static DecodedText Strict(ReadOnlySpan<byte> bytes, Encoding encoding, string called, string name)
    {
        try
        {
            return new DecodedText(encoding.GetString(bytes), called, false);
        }
        catch (ArgumentException)
        {
            throw new UserMistake($"{name} says it is {called} and is not: some of its bytes are no characters. Save it as UTF-8.");
        }
    }

    private static UserMistake NoText(string name) => new($"{name} is no text in an encoding known here (UTF-8, UTF-16, Windows-1252). Save the table as CSV in UTF-8.");
}
