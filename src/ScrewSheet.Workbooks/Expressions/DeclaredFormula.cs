using System.Collections.Immutable;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>
/// A declared formula as a tree over pure numbers in coherent SI: parameters of the function have the indexes 0, 1, 2 …,
/// the named intermediates follow in their order.
/// </summary>
/// <param name="Lets">The intermediates, each over what stands before it.</param>
/// <param name="Value">The formula over all of them.</param>
public sealed record DeclaredFormula(ImmutableArray<(string Name, BoundExpression Value)> Lets, BoundExpression Value)
{
    /// <summary>Reads a formula of a function; <paramref name="text"/> is the formula or a caution's condition, <paramref name="more"/> names known besides, after the intermediates.</summary>
    /// <exception cref="FormatException">The declaration cannot be read: a mistake in the library.</exception>
    public static DeclaredFormula Read(LibraryFunction function, string text, FunctionLibrary library, params string[] more)
    {
        Dictionary<string, int> names = [];
        foreach (LibraryParameter parameter in function.Parameters) names.Add(parameter.Name, names.Count);
        var lets = ImmutableArray.CreateBuilder<(string, BoundExpression)>();
        foreach (var let in function.Lets)
        {
            lets.Add((let.Name, new FormulaReader(let.Text, names, library).Read()));
            names.Add(let.Name, names.Count);
        }
        foreach (string name in more) names.TryAdd(name, names.Count);
        return new DeclaredFormula(lets.ToImmutable(), new FormulaReader(text, names, library).Read());
    }
}
