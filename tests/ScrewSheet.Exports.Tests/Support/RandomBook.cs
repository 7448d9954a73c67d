using System.Globalization;
using CsCheck;

namespace ScrewSheet.Exports.Tests.Support;

/// <summary>Random workbooks of everything that has a form in a formula: units, powers, choices, texts, the author's and the library's functions, runs, and a what-if table.</summary>
internal static class RandomBook
{
    private static readonly string[] Numbers = ["p", "q", "r"], Lengths = ["u", "v"];

    private static Gen<string> Literal { get; } = Gen.Int[-40, 40].Select(n => (n / 8.0).ToString(CultureInfo.InvariantCulture)).Select(n => n[0] == '-' ? $"({n})" : n);

    /// <summary>What stands for the first given, so that another value can be put in its place.</summary>
    public const string First = "1.25";

    /// <summary>Whole workbooks.</summary>
    public static Gen<string> Text { get; } =
        from c1 in Number(2, Numbers, Lengths)
        from c2 in Length(2, [.. Numbers, "c_1"], Lengths)
        from c3 in Number(3, [.. Numbers, "c_1"], [.. Lengths, "c_2"])
        from c4 in Truth(2, [.. Numbers, "c_1", "c_3"], [.. Lengths, "c_2"])
        from c5 in Torque(2, [.. Numbers, "c_3"], [.. Lengths, "c_2"])
        from c6 in Words(2)
        from units in Of("mm", "in", "m", "cm", "ft")
        from torque in Of("N·m", "kN·m", "ft·lbf")
        from digits in Of("", ", 2 decimals", ", 3 digits", ", 1 decimal down")
        select $"""
            screwsheet 1
            function double Twice(double a, double b) => a > b ? a * b : 2 * a - b

            sheet S
            A1 p = {First}
            A2 q = -0.5 within -2 to 2
            A3 r [%] = 40 %
            A4 u [{units}] = 40 mm
            A5 v = 70 mm
            A6 load [kN] = 8.5 kN
            A7 wet = true
            A8 note = "pull-out"
            A9 angle [°] = 15 °
            A10 warm [°C] = -4 °C
            B1 c_1 => {c1}
            B2 c_2 [{units}{digits}] => {c2}
            B3 c_3 => {c3}
            B4 c_4 => {c4}
            B5 Torque c_5 [{torque}] => {c5}
            B6 c_6 => {c6}
            B7 c_7 [%] => c_4 ? c_1 : r
            B8 c_8 => Sum(Series(A4, A5)) / u

            sheet Other
            A1 p = 3
            B1 total => S.p * p + S.c_1
            what-if D2 "Table"
              vary S.p: -1 to 2 step 1
              vary S.u: 20 mm, 30 mm, 55 mm
              show S.c_2, S.c_3, S.c_4

            """;

