namespace ScrewSheet.Quantities.Declarations;

/// <summary>Marks a static function that a workbook may call by its bare name. What is not marked cannot be called.</summary>
/// <param name="topic">The chapter of the catalogue, in the trade's words.</param>
/// <param name="answers">One line: the question it answers.</param>
[AttributeUsage(AttributeTargets.Method)]
public sealed class CallableAttribute(string topic, string answers) : Attribute
{
    /// <summary>The chapter of the catalogue.</summary>
    public string Topic { get; } = topic;

    /// <summary>The question it answers, in one line.</summary>
    public string Answers { get; } = answers;

    /// <summary>What must hold for the formula, in one or two sentences.</summary>
    public string? Assumes { get; init; }

    /// <summary>What it must not be used for.</summary>
    public string? NotFor { get; init; }
}

/// <summary>
/// The closed formula in C# over the function's parameters (each in its coherent SI unit, angles in radian) and the names of its <see cref="LetAttribute"/>s.
/// Known besides: <c>pi</c>, <c>gn</c> (9.80665), Sqrt Cbrt Pow Exp Ln Log10 Abs Min Max Sin Cos Tan Asin Acos Atan Atan2 Sinh Cosh Tanh Acosh Asinh,
/// comparisons, <c>&amp;&amp; || ! ?:</c>. The value is in coherent SI.
/// </summary>
/// <param name="text">The expression.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class FormulaAttribute(string text) : Attribute
{
    /// <summary>The expression.</summary>
    public string Text { get; } = text;

    /// <summary>The symbol of the result in the trade's notation, such as <c>F</c>.</summary>
    public string? Symbol { get; init; }

    /// <summary>For a function that answers with a record: the member this formula gives.</summary>
    public string? Member { get; init; }
}

/// <summary>A named intermediate of the formula; in the order written, each may use those before it.</summary>
/// <param name="name">The name, as the formula uses it.</param>
/// <param name="text">Its expression, as in <see cref="FormulaAttribute"/>.</param>
/// <param name="unit">The symbol of its coherent SI unit, empty for a number.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class LetAttribute(string name, string text, string unit) : Attribute
{
    /// <summary>The name.</summary>
    public string Name { get; } = name;

    /// <summary>The expression.</summary>
    public string Text { get; } = text;

    /// <summary>The symbol of its coherent SI unit.</summary>
    public string Unit { get; } = unit;
}

/// <summary>Says that the function integrates, searches or branches too far for a closed formula, and how it works instead.</summary>
/// <param name="method">One line: the method.</param>
[AttributeUsage(AttributeTargets.Method)]
public sealed class NoFormulaAttribute(string method) : Attribute
{
    /// <summary>The method, in one line.</summary>
    public string Method { get; } = method;

    /// <summary>How many steps of a cell's budget a call counts as: about one for each tenth of a microsecond it takes at its slowest.</summary>
    public int Steps { get; init; } = 100;
}

/// <summary>
/// A condition between the arguments without which the function refuses them, besides the limits each has alone. Whoever writes the formula somewhere else, where no code
/// refuses anything, keeps to it.
/// </summary>
/// <param name="condition">A condition over parameters and lets, as in <see cref="FormulaAttribute"/>.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class NeedsAttribute(string condition) : Attribute
{
    /// <summary>The condition.</summary>
    public string Condition { get; } = condition;
}

/// <summary>One worked number, in the language of cells.</summary>
/// <param name="expression">A call, such as <c>ImpactForce(80 kg, 20 kN, 1)</c>; for a record, a member of the call.</param>
/// <param name="gives">Its value with unit to six or more digits, such as <c>6441.10 N</c>.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class ExampleAttribute(string expression, string gives) : Attribute
{
    /// <summary>The call.</summary>
    public string Expression { get; } = expression;

    /// <summary>Its value.</summary>
    public string Gives { get; } = gives;
}

/// <summary>A caution that rides with the answer when the condition holds.</summary>
/// <param name="condition">A condition over parameters, lets and (by its member or symbol name) the result, as in <see cref="FormulaAttribute"/>.</param>
/// <param name="sentence">What the reader must know.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class CautionWhenAttribute(string condition, string sentence) : Attribute
{
    /// <summary>When it applies; <c>true</c> for always.</summary>
    public string Condition { get; } = condition;

    /// <summary>What the reader must know.</summary>
    public string Sentence { get; } = sentence;
}
