using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>How a result came about: its formula, the numbers put in, what comes out; and the declared formulas of the functions it calls.</summary>
internal static class WorkedStep
{
    private const int MostFormulas = 4;

    /// <summary>The expression with each reference replaced by the value it had.</summary>
    public static string WithNumbers(Session session, CellId id, string expression) =>
        PlainText.Of(WrittenReferences.Rewrite(expression, name => session.Workbook.Find(name) is not null, reference => Value(session, id, reference)));

    /// <summary>The lines: a word, then a text.</summary>
    public static IEnumerable<(string Word, string Text)> Of(Session session, CellId id, ResultContent content)
    {
        string formula = PlainText.Of(content.Expression);
        yield return ("formula", formula);
        CellResult? result = session.Result(id);
        if (result is null) yield break;
        string numbers = WithNumbers(session, id, content.Expression);
        if (numbers != formula && result.Fault is null) yield return ("numbers", numbers);
        if (session.Known!.Shown(result) is { } shown) yield return ("result", shown.ToString());
    }

    /// <summary>What the functions of a result compute, as they are declared, each once.</summary>
    public static IEnumerable<string> Declared(CellResult result)
    {
        if (result.Bound is null) yield break;
        foreach (LibraryFunction function in BoundChildren.All(result.Bound).OfType<BoundCall>().Select(call => call.Function).DistinctBy(function => function.Name).Take(MostFormulas))
        {
            if (function.NoFormula is { } none) yield return PlainText.Of($"{function.Name}: {none.Method}");
            foreach (var formula in function.Formulas) yield return PlainText.Of($"{function.Name}: {formula.Member ?? formula.Symbol ?? "result"} = {formula.Text}");
            foreach (var let in function.Lets) yield return PlainText.Of($"  with {let.Name} = {let.Text}");
        }
    }

    private static string? Value(Session session, CellId id, WrittenReference reference)
    {
        if (reference.Corner > 0 || reference.Target(session.Workbook, id.Sheet) is not { } target) return null;
        CellResult? result = session.Result(target);
        return result?.Value is NumberValue or QuantityValue or TruthValue or OptionValue ? session.Known!.Shown(result)!.Value.ToString() : null;
    }
}
