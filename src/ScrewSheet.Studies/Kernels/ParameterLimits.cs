using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Studies.Kernels;

/// <summary>The hard limits of a parameter in coherent SI, drawn in by a hair so that rounding cannot carry a value past one.</summary>
/// <param name="Low">The lower limit; minus infinity for none.</param>
/// <param name="LowIncluded">True where the limit itself is taken.</param>
/// <param name="High">The upper limit; infinity for none.</param>
/// <param name="HighIncluded">True where the limit itself is taken.</param>
internal readonly record struct ParameterLimits(double Low, bool LowIncluded, double High, bool HighIncluded)
{
    private const double Hair = 1e-12;

    /// <summary>True where no value that is not finite passes.</summary>
    public bool IsClosed => Low > double.NegativeInfinity && High < double.PositiveInfinity;

    /// <summary>True for a value within.</summary>
    public bool Hold(double si) => (LowIncluded ? si >= Low : si > Low) && (HighIncluded ? si <= High : si < High);

    /// <summary>Of a parameter.</summary>
    public static ParameterLimits Of(LibraryParameter parameter)
    {
        ParameterAttribute declared = parameter.Declaration;
        Unit unit = declared.Unit.Length > 0 && UnitText.TryParse(declared.Unit, out Unit? read, out _) ? read : UnitTable.Number;
        double above = Si(declared.Above, unit, double.NegativeInfinity), atLeast = Si(declared.AtLeast, unit, double.NegativeInfinity);
        double below = Si(declared.Below, unit, double.PositiveInfinity), atMost = Si(declared.AtMost, unit, double.PositiveInfinity);
        double low = Math.Max(above, atLeast), high = Math.Min(below, atMost);
        return new ParameterLimits(double.IsFinite(low) ? low + (Hair * Math.Abs(low)) : low, atLeast > above, double.IsFinite(high) ? high - (Hair * Math.Abs(high)) : high, atMost < below);
    }

    private static double Si(double value, Unit unit, double none) => double.IsNaN(value) ? none : unit.ToSi(value);
}
