using System.Collections.Immutable;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Editing;

/// <summary>Expressions whose references follow what they name, or move along with a copy.</summary>
public static class ReferenceShift
{
    /// <summary>The expression of a copy so many columns and rows away: addresses move by as much, names stay. An address that would leave the sheet is lost.</summary>
    /// <param name="expression">The text.</param>
    /// <param name="workbook">The workbook.</param>
    /// <param name="from">The sheet it stands on.</param>
    /// <param name="to">The sheet the copy stands on; names of the old sheet that it lacks are written with their sheet.</param>
    /// <param name="columns">To the right.</param>
    /// <param name="rows">Downward.</param>
    public static string Copied(string expression, Workbook workbook, string from, string to, int columns, int rows)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        return WrittenReferences.Rewrite(expression, name => workbook.Find(name) is not null, reference =>
        {
            if (reference.Address is { } address) return Prefix(reference.Sheet) + Moved(address, columns, rows);
            bool qualify = from != to && reference.Sheet is null && workbook.Find(from)?.Knows(reference.Name) == true && workbook.Find(to)?.Knows(reference.Name) != true;
            return qualify ? $"{from}.{reference.Name}" : null;
        });
    }

    /// <summary>The expression of a cell that itself goes from one sheet to another (or stays), when cells it names go elsewhere.</summary>
    internal static string Follow(string expression, Workbook workbook, string from, string to, Relocate move, RelocateRun? runs)
    {
        ImmutableArray<WrittenReference> references = WrittenReferences.In(expression, name => workbook.Find(name) is not null);
        string text = expression;
        for (int i = references.Length - 1; i >= 0; i--)
        {
            WrittenReference reference = references[i];
            string written = Follow(references, i, workbook, from, to, move, runs) ?? text.Substring(reference.Start, reference.Length);
            text = text[..reference.Start] + written + text[(reference.Start + reference.Length)..];
        }
        return text;
    }

    private static string? Follow(ImmutableArray<WrittenReference> references, int i, Workbook workbook, string from, string to, Relocate move, RelocateRun? runs)
    {
        WrittenReference reference = references[i];
        if (reference.Target(workbook, from) is not { } target)
            return from != to && reference.Sheet is null && workbook.Find(from)?.Column(reference.Name) is not null ? $"{from}.{reference.Name}" : null;
        if (workbook.Find(target.Sheet) is null) return null;
        (CellId First, CellId Last)? ends = EndsOf(references, i, workbook, from), run = IsRun(ends) ? runs?.Invoke(ends!.Value.First, ends.Value.Last) : null;
        // only what has both its corners on one sheet can shrink to what is left of it
        CellId? moved = run is { } whole ? (reference.Corner == 1 ? whole.First : whole.Last) : move(target, IsRun(ends) ? reference.Corner : 0);
        if (reference.Address is { } address)
        {
            if (moved is not { } there || run is null && ends is { } corners && IsTurned(corners, move)) return Prefix(reference.Sheet) + Relocation.LostName(address);
            return Prefix(reference.Sheet is null && there.Sheet == to ? null : there.Sheet) + there.Address;
        }
        return moved is not { } named || (reference.Sheet ?? from) == from && named.Sheet == to && reference.Sheet is null ? null
            : Prefix(reference.Sheet is null && named.Sheet == to ? null : named.Sheet) + reference.Name;
    }

    private static bool IsRun((CellId First, CellId Last)? ends) => ends is { } both && both.First.Sheet == both.Last.Sheet;

    /// <summary>A run nothing is left of: its last corner would come before its first.</summary>
    private static bool IsTurned((CellId First, CellId Last) ends, Relocate move)
    {
        bool run = IsRun(ends);
        CellId? one = move(ends.First, run ? 1 : 0), last = move(ends.Last, run ? 2 : 0);
        return one is { } a && last is { } b && a.Sheet == b.Sheet && (b.Address.Row < a.Address.Row || b.Address.Column < a.Address.Column);
    }

    /// <summary>The two corners of what a reference belongs to, where both are written as addresses.</summary>
    private static (CellId First, CellId Last)? EndsOf(ImmutableArray<WrittenReference> references, int i, Workbook workbook, string from)
    {
        if (references[i].Corner == 0) return null;
        int first = references[i].Corner == 1 ? i : i - 1;
        if (first < 0 || first + 1 >= references.Length || (references[first].Corner, references[first + 1].Corner) is not (1, 2) || references[first].Address is null || references[first + 1].Address is null) return null;
        return (references[first].Target(workbook, from)!.Value, references[first + 1].Target(workbook, from)!.Value);
    }

    private static string Moved(CellAddress address, int columns, int rows)
    {
        CellAddress moved = new(address.Column + columns, address.Row + rows);
        return moved.IsValid ? moved.ToString() : Relocation.LostName(address);
    }

    private static string Prefix(string? sheet) => sheet is null ? "" : sheet + ".";
}
