using System.Globalization;

namespace ScrewSheet.Safety.Tests;

/// <summary>The bombs that are too large to be written down; the small ones are files of <c>tests/bombs</c>.</summary>
internal static class BombList
{
    private const string Steps = "needs more than", Held = "would hold more than", Shapes = "too many different expressions";

    private static readonly string NineHundred = string.Join(" + ", Enumerable.Repeat("x", 900));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Bomb> All { get; } =
    [
        new("ten million blank lines", () => "screwsheet 1\n" + new string('\n', 9_900_000), "1,000,000 lines", "run BOOK", "diff BOOK BOOK"),
        new("five million lines that are nothing", () => Bomb.Sheet(Bomb.UpTo(9_800_000, Enumerable.Repeat("x", 4_900_000))), "1,000,000 lines", "run BOOK"),
        new("a million lines that are nothing", () => Bomb.Sheet(Enumerable.Repeat("nothing", 999_000)), "10,000 lines", "run BOOK", "check BOOK"),
        new("half a million cells in fault", () => Bomb.Sheet(Bomb.UpTo(9_800_000, Bomb.Cells("ABCDE", "{0} x"))), "The cell holds nothing.", "check BOOK") { IsHeavy = true },
        new("more cells than a workbook takes", () => Bomb.Sheet(Bomb.UpTo(9_800_000, Bomb.Cells("ABCDEFG", "{0}=1"))), "500,000 cells", "run BOOK") { IsHeavy = true },
        new("half a million givens", () => Bomb.Sheet(Bomb.UpTo(9_800_000, Bomb.Cells("ABCDE", "{0}=1", 99_000))), "", "check BOOK", "export BOOK -o OUT.csv", "diff BOOK BOOK") { IsHeavy = true },
        new("one line of nine million letters", () => Bomb.Sheet("A1 \"" + new string('a', 9_000_000) + "\""), "262,144 characters", "run BOOK", "handout BOOK -o OUT.html"),
        new("a title of nine million letters", () => "screwsheet 1\ntitle " + new string('a', 9_000_000) + "\nsheet S\nA1 = 1\n", "262,144 characters", "run BOOK"),
        new("a type of a million types", () => Bomb.Sheet("A1 " + string.Concat(Enumerable.Repeat("A<", 1_000_000)) + "B" + new string('>', 1_000_000) + " x = 1"), "262,144 characters", "run BOOK"),
        new("a name of two hundred thousand letters", () => Bomb.Sheet("A1 " + new string('a', 200_000) + " = 1", "A2 => " + new string('a', 8000)), "too long for a name", "run BOOK"),
        new("a million sheets", () => "screwsheet 1\n" + string.Join('\n', Bomb.UpTo(9_800_000, Numbered("sheet S_{0}"))) + "\n", "500 sheets", "run BOOK"),
        new("a quarter of a million functions", () => "screwsheet 1\n" + string.Join('\n', Bomb.UpTo(9_800_000, Numbered("function double F_{0}(double x) => x"))) + "\nsheet S\n", "1,000 functions", "run BOOK"),
        new("a function of ten thousand parameters", () => "screwsheet 1\nfunction double F(" + string.Join(", ", Numbered("double p_{0}").Take(10_000)) + ") => 1\nsheet S\nA1 = 1\n", "64 parameters", "run BOOK"),
        new("texts that double", () => Bomb.Sheet(["A1=\"0123456789abcdef\"", .. Enumerable.Range(2, 8).Select(i => FormattableString.Invariant($"A{i}=>A{i - 1}+A{i - 1}")), .. Bomb.UpTo(9_000_000, Bomb.Cells("BCDEF", "{0}=>A8+A8", 98_000))]), Held, "check BOOK") { IsHeavy = true },
        new("texts that double, a tenth of it", () => Bomb.Sheet(["A1=\"0123456789abcdef\"", .. Enumerable.Range(2, 8).Select(i => FormattableString.Invariant($"A{i}=>A{i - 1}+A{i - 1}")), .. Bomb.Cells("B", "{0}=>A8+A8", 40_000)]), Held, "check BOOK"),
        new("as many series as rows", () => Bomb.Sheet([.. Bomb.Cells("A", "{0}=1", 99_998), .. Bomb.UpTo(8_500_000, Bomb.Cells("BCD", "{0}=>Count(Series(A{1},A99999))"))]), "5,000,000 cells together", "check BOOK") { IsHeavy = true },
        new("a thousand long series", () => Bomb.Sheet([.. Bomb.Cells("A", "{0}=1", 20_000), .. Bomb.Cells("B", "{0}=>Count(Series(A{1},A99999))", 1000)]), "5,000,000 cells together", "check BOOK"),
        new("long series read again and again", () => Bomb.Sheet([.. Bomb.Cells("A", "{0}=1", 50_000), .. Bomb.Cells("B", "{0}=>Sum(Series(A1,A99999))+Sum(Series(A2,A99999))+Sum(Series(A3,A99999))+Sum(Series(A4,A99999))+Sum(Series(A5,A99999))", 20_000)]), Steps, "check BOOK") { IsHeavy = true },
        new("copies of a column", () => Bomb.Sheet(["column A a", .. Bomb.Cells("A", "{0}=1", 50_000), .. Bomb.Cells("B", "{0}=>Map(a,x=>x)", 600)]), Held, "check BOOK"),
        new("histories of a hundred thousand points", () => Bomb.Sheet(Bomb.Cells("A", "{0}=>KelvinVoigtHistory(80 kg, 20 kN, 0.1 s, 5 m, 10 m, 10 s, 100000)", 400)), "", "check BOOK"),
        new("different expressions", () => Bomb.Sheet(Bomb.UpTo(9_800_000, Bomb.Cells("ABCDE", "{0}=>{2}+2"))), Shapes, "check BOOK") { IsHeavy = true },
        new("different expressions in fault", () => Bomb.Sheet(Bomb.UpTo(9_800_000, Bomb.Cells("ABCDE", "{0}=>{2}+"))), Shapes, "check BOOK") { IsHeavy = true },
        new("expressions as long as they may be", () => Bomb.Sheet(Bomb.UpTo(9_800_000, Bomb.Cells("A", "{0}=>" + string.Join('+', Enumerable.Repeat("1", 950)) + "+{2}", 4000))), Shapes, "check BOOK") { IsHeavy = true },
        new("a ring of a hundred thousand cells", () => Bomb.Sheet(["A1=>A99999", .. Enumerable.Range(2, 99_998).Select(i => FormattableString.Invariant($"A{i}=>A{i - 1}"))]), "and 99,935 more", "run BOOK") { IsHeavy = true },
        new("a ring of three thousand cells", () => Bomb.Sheet(["A1=>A3000", .. Enumerable.Range(2, 2999).Select(i => FormattableString.Invariant($"A{i}=>A{i - 1}"))]), "and 2,936 more", "run BOOK"),
        new("cautions that pile up", () => Bomb.Sheet(["A1=>Weight(200000 kg)", .. Enumerable.Range(2, 19_999).Select(i => FormattableString.Invariant($"A{i}=>A{i - 1}+Weight(200000 kg)"))]), "", "check BOOK"),
        new("unknown names beside known ones", () => Bomb.Sheet([.. Bomb.Cells("A", "{0} n{1}=1", 50_000), .. Bomb.Cells("B", "{0}=>m{1}", 50_000)]), "no cell named", "check BOOK"),
        new("a long lambda over a long column", () => Bomb.Sheet(["column A a", .. Bomb.Cells("A", "{0}=1", 90_000), FormattableString.Invariant($"B1=>Sum(Map(a,x=>{NineHundred}))")]), Steps, "check BOOK"),
        new("lambdas in lambdas", () => Bomb.Sheet(["column A a", .. Bomb.Cells("A", "{0}=1", 20_000), "B1=>Sum(Map(a,x=>Sum(Map(a,y=>x+y))))", "B2=>All(a,x=>Any(a,y=>y>x))"]), Steps, "check BOOK"),
        new("a table of a million entries", () => Bomb.Sheet(["A1 a = 1", "A2 b = 1", "A3 c => Sqrt(a * a + b * b)", "what-if D1 \"all\"", "  vary a: 1 to 1000 step 1", "  vary b: 1 to 1000 step 1", "  show c"]), "", "what-if BOOK --format csv") { IsHeavy = true },
        new("a table of more entries than it may have", () => Bomb.Sheet(["A1 a = 1", "A2 b = 1", "A3 c => a + b", "what-if D1 \"all\"", "  vary a: 1 to 2000 step 1", "  vary b: 1 to 2000 step 1", "  show c"]), "1,000,000", "what-if BOOK"),
        new("a thousand tables", () => Bomb.Sheet(["A1 a = 1", "A3 c => a + 1", .. Enumerable.Range(0, 999).SelectMany(i => new[] { FormattableString.Invariant($"what-if D{(i * 90) + 1}"), "  vary a: 1 to 80 step 1", "  show c" })]), "", "what-if BOOK"),
        new("a show line of a hundred thousand names", () => Bomb.Sheet(["A1 a = 1", "A3 c => a + 1", "what-if D1", "  vary a: 1, 2", "  show " + string.Join(',', Enumerable.Repeat("c", 100_000))]), "256 results", "what-if BOOK"),
        new("a table of texts", () => Bomb.Sheet(["A1 = \"0123456789abcdef\"", .. Enumerable.Range(2, 7).Select(i => FormattableString.Invariant($"A{i} => A{i - 1} + A{i - 1}")), "B1 a = 1", "B2 label => $\"{a}\" + A8 + A7", "what-if D1", "  vary a: 1 to 20000 step 1", "  show label"]), "texts, records or faults", "what-if BOOK"),
        new("a table of faults", () => Bomb.Sheet(["B1 a = 1", "B2 wrong => Sqrt(-a)", "what-if D1", "  vary a: 1 to 200000 step 1", "  show wrong"]), "texts, records or faults", "what-if BOOK"),
        new("a hundred thousand uncertain givens", () => Bomb.Sheet(["column A a", .. Bomb.Cells("A", "{0}=1 ± 1", 90_000), "B1 total=>Sum(a)"]), "500 are the most", "uncertainty BOOK --cell total"),
        new("a solve through a long column", () => Bomb.Sheet(["column A a", .. Bomb.Cells("A", "{0}=1", 10_000), "B1 by=1", "B2 total=>Sum(Map(a,x=>x*by))"]), "", "solve BOOK --cell total --equals 20000 --by by"),
        new("merging a hundred thousand cells", () => Bomb.Sheet(Bomb.Cells("A", "{0}=1", 90_000)), "", "merge BOOK BOOK BOOK -o OUT.screwsheet") { IsHeavy = true },
    ];

    private static IEnumerable<string> Numbered(string text) => Enumerable.Range(1, 2_000_000).Select(i => string.Format(CultureInfo.InvariantCulture, text, i));
}
