using ScrewSheet.Engine;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.Tests.Declarations;

/// <summary>The declared cautions that ride with an answer, as the engine reads and decides them.</summary>
internal static class DeclaredCautions
{
    private static readonly FunctionLibrary Library = FunctionLibrary.Of(Callables.Library);

    /// <summary>The sentences that hold for a call with these arguments, by position; those left out are as declared.</summary>
    public static IReadOnlyList<string> Of(string name, params object?[] given)
    {
        LibraryFunction function = Library.Function(name) ?? throw new ArgumentException($"There is no function {name}.", nameof(name));
        object?[] arguments = [.. function.Parameters.Select((parameter, i) => i < given.Length ? given[i] : parameter.Default ?? (parameter.Clr.IsValueType ? Activator.CreateInstance(parameter.Clr) : null))];
        object answer = function.Method.Invoke(null, System.Reflection.BindingFlags.DoNotWrapExceptions, null, arguments, null)!;
        double[] si = [.. arguments.Select(argument => Si(argument) ?? double.NaN)];
        var said = new FormulaEvaluation(Library).Cautions(function, si, Si(answer) ?? answer);
        return [.. function.Cautions.Select(caution => caution.Sentence).Where(sentence => said.Contains($"{name}: {sentence}"))];
    }

    private static double? Si(object? value) => value switch
    {
        double number => number,
        Quantity quantity => quantity.Si,
        null => null,
        _ => QuantityKinds.ByType(value.GetType())?.ToSi(value),
    };
}
