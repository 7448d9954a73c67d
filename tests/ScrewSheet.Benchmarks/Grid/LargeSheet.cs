using System.Globalization;
using System.Text;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Benchmarks.Grid;

/// <summary>10,000 rows of 50 columns, all filled: a column of words, nine of givens, forty of results that read their own row.</summary>
internal static class LargeSheet
{
    public const int Rows = 10_000, Columns = 50, FirstResult = 11;

    /// <summary>The workbook file.</summary>
    public static byte[] File()
    {
        StringBuilder text = new("screwsheet 1\ntitle Many rows\nunits SI\n\nsheet Tests\n");
        for (int row = 1; row <= Rows; row++)
        {
            text.Append(CultureInfo.InvariantCulture, $"A{row} \"specimen {row}\"\n");
            for (int column = 2; column < FirstResult; column++) text.Append(CultureInfo.InvariantCulture, $"{CellAddress.ColumnName(column)}{row} [mm] = {10 + column + (row % 37 * 0.5)} mm\n");
            for (int column = FirstResult; column <= Columns; column++)
            {
                string one = CellAddress.ColumnName(2 + (column % 9)), other = CellAddress.ColumnName(2 + (column % 7));
                text.Append(CultureInfo.InvariantCulture, $"{CellAddress.ColumnName(column)}{row} [mm, 2 decimals] => {one}{row} * {column / 8.0} + {other}{row}\n");
            }
        }
        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
