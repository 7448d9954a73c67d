using System.Reflection;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Counts the series in a record that a library function has made: each value is a step, as if it had been read.</summary>
internal sealed class RecordRows
{
    private readonly PropertyInfo[] series;

    private RecordRows(PropertyInfo[] series) => this.series = series;

    /// <summary>For a record's type; null where it holds no series.</summary>
    public static RecordRows? Of(RecordType record)
    {
        PropertyInfo[] series = [.. ClrTypes.ToClr(record).GetProperties().Where(property => typeof(IRows).IsAssignableFrom(property.PropertyType))];
        return series.Length == 0 ? null : new RecordRows(series);
    }

    /// <summary>Counts them and hands the record on.</summary>
    public object Count(Frame frame, object record)
    {
        foreach (PropertyInfo property in series) frame.Budget.Step(((IRows)property.GetValue(record)!).Count);
        return record;
    }
}
