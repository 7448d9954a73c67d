using ScrewSheet.Terminal.Grid.Recovery;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>A key, whatever terminal it came from.</summary>
internal enum KeyName
{
    /// <summary>Characters; with Ctrl a single letter.</summary>
    Text,

    /// <summary>Enter.</summary>
    Enter,

    /// <summary>Tab.</summary>
    Tab,

    /// <summary>Shift and Tab.</summary>
    BackTab,

    /// <summary>Escape.</summary>
    Escape,

    /// <summary>Arrow.</summary>
    Up,

    /// <summary>Arrow.</summary>
    Down,

    /// <summary>Arrow.</summary>
    Left,

    /// <summary>Arrow.</summary>
    Right,

    /// <summary>A page up.</summary>
    PageUp,

    /// <summary>A page down.</summary>
    PageDown,

    /// <summary>To the beginning.</summary>
    Home,

    /// <summary>To the end.</summary>
    End,

    /// <summary>Deletes backward.</summary>
    Backspace,

    /// <summary>Deletes forward.</summary>
    Delete,
}

/// <summary>What the reader did. A closed family.</summary>
internal abstract record Input;

/// <summary>A key pressed.</summary>
/// <param name="Key">Which.</param>
/// <param name="Text">The characters of <see cref="KeyName.Text"/>.</param>
/// <param name="Ctrl">With Ctrl.</param>
/// <param name="Shift">With Shift, where the terminal says so.</param>
internal sealed record Press(KeyName Key, string Text = "", bool Ctrl = false, bool Shift = false) : Input;

/// <summary>A text pasted from another program.</summary>
/// <param name="Text">The text.</param>
internal sealed record Paste(string Text) : Input;

/// <summary>The mouse pressed or dragged over a place of the screen.</summary>
/// <param name="Column">From 0.</param>
/// <param name="Line">From 0.</param>
/// <param name="IsDrag">The button was down already.</param>
/// <param name="IsDouble">Pressed twice.</param>
internal sealed record Click(int Column, int Line, bool IsDrag = false, bool IsDouble = false) : Input;

/// <summary>The wheel turned.</summary>
/// <param name="Rows">Rows down; negative for up.</param>
internal sealed record Wheel(int Rows) : Input;

/// <summary>The terminal has another size.</summary>
/// <param name="Width">Columns.</param>
/// <param name="Height">Lines.</param>
internal sealed record Resize(int Width, int Height) : Input;

/// <summary>A calculation is finished.</summary>
/// <param name="Known">What it found.</param>
internal sealed record Calculated(Known Known) : Input;

/// <summary>A cell takes long to compute, or none does any more.</summary>
/// <param name="Cell">The cell, or null.</param>
internal sealed record Slowed(CellId? Cell) : Input;

/// <summary>The calculation did not come to its end.</summary>
/// <param name="Why">What to tell the reader; null where that was told before.</param>
internal sealed record Stopped(string? Why) : Input;

/// <summary>A line being typed was tried out.</summary>
/// <param name="Preview">What it would give.</param>
internal sealed record Previewed(Preview Preview) : Input;

/// <summary>A file was written.</summary>
/// <param name="Session">The session as it is written.</param>
/// <param name="Said">What to tell the reader.</param>
internal sealed record Written(Session Session, string Said) : Input;

/// <summary>Something to tell the reader.</summary>
/// <param name="Text">One sentence.</param>
/// <param name="IsTrouble">True where something did not work.</param>
internal sealed record Said(string Text, bool IsTrouble = true) : Input;

/// <summary>A workbook was opened.</summary>
/// <param name="Session">The session.</param>
internal sealed record Opened(Session Session) : Input;

/// <summary>Changes were found that a grid did not save.</summary>
/// <param name="Left">The changes.</param>
internal sealed record Offered(LeftWork Left) : Input;
