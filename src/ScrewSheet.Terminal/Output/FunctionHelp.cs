using System.Globalization;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Output;

/// <summary>Everything the declaration of one library function says, for a reader who is about to use it.</summary>
internal sealed class FunctionHelp(LibraryFunction function, int width)
{
    /// <summary>The lines.</summary>
    public IEnumerable<StyledLine> Lines()
    {
        yield return new StyledLine(function.Name, Tone.Strong);
        IEnumerable<string> body =
            Entry("call", Call())
            .Concat(Entry("answers", function.Declaration.Answers))
            .Concat(Formula())
            .Concat(function.Parameters.SelectMany(Symbol))
            .Concat(function.Declaration.Assumes is string assumes ? Entry("assumes", assumes) : [])
            .Concat(function.Cautions.SelectMany(caution => Entry("caution", Conditional(caution))))
            .Concat(function.Declaration.NotFor is string notFor ? Entry("not for", notFor) : [])
            .Concat(function.Sources.SelectMany(source => Entry("source", $"{source.Work} ({StandingText.Of(source.Standing)})")))
            .Concat(function.Examples.SelectMany(example => Entry("example", $"{example.Expression} gives {example.Gives}")));
        foreach (string line in body) yield return new StyledLine(line);
    }

    private string Call()
    {
        string parameters = string.Join(", ", function.Parameters.Select(parameter => parameter.HasDefault ? $"{parameter.Name} = {Default(parameter)}" : parameter.Name));
        string gives = function.ReturnType is null ? "" : $" gives {function.ReturnType.Phrase}";
        return $"{function.Name}({parameters}){gives}";
    }

    private IEnumerable<string> Formula()
    {
        if (function.NoFormula is NoFormulaAttribute none) return Entry("method", none.Method);
        IEnumerable<string> formulas = function.Formulas.SelectMany(formula => Entry("formula", $"{formula.Symbol ?? formula.Member ?? function.Name} = {formula.Text}"));
        return formulas.Concat(function.Lets.SelectMany(let => Entry("where", $"{let.Name} = {let.Text}{(let.Unit.Length > 0 ? $" in {let.Unit}" : "")}")));
    }

    private IEnumerable<string> Symbol(LibraryParameter parameter)
    {
        ParameterAttribute declared = parameter.Declaration;
        string symbol = declared.Symbol.Length == 0 || declared.Symbol == parameter.Name ? "" : $" ({declared.Symbol})";
        string unit = declared.Unit.Length == 0 ? "" : $" in {declared.Unit}";
        string bounds = string.Join(", ", Bounds(declared));
        return Entry("with", $"{parameter.Name}{symbol}{unit}: {declared.Meaning}{(bounds.Length > 0 ? $"; {bounds}" : "")}");
    }

    private static IEnumerable<string> Bounds(ParameterAttribute declared)
    {
        if (!double.IsNaN(declared.Above)) yield return "above " + Number(declared.Above);
        if (!double.IsNaN(declared.AtLeast)) yield return "at least " + Number(declared.AtLeast);
        if (!double.IsNaN(declared.Below)) yield return "below " + Number(declared.Below);
        if (!double.IsNaN(declared.AtMost)) yield return "at most " + Number(declared.AtMost);
        if (!double.IsNaN(declared.UsualFrom) && !double.IsNaN(declared.UsualTo)) yield return $"usual {Number(declared.UsualFrom)} to {Number(declared.UsualTo)}";
        else if (!double.IsNaN(declared.UsualFrom)) yield return "usual from " + Number(declared.UsualFrom);
        else if (!double.IsNaN(declared.UsualTo)) yield return "usual to " + Number(declared.UsualTo);
    }

    private static string Conditional(CautionWhenAttribute caution) => caution.Condition == "true" ? caution.Sentence : $"when {caution.Condition}: {caution.Sentence}";

    private static string Default(LibraryParameter parameter) => parameter.Default switch
    {
        null => parameter.Clr.IsValueType ? "0" : "none",
        Enum option => $"{option.GetType().Name}.{option}",
        IFormattable value => value.ToString(null, CultureInfo.InvariantCulture),
        object other => other.ToString()!,
    };

    private IEnumerable<string> Entry(string word, string text) => Wrapping.Hanging("  " + word.PadRight(9), PlainText.Of(text), width);

    private static string Number(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}
