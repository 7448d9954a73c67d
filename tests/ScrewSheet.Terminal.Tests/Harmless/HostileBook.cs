using System.Text;
using System.Text.RegularExpressions;

namespace ScrewSheet.Terminal.Tests.Harmless;

/// <summary>Where a reader must find what the author wrote.</summary>
[Flags]
internal enum Place
{
    Nowhere = 0,

    /// <summary>What <c>run</c> prints.</summary>
    Run = 1,

    /// <summary>A handout, in each of its forms.</summary>
    Handout = 2,

    /// <summary>The xlsx.</summary>
    Xlsx = 4,

    /// <summary>What <c>what-if</c> prints, in each of its forms.</summary>
    WhatIf = 8,

    /// <summary>The terminal.</summary>
    Grid = 16,

    /// <summary>The JSON and CSV that <c>run</c> prints.</summary>
    Data = 32,

    All = Run | Handout | Xlsx | Grid | Data,
}

/// <summary>A workbook with a marked hostile text in every place that takes one: well-formed where quotes hold it, and wherever a line, a word, a unit, a number can be spoilt.</summary>
internal static partial class HostileBook
{
    /// <summary>Lines with <c>{Q}</c> for a text in quotes, <c>{R}</c> for a bare one; where what they say must be found.</summary>
    private static readonly (string Line, Place Shown)[] Lines =
    [
        ("title {R}", Place.All & ~Place.Data & ~Place.Grid),
        ("author {R}", Place.Run | Place.Handout | Place.Xlsx),
        ("date {R}", Place.Run | Place.Handout | Place.Xlsx),
        ("made with {R}", Place.Nowhere),
        ("units {R}", Place.Nowhere), ("seed {R}", Place.Nowhere), ("results {R}", Place.Nowhere),
        ("// {R}", Place.Nowhere),
        ("function string Words(string t) => t + \"{Q}\"", Place.Nowhere),
        ("function string Fault(string t) => t.{R}", Place.Nowhere),
        ("function {R} Typed() => 1", Place.Nowhere), ("function string {R}() => 1", Place.Nowhere), ("function string Under(string {R}) => 1", Place.Nowhere),
        ("correlate {R}, given 0.5", Place.Nowhere), ("reviewed {R}", Place.Nowhere),
        ("conflict\n  ours author {R}\n  theirs {R}", Place.Nowhere),
        ("", Place.Nowhere),
        ("sheet Hostile \"{Q}\"", Place.Run | Place.Handout),
        ("widths A 40, B 40, {R}", Place.Nowhere), ("widths A 40, B 40", Place.Nowhere),
        ("column Z {R}", Place.Nowhere), ("column Z force [{R}]", Place.Nowhere), ("column H words // {R}", Place.Nowhere), ("column I counts [N]", Place.Nowhere),
        ("H1 \"{Q}\"", Place.All & ~Place.Handout), ("H2 = \"{Q}\"", Place.All), ("I1 \"{Q}\"", Place.All & ~Place.Handout), ("I2 = 3 N", Place.Nowhere), ("I3 = 4 N", Place.Nowhere),
        ("A1 \"{Q}\"", Place.All),
        ("A2 \"{Q}\"", Place.All),
        ("B2 given [kN] = 8.5 kN ± 0.5 kN within 1 kN to 10 kN source \"{Q}\"", Place.Handout),
        ("B3 text = \"{Q}\"", Place.All & ~Place.Grid), ("B37 said = 3 // remark {R}", Place.Grid), ("B38 told => given + given // remark {R}", Place.Grid),
        ("B4 joined => text + \"{Q}\"", (Place.All & ~Place.Grid) | Place.WhatIf),
        ("B5 hole => $\"{given} {Q} {text}\"", Place.All),
        ("B6 kept => text gives \"{Q}\"", Place.Run),
        ("B7 bad => given > 1 kN gives {R}", Place.Nowhere),
        ("B8 own => Words(\"{Q}\")", Place.All),
        ("B9 faulty => Fault(\"{Q}\")", Place.Nowhere),
        ("B10 {R} = 3 kN", Place.Nowhere), ("B11 {R} x = 3 kN", Place.Nowhere), ("B12 x{R} = 3 kN", Place.Nowhere),
        ("B13 [{R}] = 3 kN", Place.Nowhere), ("B14 [kN, {R}] = 3 kN", Place.Nowhere),
        ("B15 = 3 {R}", Place.Nowhere), ("B16 = 3{R} kN", Place.Nowhere), ("B17 = {R}", Place.Nowhere), ("B18 = 3 kN ± {R}", Place.Nowhere), ("B19 = 3 kN within {R}", Place.Nowhere), ("B20 = 3 kN source {R}", Place.Nowhere),
        ("B21 => missing{R} + 1", Place.Nowhere), ("B22 => {R}", Place.Nowhere), ("B23 => text.{R}", Place.Nowhere), ("B24 => Words({R})", Place.Nowhere), ("B25 => Elsewhere{R}.B2", Place.Nowhere),
        ("B26 => 3 {R}", Place.Nowhere), ("B27 => $\"{given:{R}}\"", Place.Nowhere), ("B28 => \"\\{R}\"", Place.Nowhere), ("B29 => given switch { {R} => 1, _ => 2 }", Place.Nowhere),
        ("B30 \"{Q}\" {R}", Place.Nowhere), ("B31 {R}", Place.Nowhere), ("{R}", Place.Nowhere), ("B36 once = 3 // {R}", Place.Nowhere), ("B36 doubled = 3 // {R}", Place.Nowhere),
        ("B32 conflict\n  ours one = \"{Q}\"\n  theirs {R}", Place.Nowhere),
        ("reviewed {R} 2026-11-25 0123456789abcdef", Place.Nowhere), ("reviewed KM 2026-11-25 {R}", Place.Nowhere),
        ("B33 twice => 2 * given", Place.Nowhere), ("B39 thrice => 3 * given // {R}", Place.Nowhere),
        ("reviewed KM 2026-11-25 0123456789abcdef", Place.Nowhere),
        ("B34 fails => twice < 1 kN // {R}", Place.Nowhere),
        ("B35 waits => faulty + \"x\" // {R}", Place.Nowhere),
        ("what-if D40 \"{Q}\"\n  vary given: 8 kN, 9 kN\n  show twice, joined", Place.WhatIf | Place.Handout | Place.Xlsx | Place.Grid),
        ("what-if D50 \"{Q}\"\n  vary text: \"{Q}\", \"b\"\n  show joined, own", Place.WhatIf | Place.Handout | Place.Xlsx),
        ("what-if D60 \"{Q}\"\n  vary {R}: 1, 2\n  show twice", Place.Nowhere),
        ("what-if D70 \"{Q}\"\n  vary given: {R}\n  show {R}", Place.Nowhere),
        ("what-if D80 {R}", Place.Nowhere), ("what-if D81\n  vary {R}\n  {R}", Place.Nowhere),
        ("plot K40 \"{Q}\" of D40", Place.Handout), ("plot K50 \"{Q}\" of {R}", Place.Nowhere), ("plot {R}", Place.Nowhere),
        ("// {R}", Place.Nowhere),
        ("", Place.Nowhere),
        ("sheet S{R} \"{Q}\"", Place.Nowhere), ("A1 \"{Q}\"", Place.Nowhere),
        ("sheet Other \"{Q}\" {R}", Place.Nowhere), ("sheet Other \"{Q}\"", Place.Run | Place.Handout), ("A1 \"{Q}\"", Place.All),
    ];

