using System.Collections.Immutable;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>Something that could stand at the caret.</summary>
/// <param name="Shown">What the list shows.</param>
/// <param name="Insert">What is put in.</param>
/// <param name="From">Index in the line where what it replaces begins.</param>
/// <param name="Meaning">One line about it.</param>
internal sealed record Suggestion(string Shown, string Insert, int From, string Meaning);

/// <summary>Works out what could stand at the caret: names, functions, units, members.</summary>
internal static class Completion
{
    private const int Most = 60;

    /// <summary>What could stand at the end of the text before the caret, the nearest first.</summary>
    public static ImmutableArray<Suggestion> At(string before, Session session, Lexicon lexicon)
    {
        if (InText(before)) return [];
        int start = WordStart(before);
        string word = before[start..];
        if (FormatOpen(before) || AfterNumber(before, start)) return Units(before, lexicon);
        if (before.IndexOf('=', StringComparison.Ordinal) < 0) return [];
        if (start > 0 && before[start - 1] == '.') return Rank(word, start, Members(PathBefore(before, start - 1), session, lexicon));
        return word.Length == 0 || char.IsAsciiDigit(word[0]) ? [] : Rank(word, start, Words(session, lexicon));
    }

    private static IEnumerable<(KnownWord Word, string Insert)> Words(Session session, Lexicon lexicon)
    {
        foreach ((string name, CellAddress at) in session.Sheet.Names.OrderBy(pair => pair.Key, StringComparer.Ordinal)) yield return (new KnownWord(name, About(session, new CellId(session.SheetName, at))), name);
        foreach (SheetColumn column in session.Sheet.Columns) yield return (About(column), column.Name);
        foreach (FunctionDefinition own in session.Workbook.Functions) yield return (new KnownWord(own.Name, PlainText.Of(own.Body)), own.Name + "(");
        foreach (KnownWord function in lexicon.Functions) yield return (function, function.Text + "(");
        foreach (Sheet sheet in session.Workbook.Sheets) yield return (new KnownWord(sheet.Name, PlainText.Of("sheet " + sheet.Title)), sheet.Name + ".");
        foreach (KnownWord values in lexicon.Values) yield return (values, values.Text + ".");
    }

    private static IEnumerable<(KnownWord Word, string Insert)> Members(string path, Session session, Lexicon lexicon)
    {
        if (session.Workbook.Find(path) is { } sheet) return sheet.Names.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => (new KnownWord(pair.Key, About(session, new CellId(path, pair.Value))), pair.Key)).Concat(sheet.Columns.Select(column => (About(column), column.Name)));
        if (ColumnAt(path, session) is not null) return Lexicon.OfSeries.Select(member => (member, member.Text + (member.Text == "Count" ? "" : "(")));
        if (path == "Math") return new[] { "PI", "Exp(", "Log(", "Log10(", "Abs(", "Min(", "Max(", "Floor(", "Ceiling(", "Sqrt(", "Pow(" }.Select(name => (new KnownWord(name.TrimEnd('('), "mathematics"), name));
        IEnumerable<KnownWord> members = Places.Find(session.Workbook, session.SheetName, path) is { } id && session.Result(id)?.Type is { } type ? lexicon.MembersOf(type) : lexicon.MembersOf(path);
        return members.Select(member => (member, member.Text));
    }

    private static SheetColumn? ColumnAt(string path, Session session)
    {
        int dot = path.IndexOf('.', StringComparison.Ordinal);
        return (dot < 0 ? session.Sheet : session.Workbook.Find(path[..dot]))?.Column(path[(dot + 1)..]);
    }

    private static KnownWord About(SheetColumn column) => new(column.Name, $"column {CellAddress.ColumnName(column.Column)}{(column.Unit is null ? "" : $" in {column.Unit.Symbol}")}, a series");

    private static string About(Session session, CellId id)
    {
        CellResult? result = session.Result(id);
        string value = result is not null && session.Known!.Shown(result) is { } shown ? shown.ToString() : "";
        return PlainText.Of(value.Length == 0 ? id.Address.ToString() : $"{id.Address}  {value}");
    }

    private static ImmutableArray<Suggestion> Units(string before, Lexicon lexicon)
    {
        int start = before.Length;
        while (start > 0 && before[start - 1] is not (' ' or '[')) start--;
        string word = before[start..];
        return word.Length == 0 ? [] : Rank(word, start, lexicon.Units.Select(unit => (unit, unit.Text)), StringComparison.Ordinal);
    }

    /// <summary>Those that begin with the word, then those that hold it; none where the word itself is all there is.</summary>
    private static ImmutableArray<Suggestion> Rank(string word, int from, IEnumerable<(KnownWord Word, string Insert)> words, StringComparison how = StringComparison.OrdinalIgnoreCase)
    {
        List<(KnownWord Word, string Insert)> all = [.. words];
        var begin = all.Where(item => item.Word.Text.StartsWith(word, how));
        var hold = word.Length < 3 ? [] : all.Where(item => !item.Word.Text.StartsWith(word, how) && item.Word.Text.Contains(word, how));
        ImmutableArray<Suggestion> found = [.. begin.Concat(hold).Take(Most).Select(item => new Suggestion(item.Word.Text, item.Insert, from, item.Word.Meaning))];
        return found is [var only] && only.Shown == word ? [] : found;
    }

    /// <summary>Inside quotes that are not closed; holes of composed texts count as text.</summary>
    private static bool InText(string before)
    {
        bool inside = false;
        for (int i = 0; i < before.Length; i++)
        {
            if (inside && before[i] == '\\') i++;
            else if (before[i] == '"') inside = !inside;
            else if (!inside && before[i] == '/' && i + 1 < before.Length && before[i + 1] == '/') return true;
        }
        return inside;
    }

    /// <summary>Between the brackets before the sign.</summary>
    private static bool FormatOpen(string before) =>
        before.LastIndexOf('[') > before.LastIndexOf(']') && before.IndexOf('=', StringComparison.Ordinal) < 0 && before.LastIndexOf(',') < before.LastIndexOf('[');

    private static bool AfterNumber(string before, int start)
    {
        int at = before.LastIndexOf(' ');
        return at > 0 && at < before.Length && at <= start && char.IsAsciiDigit(before[at - 1]) && IsNumber(before, at) && before.IndexOfAny(['(', '*', '+', ',', ')'], at) < 0;
    }

    /// <summary>A number and no name that ends with a digit stands before the blank.</summary>
    private static bool IsNumber(string before, int end)
    {
        int start = end;
        while (start > 0 && (char.IsLetterOrDigit(before[start - 1]) || before[start - 1] is '.' or '_')) start--;
        return char.IsAsciiDigit(before[start]);
    }

    private static int WordStart(string before)
    {
        int start = before.Length;
        while (start > 0 && (char.IsLetterOrDigit(before[start - 1]) || before[start - 1] == '_')) start--;
        return start;
    }

    private static string PathBefore(string before, int dot)
    {
        int start = dot;
        while (start > 0 && (char.IsLetterOrDigit(before[start - 1]) || before[start - 1] is '_' or '.')) start--;
        return before[start..dot];
    }
}
