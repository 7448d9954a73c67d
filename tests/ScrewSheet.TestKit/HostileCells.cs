using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace ScrewSheet.TestKit;

/// <summary>Where a hostile text stands in a workbook.</summary>
public enum HostilePlace
{
    /// <summary>An expression: of a result, of a given, of a function.</summary>
    Expression,

    /// <summary>A line of a sheet.</summary>
    Line,

    /// <summary>A line before the first sheet.</summary>
    Head,

    /// <summary>A line of a what-if table.</summary>
    Table,

    /// <summary>What is typed into a cell of the grid.</summary>
    Entry,

    /// <summary>A line of a sheet that is no fault and must be shown harmlessly.</summary>
    HarmlessLine,

    /// <summary>A line before the first sheet that is no fault and must be shown harmlessly.</summary>
    HarmlessHead,
}

/// <summary>One text a stranger might send.</summary>
/// <param name="Kind">The file it stands in, without ending.</param>
/// <param name="Row">Its line there, from 1.</param>
/// <param name="Place">Where it goes.</param>
/// <param name="Text">The text.</param>
public sealed record HostileCell(string Kind, int Row, HostilePlace Place, string Text)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Kind}.txt:{Row}";
}

/// <summary>
/// The folder <c>tests/hostile</c>: one file a kind, one text a line, in sections such as <c>[expression]</c>; a line that begins with <c>//</c> and a blank
/// on the first line of a file says what the kind is about. A character no reader would see is written by its number, as the program shows it: <c>‹U+202E›</c>.
/// </summary>
public static partial class HostileCells
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<HostileCell> All { get; } =
        [.. Directory.GetFiles(Path.Combine(GoldenFile.Root, "tests", "hostile"), "*.txt").Order(StringComparer.Ordinal).SelectMany(Read)];

    /// <summary>Those of one place.</summary>
    public static IEnumerable<HostileCell> At(HostilePlace place) => All.Where(cell => cell.Place == place);

    private static IEnumerable<HostileCell> Read(string file)
    {
        HostilePlace? place = null;
        string[] lines = File.ReadAllLines(file);
        for (int i = 1; i < lines.Length; i++)
        {
            if (Section(lines[i]) is { } section) place = section;
            else yield return new HostileCell(Path.GetFileNameWithoutExtension(file), i + 1, place ?? throw new InvalidDataException($"{file}: a section comes first."), Decoded(lines[i]));
        }
    }

    private static HostilePlace? Section(string line) => line switch
    {
        "[expression]" => HostilePlace.Expression,
        "[line]" => HostilePlace.Line,
        "[head]" => HostilePlace.Head,
        "[table]" => HostilePlace.Table,
        "[entry]" => HostilePlace.Entry,
        "[harmless]" => HostilePlace.HarmlessLine,
        "[harmless head]" => HostilePlace.HarmlessHead,
        _ => null,
    };

    private static string Decoded(string line) => Numbered().Replace(line, match =>
    {
        int code = int.Parse(match.Groups[1].ValueSpan, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
        return Rune.IsValid(code) ? new Rune(code).ToString() : ((char)code).ToString();
    });

    [GeneratedRegex("‹U\\+([0-9A-F]{4,5})›")]
    private static partial Regex Numbered();
}
