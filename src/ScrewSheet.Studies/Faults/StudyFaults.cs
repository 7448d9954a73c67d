using System.Globalization;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Studies.Faults;

/// <summary>The wording of studies that cannot be done, and of what must be said about those that can; codes 23xx, 33xx, 43xx and 64xx.</summary>
internal static class StudyFaults
{
    [FaultCode(2301, "A study names a cell that does not exist.")]
    public static Fault NoSuchCell(string name, Place? place) =>
        new(2301, FaultKind.Name, $"No cell is called {name}.", "Write the name or address of a cell, with its sheet and a dot where it stands on another.", place);

    [FaultCode(2302, "A study names a cell that two sheets have.")]
    public static Fault Ambiguous(string name, string both, Place? place) =>
        new(2302, FaultKind.Name, $"{name} could be {both}.", "Write the sheet's name and a dot before it.", place);

    [FaultCode(2303, "A study varies or solves for a cell that is a result.")]
    public static Fault VariedResult(string name, Place? place) =>
        new(2303, FaultKind.Name, $"{name} is a result, so it cannot be varied.", "Vary the givens it is computed from.", place);

    [FaultCode(2304, "A study names a cell that holds words or nothing it can use.")]
    public static Fault NoValue(string name, Place? place) =>
        new(2304, FaultKind.Name, $"{name} holds no value.", "Name a given or a result.", place);

    [FaultCode(2305, "A what-if table varies the same given twice.")]
    public static Fault VariedTwice(string name, Place? place) =>
        new(2305, FaultKind.Name, $"{name} is varied twice.", "Put all its values into one vary line.", place);

    [FaultCode(2306, "A what-if table has no `vary` or no `show` line.")]
    public static Fault Missing(string word, Place? place) =>
        new(2306, FaultKind.Format, $"The table has no {word} line.", word == "vary" ? "Write one like vary exposed: 0 mm to 60 mm step 10 mm." : "Write one like show moment.", place);

    [FaultCode(2307, "Cells stand where a what-if table of the file would be drawn.")]
    public static Fault Occupied(string cell, string table, Place? place) =>
        new(2307, FaultKind.Format, $"{cell} stands where the table at {table} is drawn.", "Move the cell or the table.", place);

    [FaultCode(3301, "A value of a study is of another kind than its cell.")]
    public static Fault OtherKind(string value, string valuePhrase, string name, string phrase, Place? place) =>
        new(3301, FaultKind.Unit, $"{value} is {valuePhrase}; {name} is {phrase}.", $"Write {phrase}, with its unit.", place);

    [FaultCode(3302, "A range or a search runs over a given that is no number or quantity.")]
    public static Fault NoRange(string name, string phrase, Place? place) =>
        new(3302, FaultKind.Unit, $"{name} is {phrase}, which has no values between two others.", "Write its values out, with commas between.", place);

    [FaultCode(3303, "A study of spread or a search asks about a result that is neither a quantity nor a check.")]
    public static Fault NotMeasurable(string name, string phrase, Place? place) =>
        new(3303, FaultKind.Unit, $"{name} is {phrase}; this asks about a number, a quantity or a check.", "Name another result.", place);

    [FaultCode(4301, "The step of a range is zero.")]
    public static Fault StepZero(Place? place) =>
        new(4301, FaultKind.Value, "The step is zero, so the range would never end.", "Write a step that leads from the first value to the last.", place);

    [FaultCode(4302, "The step of a range leads away from its end.")]
    public static Fault StepWrongSign(string from, string to, string step, Place? place) =>
        new(4302, FaultKind.Value, $"The step {step} leads away from {to}.", $"Change its sign, or write {to} to {from}.", place);

    [FaultCode(4303, "A bound or value of a study is not finite.")]
    public static Fault NotFinite(string name, Place? place) =>
        new(4303, FaultKind.Value, $"A value for {name} is not a finite number.", "Write finite values.", place);

