using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>A what-if table of a version of the workbook, and everything its entries depend on, so that it is worked out again when one of them changes and not otherwise.</summary>
internal sealed class TableInputs
{
    private readonly string fingerprint;

    // where something in the table's way has no expression to follow, any change may matter
    private readonly Workbook? version;

    private TableInputs(string sheet, int index, WhatIfBlock block, string fingerprint, Workbook? version) =>
        (Sheet, Index, Block, this.fingerprint, this.version) = (sheet, index, block, fingerprint, version);

    /// <summary>The sheet it stands on.</summary>
    public string Sheet { get; }

    /// <summary>Its place among the tables of the sheet.</summary>
    public int Index { get; }

    /// <summary>As written.</summary>
    public WhatIfBlock Block { get; }

    /// <summary>The tables of a workbook.</summary>
    public static ImmutableArray<TableInputs> Of(Calculation calculation) =>
        [.. calculation.Workbook.Sheets.SelectMany(sheet => sheet.WhatIfs.Select((block, index) => Of(calculation, sheet.Name, index, block)))];

    /// <summary>True where the entries are the same.</summary>
    public bool Same(TableInputs other) => fingerprint == other.fingerprint && ReferenceEquals(version, other.version);

    /// <summary>True for the same table, perhaps at another place or of another version.</summary>
    public bool IsOf(string sheet, WhatIfBlock block) => Sheet == sheet && Texts(Block).SequenceEqual(Texts(block));

    private static IEnumerable<string> Texts(WhatIfBlock block) => [.. block.Vary.Select(vary => "vary " + vary.Text), .. block.Show.Select(show => "show " + show.Text)];

    private static TableInputs Of(Calculation calculation, string sheet, int index, WhatIfBlock block)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        void Add(string? text) => hash.AppendData(Encoding.UTF8.GetBytes((text ?? "\u0001") + "\0"));

        Add(sheet);
        foreach (string text in Texts(block)) Add(text);
        foreach (FunctionDefinition own in calculation.Workbook.Functions) Add($"{own.ReturnType} {own.Name}({string.Join(", ", own.Parameters)}) {own.Body}");
        bool known = Cells(calculation, sheet, block, Add);
        return new TableInputs(sheet, index, block, Convert.ToHexString(hash.GetHashAndReset()), known ? null : calculation.Workbook);
    }

    /// <summary>Takes in what the entries depend on.</summary>
    /// <returns>False where that cannot be followed.</returns>
    private static bool Cells(Calculation calculation, string sheet, WhatIfBlock block, Action<string?> add)
    {
        CellId?[] varied = [.. block.Vary.Select(text => StudyText.ReadVary(text, out _) is { } spec ? Find(calculation.Workbook, sheet, spec.Name.Text) : null)];
        CellId?[] shown = [.. block.Show.SelectMany(text => StudyText.ReadShow(text, out _)).Select(name => Find(calculation.Workbook, sheet, name.Text))];
        if (varied.Length == 0 || shown.Length == 0 || varied.Concat(shown).Any(id => id is null)) return false;
        HashSet<CellId> ends = [.. varied.Select(id => id!.Value)];
        bool known = true;
        foreach ((CellId id, CellResult? result) in Upstream.Of(calculation, [.. ends, .. shown.Select(id => id!.Value)], ends))
        {
            add(id.ToString());
            if (result is not null) Cell(result, ends.Contains(id), add);
            known &= result?.Cell.Content is not (ResultContent or BrokenContent) || result.Bound is not null;
        }
        return known;
    }

    private static void Cell(CellResult result, bool isVaried, Action<string?> add)
    {
        Cell cell = result.Cell;
        add(cell.Name);
        add(cell.DeclaredType);
        add(cell.Format is null ? null : DisplayFormatText.Write(cell.Format));
        switch (cell.Content)
        {
            case ResultContent content: add(content.Expression); break;
            case GivenContent given:
                // its own value makes no difference where it takes others
                add(isVaried ? result.Type?.Name : given.Text);
                add(given.Within?.Text);
                break;
            case NoteContent note: add(note.Text); break;
        }
    }

    private static CellId? Find(Workbook workbook, string sheet, string name)
    {
        bool IsThere(CellId id) => workbook.Find(id.Sheet)?.Cells.ContainsKey(id.Address) == true;
        if (Places.Find(workbook, sheet, name) is { } own && IsThere(own)) return own;
        CellId[] others = name.Contains('.', StringComparison.Ordinal) ? [] : [.. workbook.Sheets.Select(other => Places.Find(workbook, other.Name, name)).OfType<CellId>().Where(IsThere)];
        return others.Length == 1 ? others[0] : null;
    }
}
