using System.Text;
using ScrewSheet.Engine;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Terminal;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Fuzzing;

/// <summary>
/// Expressions, one a line, in cells of a small workbook; a line that begins with <c>function</c> is one of the author's own. Each ends in a value or a fault,
/// and in the same one whether it is bound alone or with the others.
/// </summary>
internal sealed class ExpressionTarget : Target
{
    /// <summary>The most expressions of one input: more would only take longer.</summary>
    private const int MostExpressions = 4;

    /// <summary>How long a calculation may go on before it is stopped; stopping must then work.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    private const string Cells = """
        sheet Fall
        A1 peak = 8 kN
        A2 speed = 9 m/s
        sheet S
        column E loads [kN]
        column F modes
        A1 force = 8.5 kN ± 0.5 kN
        A2 arm = 40 mm
        A3 count = 3
        A4 yes = true
        A5 word = "pull-out"
        A6 stress = 12 MPa
        A7 cold = -18 °C
        A8 tilt = 30 deg
        A9 moment => force * arm
        B1 = 1
        B2 = 2.5
        B3 = -4
        B5 = 0
        B6 "a note"
        B7 => 1 / 0
        D1 = 1 kN
        D2 = 2 kN
        D3 = 4 kN
        E1 "loads"
        E2 = 3 kN
        E3 = 5 kN
        F1 "modes"
        F2 = "a"
        F3 = "b"
        """;

    // no instrumented code may run before the fuzzer has begun
    private readonly Lazy<FunctionLibrary> library = new(Composition.Library);

    /// <inheritdoc/>
    public override string Name => "expression";

    /// <inheritdoc/>
    protected override void Run(byte[] input)
    {
        string[] lines = Encoding.UTF8.GetString(input).Split('\n');
        string[] functions = [.. lines.Where(line => line.StartsWith("function ", StringComparison.Ordinal)).Take(2)];
        string[] expressions = [.. lines.Where(line => !line.StartsWith("function ", StringComparison.Ordinal) && line.Length > 0).Take(MostExpressions)];
        string[] text = ["screwsheet 1", .. functions, .. Cells.Split('\n'), .. expressions.Select((expression, i) => $"C{i + 1} => {expression}")];
        if (WorkbookText.Read(string.Join('\n', text)) is not WorkbookRead { Workbook: var workbook } || Calculate(workbook) is not { } together) return;
        foreach (CellResult result in together.Cells.Values) Check(result, text);
        foreach (Workbooks.Diagnostics.Fault fault in together.Faults) Sentences.Check(fault, text);
        for (int i = 0; i < expressions.Length; i++)
        {
            if (together.Cells.TryGetValue(Id(i), out CellResult? result) && result.Cell.Content is ResultContent { Expression: var expression }) Rewritten(expression, workbook);
            if (expressions.Length > 1 && result is not null && !Reads(result)) Alone(result, text, i);
        }
    }

    private static CellId Id(int i) => new("S", new CellAddress(3, i + 1));

    private static bool Reads(CellResult result) => result.References.Any(read => read.First.Sheet == "S" && read.First.Address.Column <= 3 && (read.Last ?? read.First).Address.Column >= 3)
        || result.References.Any(read => read.Last is { } last && last.Address.Column <= 3 && read.First.Address.Column >= 3);

    private Calculation? Calculate(Workbook workbook)
    {
        using CancellationTokenSource stop = new(Patience);
        try
        {
            return new Calculator(library.Value).Calculate(workbook, stop.Token);
        }
        catch (OperationCanceledException)
        {
            return null;
        }
    }

    private static void Check(CellResult result, string[] text)
    {
        foreach (Caution caution in result.Cautions) Sentences.CheckWords(caution.Message + (caution.Message.EndsWith('.') ? "" : "."), text);
        switch (result.Outcome)
        {
            case Faulted { Fault: var fault }:
                Sentences.Check(fault, text);
                break;
            case Computed { Value: var value }:
                Promise(result.Type is not null, $"{result.Label} has a value and no type");
                Promise(value is not NumberValue { Value: var number } || double.IsFinite(number), $"{result.Label} is no finite number");
                Promise(value is not QuantityValue { Si: var si } || double.IsFinite(si), $"{result.Label} is no finite quantity");
                Promise(Shown(result).Length > 0 || value is TextValue, $"{result.Label} shows nothing");
                break;
            default:
                Promise(result.Cell.Content is NoteContent, $"{result.Label} has neither value nor fault");
                break;
        }
    }

    private static string Shown(CellResult result) => ValueText.Format(result.Value!, result.Cell.Format, UnitSystem.SI, result.IsCheck).Joined;

    /// <summary>Its references can be written anew, and moving it nowhere leaves it as it is.</summary>
    private static void Rewritten(string expression, Workbook workbook)
    {
        Promise(WrittenReferences.Rewrite(expression, name => workbook.Find(name) is not null, reference => reference.Sheet is null ? reference.Name : null) == expression, "writing its references anew changes an expression");
        Promise(ReferenceShift.Copied(expression, workbook, "S", "S", 0, 0) == expression, "copying an expression onto itself changes it");
    }

    private void Alone(CellResult together, string[] text, int i)
    {
        string[] others = [.. text];
        for (int at = 0; at < others.Length; at++)
            if (others[at].StartsWith('C') && !others[at].StartsWith($"C{i + 1} ", StringComparison.Ordinal)) others[at] = "";
        if (WorkbookText.Read(string.Join('\n', others)) is not WorkbookRead read || Calculate(read.Workbook) is not { } calculation) return;
        CellResult alone = calculation.Cells[together.Id];
        Promise(alone.Type?.Name == together.Type?.Name && alone.Fault == together.Fault, $"alone: {alone.Type?.Name} {alone.Fault}; with others: {together.Type?.Name} {together.Fault}");
        Promise((alone.Value is null) == (together.Value is null) && (alone.Value is null || Shown(alone) == Shown(together)), "alone and with others it has two values");
    }
}
