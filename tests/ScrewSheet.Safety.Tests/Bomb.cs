using System.Globalization;
using System.Text;

namespace ScrewSheet.Safety.Tests;

/// <summary>A file of at most 10 MB made to keep the program busy or to fill the memory.</summary>
/// <param name="Name">What it tries.</param>
/// <param name="Text">Makes the file.</param>
/// <param name="Says">What the program says of it at the first of the command lines.</param>
/// <param name="Verbs">The command lines that are tried on it; <c>BOOK</c> and <c>OUT</c> stand for the file and a new file.</param>
internal sealed record Bomb(string Name, Func<string> Text, string Says, params string[] Verbs)
{
    private const int Most = 9_900_000;

    /// <summary>True for one that is left to the long run.</summary>
    public bool IsHeavy { get; init; }

    /// <summary>A workbook of one sheet.</summary>
    public static string Sheet(params IEnumerable<string> lines) => "screwsheet 1\n\nsheet S\n" + string.Join('\n', lines) + "\n";

    /// <summary>The lines, as many as a file of that size takes.</summary>
    public static IEnumerable<string> UpTo(int bytes, IEnumerable<string> lines)
    {
        int size = 0;
        foreach (string line in lines)
        {
            size += Encoding.UTF8.GetByteCount(line) + 1;
            if (size > Math.Min(bytes, Most)) yield break;
            yield return line;
        }
    }

    /// <summary>Lines of cells, column after column; <c>{0}</c> is the address, <c>{1}</c> the row, <c>{2}</c> a running number.</summary>
    public static IEnumerable<string> Cells(string columns, string line, int rows = 99_999)
    {
        CompositeFormat format = CompositeFormat.Parse(line);
        int number = 0;
        foreach (char column in columns)
            for (int row = 1; row <= rows; row++)
                yield return string.Format(CultureInfo.InvariantCulture, format, string.Create(CultureInfo.InvariantCulture, $"{column}{row}"), row, number++);
    }
}
