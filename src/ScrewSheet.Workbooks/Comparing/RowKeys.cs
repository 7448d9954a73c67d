using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Comparing;

/// <summary>What the rows of a sheet look like: a key for each, the same for rows that say the same wherever they stand, and the words by which a changed row is known again.</summary>
internal sealed class RowKeys
{
    private readonly Dictionary<int, List<Cell>> rows = [];

    /// <summary>Of a sheet, or of none.</summary>
    public RowKeys(Sheet? sheet)
    {
        foreach (Cell cell in sheet?.Cells.Values ?? [])
        {
            if (rows.TryGetValue(cell.Address.Row, out List<Cell>? row)) row.Add(cell);
            else rows.Add(cell.Address.Row, [cell]);
            Count = Math.Max(Count, cell.Address.Row);
        }
    }

    /// <summary>The last row that holds something.</summary>
    public int Count { get; }

    /// <summary>A key for each row, 0 for an empty one.</summary>
    public ulong[] Keys(int count)
    {
        ulong[] keys = new ulong[count];
        foreach ((int row, List<Cell> cells) in rows)
        {
            // the cells of a row come in any order, so their keys are added
            ulong key = 1;
            foreach (Cell cell in cells) key = unchecked(key + KeyOf(cell));
            keys[row - 1] = key == 0 ? 1 : key;
        }
        return keys;
    }

    /// <summary>Names, notes and givens of a row, by its index from 0.</summary>
    public IEnumerable<string> Words(int index)
    {
        foreach (Cell cell in rows.GetValueOrDefault(index + 1, []))
        {
            if (cell.Name is not null) yield return cell.Name;
            if (cell.Content is NoteContent note) yield return "\"" + note.Text;
            if (cell.Content is GivenContent given) yield return $"{CellAddress.ColumnName(cell.Address.Column)} = {given.Text}";
        }
    }

    private static ulong KeyOf(Cell cell)
    {
        TextKey key = new();
        key.Add(cell.Address.Column);
        key.Add(cell.Name);
        switch (cell.Content)
        {
            case ResultContent result: key.AddWithoutAddresses(result.Expression); break;
            case GivenContent given: key.Add(given.Text); break;
            case NoteContent note: key.Add(note.Text); break;
            case BrokenContent broken: key.Add(broken.Text); break;
        }
        return key.Value;
    }
}
