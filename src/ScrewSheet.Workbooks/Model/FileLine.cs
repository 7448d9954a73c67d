namespace ScrewSheet.Workbooks.Model;

/// <summary>How a line of the file ends.</summary>
internal enum LineEnd
{
    /// <summary>Not at all: the last line of a file without a final newline.</summary>
    None,

    /// <summary>With a line feed.</summary>
    Lf,

    /// <summary>With a carriage return and a line feed.</summary>
    CrLf,
}

/// <summary>A line as it stands in the file.</summary>
/// <param name="Text">All its characters but the end.</param>
/// <param name="End">How it ends.</param>
internal readonly record struct FileLine(string Text, LineEnd End)
{
    /// <summary>True for a line that holds a remark and nothing else.</summary>
    public bool IsRemark => Text.AsSpan().TrimStart().StartsWith("//", StringComparison.Ordinal);

    /// <summary>True for a review mark.</summary>
    public bool IsReviewed => Text.AsSpan().TrimStart().StartsWith("reviewed ", StringComparison.Ordinal);

    /// <summary>True for what belongs to the cell directly beneath it and goes where that goes.</summary>
    public bool IsOfNextCell => IsRemark || IsReviewed;
}

/// <summary>A line of the head and what it says.</summary>
/// <param name="Line">The line.</param>
/// <param name="Word">The head word in effect through it; empty for blank lines, remarks and lines in fault.</param>
/// <param name="Function">The function it defines, or null.</param>
internal readonly record struct HeadLine(FileLine Line, string Word, FunctionDefinition? Function);
