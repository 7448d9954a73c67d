using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>Faults and cautions in one harmless line.</summary>
internal static class OriginText
{
    /// <summary>The sentence, its place in the file and the compiler's own id where there is one.</summary>
    public static string Of(Fault fault)
    {
        string place = fault.Place is { Line: > 0 } at ? $" (line {at.Line}, column {at.Column})" : "";
        string compiler = fault.CompilerId is null ? "" : $" [{fault.CompilerId}]";
        return PlainText.Of(fault.Sentence + place + compiler);
    }

    /// <summary>The sentence, after the cell it arose in where that is another one.</summary>
    public static string Of(Caution caution) => PlainText.Of(caution.Origin is null ? caution.Message : $"{caution.Origin}: {caution.Message}");
}
