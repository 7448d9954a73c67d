using System.Reflection;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Makes a series of the library's type for a type of cells.</summary>
internal static class SeriesFactory
{
    private static readonly MethodInfo OfKind = typeof(Series).GetMethods().Single(method => method is { Name: nameof(Series.Of), IsGenericMethodDefinition: true });

    /// <summary>A series of values in coherent SI.</summary>
    public static Series Make(CellType element, double[] si) => element switch
    {
        NumberType => Series.OfNumbers(si),
        QuantityType { Kind: { } kind } => (Series)OfKind.MakeGenericMethod(kind.ClrType).Invoke(null, [si])!,
        QuantityType quantity => Series.Of(si, quantity.Dimension),
        _ => throw new ArgumentOutOfRangeException(nameof(element), element, "A series has numbers or quantities."),
    };
}
