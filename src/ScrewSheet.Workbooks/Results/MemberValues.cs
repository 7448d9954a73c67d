using System.Reflection;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Workbooks.Results;

/// <summary>A member of a library record with its value.</summary>
/// <param name="Name">The member's name.</param>
/// <param name="Declaration">Symbol, unit, meaning.</param>
/// <param name="Value">Its value; null where the record has none, as for what does not act.</param>
public sealed record MemberValue(string Name, MemberAttribute Declaration, CellValue? Value);

/// <summary>Reads the marked members of a library record as values of the kind cells have.</summary>
public static class MemberValues
{
    /// <summary>In the order declared.</summary>
    public static IEnumerable<MemberValue> Of(object record) =>
        from property in record.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).OrderBy(property => property.MetadataToken)
        let declaration = property.GetCustomAttribute<MemberAttribute>()
        where declaration is not null
        select new MemberValue(property.Name, declaration, Value(Read(property, record)));

    /// <summary>A member that refuses to answer, such as the load of a mode that does not act, has no value.</summary>
    private static object? Read(PropertyInfo property, object record)
    {
        try
        {
            return property.GetValue(record);
        }
        catch (TargetInvocationException exception) when (exception.InnerException is DomainException)
        {
            return null;
        }
    }

    private static CellValue? Value(object? value) => value switch
    {
        null => null,
        double number => new NumberValue(number),
        int number => new NumberValue(number),
        bool truth => new TruthValue(truth),
        string text => new TextValue(text),
        Enum option => new OptionValue(option),
        Quantity quantity => new QuantityValue(quantity.Si, new QuantityType(quantity.Dimension, QuantityKinds.DefaultOf(quantity.Dimension))),
        Series series => new SeriesValue(series, new SeriesType(CellType.Of(series.Dimension))),
        UnitsNet.IQuantity quantity when QuantityKinds.ByType(quantity.GetType()) is QuantityKind kind => new QuantityValue(kind.ToSi(quantity), new QuantityType(kind.Dimension, kind)),
        _ => new RecordValue(value, new RecordType(value.GetType())),
    };
}
