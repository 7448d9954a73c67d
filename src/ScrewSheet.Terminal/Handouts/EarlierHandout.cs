using System.Text;
using ScrewSheet.Exports.Html;
using ScrewSheet.Exports.Markdown;
using ScrewSheet.Terminal.Files;

namespace ScrewSheet.Terminal.Handouts;

/// <summary>Writes a handout to a new file, or over one that was written before; never over anything else.</summary>
internal static class EarlierHandout
{
    /// <summary>Writes it.</summary>
    /// <exception cref="UserMistake">Another file is there, or it cannot be written.</exception>
    public static void Write(string path, byte[] bytes)
    {
        if (!Path.Exists(path) || Directory.Exists(path))
        {
            SafeWrite.Create(path, bytes);
            return;
        }
        byte[] before = BoundedRead.All(path);
        if (!IsOne(before)) throw new UserMistake($"{FileTrouble.Quoted(path)} is there already, is no handout and was left as it is. Choose another name.");
        SafeWrite.Replace(path, before, bytes);
    }

    private static bool IsOne(ReadOnlySpan<byte> file) => file.StartsWith(Encoding.UTF8.GetBytes(HandoutHtml.FirstLine)) || file.StartsWith(Encoding.UTF8.GetBytes(HandoutMarkdown.FirstLine))
        || (file.StartsWith("%PDF-"u8) && file.EndsWith(Encoding.ASCII.GetBytes(Printing.LastLine)));
}
