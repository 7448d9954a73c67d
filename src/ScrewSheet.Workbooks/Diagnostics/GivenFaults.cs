namespace ScrewSheet.Workbooks.Diagnostics;

/// <summary>The wording of faults in a given's value, tolerance, limits and source; codes 1100 to 1199.</summary>
internal static class GivenFaults
{
    [FaultCode(1101, "A number is not written as numbers are: a decimal comma, a leading zero, grouped digits, a unit directly behind it; or it is too large or too small to hold.")]
    public static Fault Number(Place place, string problem) => new(1101, FaultKind.Format, Results.VisibleText.Of(problem), null, place);

    [FaultCode(1102, "A fraction stands before a unit; write it as a decimal number.")]
    public static Fault Fraction(Place place, string instead) =>
        Of(1102, FaultKind.Format, place, "A fraction cannot stand before a unit.", $"Write {instead}.");

    [FaultCode(1103, "A value is too large for the program to hold in SI units.")]
    public static Fault TooLarge(Place place) =>
        Of(1103, FaultKind.Value, place, "The number is too large.", "Write it in a larger unit.");

    [FaultCode(1104, "What follows a number is no unit.")]
    public static Fault Unit(Place place, string problem) => new(1104, FaultKind.Unit, Results.VisibleText.Of(problem), null, place);

    [FaultCode(1105, "An entry begins like a number and does not read as a given.")]
    public static Fault Entry(Place place) =>
        Of(1105, FaultKind.Format, place, "This begins like a number and cannot be read as one.", "Write a value such as 8.5 kN, put = before a constant, => before an expression, or quotes round a text.");

    [FaultCode(1110, "What follows ± is no number with a unit.")]
    public static Fault Tolerance(Place place) =>
        Of(1110, FaultKind.Format, place, "What follows ± cannot be read.", "Write it like ± 0.5 kN or ± 5 %.");

    [FaultCode(1111, "The tolerance is of another kind than the given.")]
    public static Fault ToleranceKind(Place place, string tolerance, string given, string instead) =>
        Of(1111, FaultKind.Unit, place, $"{Capital(tolerance)} cannot be the tolerance of {given}.", $"Write ± {instead}.");

    [FaultCode(1112, "The tolerance of a temperature is given in %.")]
    public static Fault ToleranceOfTemperature(Place place) =>
        Of(1112, FaultKind.Unit, place, "The tolerance of a temperature cannot be in %, since its zero is only a choice.", "Write it in K, like ± 2 K.");

    [FaultCode(1113, "The tolerance is below zero.")]
    public static Fault ToleranceBelowZero(Place place) =>
        Of(1113, FaultKind.Value, place, "A tolerance cannot be below zero.", "Write it without a sign.");

    [FaultCode(1114, "An unknown word follows the tolerance.")]
    public static Fault ToleranceWord(Place place, string word) =>
        Of(1114, FaultKind.Format, place, $"{word} means nothing after a tolerance.", "Known are rectangular, triangular, k=1 and dof with a number.");

    [FaultCode(1115, "A tolerance or limits follow something that is no number.")]
    public static Fault NoNumber(Place place, string what) =>
        Of(1115, FaultKind.Unit, place, $"Only a number or a quantity can have {what}.", "Remove it.");

    [FaultCode(1116, "The word `dof` is not followed by a number of at least 1.")]
    public static Fault Freedom(Place place) =>
        Of(1116, FaultKind.Format, place, "A number of at least 1 follows dof.", "Write it like dof 18.");

    [FaultCode(1120, "What follows `within` is not two values with `to` between.")]
    public static Fault Within(Place place) =>
        Of(1120, FaultKind.Format, place, "What follows within cannot be read.", "Write it like within 0 mm to 120 mm.");

    [FaultCode(1121, "The limits are of another kind than the given.")]
    public static Fault WithinKind(Place place, string limit, string given) =>
        Of(1121, FaultKind.Unit, place, $"{Capital(limit)} cannot be a limit of {given}.", "Write both limits in a unit of the given.");

    [FaultCode(1122, "The lower limit is not below the upper one.")]
    public static Fault WithinOrder(Place place, string from, string to) =>
        Of(1122, FaultKind.Value, place, $"The limit {from} is not below {to}.", "Write the lower limit first.");

    [FaultCode(1123, "The value lies outside its limits.")]
    public static Fault Outside(Place place, string value, string limits) =>
        Of(1123, FaultKind.Value, place, $"The value {value} is not within {limits}.", "Change the value or the limits.");

    [FaultCode(1124, "What follows `source` is no text in quotes.")]
    public static Fault Source(Place place) =>
        Of(1124, FaultKind.Format, place, "A text in quotes follows source.", "Write it like source \"Calibration 12\".");

    private static Fault Of(int code, FaultKind kind, Place place, string message, string remedy) => new(code, kind, message, remedy, place);

    private static string Capital(string phrase) => char.ToUpperInvariant(phrase[0]) + phrase[1..];
}
