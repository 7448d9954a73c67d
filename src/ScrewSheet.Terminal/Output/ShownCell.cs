using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Output;

/// <summary>A remark below a cell: a word that says what it is, and a sentence.</summary>
/// <param name="Word">Such as <c>fault</c>; empty for a part of the value.</param>
/// <param name="Text">The sentence.</param>
/// <param name="Tone">Its tone.</param>
internal readonly record struct ShownRemark(string Word, string Text, Tone Tone);

/// <summary>A cell as it is shown: every text harmless, nothing laid out yet.</summary>
internal sealed record ShownCell
{
    /// <summary>Where it stands.</summary>
    public required CellAddress Address { get; init; }

    /// <summary>The words of a note; null for any other cell.</summary>
    public string? Note { get; init; }

    /// <summary>Its name, or empty.</summary>
    public string Name { get; init; } = "";

    /// <summary>The figure, or a word such as <c>holds</c>; empty where the value stands in the remarks below.</summary>
    public string Value { get; init; } = "";

    /// <summary>The unit, or empty.</summary>
    public string Unit { get; init; } = "";

    /// <summary>What stands beside the value: its tolerance.</summary>
    public string Beside { get; init; } = "";

    /// <summary>What stands below it.</summary>
    public IReadOnlyList<ShownRemark> Below { get; init; } = [];

    /// <summary>The tone of its line.</summary>
    public Tone Tone { get; init; }
}
