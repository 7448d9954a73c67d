using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Keys that change a typed line or move its caret, the same wherever one is typed.</summary>
internal static class LineKeys
{
    /// <summary>The line after a key; null for a key that means something else.</summary>
    public static TypedText? Edit(TypedText typed, Press press) => press.Key switch
    {
        KeyName.Text when press.Ctrl => Control(typed, press.Text),
        KeyName.Text => typed.Insert(press.Text),
        KeyName.Backspace => typed.Backspace(),
        KeyName.Delete => typed.Delete(),
        KeyName.Left => press.Ctrl ? typed.WordLeft() : typed.Left(),
        KeyName.Right => press.Ctrl ? typed.WordRight() : typed.Right(),
        KeyName.Home => typed.Home(),
        KeyName.End => typed.End(),
        _ => null,
    };

    // the beginnings and ends of lines as shells have them, for keyboards without Home and End
    private static TypedText? Control(TypedText typed, string letter) => letter switch
    {
        "a" => typed.Home(),
        "e" => typed.End(),
        "u" => TypedText.Of(""),
        _ => null,
    };
}
