using System.Collections.Immutable;
using CsCheck;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Format;

/// <summary>Workbooks made in memory come back from their text as they were.</summary>
public sealed class ModelRoundTripTests
{
    private static readonly Gen<string> Words = Gen.String[Gen.Char["ab Z\"\\/=>[]{}()\t\n±μé§°\u0007\u2028\u202E\uD83D"], 0, 20];
    private static readonly Gen<string> Plain = Gen.String[Gen.Char["abc μé/=[]()\""], 0, 12].Select(text => text.Trim());
    private static readonly Gen<double> Numbers = Gen.OneOf(Gen.Double[-1e6, 1e6], Gen.Int[-100, 100].Select(number => (double)number), Gen.Double[-1e-9, 1e-9]);
    private static readonly Gen<string> Units = Pick("kN", "mm", "N·m", "1/s", "N/mm²", "ft·lbf", "MPa·m^0.5");
    private static readonly Gen<string> Expressions = Pick("a + b", "F(a, \"gives // x\")", "a < 3 ? \"x\" : \"y\"", "$\"{a} gives\"", "Series(B2, B9)", "x switch { _ => 1 }", "a / b", "(a");

    private static readonly Gen<CellContent> Contents = Gen.OneOf(
        Words.Select(text => (CellContent)new NoteContent(text)),
        Gen.Select(Numbers, Units, Gen.Int[0, 3], (number, unit, extra) => GivenOf(number, unit, extra)),
        Gen.Select(Numbers, Words, (number, source) => (CellContent)Read($"= {NumberText.Exact(number)} source {CellText.Quote(source)}").Content),
        Words.Select(text => (CellContent)new GivenContent(CellText.Quote(text), 0) { Literal = new TextLiteral(text) }),
        Gen.Select(Expressions, Pick("425.0 N·m", "holds", "\"gives // x\"", ""), (expression, kept) => (CellContent)new ResultContent(expression, 0) { Kept = kept.Length == 0 ? null : kept }));

    private static readonly Gen<DisplayFormat?> Formats = Gen.Select(Units, Gen.Int[0, 15], Gen.Bool, Gen.Int[0, 3], (unit, count, significant, kind) =>
        kind == 0 ? null : new DisplayFormat(kind == 1 ? null : UnitOf(unit), kind == 2 ? null : new Digits(Math.Max(1, count), significant, (Rounding)(count % 3))));

    private static readonly Gen<Cell> Cells = Gen.Select(Gen.Int[1, 30], Gen.Int[1, 60], Contents, Formats, Gen.Int[0, 3], Plain, (column, row, content, format, head, remark) => new Cell
    {
        Address = new CellAddress(column, row), Content = content, Format = format, Remark = remark.Length == 0 ? null : remark,
        Name = head == 0 ? null : $"n_{column}_{row}", DeclaredType = head == 3 ? "Series<Force>" : null,
    });

    private static readonly Gen<Sheet> Sheets = Gen.Select(Cells.List[0, 12], Words, Gen.Int[0, 3], (cells, title, extra) =>
    {
        List<Cell> distinct = [.. cells.DistinctBy(cell => cell.Address)];
        return new Sheet
        {
            Name = "Own", Title = extra == 0 ? null : title, Widths = extra == 1 ? ImmutableDictionary<int, int>.Empty : ImmutableDictionary<int, int>.Empty.Add(1, 34).Add(28, 5),
            Cells = CellMap.Of(distinct), Order = [.. distinct.Select(cell => cell.Address)],
            WhatIfs = extra == 2 ? [new WhatIfBlock(new CellAddress(4, 2), title, [new PlacedText("a: 1, 2", default)], [new PlacedText("b", default)], default)] : [],
        };
    });

    private static readonly Gen<Head> Heads = Gen.Select(Plain, Plain, Gen.ULong, Gen.Int[0, 7], (title, author, seed, bits) => new Head
    {
        Title = title, Author = author, Seed = (bits & 1) == 0 ? null : seed, Units = (bits & 2) == 0 ? UnitSystem.SI : UnitSystem.US,
        ResultsOmitted = (bits & 4) != 0, MadeWith = bits == 7 ? "0.3.0" : null, Date = bits == 3 ? "2026-11-25" : "",
    });

