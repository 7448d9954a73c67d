using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Naming;

/// <summary>What the words of an expression can mean where it stands.</summary>
internal interface INameScope
{
    /// <summary>The sheet it stands on; null inside an author's function.</summary>
    string? Sheet { get; }

    /// <summary>The library.</summary>
    FunctionLibrary Library { get; }

    /// <summary>The author's functions by name.</summary>
    IReadOnlyDictionary<string, OwnFunction> OwnFunctions { get; }

    /// <summary>The parameters of the function it is the body of; empty in a cell.</summary>
    IReadOnlyList<BoundParameter> Parameters { get; }

    /// <summary>True for the name of a sheet.</summary>
    bool IsSheet(string name);

    /// <summary>The cell of that name on that sheet, or null.</summary>
    CellId? Find(string sheet, string name);

    /// <summary>The column of that name on that sheet, or null.</summary>
    SheetColumn? FindColumn(string sheet, string name);

    /// <summary>The sheets that have a cell or a column of that name.</summary>
    IEnumerable<string> SheetsWith(string name);

    /// <summary>Names near enough to have been meant.</summary>
    IEnumerable<string> Known();

    /// <summary>The names of the cells and columns of a sheet.</summary>
    IEnumerable<string> KnownOn(string sheet);
}
