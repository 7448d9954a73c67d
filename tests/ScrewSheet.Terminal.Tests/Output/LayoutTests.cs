using CsCheck;
using ScrewSheet.Terminal.Output;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Tests.Output;

public sealed class LayoutTests
{
    private static readonly ShownCell[] Placement =
    [
        Note(1, 2, "Peak force at the hanger"),
        new() { Address = new(2, 2), Name = "peak", Value = "8.5", Unit = "kN", Beside = "± 0.5 kN" },
        Note(1, 3, "Exposed after the surface ice has gone"),
        new() { Address = new(2, 3), Name = "exposed", Value = "40", Unit = "mm", Beside = "± 10 mm" },
        new() { Address = new(2, 5), Name = "moment", Value = "425.0", Unit = "N·m", Below = [new("caution", "outside the range it was made for.", Tone.Careful)] },
        new() { Address = new(2, 6), Name = "strong", Value = "holds" },
    ];

    [Theory]
    [InlineData(100)] // a note stands on the line of its cell
    [InlineData(58)] // a long one takes two lines
    [InlineData(34)] // each cell has lines of its own
    [InlineData(22)] // each part of a cell stands whole
    public void TheSameCellsInDifferentWidths(int width) => GoldenFile.Holds($"tests/ScrewSheet.Terminal.Tests/Pages/layout-{width}.txt", Text(Placement, width) + "\n");

    [Fact]
    public void NoLineIsWiderThanTheTerminalUnlessAFigureIs() => Cells.Select(Gen.Int[30, 120]).Sample((cells, width) =>
        SheetLayout.Lines(cells, width).All(line => DisplayWidth.Of(line.Text) <= width));

    [Fact]
    public void EveryFigureStandsWholeInALine() => Cells.Select(Gen.Int[20, 120]).Sample((cells, width) =>
    {
        string[] lines = [.. SheetLayout.Lines(cells, width).Select(line => line.Text)];
        return cells.All(cell => cell.Note is not null || lines.Any(line => line.Contains($"{cell.Value} {cell.Unit}".Trim(), StringComparison.Ordinal)));
    });

    [Theory]
    [InlineData("中文", 4)]
    [InlineData("e\u0301", 1)]
    [InlineData("N·m²", 4)]
    [InlineData("🧗", 2)]
    public void WidthIsCountedInColumns(string text, int columns) => Assert.Equal(columns, DisplayWidth.Of(text));

    private static readonly string[] Units = ["kN", "N·m", "", "kg/m³"];

    private static Gen<ShownCell[]> Cells { get; } =
        Gen.Select(Gen.Int[1, 3], Gen.Int[1, 9], Gen.String[Gen.Char["abcxyz_"], 0, 9], Gen.Double[-1e6, 1e6], Gen.Int[0, 3].Select(at => Units[at]), Gen.Bool)
            .Select((column, row, name, value, unit, isNote) => isNote
                ? Note(column, row, string.Join(' ', Enumerable.Repeat(name + "word", row)))
                : new ShownCell { Address = new(column, row), Name = name, Value = value.ToString("G6", System.Globalization.CultureInfo.InvariantCulture), Unit = unit })
            .Array[1, 8];

    private static ShownCell Note(int column, int row, string text) => new() { Address = new CellAddress(column, row), Note = text };

    private static string Text(IReadOnlyList<ShownCell> cells, int width) => string.Join('\n', SheetLayout.Lines(cells, width).Select(line => line.Text));
}
