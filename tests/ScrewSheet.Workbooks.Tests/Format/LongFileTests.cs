using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Format;

/// <summary>The lines of a long file are read on several threads: each says what it says in a short one, and the file is written back as it was.</summary>
public sealed class LongFileTests
{
    private const int Copies = 200;

    private static readonly string[] Lines =
    [
        "A{0} \"a note\" // remark", "B{0} name{0} [mm, 2 decimals] = {0} mm ± 1 mm", "Force C{0} = 1 kN", "C{0} Force force{0} [kN] = 1.5 kN within 0 kN to 200 kN", "D{0} => B{0} * 2 gives {0} mm",
        "E{0} = 40m", "F{0} [no unit] = 1 mm", "  G{0} = 1", "H{0}", "sheets are {0}", "I{0} = \"open", "// a remark {0}", "J{0} => \"text\"", "ZZZZ{0} = 1", "",
    ];

    [Fact]
    public void EachLine_SaysWhatItSaysInAShortFile()
    {
        Workbook all = Read(Enumerable.Range(1, Copies));
        foreach (int copy in new[] { 1, 67, Copies })
        {
            Workbook alone = Read([copy]);
            foreach ((CellAddress address, Cell cell) in alone.Sheets[0].Cells) Assert.Equal(Told(cell), Told(all.Sheets[0].Cells[address]));
        }
        Assert.Equal(Copies * Read([1]).Faults.Length, all.Faults.Length);
    }

    [Fact]
    public void Faults_NameTheirOwnLine()
    {
        Workbook all = Read(Enumerable.Range(1, Copies));
        string[] lines = Text(Enumerable.Range(1, Copies)).Split('\n');
        foreach (BrokenLine broken in all.BrokenLines) Assert.Equal(broken.Text, lines[broken.Fault.Place!.Value.Line - 1]);
    }

    [Fact]
    public void ItIsWrittenBackAsItWas()
    {
        string text = Text(Enumerable.Range(1, Copies));
        Assert.Equal(text, System.Text.Encoding.UTF8.GetString(WorkbookText.Write(Read(Enumerable.Range(1, Copies)))));
    }

    private static Workbook Read(IEnumerable<int> copies) => Assert.IsType<WorkbookRead>(WorkbookText.Read(Text(copies))).Workbook;

    private static string Text(IEnumerable<int> copies) =>
        "screwsheet 1\n\nsheet S\n" + string.Concat(copies.SelectMany(copy => Lines.Select(line => string.Format(System.Globalization.CultureInfo.InvariantCulture, line, copy) + "\n")));

    private static string Told(Cell cell) => (cell with { Place = default, Content = cell.Content switch { BrokenContent broken => broken with { Fault = broken.Fault with { Place = null } }, var other => other } }).ToString();
}
