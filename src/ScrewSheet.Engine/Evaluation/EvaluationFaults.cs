using System.Globalization;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>The wording of computations without an answer; codes 41xx, and 61xx for budgets.</summary>
internal static class EvaluationFaults
{
    [FaultCode(4101, "A division by zero.")]
    public static Fault DivisionByZero() => Value(4101, "This divides by zero.", "Check the value below the line.");

    [FaultCode(4102, "A root of a negative value.")]
    public static Fault NegativeRoot() => Value(4102, "This is the root of a negative value.", "Check the sign of what stands in it.");

    [FaultCode(4103, "A computation has no value as a number.")]
    public static Fault NoNumber() => Value(4103, "This has no value as a number.", "Check the values put in.");

    [FaultCode(4104, "A computation goes beyond all numbers.")]
    public static Fault TooLarge() => Value(4104, "This is larger than any number here.", "Check the values put in.");

    [FaultCode(4105, "No arm of a `switch` fits.")]
    public static Fault NoArm() => Value(4105, "No arm of the switch fits.", "Add an arm with _.");

    [FaultCode(4106, "A library function cannot take a value; its sentence names parameter, limit and unit.")]
    public static Fault Domain(string sentence) => new(4106, FaultKind.Domain, sentence);

    [FaultCode(4107, "A parameter that counts was given a broken number.")]
    public static Fault WholeNumber(string parameter, double value) => new(4107, FaultKind.Domain, $"{parameter} must be a whole number; it is {value:R}.", "Round it first.");

    [FaultCode(4108, "A series has no values.")]
    public static Fault EmptySeries(string run) => Value(4108, $"The series {run} has no values.", "Fill a cell in it.");

    [FaultCode(4109, "A cell of a series holds a note.")]
    public static Fault SeriesNote(string cell) => Value(4109, $"{cell} in this series holds a note.", "A series has values of one kind; blanks are skipped.");

    [FaultCode(3117, "The cells of a series hold different kinds.")]
    public static Fault SeriesMixed(string cell, string phrase, string first) => new(3117, FaultKind.Unit, $"{cell} in this series is {phrase}; the others are {first}.", "A series has values of one kind.");

    [FaultCode(3118, "A cell of a series is neither number nor quantity nor text.")]
    public static Fault SeriesType(string cell, string phrase) => new(3118, FaultKind.Unit, $"{cell} is {phrase}; a series has numbers, quantities or texts.", null);

    [FaultCode(6107, "A cell needs more than 10,000,000 steps.")]
    public static Fault CellSteps(long steps) => Budget(6107, string.Create(CultureInfo.InvariantCulture, $"This cell needs more than {steps:N0} steps."), "Make its functions call less or its series shorter.");

    [FaultCode(6108, "A calculation needs more than 1,000,000,000 steps.")]
    public static Fault AllSteps(long steps) => Budget(6108, string.Create(CultureInfo.InvariantCulture, $"The workbook needs more than {steps:N0} steps for one calculation."), "Make it smaller.");

    [FaultCode(6109, "A computed text is longer than 4,096 characters.")]
    public static Fault TooLongText(int bytes) => Budget(6109, string.Create(CultureInfo.InvariantCulture, $"This text is longer than {bytes:N0} characters."), "Shorten it.");

    [FaultCode(6110, "The author's functions call each other deeper than 100.")]
    public static Fault CallDepth(int depth) => Budget(6110, $"Functions call each other deeper than {depth}.", "Join some of them.");

    [FaultCode(6112, "The series, texts and records of a workbook's cells hold more than 20,000,000 values together.")]
    public static Fault HeldTooMuch(long values) => Budget(6112, string.Create(CultureInfo.InvariantCulture, $"With this cell the workbook would hold more than {values:N0} values."), "Compute a number from the series in the cell that makes it.");

    [FaultCode(3119, "A cell is declared as one type and its expression gives another.")]
    public static Fault WrongType(string declared, string phrase, Place? place) => new(3119, FaultKind.Unit, $"The cell is declared {declared}; its expression gives {phrase}.", "Change the type or the expression.", place);

    [FaultCode(3120, "A cell's unit in brackets is not of its value's dimension.")]
    public static Fault WrongUnit(string unit, string phrase) => new(3120, FaultKind.Unit, $"The cell is shown in {unit}; its value is {phrase}.", "Change the unit in the brackets.");

    [FaultCode(4201, "A cell waits for one that is in fault; the cause is named.")]
    public static Fault Waits(string cell) => new(4201, FaultKind.Waiting, $"It waits for {cell}, which is in fault.", null);

    [FaultCode(3133, "A value of a column is of another kind than the unit of the column's line.")]
    public static Fault ColumnUnit(string cell, string phrase, string column, string unit) =>
        new(3133, FaultKind.Unit, $"{cell} in the column {column} is {phrase}; the column is in {unit}.", $"Give the value a unit such as {unit}, or change the column's line.");

    [FaultCode(4121, "A note stands among the values of a column.")]
    public static Fault ColumnNote(string cell, string column) =>
        Value(4121, $"{cell} in the column {column} holds a note.", "Notes stand above the first value; leave a cell empty where a value is missing.");

    [FaultCode(4122, "A column has no values.")]
    public static Fault EmptyColumn(string column) => Value(4122, $"The column {column} has no values.", "Fill a cell beneath its heading.");

    [FaultCode(4123, "Rows are picked by a text that no row has.")]
    public static Fault NoSuchText(string word, string? near, IReadOnlyList<string> known, int count) =>
        Value(4123, $"No row says {Quoted(word)}.", near is not null ? $"Did you mean {Quoted(near)}?" : $"The rows say {string.Join(", ", known.Select(Quoted))}{(count > known.Count ? " and more" : "")}.");

    [FaultCode(4124, "Rows are picked by a series of another length that stands in no rows.")]
    public static Fault NotBeside(int count, int other) =>
        Value(4124, $"There are {count} values and {other} to pick them by, and they do not stand in rows of one sheet.", "Use columns of one sheet, or series of one length.");

    private static string Quoted(string word) => Workbooks.Format.CellText.Quote(word.Length > 60 ? word[..60] + "…" : word);

    private static Fault Value(int code, string message, string remedy) => new(code, FaultKind.Value, message, remedy);

    private static Fault Budget(int code, string message, string remedy) => new(code, FaultKind.Budget, message, remedy);
}

/// <summary>Carries a fault out of an evaluation; caught at the cell.</summary>
internal sealed class EvaluationException(Fault fault) : Exception(fault.Message)
{
    public Fault Fault { get; } = fault;
}
