using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports;

/// <summary>Text that a program which opens tables could take for a formula.</summary>
public static class HarmlessStart
{
    private const string Signs = "=+-@＝＋－＠";

    /// <summary>True where the first character that is not blank is a sign a formula begins with, narrow or wide.</summary>
    public static bool LooksLikeFormula(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string start = text.TrimStart();
        return start.Length > 0 && Signs.Contains(start[0], StringComparison.Ordinal);
    }

    /// <summary>The text with what cannot be seen shown by number, and an apostrophe before it where it would look like a formula.</summary>
    public static string Of(string text)
    {
        string plain = VisibleText.Of(text);
        return LooksLikeFormula(plain) ? "'" + plain : plain;
    }
}
