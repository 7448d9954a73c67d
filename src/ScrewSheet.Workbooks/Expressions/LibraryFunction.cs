using System.Collections.Immutable;
using System.Reflection;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>A parameter of a library function, as its declaration says.</summary>
/// <param name="Name">The name, for named arguments.</param>
/// <param name="Clr">The parameter's type.</param>
/// <param name="Type">Its type in cells; null where it is the function's own type parameter or made from it.</param>
/// <param name="Declaration">Symbol, unit, meaning and bounds.</param>
/// <param name="HasDefault">True when it may be left out.</param>
/// <param name="Default">What it then is.</param>
public sealed record LibraryParameter(string Name, Type Clr, CellType? Type, ParameterAttribute Declaration, bool HasDefault, object? Default);

/// <summary>
/// A function of the library with everything its declaration says: what help, worked steps, exports and the engine read. Each part is read from the code's marks when it
/// is first asked for: a workbook calls few of the functions, and no more than their names is needed of the others.
/// </summary>
public sealed record LibraryFunction
{
    internal LibraryFunction(MethodInfo method) => Method = method;

    /// <summary>The bare name.</summary>
    public string Name => Method.Name;

    /// <summary>The code.</summary>
    public MethodInfo Method { get; }

    /// <summary>Topic, question, assumptions.</summary>
    public CallableAttribute Declaration => field ??= Method.GetCustomAttribute<CallableAttribute>()!;

    /// <summary>In order.</summary>
    /// <exception cref="NotSupportedException">A mark is used wrongly.</exception>
    public ImmutableArray<LibraryParameter> Parameters => field.IsDefault ? field = [.. Method.GetParameters().Select(LibraryReader.Parameter)] : field;

    /// <summary>What it gives; null where it is made from the function's own type parameter.</summary>
    public CellType? ReturnType => field ??= ClrTypes.ToCellType(Method.ReturnType, Method.ReturnParameter.GetCustomAttribute<InUnitAttribute>()?.Unit);

    /// <summary>The closed formulas: one, or one for each member of the record it gives; empty when it has none.</summary>
    public ImmutableArray<FormulaAttribute> Formulas => field.IsDefault ? field = Marks<FormulaAttribute>() : field;

    /// <summary>Named intermediates of the formulas.</summary>
    public ImmutableArray<LetAttribute> Lets => field.IsDefault ? field = Marks<LetAttribute>() : field;

    /// <summary>Conditions between the arguments without which it refuses them.</summary>
    public ImmutableArray<NeedsAttribute> Needs => field.IsDefault ? field = Marks<NeedsAttribute>() : field;

    /// <summary>How it works when it has no closed formula, or null.</summary>
    public NoFormulaAttribute? NoFormula => Method.GetCustomAttribute<NoFormulaAttribute>();

    /// <summary>Where it comes from.</summary>
    public ImmutableArray<SourceAttribute> Sources => field.IsDefault ? field = Marks<SourceAttribute>() : field;

    /// <summary>Worked numbers.</summary>
    public ImmutableArray<ExampleAttribute> Examples => field.IsDefault ? field = Marks<ExampleAttribute>() : field;

    /// <summary>Cautions and when they apply.</summary>
    public ImmutableArray<CautionWhenAttribute> Cautions => field.IsDefault ? field = Marks<CautionWhenAttribute>() : field;

    private ImmutableArray<T> Marks<T>() where T : Attribute => [.. Method.GetCustomAttributes<T>()];

    /// <summary>Functions are the same when their code is.</summary>
    public bool Equals(LibraryFunction? other) => other is not null && Method.Equals(other.Method);

    /// <inheritdoc/>
    public override int GetHashCode() => Method.GetHashCode();
}

/// <summary>A marked property of a library record or class of ready values.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Property">The code.</param>
/// <param name="Type">Its type in cells; null where it is made from the record's type parameter.</param>
/// <param name="Declaration">Symbol, unit, meaning.</param>
/// <param name="Sources">Where a ready value comes from.</param>
public sealed record LibraryMember(string Name, PropertyInfo Property, CellType? Type, MemberAttribute Declaration, ImmutableArray<SourceAttribute> Sources);

/// <summary>One of the author's functions, bound.</summary>
public sealed class OwnFunction
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its parameters.</summary>
    public required ImmutableArray<BoundParameter> Parameters { get; init; }

    /// <summary>Its declared type.</summary>
    public required CellType ReturnType { get; init; }

    /// <summary>Its body; null until it is bound, and when it is in fault.</summary>
    public BoundExpression? Body { get; set; }

    /// <summary>Why it cannot be called, or null.</summary>
    public Diagnostics.Fault? Fault { get; set; }
}
