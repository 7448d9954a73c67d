using ScrewSheet.Studies;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Passing;

/// <summary>Passing the workbook on: asks as what and where to, then has it written on another thread.</summary>
internal static class PassMenu
{
    /// <summary>Asks as what.</summary>
    public static GridState Open(GridState state)
    {
        if (!state.Open.IsCalculated) return state.Say("The results are not all in yet; pass the workbook on when they are.");
        return state with { Mode = new Confirming("Pass this workbook on as", [.. PassForm.All.Select(form => (form.Letter, form.Meaning, (Func<GridState, GridState>)(next => Ask(next, form))))]) };
    }

    private static GridState Ask(GridState state, PassForm form) => state with
    {
        Mode = new Stepping(form.Title, [Shown(state.Open)], "Write to", TypedText.Of(Suggested(state.Open, form)), form.Hints, (next, step, typed) => Begin(next, form, step, typed, replace: false)),
    };

    private static string Shown(Session session) => session.IsUnsaved ? "It holds what is on the screen, with the changes that are not saved." : "It holds what is on the screen.";

    /// <summary>Beside the workbook, under its name.</summary>
    private static string Suggested(Session session, PassForm form)
    {
        string sheet = form.Ending == ".csv" && session.Workbook.Sheets.Length > 1 ? $"-{session.SheetName}" : "";
        string beside = session.Path is { } path ? Path.Combine(Path.GetDirectoryName(path) ?? "", Path.GetFileNameWithoutExtension(path)) : "workbook";
        return beside + sheet + form.Suffix + form.Ending;
    }

    private static GridState Begin(GridState state, PassForm form, Stepping step, string typed, bool replace)
    {
        string name = typed.Trim();
        if (name.Length == 0) return StudyKeys.Again(state, step, typed, "A file needs a name.");
        string path = Path.GetExtension(name).Length == 0 ? name + form.Ending : name;
        GridState asked = state;
        return StudyKeys.Start(state, $"Writing {FileTrouble.Quoted(path)}", (runner, progress, stop) =>
        {
            try
            {
                if (IsOwn(asked.Open, path)) throw new UserMistake($"{FileTrouble.Quoted(path)} is this workbook's own file. Choose another name.");
                if (!replace && File.Exists(path)) return next => Exists(next, form, step, typed, path);
                string said = Write(form, asked, runner, path, replace, progress, stop);
                return next => next.Say(said);
            }
            catch (UserMistake mistake)
            {
                return next => StudyKeys.Again(next, step, typed, mistake.Message);
            }
        }, writes: true);
    }

    private static string Write(PassForm form, GridState asked, StudyRunner runner, string path, bool replace, IProgress<double> progress, CancellationToken stop)
    {
        Session session = asked.Open;
        OutputFile target = OutputFile.Claim(path, replace);
        (byte[] bytes, string said) = form.Make(new PassOrder(new EngineCalculator(asked.Lexicon.Library, runner), session.Known!.Calculation, session.SheetName, path, progress, stop));
        stop.ThrowIfCancellationRequested();
        int bad = session.Known.Calculation.Cells.Values.Count(Verdict.IsBad);
        string look = bad == 0 ? "" : $" {bad} {(bad == 1 ? "cell needs" : "cells need")} attention; the file holds {(bad == 1 ? "it" : "them")} so.";
        return $"{target.Write(bytes)} {Shown(session)}{(said.Length == 0 ? "" : " " + said)}{look}";
    }

    /// <summary>A file that is there is replaced on yes only.</summary>
    private static GridState Exists(GridState state, PassForm form, Stepping step, string typed, string path) => state with
    {
        Mode = new Confirming($"{FileTrouble.Quoted(Path.GetFileName(path))} is there already.",
        [
            ('r', "replace it", next => Begin(next, form, step, typed, replace: true)),
            ('o', "write to another file", next => next with { Mode = step with { Typed = TypedText.Of(typed), Trouble = null } }),
            ('b', "go back to the grid", next => next.Say("Nothing was written.")),
        ]),
    };

    /// <summary>True where both names lead to the file of the workbook itself.</summary>
    private static bool IsOwn(Session session, string path) => session.Path is { } own && FileTrouble.Guard(path, "written", () => File.Exists(path) && File.Exists(own) && FilePlace.Target(path) == FilePlace.Target(own));
}
