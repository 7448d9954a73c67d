using System.Collections.Immutable;

namespace ScrewSheet.Workbooks.Model;

/// <summary>The names of a sheet's cells, worked out from them and carried along by edits.</summary>
/// <param name="Cells">The cells it was worked out from.</param>
/// <param name="Names">The address of each name; of a doubled one, any of its addresses.</param>
/// <param name="Doubled">Names that more than one cell has.</param>
internal sealed record NameIndex(CellMap Cells, ImmutableDictionary<string, CellAddress> Names, ImmutableHashSet<string> Doubled)
{
    /// <summary>From the cells.</summary>
    public static NameIndex Of(CellMap cells)
    {
        var names = ImmutableDictionary.CreateBuilder<string, CellAddress>(StringComparer.Ordinal);
        var doubled = ImmutableHashSet.CreateBuilder<string>(StringComparer.Ordinal);
        foreach (Cell cell in cells.Values)
        {
            if (cell.Name is null) continue;
            if (!names.TryAdd(cell.Name, cell.Address)) doubled.Add(cell.Name);
        }
        return new NameIndex(cells, names.ToImmutable(), doubled.ToImmutable());
    }

    /// <summary>True when a cell of that name at that address would not be the only one.</summary>
    public bool Clashes(string? name, CellAddress at) =>
        name is not null && (Doubled.Contains(name) || (Names.TryGetValue(name, out CellAddress bearer) && bearer != at));

    /// <summary>After one cell was changed, added or removed; neither name may clash.</summary>
    public NameIndex After(CellMap cells, string? oldName, string? newName, CellAddress at)
    {
        if (oldName == newName) return this with { Cells = cells };
        ImmutableDictionary<string, CellAddress> names = oldName is null ? Names : Names.Remove(oldName);
        return this with { Cells = cells, Names = newName is null ? names : names.SetItem(newName, at) };
    }
}
