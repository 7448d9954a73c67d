using System.Reflection;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Copies a library record with other values in some of its members: what <c>with</c> does.</summary>
internal sealed class RecordChange(PropertyInfo[] properties)
{
    public object Apply(object record, object[] values)
    {
        MethodInfo? clone = record.GetType().GetMethod("<Clone>$");
        object copy = clone is not null ? clone.Invoke(record, null)! : CopyOfStruct(record);
        try
        {
            for (int i = 0; i < properties.Length; i++) properties[i].SetValue(copy, values[i]);
        }
        catch (TargetInvocationException exception) when (exception.InnerException is ArgumentException inner)
        {
            throw new EvaluationException(EvaluationFaults.Domain(inner.Message));
        }
        return copy;
    }

    private static object CopyOfStruct(object boxed)
    {
        if (!boxed.GetType().IsValueType) throw new InvalidOperationException($"{boxed.GetType().Name} is no record.");
        return System.Runtime.CompilerServices.RuntimeHelpers.GetObjectValue(boxed)!;
    }
}