    [Fact]
    public void AWorkbookMadeInMemoryReadsBackAsItWas() =>
        Gen.Select(Heads, Sheets, Gen.Bool).Sample((head, sheet, function) =>
        {
            Workbook workbook = new()
            {
                Head = head, Sheets = [sheet, new Sheet { Name = "Empty", Order = [] }],
                Functions = function ? [new FunctionDefinition("Force", "Twice", [("Force", "f"), ("double", "n")], "f * n", 0, default)] : [],
            };
            string text = Text.Write(workbook);
            Workbook read = Text.Read(text);
            Assert.Empty(Text.Faults(read));
            Assert.Equal(Told(workbook), Told(read));
            Assert.Equal(text, Text.Write(read));
        }, iter: 2000);

    [Fact]
    public void EditsOneByOneGiveTheWorkbookMadeAtOnce() =>
        Gen.Select(Cells.List[1, 15], Gen.Int[0, 100].List[0, 6]).Sample((cells, removed) =>
        {
            Workbook workbook = Text.Read("screwsheet 1\nsheet Own\n// first\nA1 \"note\"\n\n// last\n");
            Dictionary<CellAddress, Cell> model = new(workbook.Sheets[0].Cells);
            foreach (Cell cell in cells)
            {
                workbook = workbook.WithCell("Own", cell);
                model[cell.Address] = cell;
            }
            foreach (int index in removed)
            {
                workbook = workbook.WithoutCell("Own", cells[index % cells.Count].Address);
                model.Remove(cells[index % cells.Count].Address);
            }
            IEnumerable<string> expected = model.Values.Select(Told).Order(StringComparer.Ordinal);
            Assert.Equal(expected, workbook.Sheets[0].CellsInOrder.Select(Told).Order(StringComparer.Ordinal));
            Assert.Equal(expected, Text.Read(Text.Write(workbook)).Sheets[0].CellsInOrder.Select(Told).Order(StringComparer.Ordinal));
            Assert.Equal(model.Values.Where(cell => cell.Name is not null).Select(cell => (cell.Name!, cell.Address)).Order(), workbook.Sheets[0].Names.Select(pair => (pair.Key, pair.Value)).Order());
        }, iter: 1000);

    private static string Told(Workbook workbook) => string.Join('\n',
    [
        workbook.Head.ToString(), .. workbook.Functions.Select(function => $"{function.ReturnType} {function.Name} {string.Join(',', function.Parameters)} {function.Body}"),
        .. workbook.Sheets.SelectMany(sheet => new[] { $"{sheet.Name}|{sheet.Title}|{string.Join(',', sheet.Widths.OrderBy(pair => pair.Key))}" }
            .Concat(sheet.CellsInOrder.Select(Told))
            .Concat(sheet.WhatIfs.Select(table => $"{table.Anchor}|{table.Title}|{string.Join(',', table.Vary.Select(vary => vary.Text))}|{table.Show[0].Text}"))),
    ]);

    /// <summary>A cell without the places it was read at.</summary>
    private static string Told(Cell cell) => (cell with
    {
        Place = default,
        Content = cell.Content switch
        {
            GivenContent given => given with { TextColumn = 0 },
            ResultContent result => result with { ExpressionColumn = 0 },
            var other => other,
        },
    }).ToString();

    private static CellContent GivenOf(double number, string unit, int extra)
    {
        string text = $"= {NumberText.Exact(number)} {unit}";
        string tail = extra switch { 1 => $" ± 0.5 {unit} k=1 dof 5", 2 => $" ± 5 % within -1e9 {unit} to 1e9 {unit}", _ => "" };
        return Read(text + tail).Content;
    }

    private static Cell Read(string entry) => Assert.IsType<EntryRead>(CellText.ReadEntry(entry, new CellAddress(1, 1))).Cell;

    private static Unit UnitOf(string text) => UnitText.TryParse(text, out Unit? unit, out string? problem) ? unit : throw new ArgumentException(problem);

    private static Gen<string> Pick(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(index => texts[index]);
}
