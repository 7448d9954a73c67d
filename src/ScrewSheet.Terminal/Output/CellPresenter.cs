using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Output;

/// <summary>Makes what is shown of a cell from what is known about it.</summary>
internal sealed class CellPresenter(Selection selection)
{
    // a text no wider than this stands on the line of its cell, such as a specimen's number or a failure mode
    private const int LongestBeside = 24;

    /// <summary>The review marks of the workbook.</summary>
    public Reviews Reviews { get; } = new(selection.Calculation);

    /// <summary>One cell.</summary>
    public ShownCell Present(CellResult cell) => cell.Cell.Content switch
    {
        NoteContent note => new ShownCell { Address = cell.Id.Address, Note = PlainText.Of(note.Text), Below = Below(cell) },
        BrokenContent broken => new ShownCell { Address = cell.Id.Address, Value = "fault", Tone = Tone.Bad, Below = [.. Below(cell), new ShownRemark("line", PlainText.Of(broken.Shown.Trim()), Tone.Plain)] },
        _ => PresentValue(cell),
    };

    private ShownCell PresentValue(CellResult cell)
    {
        ShownCell shown = new() { Address = cell.Id.Address, Name = PlainText.Of(cell.Cell.Name ?? ""), Below = Below(cell), Tone = Verdict.IsBad(cell) ? Tone.Bad : Tone.Plain };
        if (cell.Fault is Fault fault) return shown with { Value = fault.Kind == FaultKind.Waiting ? "waits" : "fault" };
        if (cell.Value is null) return shown;
        PrintedValue value = selection.Shown(cell);
        if (value.IsProse && DisplayWidth.Of(value.Figure) <= LongestBeside) return shown with { Beside = value.Figure };
        if (value.IsProse) return shown with { Below = [new ShownRemark("", value.Figure, Tone.Plain), .. shown.Below] };
        return shown with { Value = value.Figure, Unit = value.Unit, Beside = cell.Cell.Content is GivenContent { Tolerance: Tolerance tolerance } ? "± " + PlainText.Of(tolerance.Text) : "" };
    }

    private ShownRemark[] Below(CellResult cell)
    {
        List<ShownRemark> remarks = [];
        if (cell.Value is RecordValue record) remarks.AddRange(Members(record.Value, ""));
        if (cell.Fault is Fault fault) remarks.Add(new ShownRemark(fault.Kind == FaultKind.Waiting ? "waits" : "fault", OriginText.Of(fault), Tone.Bad));
        remarks.AddRange(cell.Cautions.Select(caution => new ShownRemark("caution", OriginText.Of(caution), Tone.Careful)));
        remarks.AddRange(Reviews.Of(cell.Id).Where(review => !review.Holds).Select(review => new ShownRemark("review", PlainText.Of(review.ToString()), Tone.Careful)));
        if (Verdict.Changed(cell)) remarks.Add(new ShownRemark("changed", Difference(cell), Tone.Bad));
        return [.. remarks];
    }

    /// <summary>What the file says against what is computed.</summary>
    public string Difference(CellResult cell)
    {
        string kept = PlainText.Of((cell.Cell.Content as ResultContent)?.Kept ?? "");
        string now = cell.Value is null ? "no value" : selection.Shown(cell).ToString();
        return cell.Kept == KeptState.Unreadable ? $"the file says {kept}, which is no value of this cell; this version computes {now}." : $"the file says {kept}, this version computes {now}.";
    }

    private IEnumerable<ShownRemark> Members(object record, string path)
    {
        foreach (MemberValue member in MemberValues.Of(record))
        {
            string name = path + member.Name;
            if (member.Value is RecordValue inner)
            {
                foreach (ShownRemark remark in Members(inner.Value, name + ".")) yield return remark;
                continue;
            }
            string text = member.Value is null ? "none" : PrintedText.Of(member.Value, null, selection.Calculation.Workbook.Head.Units, isCheck: false).ToString();
            yield return new ShownRemark(name, text, Tone.Plain);
        }
    }
}
