namespace ScrewSheet.Workbooks.Results;

/// <summary>Values as plain figures.</summary>
public static class SiValue
{
    /// <summary>A number, or a quantity in coherent SI; null for everything else.</summary>
    public static double? Of(CellValue? value) => value switch { NumberValue number => number.Value, QuantityValue quantity => quantity.Si, _ => null };
}