    private static Gen<string> Of(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    private static Gen<string> Number(int depth, string[] numbers, string[] lengths)
    {
        Gen<string> leaf = Gen.OneOf(Of(numbers), Literal);
        if (depth == 0) return leaf;
        Gen<string> number = Number(depth - 1, numbers, lengths), length = Length(depth - 1, numbers, lengths), truth = Truth(depth - 1, numbers, lengths);
        return Gen.Frequency(
            (2, leaf),
            (5, Gen.Select(number, Of("+", "-", "*", "/"), number).Select((a, op, b) => $"({a} {op} {b})")),
            (1, Gen.Select(number, Of("+", "-"), number).Select((a, op, b) => $"-{a} {op} {b}")),
            (2, Gen.Select(length, length).Select((a, b) => $"({a} / {b})")),
            (2, Gen.Select(Of("Sqrt", "Cbrt", "Math.Exp", "Math.Abs", "Math.Floor", "Math.Ceiling"), number).Select((f, a) => $"{f}({a})")),
            (1, Gen.Select(number, Of("2", "3", "0.5", "-1", "1.5", "0")).Select((a, n) => $"Pow({a}, {n})")),
            (1, Gen.Select(number, number).Select((a, b) => $"Pow({a}, {b})")),
            (1, Gen.Select(number, Of("2", "3", "5")).Select((a, n) => $"Root({a}, {n})")),
            (1, Gen.Select(Of("Math.Min", "Math.Max", "Twice"), number, number).Select((f, a, b) => $"{f}({a}, {b})")),
            (1, Of("Sin(angle)", "Cos(2 * angle)", "Tan(angle / 3)")),
            (1, Gen.Select(length, length).Select((a, b) => $"FallFactor({a}, {b})")),
            (2, Gen.Select(truth, number, number).Select((t, a, b) => $"({t} ? {a} : {b})")),
            (1, Gen.Select(number, number, number).Select((s, a, b) => $"({s} switch {{ < 0 => {a}, < 2 when p > 1 => {b}, _ => 1.5 }})")));
    }

    private static Gen<string> Length(int depth, string[] numbers, string[] lengths)
    {
        Gen<string> leaf = Gen.OneOf(Of(lengths), Gen.Int[1, 90].Select(n => $"{n} mm"), Gen.Int[1, 9].Select(n => $"{n} in"));
        if (depth == 0) return leaf;
        Gen<string> length = Length(depth - 1, numbers, lengths), number = Number(depth - 1, numbers, lengths);
        return Gen.Frequency((2, leaf), (2, Gen.Select(length, Of("+", "-"), length).Select((a, op, b) => $"({a} {op} {b})")), (2, Gen.Select(number, length).Select((a, b) => $"({a} * {b})")),
            (1, length.Select(a => $"Sqrt({a} * {a})")), (1, Gen.Select(length, length).Select((a, b) => $"Tube({a}, {b}).Bore")));
    }

    private static Gen<string> Torque(int depth, string[] numbers, string[] lengths) =>
        Gen.OneOf(Gen.Select(Number(depth, numbers, lengths), Length(depth, numbers, lengths)).Select((a, b) => $"load * {b} * {a}"), Length(depth, numbers, lengths).Select(b => $"PlasticMoment(Tube(17 mm, 1.5 mm).PlasticModulus, 500 MPa) - load * {b}"));

    private static Gen<string> Truth(int depth, string[] numbers, string[] lengths)
    {
        Gen<string> number = Number(Math.Max(0, depth - 1), numbers, lengths), length = Length(Math.Max(0, depth - 1), numbers, lengths);
        Gen<string> compare = Gen.OneOf(
            Gen.Select(number, Of("<", ">", "<=", ">="), number).Select((a, op, b) => $"{a} {op} {b}"), Gen.Select(length, Of("<", ">=", "<="), length).Select((a, op, b) => $"{a} {op} {b}"),
            Of("wet", "!wet", "note == \"pull-out\"", "note != \"Pull-Out\"", "note.Contains(\"out\")", "note.StartsWith(\"pull\")", "note.EndsWith(\"-OUT\")", "load > 3 kN"),
            Gen.Select(length, length).Select((a, b) => $"Near({a}, {b}, 1 mm)"));
        return depth == 0 ? compare : Gen.Frequency((3, compare), (1, Gen.Select(compare, Of("&&", "||"), compare).Select((a, op, b) => $"({a}) {op} ({b})")), (1, compare.Select(a => $"!({a})")));
    }

    private static Gen<string> Words(int depth) => depth == 0
        ? Of("note", "\"broken\"", "\"5 \\\" x\"", "\"=1+1\"")
        : Gen.OneOf(Words(0), Gen.Select(Words(depth - 1), Words(depth - 1)).Select((a, b) => $"({a} + {b})"), Gen.Select(Truth(0, Numbers, Lengths), Words(depth - 1), Words(depth - 1)).Select((t, a, b) => $"({t} ? {a} : {b})"), Gen.Const("$\"<{note}>\""));
}
