using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine;

/// <summary>The range in which a parameter of a library function is usual; outside it the function answers with a caution.</summary>
public sealed class UsualRange
{
    private readonly string function;
    private readonly LibraryParameter parameter;
    private readonly Unit unit;

    private UsualRange(LibraryFunction function, int index)
    {
        (this.function, parameter, Index) = (function.Name, function.Parameters[index], index);
        ParameterAttribute declared = parameter.Declaration;
        unit = declared.Unit.Length == 0 ? UnitTable.Number : UnitText.TryParse(declared.Unit, out Unit? read, out string? problem) ? read : throw new NotSupportedException(problem);
        FromSi = double.IsNaN(declared.UsualFrom) ? double.NegativeInfinity : Loose(unit.ToSi(declared.UsualFrom), -1);
        ToSi = double.IsNaN(declared.UsualTo) ? double.PositiveInfinity : Loose(unit.ToSi(declared.UsualTo), 1);
    }

    /// <summary>The parameter's place, from 0.</summary>
    public int Index { get; }

    /// <summary>Below this there is a caution; in coherent SI, with the allowance comparisons have; minus infinity for no lower end.</summary>
    public double FromSi { get; }

    /// <summary>Above this there is a caution; in coherent SI, with the same allowance; infinity for no upper end.</summary>
    public double ToSi { get; }

    /// <summary>The caution without the value: what all values outside have in common.</summary>
    public string Sentence => $"{function}: {parameter.Name} is outside the usual {Words}.";

    /// <summary>The ranges a function declares, in the order of its parameters.</summary>
    /// <exception cref="NotSupportedException">A declared unit does not exist: a mistake in the library.</exception>
    public static ImmutableArray<UsualRange> Of(LibraryFunction function)
    {
        ArgumentNullException.ThrowIfNull(function);
        return [.. Enumerable.Range(0, function.Parameters.Length).Where(i => IsDeclared(function.Parameters[i].Declaration)).Select(i => new UsualRange(function, i))];
    }

    /// <summary>True for a number outside; false for NaN, which is no number.</summary>
    public bool IsOutside(double si) => si < FromSi || si > ToSi;

    /// <summary>The caution for a value in coherent SI.</summary>
    public string SentenceFor(double si) => $"{function}: {parameter.Name} is {Join(Figure(unit.FromSi(si)))}, outside the usual {Words}.";

    /// <summary>A caution without the value in it, as <see cref="Sentence"/> has it; any other sentence as it is.</summary>
    public static string WithoutValue(string caution)
    {
        ArgumentNullException.ThrowIfNull(caution);
        int outside = caution.IndexOf(", outside the usual ", StringComparison.Ordinal), value = outside < 0 ? -1 : caution.LastIndexOf(" is ", outside, StringComparison.Ordinal);
        return value < 0 ? caution : $"{caution[..value]} is outside{caution[(outside + ", outside".Length)..]}";
    }

    private string Words => (double.IsNaN(parameter.Declaration.UsualFrom), double.IsNaN(parameter.Declaration.UsualTo)) switch
    {
        (true, _) => $"range up to {Join(Figure(parameter.Declaration.UsualTo))}",
        (_, true) => $"range from {Join(Figure(parameter.Declaration.UsualFrom))}",
        _ => $"{Join(Figure(parameter.Declaration.UsualFrom))} to {Join(Figure(parameter.Declaration.UsualTo))}",
    };

    private string Join(string number) => unit.Symbol.Length == 0 ? number : $"{number} {unit.Symbol}";

    private static bool IsDeclared(ParameterAttribute declared) => !double.IsNaN(declared.UsualFrom) || !double.IsNaN(declared.UsualTo);

    private static string Figure(double value) => value.ToString("G6", CultureInfo.InvariantCulture);

    private static double Loose(double bound, int direction) => bound + (direction * Math.Abs(bound) * SiOrder.Slack);
}
