using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>The declared limits of a parameter as conditions; what a function refuses, its formula must not answer.</summary>
internal static class FunctionLimits
{
    private const double Allowance = 1e-12;
    private const int Exact = 12;

    /// <summary>How many conditions there are.</summary>
    public static int Count(LibraryParameter parameter) => Bounds(parameter).Count() + (IsWhole(parameter) ? 2 : 0);

    /// <summary>The conditions; none for a number written out, which the engine has judged already.</summary>
    public static IEnumerable<FormulaText> Of(LibraryParameter parameter, FormulaText value)
    {
        if (value.Constant is not null) yield break;
        foreach ((string sign, double bound) in Bounds(parameter)) yield return FormulaText.Binary(value, sign, FormulaText.Number(bound), Hold.Comparison);
        if (IsWhole(parameter)) yield return FormulaText.Binary(value, "=", FormulaText.Call("TRUNC", value), Hold.Comparison);
    }

    private static bool IsWhole(LibraryParameter parameter) => parameter.Clr == typeof(int);

    private static IEnumerable<(string Sign, double Bound)> Bounds(LibraryParameter parameter)
    {
        ParameterAttribute declared = parameter.Declaration;
        Unit unit = declared.Unit.Length > 0 && UnitText.TryParse(declared.Unit, out Unit? read, out _) ? read : UnitTable.Number;
        if (!double.IsNaN(declared.Above)) yield return (">", unit.ToSi(declared.Above));
        if (!double.IsNaN(declared.AtLeast)) yield return (">=", Loose(unit.ToSi(declared.AtLeast), -1));
        if (!double.IsNaN(declared.Below)) yield return ("<", unit.ToSi(declared.Below));
        if (!double.IsNaN(declared.AtMost)) yield return ("<=", Loose(unit.ToSi(declared.AtMost), 1));
    }

    /// <summary>A limit such as 90° is no exact number of radians; a hair more is allowed, so that rounding does not refuse the limit itself.</summary>
    private static double Loose(double bound, int direction) =>
        bound == 0 || bound.ToString("R", System.Globalization.CultureInfo.InvariantCulture).Length <= Exact ? bound : bound + (direction * Allowance * Math.Abs(bound));
}
