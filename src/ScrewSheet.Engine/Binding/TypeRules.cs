using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Binding;

/// <summary>What operators make of the types of their operands; every rule about units is here.</summary>
internal static class TypeRules
{
    /// <summary>The type of a sum or difference.</summary>
    public static (CellType? Type, Fault? Fault) Sum(CellType left, CellType right, BinaryOperation operation, Place place)
    {
        string verb = operation == BinaryOperation.Add ? "added" : "subtracted";
        if (left is TextType && right is TextType && operation == BinaryOperation.Add) return (CellType.Text, null);
        if (IsTemperature(left) && IsTemperature(right) && operation == BinaryOperation.Subtract) return (CellType.Of(left is QuantityType q ? q.Dimension : default), null);
        if (IsTemperature(left) || IsTemperature(right)) return (null, BindingFaults.Temperature(place));
        return Common(left, right) is { } common && common is NumberType or QuantityType ? (common, null) : (null, BindingFaults.Mixed(left, right, verb, place));
    }

    /// <summary>The type of a product.</summary>
    public static (CellType? Type, Fault? Fault) Product(CellType left, CellType right, Place place) => Scaled(left, right, place, (a, b) => a * b, "multiplied");

    /// <summary>The type of a quotient.</summary>
    public static (CellType? Type, Fault? Fault) Quotient(CellType left, CellType right, Place place) => Scaled(left, right, place, (a, b) => a / b, "divided");

    private static (CellType?, Fault?) Scaled(CellType left, CellType right, Place place, Func<Dimension, Dimension, Dimension> combine, string verb)
    {
        if (left is not (NumberType or QuantityType) || right is not (NumberType or QuantityType)) return (null, BindingFaults.Mixed(left, right, verb, place));
        if (IsTemperature(left) || IsTemperature(right)) return (null, BindingFaults.Temperature(place));
        if (right is NumberType) return (left, null);
        if (left is NumberType && verb == "multiplied") return (right, null);
        if (IsTurning(left) && IsTime(right) && verb == "multiplied") return (CellType.Of(QuantityKinds.Angle), null);
        if (IsTime(left) && IsTurning(right) && verb == "multiplied") return (CellType.Of(QuantityKinds.Angle), null);
        try
        {
            return (CellType.Of(combine(DimensionOf(left), DimensionOf(right))), null);
        }
        catch (OverflowException)
        {
            return (null, BindingFaults.DimensionTooHigh(place));
        }
    }

    /// <summary>Whether two values may be compared by size.</summary>
    public static Fault? Order(CellType left, CellType right, Place place) =>
        Common(left, right) is NumberType or QuantityType ? null : BindingFaults.Mixed(left, right, "compared", place);

    /// <summary>Whether two values may be asked for equality.</summary>
    public static Fault? Equality(CellType left, CellType right, Place place)
    {
        if (left is QuantityType || right is QuantityType) return Common(left, right) is null ? BindingFaults.Mixed(left, right, "compared", place) : BindingFaults.QuantityEquality(place);
        return Common(left, right) is NumberType or TruthType or TextType or OptionType ? null : BindingFaults.Mixed(left, right, "compared", place);
    }

    /// <summary>The type that holds values of both, or null: the same, or one of them undecided.</summary>
    public static CellType? Common(CellType left, CellType right)
    {
        if (left == right) return left;
        if (left is QuantityType a && right is QuantityType b && a.Dimension == b.Dimension) return a.Kind is null ? b : b.Kind is null ? a : null;
        if (left is SeriesType s && right is SeriesType t) return Common(s.Element, t.Element) is { } element ? new SeriesType(element) : null;
        return null;
    }

    /// <summary>Whether a value may stand where that type is wanted.</summary>
    public static bool Fits(CellType actual, CellType wanted) => wanted switch
    {
        QuantityType { Kind: null } general => actual is QuantityType quantity && quantity.Dimension == general.Dimension,
        _ => Common(actual, wanted) == wanted,
    };

    /// <summary>The type of a power, or why there is none.</summary>
    public static (CellType? Type, Fault? Fault) Power(CellType value, int numerator, int denominator, Place place)
    {
        if (IsTemperature(value)) return (null, BindingFaults.Temperature(place));
        if (value is QuantityType { Dimension.IsNone: true }) return (CellType.Number, null);
        return DimensionOf(value).Power(numerator, denominator) is { } raised ? (CellType.Of(raised), null) : (null, BindingFaults.NoSuchRoot(value, place));
    }

    /// <summary>The dimension of a number or quantity.</summary>
    public static Dimension DimensionOf(CellType type) => type is QuantityType quantity ? quantity.Dimension : Dimension.None;

    private static bool IsTemperature(CellType type) => type is QuantityType { Kind: { } kind } && kind == QuantityKinds.Temperature;

    private static bool IsTurning(CellType type) => type is QuantityType { Kind.Name: "RotationalSpeed" };

    private static bool IsTime(CellType type) => type is QuantityType { Kind.Name: "Duration" };
}
