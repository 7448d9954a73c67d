using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>A workbook as it was before a change, for going back.</summary>
/// <param name="Workbook">The workbook.</param>
/// <param name="Place">Where the cursor stood.</param>
/// <param name="What">What the change did, such as <c>entry in B4</c>.</param>
internal sealed record Step(Workbook Workbook, CellId Place, string What);

/// <summary>An open workbook: what it says, what is known of it, where the reader is. Immutable; every command gives a new one.</summary>
internal sealed record Session
{
    /// <summary>The width of a column where the sheet does not say.</summary>
    public const int UsualWidth = 14;

    /// <summary>The workbook.</summary>
    public required Workbook Workbook { get; init; }

    /// <summary>The workbook as it was last written or read.</summary>
    public required Workbook Saved { get; init; }

    /// <summary>The file, or null for one that has none yet.</summary>
    public string? Path { get; init; }

    /// <summary>What the file held when it was last read or written.</summary>
    public ReadOnlyMemory<byte> Bytes { get; init; }

    /// <summary>The newest results, perhaps of an earlier version; null before the first.</summary>
    public Known? Known { get; init; }

    /// <summary>The what-if tables as far as they are worked out.</summary>
    public TableResults Tables { get; init; } = new();

    /// <summary>The sheet the reader is on.</summary>
    public required string SheetName { get; init; }

    /// <summary>The cell the reader is on.</summary>
    public CellAddress Cursor { get; init; } = new(1, 1);

    /// <summary>The corner of the selection opposite the cursor.</summary>
    public CellAddress Anchor { get; init; } = new(1, 1);

    /// <summary>The first row and column on the screen.</summary>
    public CellAddress Corner { get; init; } = new(1, 1);

    /// <summary>Where the reader was on the other sheets.</summary>
    public ImmutableDictionary<string, CellAddress> Places { get; init; } = ImmutableDictionary<string, CellAddress>.Empty;

    /// <summary>Where jumps came from, newest on top.</summary>
    public ImmutableStack<CellId> Trail { get; init; } = [];

    /// <summary>What can be taken back, newest on top.</summary>
    public ImmutableStack<Step> Done { get; init; } = [];

    /// <summary>The cell in which this version differs from the one before it, where it is the only one.</summary>
    public CellId? Only { get; init; }

    /// <summary>What was taken back and can be done again.</summary>
    public ImmutableStack<Step> TakenBack { get; init; } = [];

    /// <summary>The sheet.</summary>
    public Sheet Sheet => Workbook.Find(SheetName) ?? Workbook.Sheets[0];

    /// <summary>The cell's identity.</summary>
    public CellId At => new(SheetName, Cursor);

    /// <summary>The cell under the cursor, or null.</summary>
    public Cell? Cell => Sheet.Cells.GetValueOrDefault(Cursor);

    /// <summary>What is selected: the cursor's cell at least.</summary>
    public CellBlock Block => CellBlock.Between(Anchor, Cursor);

    /// <summary>True while the workbook differs from its file.</summary>
    public bool IsUnsaved => !ReferenceEquals(Workbook, Saved);

    /// <summary>True when the results are those of this version.</summary>
    public bool IsCalculated => Known is not null && ReferenceEquals(Known.Calculation.Workbook, Workbook);

    /// <summary>A workbook newly opened.</summary>
    public static Session Open(Workbook workbook, string? path, ReadOnlyMemory<byte> bytes)
    {
        Workbook whole = workbook.Sheets.IsEmpty ? workbook.WithSheet(new Sheet { Name = "Sheet", Order = [] }) : workbook;
        return new Session { Workbook = whole, Saved = whole, Path = path, Bytes = bytes, SheetName = whole.Sheets[0].Name };
    }

    /// <summary>What is known of a cell of the present version: nothing when the cell was written anew since.</summary>
    public CellResult? Result(CellId id)
    {
        CellResult? result = Known?.Find(id);
        return result is not null && ReferenceEquals(result.Cell, Workbook.Find(id.Sheet)?.Cells.GetValueOrDefault(id.Address)) ? result : null;
    }

    /// <summary>The review marks of a cell, each with whether it holds; none while that is not known of this version.</summary>
    public ImmutableArray<CellReview> ReviewsOf(CellId id) => IsCalculated && Known!.Reviewed is { } reviewed && reviewed.Marks.TryGetValue(id, out ImmutableArray<CellReview> marks) ? marks : [];

    /// <summary>The width of a column, in characters.</summary>
    public int Width(int column) => Math.Clamp(Sheet.Widths.GetValueOrDefault(column, UsualWidth), Columns.Least, Columns.Most);

    /// <summary>How a cell is called from the sheet the reader is on.</summary>
    public string NameOf(CellId id)
    {
        string own = Workbook.Find(id.Sheet)?.Cells.GetValueOrDefault(id.Address)?.Name ?? id.Address.ToString();
        return id.Sheet == SheetName ? own : $"{id.Sheet}.{own}";
    }

    /// <summary>With another version of the workbook, which can be taken back.</summary>
    /// <param name="workbook">The version.</param>
    /// <param name="what">What the change did.</param>
    /// <param name="only">The one cell it changed, where it changed only one.</param>
    public Session Changed(Workbook workbook, string what, CellId? only = null)
    {
        if (ReferenceEquals(workbook, Workbook)) return this;
        Session next = this with { Workbook = workbook, Done = Done.Push(new Step(Workbook, At, what)), TakenBack = [], Only = only };
        return next.Workbook.Find(SheetName) is null ? next with { SheetName = workbook.Sheets[0].Name } : next;
    }
}
