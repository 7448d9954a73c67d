using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>Collects the lines of a detail, each led by a word that says what it is.</summary>
internal sealed class DetailBuilder(Session session, int width, int? chosen)
{
    private const int Lead = 10;
    private const int MostLinks = 40;
    private readonly ImmutableArray<ScreenLine>.Builder lines = ImmutableArray.CreateBuilder<ScreenLine>();
    private readonly ImmutableArray<CellId>.Builder links = ImmutableArray.CreateBuilder<CellId>();
    private readonly ImmutableArray<int>.Builder linkLines = ImmutableArray.CreateBuilder<int>();

    /// <summary>The lines so far.</summary>
    public ImmutableArray<ScreenLine> Lines => lines.ToImmutable();

    /// <summary>The links so far.</summary>
    public ImmutableArray<CellId> Links => links.ToImmutable();

    /// <summary>Their lines.</summary>
    public ImmutableArray<int> LinkLines => linkLines.ToImmutable();

    /// <summary>A word and a text, broken over lines.</summary>
    public void Text(string word, string text, Ink ink)
    {
        IReadOnlyList<string> pieces = Wrapping.Lines(text, Room);
        for (int i = 0; i < pieces.Count; i++)
        {
            lines.Add(new LineBuilder(width).Add(Word(i == 0 ? word : ""), ink is Ink.Bad or Ink.Careful ? ink : Ink.Faint).Add(pieces[i], ink).Line());
        }
    }

    /// <summary>Columns for a text beside its word.</summary>
    public int Room => Math.Max(8, width - Lead - 1);

    /// <summary>Lines that are broken already, each with its word; one that is too wide all the same is broken again.</summary>
    /// <returns>False where there are none.</returns>
    public bool Put(IEnumerable<(string Word, string Text)> broken, Ink ink)
    {
        int before = lines.Count;
        foreach ((string word, string text) in broken)
        {
            string plain = text.Replace('\u00A0', ' ');
            if (DisplayWidth.Of(plain) > Room) Text(word, plain, ink);
            else lines.Add(new LineBuilder(width).Add(Word(word), Ink.Faint).Add(plain, ink).Line());
        }
        return lines.Count > before;
    }

    /// <summary>A word and the cells it speaks of, with their values.</summary>
    public void Cells(string word, IReadOnlyList<CellId> cells)
    {
        if (cells.Count == 0) return;
        LineBuilder line = new LineBuilder(width).Add(Word(word), Ink.Faint);
        bool first = true;
        foreach (CellId id in cells.Take(MostLinks))
        {
            string name = PlainText.Of(session.NameOf(id)), value = ValueOf(id);
            int wide = DisplayWidth.Of(name) + DisplayWidth.Of(value) + 3;
            if (!first && line.Left < wide)
            {
                lines.Add(line.Line());
                line = new LineBuilder(width).Add(Word(""), Ink.Faint);
            }
            bool here = chosen == links.Count;
            line.Add(here ? "▸" : " ", Ink.Key).Add(name, here ? Ink.Here : Ink.Strong).Add(value, Ink.Faint).Add(" ");
            links.Add(id);
            linkLines.Add(lines.Count);
            first = false;
        }
        if (cells.Count > MostLinks) line.Add($" and {cells.Count - MostLinks} more", Ink.Faint);
        lines.Add(line.Line());
    }

    /// <summary>The members of a value that is a record.</summary>
    public void Members(CellResult result)
    {
        if (result.Value is not RecordValue record) return;
        foreach (MemberValue member in MemberValues.Of(record.Value))
        {
            string value = member.Value is null ? "none" : PrintedText.Of(member.Value, null, session.Workbook.Head.Units, isCheck: false).ToString();
            Text("part", $".{member.Name} = {value}: {PlainText.Of(member.Declaration.Meaning)}", Ink.Plain);
        }
    }

    private string ValueOf(CellId id) => session.Result(id) is { } result && session.Known!.Shown(result) is { } shown && !shown.IsProse
        ? $" {shown}" : session.Result(id)?.Fault is not null ? " !" : "";

    private static string Word(string word) => " " + Fit.Left(word, Lead - 1);
}
