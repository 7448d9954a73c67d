using System.Globalization;
using System.Text;

namespace ScrewSheet.TestKit;

/// <summary>Workbooks with hostile texts in them, each beside honest cells it would like to use.</summary>
public static class HostileBooks
{
    private const string Parameters = "Force peak, Length exposed, double count, string word, bool yes, Material steel, Series<Force> pull, Series<string> words";

    private static readonly string[] Honest =
    [
        "sheet S", "column F pull [kN]", "column G words",
        "A1 peak [kN] = 8.5 kN ± 0.5 kN", "A2 exposed [mm] = 40 mm within 0 mm to 120 mm", "A3 count = 7", "A4 word = \"pull-out\"", "A5 yes = true",
        "A6 Material steel = Materials.Steel4130Normalised", "A7 Torque moment => peak * exposed", "A8 note \"words\"", "A9 broken => 1 / (count - count)",
        "F2 = 4 kN", "F3 = 5 kN", "F4 = 6 kN", "G2 = \"a\"", "G3 = \"b\"", "G4 = \"c\"",
    ];

    private static readonly string[] Head = ["screwsheet 1", "function Force Twice(Force f) => f * 2"];

    /// <summary>The workbook without anything hostile, but with one cell in fault.</summary>
    public static string HonestOnly => Joined([.. Head, .. Honest]);

    /// <summary>Where the first line put in stands, from 1.</summary>
    public static int FirstLine(HostilePlace place) => place is HostilePlace.Head or HostilePlace.HarmlessHead ? Head.Length + 1 : Head.Length + Honest.Length + 1;

    /// <summary>The cells' lines with the texts as expressions of results from B1 on, of givens from C1 on.</summary>
    public static string Cells(IReadOnlyList<string> expressions) =>
        Joined([.. Head, .. Honest, .. Filled("B", "=>", expressions), .. Filled("C", "=", expressions)]);

    /// <summary>The texts as bodies of functions, one a line from <see cref="FirstLine"/> of a head on.</summary>
    public static string Functions(IReadOnlyList<string> bodies) =>
        Joined([.. Head, .. bodies.Select((body, i) => string.Create(CultureInfo.InvariantCulture, $"function double Hostile_{i}({Parameters}) => {body}")), .. Honest]);

    /// <summary>One line of a sheet, of the head, or of a what-if table.</summary>
    public static string Of(HostileCell cell) => cell.Place switch
    {
        HostilePlace.Line or HostilePlace.HarmlessLine => Joined([.. Head, .. Honest, cell.Text]),
        HostilePlace.Head or HostilePlace.HarmlessHead => Joined([.. Head, cell.Text, .. Honest]),
        HostilePlace.Table => Joined([.. Head, .. Honest, "what-if K1 \"table\"", "  " + cell.Text, cell.Text.StartsWith("show", StringComparison.Ordinal) ? "  vary peak: 1 kN, 2 kN" : "  show moment"]),
        HostilePlace.Expression => Cells([cell.Text]),
        _ => throw new ArgumentOutOfRangeException(nameof(cell), cell.Place, "It is typed, not written in a file."),
    };

    private static IEnumerable<string> Filled(string column, string sign, IReadOnlyList<string> expressions) =>
        expressions.Select((expression, i) => string.Create(CultureInfo.InvariantCulture, $"{column}{i + 1} {sign} {expression}"));

    // a file is UTF-8, which has no half characters
    private static string Joined(IEnumerable<string> lines) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n"));
}
