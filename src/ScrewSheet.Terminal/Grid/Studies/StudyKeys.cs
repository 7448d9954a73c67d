using ScrewSheet.Terminal.Grid.Keys;
using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>Keys, wheel and pasted text while a study is asked for, waited for or read.</summary>
internal static class StudyKeys
{
    /// <summary>Begins a study and waits for it.</summary>
    /// <param name="state">The state.</param>
    /// <param name="what">What is being worked out.</param>
    /// <param name="work">Does it.</param>
    /// <param name="writes">True where it writes a file.</param>
    public static GridState Start(GridState state, string what, StudyWork work, bool writes = false)
    {
        StudyTicket ticket = new(what, writes);
        return (state with { Mode = new Working(ticket, double.NaN) }).And(new DoStudy(ticket, work));
    }

    /// <summary>One key.</summary>
    public static GridState Press(GridState state, Studying studying, Press press) => studying switch
    {
        Stepping step => InStep(state, step, press),
        Working working => press.Key == KeyName.Escape ? Stop(state, working.Ticket) : state,
        Finding finding => InFinding(state, finding, press),
        _ => state,
    };

    /// <summary>Text from another program.</summary>
    public static GridState Paste(GridState state, Studying studying, string text) =>
        studying is Stepping step ? state with { Mode = step with { Typed = step.Typed.Insert(text), Trouble = null } } : state;

    /// <summary>The wheel.</summary>
    public static GridState Turn(GridState state, Studying studying, Wheel wheel) => studying is Finding finding ? To(state, finding, finding.Top + wheel.Rows) : state;

    /// <summary>The same question again, with why the answer cannot be taken.</summary>
    public static GridState Again(GridState state, Stepping step, string typed, string trouble) => state with { Mode = step with { Typed = TypedText.Of(typed), Trouble = Output.PlainText.Of(trouble) } };

    /// <summary>A file may be written in the very moment of stopping, so what became of it is told when it is known.</summary>
    private static GridState Stop(GridState state, StudyTicket ticket) => state.Browse().And(new StopStudy()).Say(ticket.Writes ? "Stopping. Whether anything was written will be said here." : ticket.Stopped);

    private static GridState InStep(GridState state, Stepping step, Press press)
    {
        if (LineKeys.Edit(step.Typed, press) is { } line) return state with { Mode = step with { Typed = line, Trouble = null } };
        return press.Key switch
        {
            KeyName.Enter => step.Answer(state.Browse(), step, step.Typed.Text),
            KeyName.Escape => state.Browse().Say("Left. Nothing was changed."),
            _ => state,
        };
    }

    private static GridState InFinding(GridState state, Finding finding, Press press)
    {
        int page = state.Height - 4;
        return press.Key switch
        {
            KeyName.Down => To(state, finding, finding.Top + 1),
            KeyName.Up => To(state, finding, finding.Top - 1),
            KeyName.PageDown => To(state, finding, finding.Top + page),
            KeyName.PageUp => To(state, finding, finding.Top - page),
            KeyName.Home => To(state, finding, 0),
            KeyName.End => To(state, finding, int.MaxValue),
            KeyName.Text when press.Ctrl => press.Text == "q" ? GridCommands.LeaveProgram(state.Browse()) : state,
            KeyName.Text => Act(state, finding, press.Text),
            KeyName.Enter or KeyName.Escape => state.Browse(),
            _ => state,
        };
    }

    private static GridState Act(GridState state, Finding finding, string letter)
    {
        if (letter == " ") return To(state, finding, finding.Top + state.Height - 4);
        foreach (var action in finding.Actions)
        {
            if (letter.Equals(action.Letter.ToString(), StringComparison.OrdinalIgnoreCase)) return action.Do(state.Browse());
        }
        return state;
    }

    private static GridState To(GridState state, Finding finding, int top)
    {
        int last = Math.Max(0, finding.Lines(StudyPicture.WidthOf(state)).Count - (state.Height - 2));
        return state with { Mode = finding with { Top = Math.Clamp(top, 0, last) } };
    }
}
