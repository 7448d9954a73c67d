using System.Globalization;
using System.Text;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Benchmarks;

/// <summary>
/// 10,000 results of ten operations each: 200 shapes side by side, each filled down 50 rows. A row has four givens; the first feeds the first
/// hundred results of its row, directly or through the result beside them, and no others. A formula reads alike here and in a spreadsheet file.
/// </summary>
internal static class TenThousand
{
    public const int Shapes = 200, Rows = 50, FirstResult = 5;

    /// <summary>The formula of a shape in a row. Inputs are lengths, and so is what it gives.</summary>
    public static string Formula(int shape, int row)
    {
        (string a, string b) = shape < Shapes / 2 ? ("A", "C") : ("B", "D");
        string first = Cell(shape % 2 == 1 ? CellAddress.ColumnName(FirstResult + shape - 1) : a, row), second = Cell(b, row), third = Cell(a, row);
        string Number(int k) => (1 + (((shape * 7) + (k * 13)) % 97 / 16.0)).ToString(CultureInfo.InvariantCulture);
        string sign = shape % 3 == 0 ? "-" : "+", other = shape % 5 == 0 ? "-" : "+";
        return $"(({first}{sign}{second})*{Number(1)}{other}{third}/{Number(2)}+{second}*{Number(3)})/({Number(4)}+{shape + 1})-{third}*{Number(5)}";
    }

    /// <summary>The value of a given in mm.</summary>
    public static double Given(int column, int row) => 10 + (column * 3) + (row * 0.5);

    /// <summary>The workbook file.</summary>
    public static byte[] File(string sheet = "Work")
    {
        StringBuilder text = new($"screwsheet 1\ntitle Ten thousand results\nunits SI\n\nsheet {sheet}\n");
        for (int row = 1; row <= Rows; row++)
        {
            for (int column = 1; column < FirstResult; column++) text.Append(CultureInfo.InvariantCulture, $"{CellAddress.ColumnName(column)}{row} [mm] = {Given(column, row)} mm\n");
            for (int shape = 0; shape < Shapes; shape++) text.Append(CultureInfo.InvariantCulture, $"{CellAddress.ColumnName(FirstResult + shape)}{row} [mm, 3 decimals] => {Formula(shape, row)}\n");
        }
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>Reads the file.</summary>
    public static Workbook Read(byte[] file) => ((WorkbookRead)WorkbookText.Read(file)).Workbook;

    private static string Cell(string column, int row) => column + row.ToString(CultureInfo.InvariantCulture);
}
