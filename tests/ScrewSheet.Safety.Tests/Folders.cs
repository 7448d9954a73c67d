using System.Globalization;
using System.Text;
using ScrewSheet.TestKit;

namespace ScrewSheet.Safety.Tests;

/// <summary>The workbooks that are opened under watch: hostile ones, and harmless ones of the same names that do all that honest workbooks do, wrongly too.</summary>
internal static class Folders
{
    /// <summary>Ordinary mistakes, so that the harmless run words faults of every sort, loads what that takes, and draws what-if tables in fault.</summary>
    private static readonly string[] Slips =
    [
        "peek * 2", "peak + 1", "peak + exposed", "Wieght(1 kg)", "Weight()", "peak * ", "(peak", "peak.Nothing", "word + 1", "1 kN to 2", "count switch { 1 => 2 }", "steel with { YieldStrength = 1 kN }",
        "Sum(pull) * 2", "Map(pull, x => x * 2)", "pull.Where(words, \"a\")", "$\"{peak:mm}\"", "\"unclosed", "x => x", "40m", "#1", "steel.YieldStrength * 2", "Weight(80 kg)", "Sin(30 deg)", "Sqrt(-1)",
    ];

    private static readonly string[] SlipsOfLines =
    [
        "B1 x y z = 1", "B2 = 5 kN within 0 kN to 1 kN", "B3 [kN = 1 kN", "b4 = 1", "B5 = 1 kN ± 1 mm", "B6 => B6", "nothing", "B7 \"a note\" // with a remark", "B8 = 1 kN source \"a book\"", "plot F30 of K1", "correlate peak, exposed 0.5", "widths A 0",
        "sheet Other \"another title\"",
    ];

    private static readonly string[] SlipsOfTables = ["vary peak: 1 kN, 2 kN", "vary nothing: 1, 2", "vary peak: 1 kN to 2 mm step 1 kN", "vary peak: 1 kN to 3 kN over 2 steps", "show nothing", "show moment"];

    private static readonly string[] SlipsOfHeads = ["colour red", "units XX", "title A title", "function double F(double x) => y", "function double F(double x) =>"];

    /// <summary>Every text of <c>tests/hostile</c>.</summary>
    public static void Hostile(string folder)
    {
        string[] expressions = Texts(HostilePlace.Expression);
        Write(folder, expressions, [.. Texts(HostilePlace.Line), .. Texts(HostilePlace.HarmlessLine)], Texts(HostilePlace.Table), [.. Texts(HostilePlace.Head), .. Texts(HostilePlace.HarmlessHead)]);
    }

    /// <summary>As many honest texts.</summary>
    public static void Harmless(string folder)
    {
        int heads = Texts(HostilePlace.Head).Length + Texts(HostilePlace.HarmlessHead).Length;
        // as many cells, since many are read on several threads
        Write(folder, [.. Enumerable.Range(0, Texts(HostilePlace.Expression).Length).Select(i => Slips[i % Slips.Length])], SlipsOfLines, SlipsOfTables, [.. Enumerable.Range(0, heads).Select(i => SlipsOfHeads[i % SlipsOfHeads.Length])]);
    }

    private static string[] Texts(HostilePlace place) => [.. HostileCells.At(place).Select(cell => cell.Text)];

    private static void Write(string folder, string[] expressions, string[] lines, string[] tables, string[] heads)
    {
        Directory.CreateDirectory(folder);
        Put("cells", HostileBooks.Cells(expressions));
        Put("functions", HostileBooks.Functions(expressions));
        Put("lines", HostileBooks.HonestOnly + string.Join('\n', lines.Select(Moved)) + "\n");
        Put("tables", HostileBooks.HonestOnly + string.Concat(tables.Select(Table)));
        for (int i = 0; i < heads.Length; i++) Put(string.Create(CultureInfo.InvariantCulture, $"head-{i:D3}"), HostileBooks.Of(new HostileCell("", 0, HostilePlace.Head, heads[i])));
        File.WriteAllLines(Path.Combine(folder, "expressions.txt"), expressions, new UTF8Encoding(false));

        void Put(string name, string text) => File.WriteAllText(Path.Combine(folder, name + ".screwsheet"), text, new UTF8Encoding(false));
    }

    /// <summary>The cell B1 of each line on a row of its own.</summary>
    private static string Moved(string line, int i) => line.StartsWith("B1 ", StringComparison.Ordinal) ? string.Create(CultureInfo.InvariantCulture, $"H{i + 1} {line[3..]}") : line;

    private static string Table(string line, int i) => string.Create(CultureInfo.InvariantCulture,
        $"what-if K{(i * 20) + 1} \"table\"\n  {line}\n  {(line.StartsWith("show", StringComparison.Ordinal) ? "vary peak: 1 kN, 2 kN" : "show moment")}\n");
}
