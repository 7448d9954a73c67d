using System.Collections.Immutable;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>The way between the types of library code and the types of cells.</summary>
public static class ClrTypes
{
    /// <summary>The cell type of a library type, or null where it holds a type parameter. <paramref name="unit"/> gives the dimension of a <see cref="Quantity"/>.</summary>
    /// <exception cref="NotSupportedException">The type cannot stand in a cell: a mistake in the library.</exception>
    public static CellType? ToCellType(Type clr, string? unit = null)
    {
        if (clr.ContainsGenericParameters) return null;
        if (clr == typeof(double) || clr == typeof(int)) return CellType.Number;
        if (clr == typeof(bool)) return CellType.Truth;
        if (clr == typeof(string)) return CellType.Text;
        if (clr == typeof(Quantity)) return OfUnit(unit);
        if (QuantityKinds.ByType(clr) is { } kind) return CellType.Of(kind);
        if (IsSeries(clr)) return ToCellType(clr.GetGenericArguments()[0], unit) is { } element ? new SeriesType(element) : null;
        if (clr.IsEnum && clr.IsDefined(typeof(SheetOptionAttribute), false)) return new OptionType(clr);
        if (IsRecord(clr)) return ToRecordType(clr);
        throw new NotSupportedException($"{clr.Name} cannot stand in a cell.");
    }

    /// <summary>True for <see cref="Series{T}"/>.</summary>
    public static bool IsSeries(Type clr) => clr.IsGenericType && clr.GetGenericTypeDefinition() == typeof(Series<>);

    /// <summary>True for a marked record.</summary>
    public static bool IsRecord(Type clr) => clr.IsDefined(typeof(SheetRecordAttribute), false);

    /// <summary>The library type that holds values of a cell type, as code takes and gives them.</summary>
    public static Type ToClr(CellType type) => type switch
    {
        NumberType => typeof(double),
        TruthType => typeof(bool),
        TextType => typeof(string),
        QuantityType { Kind: { } kind } => kind.ClrType,
        QuantityType => typeof(Quantity),
        SeriesType series => typeof(Series<>).MakeGenericType(ToClr(series.Element)),
        RecordType { Arguments.Count: > 0 } record => record.Clr.MakeGenericType([.. record.Arguments.Select(ToClr)]),
        RecordType record => record.Clr,
        OptionType option => option.Clr,
        _ => throw new NotSupportedException($"{type.Name} has no library type."),
    };

    /// <summary>The type of a member or result with the type parameters put in.</summary>
    public static CellType Close(Type clr, string? unit, IReadOnlyDictionary<string, CellType> arguments)
    {
        if (clr.IsGenericParameter) return arguments[clr.Name];
        if (clr == typeof(Quantity) && TypeUnits.Of(unit, arguments) is { } made) return CellType.Of(made);
        if (!clr.ContainsGenericParameters) return ToCellType(clr, unit)!;
        ImmutableArray<CellType> inner = [.. clr.GetGenericArguments().Select(argument => Close(argument, unit, arguments))];
        return IsSeries(clr) ? new SeriesType(inner[0]) : new RecordType(clr.GetGenericTypeDefinition(), new CellTypes(inner));
    }

    private static RecordType ToRecordType(Type clr) =>
        clr.IsGenericType ? new RecordType(clr.GetGenericTypeDefinition(), new CellTypes([.. clr.GetGenericArguments().Select(argument => ToCellType(argument)!)])) : new RecordType(clr);

    private static CellType? OfUnit(string? unit)
    {
        if (string.IsNullOrEmpty(unit)) return CellType.Number;
        if (TypeUnits.IsOne(unit)) return null;
        if (!UnitText.TryParse(unit, out Unit? read, out string? problem)) throw new NotSupportedException(problem);
        return CellType.Of(read!.Dimension);
    }
}
