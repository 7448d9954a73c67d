using System.Collections;
using System.Reflection;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Counts the values that the cells of a workbook hold beyond one each: those of series, the characters of texts, what records carry.</summary>
internal sealed class HeldValues
{
    /// <summary>The most values a workbook may hold; one is as large as a number.</summary>
    public const long Most = 20_000_000;

    private const int OfRecord = 32;

    private readonly Dictionary<Type, PropertyInfo[]> parts = [];
    private long all;

    /// <summary>True where the workbook would hold too much with the one value in place of the other.</summary>
    public bool WouldHoldTooMuch(CellValue? before, CellValue after) => SizeOf(after) is > 0 and long size && all - SizeOf(before) + size > Most;

    /// <summary>Notes that a cell holds another value.</summary>
    public void Replace(CellValue? before, CellValue? after)
    {
        if (!ReferenceEquals(before, after)) all += SizeOf(after) - SizeOf(before);
    }

    private long SizeOf(CellValue? value) => value is RecordValue record ? OfRecord + PartsOf(record.Value) : ValueSize.Of(value);

    private long PartsOf(object record)
    {
        Type type = record.GetType();
        if (!parts.TryGetValue(type, out PropertyInfo[]? properties))
            parts.Add(type, properties = [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => typeof(IRows).IsAssignableFrom(property.PropertyType) || typeof(ICollection).IsAssignableFrom(property.PropertyType))]);
        return properties.Sum(property => Read(property, record) switch { IRows rows => rows.Count, ICollection list => (long)OfRecord * list.Count, _ => 0 });
    }

    /// <summary>A record may refuse to say what it does not know.</summary>
    private static object? Read(PropertyInfo property, object record)
    {
        try
        {
            return property.GetValue(record);
        }
        catch (TargetInvocationException)
        {
            return null;
        }
    }
}
