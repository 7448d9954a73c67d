using System.Globalization;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Fuzzing.Edits;

/// <summary>What a cell comes to in the slow model.</summary>
/// <param name="IsKnown">False where the model does not say.</param>
/// <param name="Number">The value in SI; null for a fault, and for words.</param>
/// <param name="Force">The power of force in its dimension.</param>
internal readonly record struct SlowValue(bool IsKnown, double? Number = null, int Force = 0)
{
    /// <summary>No answer.</summary>
    public static SlowValue Unknown => default;

    /// <summary>A fault of its own, or of a cell it reads.</summary>
    public static SlowValue Fault => new(true);

    /// <summary>A number; what is none is a fault.</summary>
    public static SlowValue Of(double number, int force) => double.IsFinite(number) ? new SlowValue(true, number, force) : Fault;
}

/// <summary>Works out the cells of a slow book by going from reader to read, each time from the start.</summary>
internal sealed class SlowValues(SlowBook book)
{
    private readonly Dictionary<CellId, SlowValue> known = [];
    private readonly HashSet<CellId> open = [];
    private readonly Dictionary<CellId, List<SlowReference>> references = [];
    private readonly Dictionary<(string Sheet, string Name), CellId> names = Names(book);

    /// <summary>What a cell comes to.</summary>
    public SlowValue Of(CellId id)
    {
        if (known.TryGetValue(id, out SlowValue value)) return value;
        if (!open.Add(id)) return SlowValue.Fault; // whoever comes back to a cell that waits for it stands in the circle too
        value = Worked(id, book.Cells[id]);
        open.Remove(id);
        return known[id] = value;
    }

    /// <summary>The references of a cell's expression.</summary>
    public List<SlowReference> References(CellId id)
    {
        if (!references.TryGetValue(id, out List<SlowReference>? found)) references.Add(id, found = SlowText.References(book.Cells[id].Text, book.Sheets));
        return found;
    }

    /// <summary>What a reference that stands on a sheet leads to, or null.</summary>
    public CellId? Target(SlowReference reference, string from)
    {
        string sheet = reference.Sheet ?? from;
        if (reference.Address is { } address) return book.Sheets.Contains(sheet) ? new CellId(sheet, address) : null;
        return names.TryGetValue((sheet, reference.Name), out CellId named) ? named : null;
    }

    private static Dictionary<(string, string), CellId> Names(SlowBook book)
    {
        Dictionary<(string, string), CellId> names = [];
        foreach ((CellId id, SlowCell cell) in book.Cells)
            if (cell.Name is { } name) names.Add((id.Sheet, name), id);
        return names;
    }

    private SlowValue Worked(CellId id, SlowCell cell)
    {
        if (cell.IsFormatted) return SlowValue.Unknown;
        if (cell.Kind == SlowKind.Broken) return SlowValue.Fault;
        if (cell.Kind == SlowKind.Result) return Expression(id, cell.Text);
        string[] words = cell.Text.Split(' ');
        return cell.Kind == SlowKind.Given && words.Length <= 2 && double.TryParse(words[0], NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && (words.Length == 1 || words[1] == "kN")
            ? SlowValue.Of(words.Length == 1 ? number : number * 1000, words.Length - 1) : SlowValue.Unknown;
    }

    private SlowValue Expression(CellId id, string text)
    {
        List<SlowReference> read = References(id);
        string form = SlowText.Form(text, read);
        if (form == "Sum(Series(#, #))") return Sum(id, read[0], read[1]);
        List<SlowValue> values = [];
        bool isUnknown = false;
        foreach (SlowReference reference in read)
        {
            if (book.Columns.ContainsKey((reference.Sheet ?? id.Sheet, reference.Name))) return SlowValue.Unknown;
            if (Target(reference, id.Sheet) is not { } target || !book.Cells.TryGetValue(target, out SlowCell? cell) || cell.Kind == SlowKind.Note) return SlowValue.Fault;
            SlowValue value = Of(target);
            if (value is { IsKnown: true, Number: null }) return SlowValue.Fault;
            isUnknown |= !value.IsKnown;
            values.Add(value);
        }
        return isUnknown ? SlowValue.Unknown : Formed(form, values);
    }

    private static SlowValue Formed(string form, List<SlowValue> v) => form switch
    {
        "#" => v[0],
        "# + #" => v[0].Force == v[1].Force ? SlowValue.Of(v[0].Number!.Value + v[1].Number!.Value, v[0].Force) : SlowValue.Fault,
        "# - #" => v[0].Force == v[1].Force ? SlowValue.Of(v[0].Number!.Value - v[1].Number!.Value, v[0].Force) : SlowValue.Fault,
        "# * #" => Bounded(v[0].Number!.Value * v[1].Number!.Value, v[0].Force + v[1].Force),
        "# / #" => v[1].Number == 0 ? SlowValue.Fault : Bounded(v[0].Number!.Value / v[1].Number!.Value, v[0].Force - v[1].Force),
        "# * 2 + 1 kN" => v[0].Force == 1 ? SlowValue.Of((v[0].Number!.Value * 2) + 1000, 1) : SlowValue.Fault,
        "# > # ? # : #" => Chosen(v),
        _ => SlowValue.Unknown,
    };

    /// <summary>How large an exponent may be is a rule of units and not of editing.</summary>
    private static SlowValue Bounded(double number, int force) => Math.Abs(force) > 4 ? SlowValue.Unknown : SlowValue.Of(number, force);

    private static SlowValue Chosen(List<SlowValue> v)
    {
        if (v[0].Force != v[1].Force || v[2].Force != v[3].Force) return SlowValue.Fault;
        double a = v[0].Number!.Value, b = v[1].Number!.Value;
        return a != b && Math.Abs(a - b) <= 1e-11 * Math.Max(Math.Abs(a), Math.Abs(b)) ? SlowValue.Unknown : a > b ? v[2] : v[3];
    }

    private SlowValue Sum(CellId id, SlowReference first, SlowReference last)
    {
        if (first.Address is not { } one || last.Address is not { } other || first.Sheet != last.Sheet || !book.Sheets.Contains(first.Sheet ?? id.Sheet)) return first.Address is null || last.Address is null ? SlowValue.Unknown : SlowValue.Fault;
        double sum = 0;
        int? force = null;
        bool isUnknown = false, isFault = false;
        foreach (CellId cell in book.In(first.Sheet ?? id.Sheet, CellBlock.Between(one, other)))
        {
            SlowValue value = book.Cells[cell].Kind == SlowKind.Note ? SlowValue.Fault : Of(cell);
            isUnknown |= !value.IsKnown;
            isFault |= value is { IsKnown: true, Number: null } || (value.IsKnown && force is { } known && known != value.Force);
            sum += value.Number ?? 0;
            if (value.IsKnown) force ??= value.Force;
        }
        return isFault ? SlowValue.Fault : isUnknown ? SlowValue.Unknown : force is null ? SlowValue.Fault : SlowValue.Of(sum, force.Value);
    }
}
