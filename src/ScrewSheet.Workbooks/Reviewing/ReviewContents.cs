using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>What one cell says and depends on, without addresses and names.</summary>
/// <param name="Whole">Everything: its content with that of all it reads and calls in the place of references.</param>
/// <param name="Data">The same with the author's functions and the library left out.</param>
/// <param name="Functions">The author's functions it depends on.</param>
/// <param name="Library">What of the library it depends on.</param>
internal sealed record CellContents(string Whole, string Data, ImmutableSortedSet<string> Functions, ImmutableSortedSet<string> Library);

/// <summary>Works out the contents of cells, each once.</summary>
internal sealed class ReviewContents(Calculation calculation)
{
    private static readonly ImmutableSortedSet<string> Nothing = ImmutableSortedSet.Create<string>(StringComparer.Ordinal);
    private static readonly CellContents Missing = new("nothing", "nothing", Nothing, Nothing);

    private readonly Dictionary<CellId, CellContents> known = [];
    private readonly ReferencedCells referenced = new(calculation);
    private readonly LibraryText library = new();
    private readonly OwnFunctionText own = new();

    /// <summary>The hash of a result; null where it has no bound expression.</summary>
    public ReviewHash? HashOf(CellId id)
    {
        if (calculation.Cells.GetValueOrDefault(id) is not { Bound: not null, Cell.Content: ResultContent } cell) return null;
        CellContents contents = Of(id);
        string expression = Text(cell, slot => "reference", whole: false);
        string reads = string.Join(' ', cell.References.Select(reference => Referenced(reference, whole: false)));
        return ReviewHash.Of(contents.Whole, expression, reads, string.Join('\n', contents.Functions), string.Join('\n', contents.Library));
    }

    // a chain of cells may be thousands long, so no call is nested for it
    private CellContents Of(CellId wanted)
    {
        HashSet<CellId> entered = [];
        Stack<CellId> open = new([wanted]);
        while (open.TryPeek(out CellId id))
        {
            CellId[] missing = known.ContainsKey(id) || !entered.Add(id) ? [] : [.. Reads(id).Where(read => !known.ContainsKey(read) && !entered.Contains(read))];
            foreach (CellId read in missing) open.Push(read);
            if (missing.Length > 0) continue;
            if (!known.ContainsKey(id)) known.Add(id, Make(id));
            open.Pop();
        }
        return known[wanted];
    }

    private IEnumerable<CellId> Reads(CellId id) => calculation.Cells.GetValueOrDefault(id) is { } cell ? cell.References.SelectMany(referenced.By) : [];

    private CellContents Make(CellId id)
    {
        if (calculation.Cells.GetValueOrDefault(id) is not { } cell) return Missing;
        string whole = ReviewHash.Sha(Text(cell, slot => Referenced(cell, slot, whole: true), whole: true));
        string data = ReviewHash.Sha(Text(cell, slot => Referenced(cell, slot, whole: false), whole: false));
        CellContents[] read = [.. Reads(id).Distinct().Select(Known)];
        HashSet<string> functions = new(StringComparer.Ordinal), declared = new(StringComparer.Ordinal);
        if (cell.Bound is not null) own.Collect(cell.Bound, library, functions, declared);
        return new CellContents(whole, data, Union(functions, read.Select(contents => contents.Functions)), Union(declared, read.Select(contents => contents.Library)));
    }

    private CellContents Known(CellId id) => known.GetValueOrDefault(id, Missing);

    private static ImmutableSortedSet<string> Union(HashSet<string> mine, IEnumerable<ImmutableSortedSet<string>> theirs)
    {
        ImmutableSortedSet<string> all = Nothing;
        foreach (ImmutableSortedSet<string> set in theirs.Where(set => set.Count > 0)) all = all.Count == 0 ? set : ReferenceEquals(all, set) ? all : all.Union(set);
        return all.Union(mine);
    }

    private string Text(CellResult cell, Func<int, string> reference, bool whole) => cell.Cell.Content switch
    {
        GivenContent given => $"given {(given.Literal is null ? Tree(cell, reference, whole) : Literal(given.Literal))} {Tolerance(given.Tolerance)} {Limits(given.Within)}",
        ResultContent result => $"result {cell.Cell.DeclaredType} {(cell.Bound is null ? result.Expression : Tree(cell, reference, whole))}",
        NoteContent => "note",
        _ => "unreadable",
    };

    private string Tree(CellResult cell, Func<int, string> reference, bool whole)
    {
        if (cell.Bound is null) return "unbound";
        TreeParts parts = new(reference, slot => FormatOf(cell, slot),
            function => whole ? library.Of(function) : function.Name,
            value => whole ? library.Of(value) : value.Path,
            function => whole ? own.Of(function, library) : "");
        return new TreeText(parts).Of(cell.Bound);
    }

    private string Referenced(CellResult cell, int slot, bool whole) => slot < cell.References.Length ? Referenced(cell.References[slot], whole) : "nothing";

    private string Referenced(CellReference reference, bool whole)
    {
        string Content(CellId id) => whole ? Known(id).Whole : Known(id).Data;
        return reference.Last is null ? Content(reference.First) : referenced.Hash(reference, whole, Content);
    }

    private string FormatOf(CellResult cell, int slot)
    {
        DisplayFormat? format = slot < cell.References.Length && calculation.Cells.GetValueOrDefault(cell.References[slot].First) is { } shown ? shown.Cell.Format : null;
        return $"{(format is null ? "" : DisplayFormatText.Write(format))} {calculation.Workbook.Head.Units}";
    }

    private static string Literal(Literal literal) => literal switch
    {
        NumberLiteral number => CellTextWriter.Number(number),
        TruthLiteral truth => truth.Value ? "true" : "false",
        TextLiteral text => CellText.Quote(text.Value),
        _ => throw new ArgumentException($"{literal.GetType().Name} is no known literal.", nameof(literal)),
    };

    private static string Tolerance(Tolerance? tolerance) => tolerance is null ? ""
        : string.Create(CultureInfo.InvariantCulture, $"± {tolerance.HalfWidthSi:R} {tolerance.Relative} {tolerance.Shape} {tolerance.DegreesOfFreedom:R}");

    private static string Limits(Limits? limits) => limits is null ? "" : string.Create(CultureInfo.InvariantCulture, $"within {limits.FromSi:R} {limits.ToSi:R}");
}
