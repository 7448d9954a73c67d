using ScrewSheet.Studies.Solving;
using ScrewSheet.Studies.Tests.Support;
using ScrewSheet.TestKit;
using static ScrewSheet.TestKit.CheckRow;

namespace ScrewSheet.Studies.Tests.Checks;

/// <summary>Equations with known roots, each solved backwards in a workbook.</summary>
internal static class RootChecks
{
    private const string Group = "Solving backwards";

    [CheckTable]
    public static IEnumerable<CheckRow> Roots =>
    [
        Row("x³ - 2x - 5 = 0 (Wallis)", 2.0945514815423265915, "Pow(x, 3) - 2 * x", "5"),
        Row("cos x = x", 0.73908513321516064166, "Cos(x) - x / 1 rad", "0", unit: " rad"),
        Row("x e^x = 1", 0.56714329040978387300, "x * Math.Exp(x)", "1"),
        Row("e^x = 3x, the smaller root", 0.61906128673594511215, "Math.Exp(x) - 3 * x", "0", "0", "1"),
        Row("e^x = 3x, the greater root", 1.5121345516578424739, "Math.Exp(x) - 3 * x", "0", "1", "2"),
        Row("E - 0.5 sin E = 1 (Kepler)", 1.4987011335178483141, "x / 1 rad - 0.5 * Sin(x)", "1", unit: " rad"),
        Row("touching: (x - 1)² = 0", 1, "Pow(x - 1, 2)", "0", "0", "2.3", 1e-7),
        Arithmetic(Group, "rope modulus from an impact force of 6971.05173722 N, 80 kg, fall factor 1, N", 24000, "", () => Solved(
            "A1 modulus = 20 kN\nA2 f => ImpactForce(80 kg, modulus, 1)", "f", "6971.05173722 N", "modulus"), 1e-9),
        Arithmetic(Group, "rope modulus from 9 kN, 80 kg, fall factor 1.77, N", 24080.866261021, "", () => Solved(
            "A1 modulus = 20 kN\nA2 f => ImpactForce(80 kg, modulus, 1.77)", "f", "9000 N", "modulus"), 1e-11),
        Arithmetic(Group, "two equal legs that carry the load each: the angle between, rad", 2 * Math.PI / 3, "", () => Solved(
            "A1 angle = 60 °\nA2 f => LegTension(1 kN, angle)", "f", "1 kN", "angle"), 1e-12),
        Arithmetic(Group, "the length for which a moment of 425 N·m is reached, m", 0.05, "", () => Solved(
            "A1 arm = 40 mm\nA2 Torque m => 8.5 kN * arm", "m", "425 N·m", "arm"), 1e-12),
        Arithmetic(Group, "the longest length for which a check holds, m", 500 / 8500.0, "", () => Solved(
            "A1 arm = 40 mm\nA2 strong => 8.5 kN * arm < 500 N·m", "strong", "holds", "arm"), 1e-12),
    ];

    private static CheckRow Row(string what, double root, string expression, string equal, string? from = null, string? to = null, double relative = 1e-13, string unit = "") =>
        Arithmetic(Group, what, root, "", () => Solved($"A1 x = 0.9{unit}\nA2 y => {expression}", "y", equal, "x", from, to), relative);

    private static double Solved(string lines, string cell, string equal, string by, string? from = null, string? to = null)
    {
        StudyBook sheet = StudyBook.Of(lines);
        StudyOutcome<Solution> solved = sheet.Runner.Solve(sheet.Calculation, new SolveRequest { Cell = StudyBook.At(cell), Equal = StudyBook.At(equal), By = StudyBook.At(by), From = from is null ? null : StudyBook.At(from), To = to is null ? null : StudyBook.At(to) });
        Assert.True(solved.IsAnswered, solved.Fault?.Sentence);
        Assert.NotNull(solved.Answer.Answer);
        return solved.Answer.Answer.Si;
    }
}
