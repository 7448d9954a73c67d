namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>Says that something cannot be written in the formula language of ECMA-376, and why; the cell then holds a value.</summary>
/// <param name="reason">A clause for a reader: what it is that has no formula there.</param>
internal sealed class NoForm(string reason) : Exception(reason);
