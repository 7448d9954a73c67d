using System.Globalization;

namespace ScrewSheet.Workbooks.Model;

/// <summary>A place on a sheet; column and row count from 1 (A1 is 1, 1). Columns to ZZZ (18,278), rows to 99,999.</summary>
/// <param name="Column">1 to 18,278.</param>
/// <param name="Row">1 to 99,999.</param>
public readonly record struct CellAddress(int Column, int Row) : IComparable<CellAddress>
{
    /// <summary>The last column, ZZZ.</summary>
    public const int LastColumn = 18278;

    /// <summary>The last row.</summary>
    public const int LastRow = 99999;

    /// <summary>True inside the sheet.</summary>
    public bool IsValid => Column is >= 1 and <= LastColumn && Row is >= 1 and <= LastRow;

    /// <summary>Reads <c>B7</c>: one to three capital letters and a row without leading zero.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, out CellAddress address)
    {
        address = default;
        int letters = 0, column = 0;
        while (letters < text.Length && letters < 4 && text[letters] is >= 'A' and <= 'Z') column = (column * 26) + text[letters++] - 'A' + 1;
        ReadOnlySpan<char> digits = text[letters..];
        if (letters is 0 or > 3 || digits.Length is 0 or > 5 || digits[0] is < '1' or > '9') return false;
        if (!int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int row)) return false;
        address = new CellAddress(column, row);
        return true;
    }

    /// <summary>The letters of a column.</summary>
    public static string ColumnName(int column)
    {
        string name = "";
        for (int rest = column; rest > 0; rest = (rest - 1) / 26) name = (char)('A' + ((rest - 1) % 26)) + name;
        return name;
    }

    /// <summary>Row by row, left to right.</summary>
    public int CompareTo(CellAddress other) => (Row, Column).CompareTo((other.Row, other.Column));

    /// <inheritdoc/>
    public override string ToString() => ColumnName(Column) + Row.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A cell of a workbook: its sheet's name and its address.</summary>
/// <param name="Sheet">The sheet's name.</param>
/// <param name="Address">The place on it.</param>
public readonly record struct CellId(string Sheet, CellAddress Address)
{
    /// <summary><c>Fall.B7</c>.</summary>
    public override string ToString() => $"{Sheet}.{Address}";

    /// <summary>By address and the length of the sheet's name: a workbook has few sheets, and hashing a name at every look-up would cost more than the look-up.</summary>
    public override int GetHashCode() => unchecked((Address.Row * 486187739) + (Address.Column * 16777619) + (Sheet?.Length ?? 0));
}
