using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>What a line being typed would be.</summary>
/// <param name="Typed">The line it speaks of.</param>
/// <param name="Value">The value as it would be shown, or null.</param>
/// <param name="Type">Its type, or null.</param>
/// <param name="Fault">What is wrong, or null.</param>
/// <param name="Cautions">What rides with the value.</param>
internal sealed record Preview(string Typed, string? Value, string? Type, Fault? Fault, IReadOnlyList<string> Cautions)
{
    /// <summary>What the text alone says, without computing; null where it takes a calculation.</summary>
    public static Preview? OfText(string typed, CellAddress at)
    {
        if (typed.Trim().Length == 0) return new Preview(typed, "", "empty: the cell is cleared", null, []);
        return CellText.ReadEntry(typed, at) switch
        {
            EntryRefused refused => new Preview(typed, null, null, refused.Fault, []),
            EntryRead { Cell.Content: NoteContent } => new Preview(typed, "", "words", null, []),
            _ => null,
        };
    }
}
