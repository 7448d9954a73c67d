namespace ScrewSheet.Workbooks.Diagnostics;

/// <summary>A place in a file or an entry: line and column, from 1; line 0 for an entry that is in no file.</summary>
/// <param name="Line">From 1.</param>
/// <param name="Column">From 1, in UTF-16 units.</param>
/// <param name="Length">How many UTF-16 units it spans; 0 for a point.</param>
public readonly record struct Place(int Line, int Column, int Length = 0);

/// <summary>What sort of fault it is; the word JSON shows is the member's name in lower case.</summary>
public enum FaultKind
{
    /// <summary>The file's format.</summary>
    Format,

    /// <summary>A name or address that is unknown, double, reserved or hidden.</summary>
    Name,

    /// <summary>Cells that wait for each other.</summary>
    Circle,

    /// <summary>Units or types that do not go together.</summary>
    Unit,

    /// <summary>Something the expression language does not have.</summary>
    Language,

    /// <summary>A computation without an answer: division by zero, a root of a negative.</summary>
    Value,

    /// <summary>A value that a function cannot take.</summary>
    Domain,

    /// <summary>Too long, too deep, too many.</summary>
    Budget,

    /// <summary>Another cell it needs is in fault.</summary>
    Waiting,
}

/// <summary>A user's mistake as a value: a stable code, a plain sentence, what to do, and where.</summary>
/// <param name="Code">Stable; ranges: 1xxx format, 2xxx names and circles, 3xxx units and types, 4xxx evaluation, 5xxx export, 6xxx language and budgets.</param>
/// <param name="Kind">What sort.</param>
/// <param name="Message">One plain sentence.</param>
/// <param name="Remedy">What to do, or null where the sentence says it.</param>
/// <param name="Place">Where, or null when it is the whole cell.</param>
/// <param name="CompilerId">The compiler's own id, for those who want it, or null.</param>
public sealed record Fault(int Code, FaultKind Kind, string Message, string? Remedy = null, Place? Place = null, string? CompilerId = null)
{
    /// <summary>The cell that caused it, as text such as <c>Fall.B7</c>; null when it is the cell itself.</summary>
    public string? Cause { get; init; }

    /// <summary>True where something begun is not closed, which is no mistake yet while it is being typed.</summary>
    public bool IsOpen { get; init; }

    /// <summary>Message and remedy in one line.</summary>
    public string Sentence => Remedy is null ? Message : $"{Message} {Remedy}";
}
