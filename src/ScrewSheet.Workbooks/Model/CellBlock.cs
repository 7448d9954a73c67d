namespace ScrewSheet.Workbooks.Model;

/// <summary>A rectangle of cells; both corners are in it.</summary>
/// <param name="First">Top left.</param>
/// <param name="Last">Bottom right.</param>
public readonly record struct CellBlock(CellAddress First, CellAddress Last)
{
    /// <summary>Between two opposite corners.</summary>
    public static CellBlock Between(CellAddress one, CellAddress other) => new(
        new CellAddress(Math.Min(one.Column, other.Column), Math.Min(one.Row, other.Row)),
        new CellAddress(Math.Max(one.Column, other.Column), Math.Max(one.Row, other.Row)));

    /// <summary>How many columns.</summary>
    public int Columns => Last.Column - First.Column + 1;

    /// <summary>How many rows.</summary>
    public int Rows => Last.Row - First.Row + 1;

    /// <summary>True for one cell.</summary>
    public bool IsOne => First == Last;

    /// <summary>True where the address lies in it.</summary>
    public bool Contains(CellAddress address) =>
        address.Column >= First.Column && address.Column <= Last.Column && address.Row >= First.Row && address.Row <= Last.Row;

    /// <summary>Every address, row by row.</summary>
    public IEnumerable<CellAddress> Addresses()
    {
        for (int row = First.Row; row <= Last.Row; row++)
        {
            for (int column = First.Column; column <= Last.Column; column++) yield return new CellAddress(column, row);
        }
    }

    /// <summary>The cells of a sheet that lie in it, row by row; a large block costs no more than the sheet has cells.</summary>
    public IEnumerable<Cell> CellsOf(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        CellBlock self = this;
        if ((long)Rows * Columns > sheet.Cells.Count) return sheet.Cells.Values.Where(cell => self.Contains(cell.Address)).OrderBy(cell => cell.Address);
        return Addresses().Select(address => sheet.Cells.GetValueOrDefault(address)).OfType<Cell>();
    }

    /// <inheritdoc/>
    public override string ToString() => IsOne ? First.ToString() : $"{First} to {Last}";
}
