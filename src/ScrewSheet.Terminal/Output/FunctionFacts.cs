using System.Globalization;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>One thing a declaration says: its word, and a text whose middle is code.</summary>
/// <param name="Word">What it is: <c>formula</c>, <c>with</c>, <c>source</c>, …</param>
/// <param name="Before">The text before the code.</param>
/// <param name="Code">The code, or empty.</param>
/// <param name="After">The text after it.</param>
internal readonly record struct FunctionFact(string Word, string Before, string Code, string After)
{
    /// <summary>All of it in one line.</summary>
    public string Text => Before + Code + After;
}

/// <summary>Everything the declaration of a library function says, in the order a reader needs it: the help on the terminal and the page of functions are both made from this.</summary>
internal static class FunctionFacts
{
    /// <summary>The facts of one function.</summary>
    public static IEnumerable<FunctionFact> Of(LibraryFunction function) =>
    [
        new FunctionFact("answers", function.Declaration.Answers, "", ""),
        new FunctionFact("call", "", Call(function), " gives " + Gives(function)),
        .. Members(function),
        .. Formula(function),
        .. function.Parameters.Select(Parameter),
        .. function.Needs.Select(needs => new FunctionFact("needs", "", needs.Condition, "")),
        .. Plain("assumes", function.Declaration.Assumes),
        .. function.Cautions.Select(Caution),
        .. Plain("not for", function.Declaration.NotFor),
        .. function.Sources.Select(source => new FunctionFact("source", $"{source.Work} ({StandingText.Of(source.Standing)})", "", "")),
        .. function.Examples.Select(example => new FunctionFact("example", "", example.Expression, " gives " + example.Gives)),
    ];

    private static IEnumerable<FunctionFact> Plain(string word, string? text) => text is null ? [] : [new FunctionFact(word, text, "", "")];

    private static string Call(LibraryFunction function) =>
        $"{function.Name}({string.Join(", ", function.Parameters.Select(parameter => parameter.Name + Bracketed(parameter.Declaration.Unit) + Default(parameter)))})";

    private static string Gives(LibraryFunction function) => function.ReturnType switch
    {
        QuantityType quantity => quantity.Phrase + In(UnitOf(quantity)),
        SeriesType { Element: QuantityType element } => $"a series, each {element.Phrase}" + In(UnitOf(element)),
        SeriesType { Element: NumberType } => "a series of numbers",
        RecordType record => $"a record {record.Name}",
        null when function.Method.ReturnType.IsGenericParameter => "a value of the kind it was given",
        null => $"a record {function.Method.ReturnType.Name.Split('`')[0]}",
        CellType other => other.Phrase,
    };

    private static string UnitOf(QuantityType type) => ValueText.UnitOf(type, null, UnitSystem.SI).Symbol;

    private static IEnumerable<FunctionFact> Members(LibraryFunction function)
    {
        Type clr = function.Method.ReturnType;
        if (!ClrTypes.IsRecord(clr)) return [];
        var members = clr.GetProperties().Select(property => (property.Name, Declared: (MemberAttribute?)Attribute.GetCustomAttribute(property, typeof(MemberAttribute))));
        return [new FunctionFact("members", "", string.Join(", ", members.Where(member => member.Declared is not null).Select(member => member.Name + Bracketed(member.Declared!.Unit))), "")];
    }

    private static IEnumerable<FunctionFact> Formula(LibraryFunction function)
    {
        if (function.NoFormula is NoFormulaAttribute none) return [new FunctionFact("method", none.Method, "", "")];
        return function.Formulas.Select(formula => new FunctionFact("formula", "", $"{Result(function, formula)} = {formula.Text}", ""))
            .Concat(function.Lets.Select(let => new FunctionFact("where", "", $"{let.Name} = {let.Text}", In(let.Unit))));
    }

    private static string Result(LibraryFunction function, FormulaAttribute formula) => (formula.Member, formula.Symbol) switch
    {
        (string member, string symbol) when member != symbol => $"{member} ({symbol})",
        (string member, _) => member,
        (null, string symbol) => symbol,
        _ => function.Name,
    };

    private static FunctionFact Parameter(LibraryParameter parameter)
    {
        ParameterAttribute declared = parameter.Declaration;
        string symbol = declared.Symbol.Length == 0 || declared.Symbol == parameter.Name ? "" : $" ({declared.Symbol})";
        string bounds = string.Concat(Bounds(declared).Select(bound => "; " + bound));
        return new FunctionFact("with", "", parameter.Name, $"{symbol}{Kind(parameter)}{In(declared.Unit)}: {declared.Meaning}{bounds}");
    }

    private static string Kind(LibraryParameter parameter) => parameter.Type switch
    {
        OptionType option => $", one of {string.Join(", ", Enum.GetNames(option.Clr).Select(name => $"{option.Name}.{name}"))}",
        RecordType record => $", a record {record.Name}",
        SeriesType => ", a series",
        TextType => ", a text",
        TruthType => ", yes or no",
        null when parameter.Clr.IsGenericParameter => ", a number or quantity of any kind",
        null when ClrTypes.IsSeries(parameter.Clr) => ", a series of any kind",
        null when ClrTypes.IsRecord(parameter.Clr) => $", a record {parameter.Clr.Name.Split('`')[0]}",
        _ => "",
    };

    private static IEnumerable<string> Bounds(ParameterAttribute declared)
    {
        string[] hard = [.. Hard(declared)];
        if (hard.Length > 0) yield return "must be " + string.Join(" and ", hard);
        if (!double.IsNaN(declared.UsualFrom) && !double.IsNaN(declared.UsualTo)) yield return $"usual {Number(declared.UsualFrom)} to {Number(declared.UsualTo)}";
        else if (!double.IsNaN(declared.UsualFrom)) yield return "usual from " + Number(declared.UsualFrom);
        else if (!double.IsNaN(declared.UsualTo)) yield return "usual to " + Number(declared.UsualTo);
    }

    private static IEnumerable<string> Hard(ParameterAttribute declared)
    {
        if (!double.IsNaN(declared.Above)) yield return "above " + Number(declared.Above);
        if (!double.IsNaN(declared.AtLeast)) yield return "at least " + Number(declared.AtLeast);
        if (!double.IsNaN(declared.Below)) yield return "below " + Number(declared.Below);
        if (!double.IsNaN(declared.AtMost)) yield return "at most " + Number(declared.AtMost);
    }

    private static FunctionFact Caution(CautionWhenAttribute caution) =>
        caution.Condition == "true" ? new FunctionFact("caution", caution.Sentence, "", "") : new FunctionFact("caution", "when ", caution.Condition, ": " + caution.Sentence);

    private static string Default(LibraryParameter parameter)
    {
        if (!parameter.HasDefault) return "";
        return " = " + parameter.Default switch
        {
            null => parameter.Clr.IsValueType ? "0" : "none",
            Enum option => $"{option.GetType().Name}.{option}",
            IFormattable value => value.ToString(null, CultureInfo.InvariantCulture),
            object other => other.ToString()!,
        };
    }

    private static string Bracketed(string unit) => unit.Length == 0 ? "" : $" [{unit}]";

    private static string In(string unit) => unit.Length == 0 ? "" : $" in {unit}";

    private static string Number(double value) => value.ToString(Math.Abs(value) is >= 1e-4 and < 1e10 or 0 ? "0.######" : "G6", CultureInfo.InvariantCulture);
}
