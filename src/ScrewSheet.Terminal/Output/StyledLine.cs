namespace ScrewSheet.Terminal.Output;

/// <summary>How a line is told apart where colours are shown; its words say the same without.</summary>
internal enum Tone
{
    /// <summary>As it comes.</summary>
    Plain,

    /// <summary>A title.</summary>
    Strong,

    /// <summary>A fault, a failing check, a changed result.</summary>
    Bad,

    /// <summary>A caution.</summary>
    Careful,
}

/// <summary>A line of output, ready to be written.</summary>
/// <param name="Text">Its characters.</param>
/// <param name="Tone">Its tone.</param>
internal readonly record struct StyledLine(string Text, Tone Tone = Tone.Plain)
{
    /// <summary>Its characters, harmless wherever they come from.</summary>
    public string Text { get; } = PlainText.Of(Text);

    /// <summary>Writes lines, with the terminal's colour codes where colour is wanted.</summary>
    public static void Write(TextWriter output, IEnumerable<StyledLine> lines, bool colour)
    {
        foreach (StyledLine line in lines) output.Write((colour ? line.Coloured : line.Text) + "\n");
    }

    private string Coloured => Tone switch
    {
        Tone.Strong => $"\e[1m{Text}\e[0m",
        Tone.Bad => $"\e[1;31m{Text}\e[0m",
        Tone.Careful => $"\e[33m{Text}\e[0m",
        _ => Text,
    };
}
