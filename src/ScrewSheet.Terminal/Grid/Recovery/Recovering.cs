using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.Keys;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Comparing;

namespace ScrewSheet.Terminal.Grid.Recovery;

/// <summary>Asks what shall become of changes a grid did not save: taken, looked at first, put away, or left for the next start.</summary>
internal static class Recovering
{
    private const int MostShown = 2000;

    /// <summary>Items of the start page.</summary>
    public static ImmutableArray<Item> Items(IEnumerable<FoundJournal> journals) =>
    [
        .. journals.Where(journal => !journal.IsAlive).Select(journal => new Item("not saved", journal.Path is null ? "a workbook without a file" : PlainText.Of(journal.Path),
            $"Changes of {Moment(journal.At)} were not saved. Enter asks what shall become of them.", new Begin(journal.Path is not null && File.Exists(journal.Path) ? new OpenFile(journal.Path) : new OpenLeft(journal.Id)))),
    ];

    /// <summary>The question, over the workbook as its file has it.</summary>
    public static GridState Offer(GridState state, LeftWork left)
    {
        AuthorChanges changes = left.ChangesSince(state.Open.Workbook);
        // saved, but stopped before the journal was removed
        if (left is { Workbook: not null, IsDamaged: false } && changes.Count == 0) return state.And(new PutAway(left));
        return Ask(state, Question(state, left, changes));
    }

    private static GridState Ask(GridState state, Confirming question) =>
        state with { Mode = state.Mode is Reading { Page: PageName.Cautions } reading ? reading with { After = question } : question };

    private static Confirming Question(GridState state, LeftWork left, AuthorChanges changes)
    {
        (char, string, Func<GridState, GridState>) away = ('p', "put them away for good", next => next.Say("They are gone.").And(new PutAway(left))), later = ('n', "neither now: ask again at the next start", next => next);
        string moment = Moment(left.At);
        if (left.Workbook is null) return new Confirming($"What was not saved on {moment} cannot be read any more. {left.Trouble ?? ""}".TrimEnd(), [away, later]);
        string question = $"{changes.Count} {(changes.Count == 1 ? "change" : "changes")} of {moment} {(changes.Count == 1 ? "was" : "were")} not saved.{Damage(left)}{Elsewhere(state, left)}";
        return new Confirming(question,
        [
            ('t', "take them into the workbook; Ctrl+Z takes them out again", next => Take(next, left, changes.Count)),
            ('l', "look at them first", next => Look(next, left, changes)),
            away,
            later,
        ]);
    }

    private static string Damage(LeftWork left) => left.IsDamaged ? " Their record is damaged: what follows is what can be read of it. Look at it before you take it." : "";

    private static string Elsewhere(GridState state, LeftWork left) => left.Head.Path is null || IsSame(state, left) ? ""
        : state.Open.Path is null ? $" Their file {FileTrouble.Quoted(left.Head.Path)} is not there any more, so they are taken without a file."
        : " Another program has changed the file since, so they are taken without a file: save them under a new name, then compare the two.";

    private static bool IsSame(GridState state, LeftWork left) => state.Open.Path is not null && left.Head.Saved == JournalHead.HashOf(state.Open.Bytes.Span);

    /// <summary>The workbook as it was left, in one step that can be taken back. Where the file is another by now, it has none, so that nothing of that is ever overwritten.</summary>
    private static GridState Take(GridState state, LeftWork left, int count)
    {
        Session session = IsSame(state, left) || left.Head.Path is null ? state.Open : state.Open with { Path = null, Bytes = ReadOnlyMemory<byte>.Empty };
        return state.Browse().With(session.Changed(left.Workbook!, "taking what was not saved")).And(new TookLeft(left))
            .Say($"Took {count} {(count == 1 ? "change" : "changes")} in. Ctrl+S saves {(count == 1 ? "it" : "them")}.");
    }

    private static GridState Look(GridState state, LeftWork left, AuthorChanges changes)
    {
        DiffRow[] rows = [.. DiffPage.Author(changes)];
        Item Answer(string word, string text, Func<GridState, GridState> work) => new(word, text, "", new Take(work));
        ImmutableArray<Item> items =
        [
            Answer("answer", "back to the question", next => Ask(next.Browse(), Question(next, left, changes))),
            Answer("answer", "take them into the workbook", next => Take(next, left, changes.Count)),
            .. rows.Take(MostShown).Select(row => new Item("", DiffText.Sentence(row), "", new Nothing())),
            .. rows.Skip(MostShown).Take(1).Select(_ => new Item("", $"… and {rows.Length - MostShown} more", "", new Nothing())),
        ];
        return state with { Mode = new Listing($"Not saved on {Moment(left.At)}", items) };
    }

    private static string Moment(DateTimeOffset at) => at.ToLocalTime().ToString("d MMMM yyyy 'at' HH:mm", CultureInfo.InvariantCulture);
}
