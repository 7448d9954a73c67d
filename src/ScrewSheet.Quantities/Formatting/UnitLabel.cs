using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Quantities.Formatting;

/// <summary>What stands above figures that are all in one unit.</summary>
public static class UnitLabel
{
    /// <summary>Such as <c>depth [mm]</c>; the label alone where the figures have no unit.</summary>
    public static string Of(string label, Unit? unit) => Of(label, unit?.Symbol);

    /// <summary>Such as <c>depth [mm]</c>; the label alone where the figures have no unit.</summary>
    public static string Of(string label, string? symbol) => string.IsNullOrEmpty(symbol) ? label : $"{label} [{symbol}]";
}
