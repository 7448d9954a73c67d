using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>What is drawn at one cell of a table.</summary>
/// <param name="Mark">One character that says what it is.</param>
/// <param name="Text">The text.</param>
/// <param name="Ink">How it looks.</param>
/// <param name="AtRight">True where it stands at the right.</param>
internal readonly record struct TableFace(char Mark, string Text, Ink Ink, bool AtRight)
{
    /// <summary>True for words, which may be cut; a figure is shown whole or as an ellipsis.</summary>
    public bool IsCut { get; init; }

    /// <summary>True for a piece of a line that runs over several cells and fills this one.</summary>
    public bool IsPiece { get; init; }

    /// <summary>The piece at a cell of a line that runs over the columns of a block.</summary>
    public static TableFace Running(string line, Session session, CellBlock over, CellAddress at, Ink ink)
    {
        int before = Enumerable.Range(over.First.Column, at.Column - over.First.Column).Sum(session.Width), whole = Enumerable.Range(over.First.Column, over.Columns).Sum(session.Width);
        string cut = " " + Fit.Cut(line, Math.Max(1, whole - 2));
        return new TableFace(' ', Fit.From(cut, before), ink, false) { IsPiece = true };
    }

    /// <summary>In so many columns.</summary>
    public void Put(LineBuilder line, int width, Ink? over)
    {
        if (IsPiece)
        {
            line.Add(DisplayWidth.PadRight(Fit.Upto(Text, width), width), over ?? Ink);
            return;
        }
        int room = width - 2;
        string text = !AtRight ? Fit.Left(Text, room) : IsCut ? DisplayWidth.PadLeft(Fit.Cut(Text, room), room) : Fit.Figure(Text, room);
        line.Add(Mark.ToString(), over ?? Ink).Add(text, over ?? Ink).Add(" ", over is Ink.Selected ? Ink.Selected : Ink.Plain);
    }
}