    [FaultCode(4304, "A logarithmic range begins or ends at zero or below.")]
    public static Fault LogarithmOfZero(Place? place) =>
        new(4304, FaultKind.Value, "A logarithmic range begins and ends above zero.", "Write other ends, or leave log away.", place);

    [FaultCode(4305, "A shown result depends on nothing that is varied; it is the same everywhere.")]
    public static Fault DependsOnNothing(string shown, string varied) =>
        new(4305, FaultKind.Value, $"{shown} does not depend on {varied}: it is the same in every entry.", null);

    [FaultCode(4306, "A given is varied on which no shown result depends.")]
    public static Fault VariedInVain(string varied) =>
        new(4306, FaultKind.Value, $"No shown result depends on {varied}.", null);

    [FaultCode(4310, "A search has a result that does not depend on the given it may change.")]
    public static Fault SolveInVain(string cell, string by) =>
        new(4310, FaultKind.Value, $"{cell} does not depend on {by}, so no value of it helps.", "Name a given it is computed from.");

    [FaultCode(4311, "The ends of a search interval are in the wrong order.")]
    public static Fault Interval(string from, string to) =>
        new(4311, FaultKind.Value, $"{from} is not below {to}.", "Write the lower end first, or leave both away.");

    [FaultCode(4312, "Only one end of a search interval was written.")]
    public static Fault HalfInterval() =>
        new(4312, FaultKind.Value, "One end of the interval is missing.", "Write both, or neither.");

    [FaultCode(4320, "A study of uncertainty finds no given with a tolerance.")]
    public static Fault NoTolerance(string cell) =>
        new(4320, FaultKind.Value, $"No given that {cell} depends on has a tolerance.", "Write ± and a half-width after one.");

    [FaultCode(6402, "A study of uncertainty rests on more than 500 givens with tolerances.")]
    public static Fault TooManyGivens(int givens, int most) =>
        new(6402, FaultKind.Budget, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{givens:N0} givens with tolerances stand behind this; {most:N0} are the most."), "Ask for a cell that depends on fewer, or take the ± from those that hardly matter.");

    [FaultCode(4321, "A correlation names a given without a tolerance.")]
    public static Fault CorrelatedWithout(string name, Place? place) =>
        new(4321, FaultKind.Value, $"{name} has no tolerance, so nothing can go together with it.", "Write ± and a half-width after it, or remove the correlate line.", place);

    [FaultCode(4322, "The correlations contradict each other.")]
    public static Fault Contradiction() =>
        new(4322, FaultKind.Value, "The correlations contradict each other: no givens can go together like that.", "Check the signs of the correlate lines.");

    [FaultCode(4323, "Two givens are correlated twice, or one with itself.")]
    public static Fault CorrelatedTwice(string first, string second, Place? place) =>
        new(4323, FaultKind.Value, first == second ? $"{first} is correlated with itself." : $"{first} and {second} are correlated twice.", "Keep one line.", place);

    [FaultCode(4324, "The result is in fault at the file's own givens, so nothing can be said about small changes.")]
    public static Fault NothingAtBase(string cell, string sentence) =>
        new(4324, FaultKind.Value, $"{cell} has no value at the file's own givens: {sentence}", "Put that right first.");

    [FaultCode(4325, "The number of samples is out of range.")]
    public static Fault Samples(long least, long most) =>
        new(4325, FaultKind.Value, string.Create(CultureInfo.InvariantCulture, $"The number of samples is from {least:#,0} to {most:#,0}."), null);

    [FaultCode(6401, "A what-if table has more entries than 1,000,000.")]
    public static Fault TooMany(string count, string most, Place? place) =>
        new(6401, FaultKind.Budget, $"The table would have {count} entries; at most {most} are made.", "Take longer steps or vary less.", place);

    [FaultCode(6403, "A what-if table has too many entries that are no numbers: texts, records or faults.")]
    public static Fault TooMuchHeld(Place? place) =>
        new(6403, FaultKind.Budget, "Too many entries of this table are texts, records or faults.", "Take longer steps, vary less, or show numbers.", place);
}
