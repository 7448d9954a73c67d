using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>A given whose value is not exactly known, and how it may differ; all values in coherent SI.</summary>
/// <param name="Cell">The given.</param>
/// <param name="Label">How it is called.</param>
/// <param name="Type">The type of its values.</param>
/// <param name="Format">How it is shown, or null.</param>
/// <param name="Si">The value it has in the file.</param>
/// <param name="HalfWidthSi">What stands after ±, worked out where it is relative; for <see cref="ToleranceShape.Standard"/> the standard uncertainty.</param>
/// <param name="Shape">What the half-width means.</param>
/// <param name="Freedom">The degrees of freedom behind it; infinity where the file says none.</param>
/// <param name="LowSi">The lower bound of draws; minus infinity for none.</param>
/// <param name="HighSi">The upper bound of draws; infinity for none.</param>
public sealed record UncertainGiven(CellId Cell, string Label, CellType Type, DisplayFormat? Format, double Si, double HalfWidthSi, ToleranceShape Shape, double Freedom, double LowSi, double HighSi)
{
    /// <summary>The standard uncertainty u: half the half-width of a 95 % interval of a normal distribution, a / √3 of a rectangular, a / √6 of a triangular one.</summary>
    public double StandardUncertainty => Shape switch
    {
        ToleranceShape.Normal => HalfWidthSi / 2,
        ToleranceShape.Rectangular => HalfWidthSi / Math.Sqrt(3),
        ToleranceShape.Triangular => HalfWidthSi / Math.Sqrt(6),
        _ => HalfWidthSi,
    };

    /// <summary>What the interval over which it is moved alone reaches to either side: the half-width, or 1.96 u where u is written.</summary>
    public double ReachSi => Shape == ToleranceShape.Standard ? 1.96 * HalfWidthSi : HalfWidthSi;

    /// <summary>True for a normal distribution known from few observations: draws are then of Student's t.</summary>
    public bool IsStudent => Shape is ToleranceShape.Normal or ToleranceShape.Standard && double.IsFinite(Freedom);
}
