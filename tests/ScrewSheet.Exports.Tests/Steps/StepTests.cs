namespace ScrewSheet.Exports.Tests.Steps;

/// <summary>Formula, numbers put in, result: as a reader would write them.</summary>
public sealed class StepTests
{
    private const string Text = """
        screwsheet 1
        function Torque Arm(Force f, Length a) => f * a
        sheet Fall
        B1 mass = 80 kg
        sheet Main
        B1 load = 4 kN
        B2 lost = 40 mm
        B3 offset = 10 mm
        B4 angle = 30 °
        B5 sigma_max = 250 MPa
        B6 Torque moment [N·m, 1 decimal] => Arm(load, lost + offset)
        B7 ok => moment < 500 N·m && !(load > 5 kN)
        B8 root [mm, 2 decimals] => Sqrt(lost * lost + offset * offset) / 2
        B9 pulled [kN, 2 decimals] => load * Sin(angle) - 2 * 1 kN
        B10 least => Min(load, 3 kN)
        B11 chosen => load > 3 kN ? load : 2 kN
        B12 used [%, 0 decimals] => 100 MPa / sigma_max
        B13 weight [kN, 3 decimals] => Weight(Fall.mass) * 2
        B14 => load / 2
        B15 after => B14 + 1 kN
        B16 same => Near(load, 4 kN, 0.1 kN)
        B17 powered => Pow(lost + offset, 3)
        B18 down => load - (load - 1 kN)
        B19 minus => -load * -2
        """;

    [Theory]
    [InlineData("moment", "Arm(load, lost + offset)", "4 kN · (40 mm + 10 mm)", "200.0 N·m")]
    [InlineData("ok", "moment < 500 N·m and not (load > 5 kN)", "200.0 N·m < 500 N·m and not (4 kN > 5 kN)", "holds")]
    [InlineData("root", "√(lost · lost + offset · offset) / 2", "√(40 mm · 40 mm + 10 mm · 10 mm) / 2", "20.62 mm")]
    [InlineData("pulled", "load · sin(angle) − 2 · 1 kN", "4 kN · sin(30 °) − 2 · 1 kN", "0.00 kN")]
    [InlineData("least", "min(load, 3 kN)", "min(4 kN, 3 kN)", "3 kN")]
    [InlineData("chosen", "{ load if load > 3 kN; 2 kN otherwise }", "{ 4 kN if 4 kN > 3 kN; 2 kN otherwise }", "4 kN")]
    [InlineData("used", "100 MPa / σ_max", "100 MPa / 250 MPa", "40 %")]
    [InlineData("after", "B14 + 1 kN", "2 kN + 1 kN", "3 kN")]
    [InlineData("same", "load ≈ 4 kN within 0.1 kN", "4 kN ≈ 4 kN within 0.1 kN", "holds")]
    [InlineData("powered", "(lost + offset)³", "(40 mm + 10 mm)³", "125000 mm³")]
    [InlineData("down", "load − (load − 1 kN)", "4 kN − (4 kN − 1 kN)", "1 kN")]
    [InlineData("minus", "−load · (−2)", "−4 kN · (−2)", "8 kN")]
    public void AResult_HasItsThreeStages(string name, string formula, string numbers, string result) =>
        Assert.Equal([$"formula: {formula}", $"numbers: {numbers}", $"result: {result}"], Made.Step(Text, name));

    [Fact]
    public void ACallOfTheLibrary_ShowsItsFormulaWithItsOwnNumbers() => Assert.Equal(
    [
        "formula: Weight(Fall.mass) · 2",
        "by: Weight: What does a mass weigh?",
        "with: m = Fall.mass = 80 kg",
        ": w = m · g_n = 80 kg · 9.80665 m/s² = 0.7845 kN",
        "numbers: 0.7845 kN · 2",
        "result: 1.569 kN",
    ], Made.Step(Text, "weight"));

    [Fact]
    public void AFormulaWhoseConstantsHideUnits_TakesCoherentNumbers()
    {
        const string text = """
            screwsheet 1
            sheet Ice
            B1 young => IceYoungModulus(-10 °C)
            """;
        string[] functions = [.. Made.Library.Functions.Where(function => function.Formulas.Any(formula => formula.Text.Contains("9.33e9", StringComparison.Ordinal))).Select(function => function.Name)];
        string[] lines = Made.Step(text.Replace("IceYoungModulus", Assert.Single(functions), StringComparison.Ordinal), "young");
        Assert.DoesNotContain(lines, line => line.Contains("−10 °C /", StringComparison.Ordinal));
    }

    [Fact]
    public void ALongFormula_BreaksAtItsSumsAndProducts()
    {
        const string text = """
            screwsheet 1
            sheet Main
            B1 first = 10 kN
            B2 second = 20 kN
            B3 third = 30 kN
            B4 total => first * 2 + second * 3 + third * 4 + Abs(first - second) + (first + second) * 5
            """;
        string[] lines = Made.Step(text, "total", 34);
        Assert.All(lines, line => Assert.True(line.Length <= 34 + "formula: ".Length, line));
        Assert.StartsWith("formula: first · 2 + second · 3", lines[0], StringComparison.Ordinal);
        Assert.Equal("result: 360 kN", lines[^1]);
    }

    /// <summary>Every function of the library, called as its own example does, gives a step; what comes out at the end of a declared formula is what the cell shows.</summary>
    [Fact]
    public void EveryExampleOfTheLibrary_IsWorkedToTheValueTheCellShows()
    {
        var all = Made.Library.Functions.SelectMany(function => function.Examples.Select(example => (Function: function, example.Expression))).ToArray();
        string text = "screwsheet 1\nsheet All\n" + string.Concat(all.Select((each, i) => $"A{i + 1} => {each.Expression}\n"));
        var calculation = Made.Calculate(text);
        var builder = new Exports.Steps.StepBuilder(Made.Tools(calculation));
        int worked = 0;
        foreach (var (each, cell) in all.Zip(calculation.Of(calculation.Workbook.Sheets[0])))
        {
            Exports.Steps.WorkedStep step = builder.Of(cell);
            Assert.NotNull(step.Formula);
            Exports.Steps.CallStep? call = step.Calls.FirstOrDefault(call => call.Function == each.Function.Name);
            bool whole = cell.Bound is Workbooks.Expressions.BoundCall { } direct && direct.Function.Equals(each.Function) && each.Function.Formulas.Length == 1;
            if (!whole || call is null || call.Formulas.IsEmpty || step.Result is null) continue;
            Assert.True(call.Formulas[^1].Result == step.Result, $"{each.Expression}: {call.Formulas[^1].Result} and {step.Result}");
            worked++;
        }
        Assert.True(worked > 50, $"{worked}");
    }
}
