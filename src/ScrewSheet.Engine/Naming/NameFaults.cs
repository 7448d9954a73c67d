using System.Globalization;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Naming;

/// <summary>The wording of what cannot be resolved; codes 21xx.</summary>
internal static class NameFaults
{
    [FaultCode(2101, "No cell has this name here; perhaps it is on another sheet.")]
    public static Fault UnknownName(string name, string? near, string? elsewhere, Place place) => Name(2101, $"There is no cell named {name} here.",
        elsewhere is not null ? $"It is on another sheet: write {elsewhere}.{name}." : near is not null ? $"Did you mean {near}?" : "Give a cell this name or write its address.", place);

    [FaultCode(2102, "No function has this name.")]
    public static Fault UnknownFunction(string name, string? near, Place place) => Name(2102, $"There is no function {name}.", near is null ? "See the list of functions." : $"Did you mean {near}?", place);

    [FaultCode(2103, "The sheet named has no such cell.")]
    public static Fault UnknownOnSheet(string sheet, string name, string? near, Place place) => Name(2103, $"The sheet {sheet} has no cell and no column named {name}.",
        near is null ? "Write one of its names or an address." : $"Did you mean {near}?", place);

    [FaultCode(2104, "A function is named without being called.")]
    public static Fault FunctionWithoutCall(string name, Place place) => Name(2104, $"{name} is a function.", $"Call it: {name}(…).", place);

    [FaultCode(2105, "A type is written where a value belongs.")]
    public static Fault TypeAsValue(string name, Place place) => Name(2105, $"{name} is a type, not a value.", "Write it before the cell's name, or give a value with a unit.", place);

    [FaultCode(2106, "An address is beyond the last cell of a sheet.")]
    public static Fault BadAddress(string text, Place place) => Name(2106, $"{text} is beyond the last cell of a sheet.", "Columns end at ZZZ, rows at 99999.", place);

    [FaultCode(2107, "A value is called like a function.")]
    public static Fault CallOfValue(string name, Place place) => Name(2107, $"{name} is a value and cannot be called.", "Write * for a product.", place);

    [FaultCode(2108, "A function's body names a cell; it sees its parameters, other functions and the library.")]
    public static Fault CellsInFunction(string name, Place place) => Name(2108, $"A function sees its parameters, other functions and the library, not the cell {name}.", "Hand the cell over as an argument.", place);

    [FaultCode(2109, "A series is not written `Series(first, last)` with two cells of one sheet.")]
    public static Fault SeriesForm(Place place) => Name(2109, "A series is written Series(first, last) with two cells of one sheet.", null, place);

    [FaultCode(6105, "A series spans more than 200,000 cells.")]
    public static Fault SeriesTooLong(long cells, Place place) => new(6105, FaultKind.Budget, string.Create(CultureInfo.InvariantCulture, $"This series spans {cells:N0} cells."), string.Create(CultureInfo.InvariantCulture, $"{Reference.ToRun.Maximum:N0} are the most."), place);

    [FaultCode(6111, "The different series of a workbook span more than 5,000,000 cells together.")]
    public static Fault SeriesTogether(Place place) =>
        new(6111, FaultKind.Budget, string.Create(CultureInfo.InvariantCulture, $"With this series those of the workbook span more than {Graph.RunIndex.MostSpanned:N0} cells together."), "Make some shorter, or give a column a name.", place);

    [FaultCode(2110, "This member of `Math` is not part of the language of cells.")]
    public static Fault UnknownMath(string name, Place place) => Name(2110, $"Math.{name} is not part of the language of cells.", "Known are Math.PI E Sqrt Cbrt Pow Exp Log Log10 Abs Min Max Floor Ceiling.", place);

    [FaultCode(2111, "A function of the author would hide one of the library.")]
    public static Fault HiddenFunction(string name, Place? place) => Name(2111, $"{name} is a function of the library; a function of the same name would hide it.", "Choose another name.", place);

    [FaultCode(2119, "A function of the author has the name of a type.")]
    public static Fault HiddenType(string name, Place? place) => Name(2119, $"{name} is a type; a function of the same name would hide it.", "Choose another name.", place);

    [FaultCode(2112, "A sheet's name would hide a name of the library.")]
    public static Fault HiddenBySheet(string name) => Name(2112, $"{name} is a name of the library; a sheet of the same name would hide it.", "Rename the sheet.", null);

    [FaultCode(2113, "Two functions of the author have the same name.")]
    public static Fault DoubledFunction(string name, Place? place) => Name(2113, $"The function {name} is there twice.", "Rename or remove one.", place);

    [FaultCode(2114, "A type before a name is unknown.")]
    public static Fault UnknownType(string name, string? near, Place? place) => Name(2114, $"{name} is no type.", near is null ? "Write a quantity such as Force, or double, bool or string." : $"Did you mean {near}?", place);

    [FaultCode(2202, "Functions call each other in a circle; each is named in order.")]
    public static Fault FunctionCircle(IReadOnlyCollection<string> circle, Place? place) => new(2202, FaultKind.Circle, $"These functions call each other in a circle: {Way(circle)}.", "Break the circle.", place);

    [FaultCode(2201, "Cells wait for each other in a circle; each is named in order.")]
    public static Fault CellCircle(IReadOnlyCollection<CellId> circle) => new(2201, FaultKind.Circle, $"These cells wait for each other: {Way(circle)}.", "Break the circle.");

    [FaultCode(2115, "A cell referred to is empty.")]
    public static Fault EmptyCell(string cell, Place? place) => Name(2115, $"{cell} is empty.", "Fill it or refer to another cell.", place);

    [FaultCode(2116, "A cell referred to holds a note.")]
    public static Fault NoteCell(string cell, Place? place) => Name(2116, $"{cell} holds a note, not a value.", "Refer to another cell.", place);

    /// <summary>A way round in order, back to its first; of a long one the beginning.</summary>
    private static string Way<T>(IReadOnlyCollection<T> circle)
    {
        const int named = 65;
        return string.Join(" → ", circle.Take(named)) + (circle.Count > named ? string.Create(CultureInfo.InvariantCulture, $" and {circle.Count - named:N0} more") : "");
    }

    private static Fault Name(int code, string message, string? remedy, Place? place) => new(code, FaultKind.Name, message, remedy, place);
}
