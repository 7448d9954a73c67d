using ScrewSheet.Terminal.Grid.Screen;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;
using Color = Terminal.Gui.Drawing.Color;

namespace ScrewSheet.Terminal.Grid.Toolkit;

/// <summary>How each ink looks: in colours every terminal of sixteen has, or without any.</summary>
internal sealed class Palette
{
    private readonly Attribute[] attributes;

    private Palette(Func<Ink, Attribute> look) => attributes = [.. Enum.GetValues<Ink>().Select(look)];

    /// <summary>With colours over the terminal's own ground.</summary>
    public static Palette Coloured { get; } = new(ink => ink switch
    {
        Ink.Faint => Over(StandardColor.Gray, TextStyle.Faint),
        Ink.Strong => new Attribute(Color.None, Color.None, TextStyle.Bold),
        Ink.Frame => new Attribute(Color.None, Color.None, TextStyle.Faint),
        Ink.FrameHere => new Attribute(Color.None, Color.None, TextStyle.Bold),
        Ink.Here => new Attribute(Color.None, Color.None, TextStyle.Reverse | TextStyle.Bold),
        Ink.Selected => new Attribute(Color.None, Color.None, TextStyle.Reverse),
        Ink.Given => Over(StandardColor.Teal, TextStyle.None),
        Ink.Good => Over(StandardColor.Green, TextStyle.None),
        Ink.Bad => Over(StandardColor.Red, TextStyle.Bold),
        Ink.Careful => Over(StandardColor.Olive, TextStyle.None),
        Ink.Key => new Attribute(Color.None, Color.None, TextStyle.Bold | TextStyle.Underline),
        _ => new Attribute(Color.None, Color.None),
    });

    /// <summary>Without colours.</summary>
    public static Palette Plain { get; } = new(ink => new Attribute(Color.None, Color.None, ink switch
    {
        Ink.Faint or Ink.Frame => TextStyle.Faint,
        Ink.Strong or Ink.FrameHere or Ink.Bad => TextStyle.Bold,
        Ink.Here => TextStyle.Reverse | TextStyle.Bold,
        Ink.Selected => TextStyle.Reverse,
        Ink.Key => TextStyle.Bold | TextStyle.Underline,
        Ink.Careful => TextStyle.Underline,
        _ => TextStyle.None,
    }));

    /// <summary>The look of an ink.</summary>
    public Attribute this[Ink ink] => attributes[(int)ink];

    private static Attribute Over(StandardColor colour, TextStyle style) => new(new Color(colour), Color.None, style);
}
