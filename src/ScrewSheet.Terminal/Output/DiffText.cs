using ScrewSheet.Workbooks.Comparing;

namespace ScrewSheet.Terminal.Output;

/// <summary>The differences of two versions for a terminal.</summary>
internal static class DiffText
{
    /// <summary>The lines in a width.</summary>
    public static IEnumerable<StyledLine> Lines(Comparison comparison, DiffNames names, int width)
    {
        string title = names.Before == names.After ? PlainText.Of(names.After) : $"{PlainText.Of(names.Before)} → {PlainText.Of(names.After)}";
        foreach (string line in Wrapping.Lines(title, width)) yield return new StyledLine(line, Tone.Strong);
        foreach (DiffSection section in DiffPage.Of(comparison))
        {
            yield return new StyledLine("");
            yield return new StyledLine(section.Title, Tone.Strong);
            foreach (DiffRow row in section.Rows)
            {
                foreach (string line in Wrapping.Hanging("  ", Sentence(row), width)) yield return new StyledLine(line, row.IsBad ? Tone.Bad : Tone.Plain);
            }
        }
        yield return new StyledLine("");
        foreach (string line in Wrapping.Lines(DiffPage.Summary(comparison), width)) yield return new StyledLine(line);
    }

    /// <summary>One difference in one line.</summary>
    public static string Sentence(DiffRow row)
    {
        string change = row switch
        {
            { Before: null, After: null } => row.Note,
            { Before: null } => $"{row.What} added: {row.After}",
            { After: null } => $"{row.What} removed: {row.Before}",
            _ => $"{row.What}{(row.What.Length == 0 ? "" : " ")}{row.Before} → {row.After}",
        };
        string note = row.Note.Length == 0 || row is { Before: null, After: null } ? "" : $" ({row.Note})";
        return $"{(row.Where.Length == 0 ? "" : row.Where + ": ")}{change}{note}";
    }
}
