using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.Keys;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Passing;

/// <summary>A cell that a merge left in two versions: shows both, and puts the one in that the reader chooses.</summary>
internal static class ConflictChoice
{
    /// <summary>The versions of the cell under the cursor; null where it has only one.</summary>
    public static (string Ours, string Theirs)? Of(Session session) => session.Cell?.Content is BrokenContent { Versions: { } versions } ? versions : null;

    /// <summary>Both versions and what can be done.</summary>
    public static void Describe(DetailBuilder builder, (string Ours, string Theirs) versions)
    {
        builder.Text("ours", Shown(versions.Ours), Ink.Strong);
        builder.Text("theirs", Shown(versions.Theirs), Ink.Strong);
        builder.Text("", "Enter chooses one of them. Whatever is typed here goes in the place of both.", Ink.Faint);
    }

    /// <summary>Asks which one.</summary>
    public static GridState Open(GridState state, (string Ours, string Theirs) versions) => state with
    {
        Mode = new Confirming($"Two versions of {Name(state)} meet here. Which one counts?",
        [
            ('o', $"ours: {Shown(versions.Ours)}", next => Take(next, versions.Ours, "ours")),
            ('t', $"theirs: {Shown(versions.Theirs)}", next => Take(next, versions.Theirs, "theirs")),
            ('e', "another one: type it, beginning with ours", next => EnteringKeys.Begin(next, versions.Ours)),
        ]),
    };

    private static GridState Take(GridState state, string version, string whose)
    {
        Session session = state.Open;
        string name = Name(state);
        Session chosen = Edits.Commit(session, version, out Fault? fault);
        if (fault is not null) return state.Say(PlainText.Of(fault.Sentence), trouble: true);
        ImmutableStack<Step> done = chosen.Done.Pop(out Step step).Push(step with { What = $"the choice of {whose} for {name}" });
        return state.With(chosen with { Done = done }).Say($"Took {whose} for {name}. Ctrl+Z takes it back.");
    }

    private static string Shown(string version) => version.Length == 0 ? "nothing: the cell goes" : PlainText.Of(version);

    private static string Name(GridState state) => PlainText.Of(state.Open.NameOf(state.Open.At));
}