    /// <summary>The file.</summary>
    public static string Of(string hostile)
    {
        StringBuilder file = new("screwsheet 1\nunits SI\n");
        for (int i = 0; i < Lines.Length; i++) file.Append(Filled(Lines[i].Line, hostile + Marker(i))).Append('\n');
        return file.ToString();
    }

    /// <summary>A workbook without faults, for what computes only such.</summary>
    public static string Small(string hostile) => Filled("screwsheet 1\ntitle {R}\nsheet Hostile \"{Q}\"\nA1 \"{Q}\"\nA2 \"{Q}\"\nB2 given [kN] = 8.5 kN ± 0.5 kN source \"{Q}\"\nB3 twice => 2 * given\n", hostile + Marker(0));

    /// <summary>The same with other words in every quoted text and other numbers: a later version.</summary>
    public static string Later(string hostile) => Of("later" + hostile).Replace("8.5 kN", "8.6 kN", StringComparison.Ordinal);

    /// <summary>The marks a reader must find there. Where a bare text steers, its line is a fault, so only quoted ones count then.</summary>
    public static IEnumerable<string> Marks(Place place, string hostile) =>
        Enumerable.Range(0, Lines.Length).Where(i => Lines[i].Shown.HasFlag(place) && (!hostile.Any(HostileText.SpoilsALine) || !Lines[i].Line.Contains("{R}", StringComparison.Ordinal))).Select(Marker);

    /// <summary>All marks a text holds, wherever it is broken over lines.</summary>
    public static IEnumerable<string> Found(string text) => MarkPattern().Matches(Unbroken(text)).Select(match => match.Value).Distinct();

    private static string Unbroken(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static string Marker(int index) => $"q{index:00}z";

    private static string Filled(string line, string text) => line
        .Replace("{Q}", HostileText.InQuotes(text), StringComparison.Ordinal).Replace("{R}", HostileText.InALine(text), StringComparison.Ordinal);

    [GeneratedRegex("q[0-9][0-9]z")]
    private static partial Regex MarkPattern();
}
