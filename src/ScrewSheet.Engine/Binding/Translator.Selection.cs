using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Binding;

/// <summary>Rows of a series that another column picks.</summary>
internal sealed partial class Translator
{
    private BoundSelection Selection(IInvocationOperation call, string name)
    {
        Place place = PlaceOf(call);
        if (call.Instance is null || !Enum.TryParse(name, out SelectionOperation operation)) throw Refuse(BindingFaults.NotInLanguage(name, place));
        BoundExpression series = Visit(call.Instance), by = WithoutConversion(call.Arguments[0].Value);
        if (by.Type is not SeriesType picking) throw Refuse(BindingFaults.Kinds(null, place));
        if (operation == SelectionOperation.Beside) return new BoundSelection(operation, series, by, [], null, series.Type, place);
        if (call.Arguments[1].Value is IDelegateCreationOperation lambda) return new BoundSelection(operation, series, by, [], Lambda(lambda, picking.Element), series.Type, place);
        ImmutableArray<BoundExpression> values = [.. Given(call.Arguments[1].Value).Select(WithoutConversion)];
        if (values.IsEmpty) throw Refuse(BindingFaults.SelectionValues(name, place));
        if (picking.Element is QuantityType) throw Refuse(BindingFaults.SelectionByQuantity(name, by.Place));
        foreach (BoundExpression value in values)
            if (value.Type != picking.Element) throw Refuse(BindingFaults.Wanted(picking.Element, value.Type, "what the rows are compared with", value.Place));
        return new BoundSelection(operation, series, by, values, null, series.Type, place);
    }

    /// <summary>A column without the conversion to pure numbers that the compiler adds to find an overload: our own sentence says more.</summary>
    private BoundExpression WithoutConversion(IOperation operation)
    {
        while (operation is IConversionOperation { IsImplicit: true } conversion) operation = conversion.Operand;
        return Visit(operation);
    }

    private static IEnumerable<IOperation> Given(IOperation values) => values is IArrayCreationOperation { Initializer: { } list } ? list.ElementValues : [values];
}
