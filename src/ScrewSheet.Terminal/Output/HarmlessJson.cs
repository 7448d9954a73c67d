using System.Globalization;
using System.Text;

namespace ScrewSheet.Terminal.Output;

/// <summary>JSON text in which a terminal finds nothing to obey: what <see cref="PlainText"/> would show by number is written as <c>\uXXXX</c>.</summary>
internal static class HarmlessJson
{
    /// <summary>The same document; such characters stand only inside its strings, the line ends between them stay.</summary>
    public static string Of(string json)
    {
        StringBuilder plain = new(json.Length);
        foreach (Rune rune in json.EnumerateRunes())
        {
            if (rune.Value == '\n' || !PlainText.IsHidden(rune)) plain.Append(rune.ToString());
            else foreach (char unit in rune.ToString()) plain.Append(CultureInfo.InvariantCulture, $"\\u{(int)unit:X4}");
        }
        return plain.ToString();
    }
}
