using System.Globalization;
using System.Text;
using CsCheck;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Studies.Tests.Support;

namespace ScrewSheet.Studies.Tests.Kernels;

/// <summary>Random workbooks: every entry by kernel is what opening the workbook with those givens gives, to 1e-12.</summary>
public sealed class RandomWorkbookTests
{
    private static readonly string[] Numbers = ["p", "q", "r"], Lengths = ["u", "v"];

    private static Gen<string> Of(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    // a number, over cells written so far
    private static Gen<string> Number(int depth, string[] numbers, string[] lengths)
    {
        Gen<string> leaf = Gen.OneOf(Of(numbers), Gen.Int[-40, 40].Select(n => (n / 8.0).ToString(CultureInfo.InvariantCulture)).Select(n => n[0] == '-' ? $"({n})" : n));
        if (depth == 0) return leaf;
        Gen<string> number = Number(depth - 1, numbers, lengths), length = Length(depth - 1, numbers, lengths), truth = Truth(depth - 1, numbers, lengths);
        return Gen.Frequency(
            (2, leaf),
            (4, Gen.Select(number, Of("+", "-", "*", "/"), number).Select((a, op, b) => $"({a} {op} {b})")),
            (2, Gen.Select(length, length).Select((a, b) => $"({a} / {b})")),
            (1, number.Select(a => $"Sqrt({a})")), (1, number.Select(a => $"Math.Exp({a})")), (1, number.Select(a => $"Math.Abs({a})")), (1, number.Select(a => $"Cbrt({a})")),
            (1, Gen.Select(number, Of("2", "3", "0.5", "-1", "1.5")).Select((a, n) => $"Pow({a}, {n})")),
            (1, Gen.Select(number, number).Select((a, b) => $"Math.Min({a}, {b})")), (1, Gen.Select(number, number).Select((a, b) => $"Twice({a}, {b})")),
            (1, Gen.Select(length, length).Select((a, b) => $"FallFactor({a}, {b})")),
            (2, Gen.Select(truth, number, number).Select((t, a, b) => $"({t} ? {a} : {b})")),
            (1, Gen.Select(number, number, number).Select((s, a, b) => $"({s} switch {{ < 0 => {a}, < 2 when p > 1 => {b}, _ => 1.5 }})")));
    }

    private static Gen<string> Length(int depth, string[] numbers, string[] lengths)
    {
        Gen<string> leaf = Gen.OneOf(Of(lengths), Gen.Int[1, 90].Select(n => $"{n} mm"));
        if (depth == 0) return leaf;
        Gen<string> length = Length(depth - 1, numbers, lengths), number = Number(depth - 1, numbers, lengths);
        return Gen.Frequency((2, leaf), (2, Gen.Select(length, Of("+", "-"), length).Select((a, op, b) => $"({a} {op} {b})")), (2, Gen.Select(number, length).Select((a, b) => $"({a} * {b})")));
    }

    private static Gen<string> Truth(int depth, string[] numbers, string[] lengths)
    {
        Gen<string> number = Number(Math.Max(0, depth - 1), numbers, lengths), length = Length(Math.Max(0, depth - 1), numbers, lengths);
        Gen<string> compare = Gen.OneOf(Gen.Select(number, Of("<", ">", "<=", ">="), number).Select((a, op, b) => $"{a} {op} {b}"), Gen.Select(length, Of("<", ">=", "<="), length).Select((a, op, b) => $"{a} {op} {b}"));
        return depth == 0 ? compare : Gen.Frequency((3, compare), (1, Gen.Select(compare, Of("&&", "||"), compare).Select((a, op, b) => $"({a}) {op} ({b})")), (1, compare.Select(a => $"!({a})")));
    }

    private static Gen<string> Book { get; } =
        from c1 in Number(2, Numbers, Lengths)
        from c2 in Length(2, [.. Numbers, "c1"], Lengths)
        from c3 in Number(3, [.. Numbers, "c1"], [.. Lengths, "c2"])
        from c4 in Truth(2, [.. Numbers, "c1", "c3"], [.. Lengths, "c2"])
        from c5 in Number(3, [.. Numbers, "c3"], Lengths)
        select new StringBuilder("screwsheet 1\nfunction double Twice(double a, double b) => a > b ? a * b : 2 * a - b\n\nsheet S\nA1 p = 1.25\nA2 q = -0.5 within -2 to 2\nA3 r = 3\nA4 u = 40 mm\nA5 v = 70 mm\n")
            .Append("B1 c_1 => ").Append(c1).Append("\nB2 c_2 => ").Append(c2).Append("\nB3 c_3 => ").Append(c3).Append("\nB4 c_4 => ").Append(c4).Append("\nB5 c_5 => ").Append(c5)
            .Replace("c1", "c_1").Replace("c2", "c_2").Replace("c3", "c_3").ToString();

    [Fact]
    public void EveryEntryByKernel_IsWhatOpeningTheWorkbookGives() => Book.Sample(text =>
    {
        StudyBook sheet = StudyBook.Of(text);
        foreach (string varied in new[] { "p: -2 to 2 step 0.5|q: -3 to 2 step 1.25", "u: 0 mm to 80 mm step 16 mm|r: 3, 0, -1e200" })
            sheet.IsWhatOpeningGives(sheet.Made("c_1, c_2, c_3, c_4, c_5", StudyMethod.Kernel, varied.Split('|')));
    }, iter: 120, threads: 1);

    [Fact]
    public void MostRandomCells_HaveAKernel()
    {
        long columns = 0, compiled = 0;
        Book.Sample(text =>
        {
            WhatIfTable table = StudyBook.Of(text).Made("c_1, c_3, c_5", StudyMethod.Kernel, "p: -2 to 2 step 0.5", "u: 0 mm to 80 mm step 16 mm");
            WhatIfColumn[] changing = [.. table.Columns.Where((column, i) => table.Notes.All(note => !note.Message.StartsWith(column.Label + " ", StringComparison.Ordinal)))];
            columns += changing.Length;
            compiled += changing.Count(column => column.IsCompiled);
        }, iter: 60, threads: 1);
        Assert.True(compiled > 0.8 * columns, $"{compiled} of {columns} have one");
    }
}
