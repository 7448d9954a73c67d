using System.Collections.Immutable;
using System.Text;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Merging;

/// <summary>A place where two versions contradict each other.</summary>
/// <param name="Where">The cell, as text such as <c>Fall.B7</c>, or the number of a line.</param>
/// <param name="Fault">What is wrong there.</param>
public sealed record MergeConflict(string Where, Fault Fault);

/// <summary>What became of a merge.</summary>
/// <param name="Workbook">The merged workbook; null where the versions cannot be merged.</param>
/// <param name="Conflicts">Where both versions stand in it as faults; empty where they agree.</param>
/// <param name="Refusal">Why they cannot be merged, or null.</param>
public sealed record MergeResult(Workbook? Workbook, ImmutableArray<MergeConflict> Conflicts, Fault? Refusal);

/// <summary>
/// Merges two versions of a workbook that come from a third, cell by cell. What one of them changed is taken; what both changed alike, once; where they contradict each other,
/// both stand in the file as a fault. Rows that either inserted or removed are made room for in the other, with every reference.
/// </summary>
public static class WorkbookMerge
{
    /// <summary>Merges.</summary>
    /// <param name="origin">The version both come from.</param>
    /// <param name="ours">One of them, whose order of lines is kept where both changed it.</param>
    /// <param name="theirs">The other.</param>
    public static MergeResult Of(Workbook origin, Workbook ours, Workbook theirs)
    {
        byte[] was = WorkbookText.Write(origin), mine = WorkbookText.Write(ours), other = WorkbookText.Write(theirs);
        if (mine.AsSpan().SequenceEqual(was)) return Done(theirs, ours, theirs);
        if (other.AsSpan().SequenceEqual(was) || mine.AsSpan().SequenceEqual(other)) return Done(ours, ours, theirs);
        return ByParts(origin, ours, theirs);
    }

    /// <summary>The same without looking for versions that are alike as a whole.</summary>
    internal static MergeResult ByParts(Workbook origin, Workbook ours, Workbook theirs)
    {
        Dictionary<string, MergedRows> rows = origin.Sheets.ToDictionary(sheet => sheet.Name, sheet => MergedRows.Of(sheet, ours.Find(sheet.Name), theirs.Find(sheet.Name)), StringComparer.Ordinal);
        try
        {
            FileMerge merge = new(InRoom(origin, rows, (sheet, row) => sheet.OfBase(row)), InRoom(ours, rows, (sheet, row) => sheet.OfOurs(row)), InRoom(theirs, rows, (sheet, row) => sheet.OfTheirs(row)));
            byte[] file = Encoding.UTF8.GetBytes(merge.Text());
            if (merge.Refusal is { } refusal) return new MergeResult(null, [], refusal);
            return WorkbookText.Read(file) is WorkbookRead read ? Done(WithoutRemovedRows(read.Workbook, rows), ours, theirs) : new MergeResult(null, [], MergeFaults.NoRoom("a file"));
        }
        catch (NoRoomException)
        {
            return new MergeResult(null, [], MergeFaults.NoRoom("a sheet"));
        }
    }

    private sealed class NoRoomException : Exception;

    /// <summary>The workbook with its cells in the merged rows.</summary>
    private static Workbook InRoom(Workbook workbook, Dictionary<string, MergedRows> rows, Func<MergedRows, int, int> place)
    {
        if (rows.Values.All(sheet => sheet.IsIdentity)) return workbook;
        return Relocation.Apply(workbook, (id, _) =>
        {
            if (!rows.TryGetValue(id.Sheet, out MergedRows? sheet)) return id;
            CellAddress moved = id.Address with { Row = place(sheet, id.Address.Row) };
            if (moved.IsValid) return id with { Address = moved };
            return workbook.Find(id.Sheet)?.Cells.ContainsKey(id.Address) == true ? throw new NoRoomException() : null;
        });
    }

    /// <summary>Rows that one version removed and the other did not touch go, now that both speak of the same rows.</summary>
    private static Workbook WithoutRemovedRows(Workbook merged, Dictionary<string, MergedRows> rows)
    {
        foreach ((string name, MergedRows of) in rows)
        {
            if (of.Removed.Count == 0 || merged.Find(name) is not { } sheet) continue;
            HashSet<int> held = [.. sheet.Cells.Keys.Select(address => address.Row), .. sheet.WhatIfs.Select(table => table.Anchor.Row)];
            foreach (int row in of.Removed.Where(row => !held.Contains(row)).OrderDescending()) merged = RowsAndColumns.RemoveRows(merged, name, row, row);
        }
        return merged;
    }

    private static MergeResult Done(Workbook merged, Workbook ours, Workbook theirs)
    {
        HashSet<string> known = [.. Faults(ours).Concat(Faults(theirs)).Select(conflict => conflict.Fault.Message)];
        return new MergeResult(merged, [.. Faults(merged).Where(conflict => conflict.Fault.Code is MergeFaults.ConflictCode or MergeFaults.LinesCode || !known.Contains(conflict.Fault.Message))], null);
    }

    private static IEnumerable<MergeConflict> Faults(Workbook workbook) =>
        [.. workbook.Faults.Select(fault => new MergeConflict($"line {(fault.Place?.Line ?? 0).ToString(System.Globalization.CultureInfo.InvariantCulture)}", fault)),
            .. from sheet in workbook.Sheets
               from cell in sheet.CellsInOrder
               where cell.Content is BrokenContent
               select new MergeConflict(new CellId(sheet.Name, cell.Address).ToString(), ((BrokenContent)cell.Content).Fault)];
}
