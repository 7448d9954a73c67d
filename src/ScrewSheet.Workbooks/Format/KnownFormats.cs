using System.Diagnostics.CodeAnalysis;
using ScrewSheet.Quantities.Formatting;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads what stands in square brackets. The cells of a file share few formats, so the last ones are kept, for each thread its own.</summary>
internal static class KnownFormats
{
    private const int Most = 64;

    [ThreadStatic]
    private static Dictionary<string, DisplayFormat>? known;

    /// <summary>The format, or what to write instead.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, [NotNullWhen(true)] out DisplayFormat? format, [NotNullWhen(false)] out string? problem)
    {
        problem = null;
        known ??= new Dictionary<string, DisplayFormat>(StringComparer.Ordinal);
        if (known.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text, out format)) return true;
        string written = text.ToString();
        if (!DisplayFormatText.TryParse(written, out format, out problem)) return false;
        if (known.Count >= Most) known.Clear();
        known.Add(written, format);
        return true;
    }
}
