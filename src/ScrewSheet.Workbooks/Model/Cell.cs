using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Model;

/// <summary>One cell as its author wrote it.</summary>
public sealed record Cell
{
    /// <summary>Where it stands.</summary>
    public required CellAddress Address { get; init; }

    /// <summary>The type written before the name, such as <c>Torque</c>, or null.</summary>
    public string? DeclaredType { get; init; }

    /// <summary>Its name, or null.</summary>
    public string? Name { get; init; }

    /// <summary>How its value is shown, or null for the workbook's way.</summary>
    public DisplayFormat? Format { get; init; }

    /// <summary>What it holds.</summary>
    public required CellContent Content { get; init; }

    /// <summary>The remark after it, without the strokes, or null.</summary>
    public string? Remark { get; init; }

    /// <summary>Where it stands in the file: line and column of its address, from 1; (0, 0) for a cell typed in.</summary>
    public Place Place { get; init; }

    /// <summary>The line behind it, for saving the file as it was.</summary>
    internal Unseen<CellSource> Source { get; init; }
}

/// <summary>What a cell holds. A closed family.</summary>
public abstract record CellContent
{
    private protected CellContent() { }
}

/// <summary>Words.</summary>
/// <param name="Text">The text, unescaped.</param>
public sealed record NoteContent(string Text) : CellContent;

/// <summary>An input.</summary>
/// <param name="Text">The constant as written, such as <c>8.5 kN</c>.</param>
/// <param name="TextColumn">The column in its line where <paramref name="Text"/> begins, from 1.</param>
public sealed record GivenContent(string Text, int TextColumn) : CellContent
{
    /// <summary>The value when the text is a plain literal; null when it is a constant expression for the engine to work out.</summary>
    public Literal? Literal { get; init; }

    /// <summary>What follows ±, or null.</summary>
    public Tolerance? Tolerance { get; init; }

    /// <summary>What follows within, or null.</summary>
    public Limits? Within { get; init; }

    /// <summary>What follows source, or null.</summary>
    public string? Source { get; init; }
}

/// <summary>A result: an expression and, once saved, the value it had.</summary>
/// <param name="Expression">The C# expression as written.</param>
/// <param name="ExpressionColumn">The column in its line where it begins, from 1.</param>
public sealed record ResultContent(string Expression, int ExpressionColumn) : CellContent
{
    /// <summary>What follows gives, as written, or null.</summary>
    public string? Kept { get; init; }
}

/// <summary>A line that could not be read as a cell; kept and saved back unchanged.</summary>
/// <param name="Text">The line as it stands in the file; of a conflict, all its lines.</param>
/// <param name="Fault">What is wrong with it.</param>
public sealed record BrokenContent(string Text, Fault Fault) : CellContent
{
    /// <summary>The same on one line: a conflict has several.</summary>
    public string Shown => Text.Contains('\n', StringComparison.Ordinal) ? string.Join(' ', Text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)) : Text;

    /// <summary>True for two versions of the cell that a merge could not choose between.</summary>
    public bool IsConflict => Format.ConflictText.IsCell(Text);

    /// <summary>The two versions of a conflict, each as it would be typed into the cell, empty where that version has no such cell; null for any other line.</summary>
    public (string Ours, string Theirs)? Versions => IsConflict ? Format.ConflictText.Versions(Text) : null;
}
