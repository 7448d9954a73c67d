using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Merging;

/// <summary>The line of a cell, taken apart into what its author wrote and the result that was kept.</summary>
/// <param name="Core">The line without the kept result; null where there is no cell.</param>
/// <param name="Kept">The kept result, or null.</param>
internal readonly record struct KeptLine(string? Core, string? Kept)
{
    /// <summary>Of a cell in one version, or of none.</summary>
    public static KeptLine Of(MergeItem? item)
    {
        if (item is null) return default;
        string line = item.Lines[0].Text;
        return CellLine.Read(new LineText(line, 0)).Cell?.Content is ResultContent { Kept: { } kept } ? new KeptLine(KeptEditing.Splice(line, default, null), kept) : new KeptLine(line, null);
    }

    /// <summary>True where it holds two versions already.</summary>
    public bool IsConflict => Core is not null && ConflictText.IsCell(Core);

    /// <summary>What stands after the address; nothing where there is no cell.</summary>
    public IReadOnlyList<string> Entry
    {
        get
        {
            if (Core is null) return [];
            string text = Core.TrimStart(' ', '\t');
            return [text[CellLine.AddressEnd(text, 0)..].Trim()];
        }
    }

    /// <summary>The line with a kept result, or without.</summary>
    public string With(string? kept) => kept is null || CellLine.Read(new LineText(Core!, 0)).Cell?.Content is not ResultContent ? Core! : KeptEditing.Splice(Core!, default, kept);
}
