using System.Text;
using ScrewSheet.Terminal.Grid.State;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace ScrewSheet.Terminal.Grid.Toolkit;

/// <summary>From the toolkit's keys to ours.</summary>
internal static class KeyTranslation
{
    /// <summary>The key, or null for one that means nothing here.</summary>
    public static Press? Of(Key key)
    {
        KeyCode bare = key.KeyCode & ~(KeyCode.ShiftMask | KeyCode.CtrlMask | KeyCode.AltMask);
        // two quick presses of Escape arrive as one with Alt
        if (key.IsAlt && bare != KeyCode.Esc) return null;
        if (Named(bare, key.IsShift) is { } name) return new Press(name, "", key.IsCtrl, key.IsShift);
        if (key.IsCtrl) return bare is >= KeyCode.A and <= KeyCode.Z ? new Press(KeyName.Text, ((char)('a' + (bare - KeyCode.A))).ToString(), Ctrl: true) : null;
        return key.TryGetPrintableRune(out Rune rune) ? new Press(KeyName.Text, rune.ToString()) : null;
    }

    private static KeyName? Named(KeyCode code, bool shift) => code switch
    {
        KeyCode.Enter => KeyName.Enter,
        KeyCode.Tab => shift ? KeyName.BackTab : KeyName.Tab,
        KeyCode.Esc => KeyName.Escape,
        KeyCode.CursorUp => KeyName.Up,
        KeyCode.CursorDown => KeyName.Down,
        KeyCode.CursorLeft => KeyName.Left,
        KeyCode.CursorRight => KeyName.Right,
        KeyCode.PageUp => KeyName.PageUp,
        KeyCode.PageDown => KeyName.PageDown,
        KeyCode.Home => KeyName.Home,
        KeyCode.End => KeyName.End,
        KeyCode.Backspace => KeyName.Backspace,
        KeyCode.Delete => KeyName.Delete,
        _ => null,
    };
}
