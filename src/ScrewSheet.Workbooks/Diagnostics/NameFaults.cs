namespace ScrewSheet.Workbooks.Diagnostics;

/// <summary>The wording of faults in names and addresses that the file format itself finds; codes 2001 to 2099.</summary>
internal static class NameFaults
{
    [FaultCode(2001, "A name is a word of the expression language or of the file format; choose another.")]
    public static Fault Reserved(Place place, string name) =>
        Of(2001, place, $"{name} is a word of the language and cannot be a name.", $"Write {name}_ or another word.");

    [FaultCode(2002, "A name is shaped like a cell address, in capitals or not; put `_` between letters and digits.")]
    public static Fault LikeAddress(Place place, string name, string instead) =>
        Of(2002, place, $"{name} is shaped like a cell address.", $"Write {instead}.");

    [FaultCode(2003, "A cell's name begins with a capital; cells begin with a small or Greek letter.")]
    public static Fault CellCapital(Place place, string name, string instead) =>
        Of(2003, place, $"The name of a cell begins with a small letter, {name} does not.", $"Write {instead}.");

    [FaultCode(2004, "The name of a sheet, function or type begins with a small letter; they begin with a capital.")]
    public static Fault NeedsCapital(Place place, string what, string name, string instead) =>
        Of(2004, place, $"The name of a {what} begins with a capital letter, {name} does not.", $"Write {instead}.");

    [FaultCode(2005, "A name mixes Latin and Greek letters; letters that look alike would make two names look like one.")]
    public static Fault MixedScripts(Place place, string name) =>
        Of(2005, place, $"{name} mixes Latin and Greek letters.", "Use letters of one alphabet in a name.");

    [FaultCode(2006, "A name holds letters composed of several characters; write the precomposed ones (Unicode form NFC).")]
    public static Fault NotPrecomposed(Place place, string name) =>
        Of(2006, place, $"{name} is written with composed characters.", "Write each letter and its accent as one character (Unicode form NFC).");

    [FaultCode(2007, "A name holds something other than Latin or Greek letters, digits and `_`, or does not begin with a letter.")]
    public static Fault BadCharacter(Place place, string name) =>
        Of(2007, place, $"{name} is no name.", "A name begins with a letter; Latin or Greek letters, digits and _ follow.");

    [FaultCode(2008, "A name holds the micro sign, which looks like the Greek letter μ but is another character.")]
    public static Fault MicroSign(Place place, string name, string instead) =>
        Of(2008, place, $"{name} is written with the micro sign.", $"Write {instead} with the Greek letter μ.");

    [FaultCode(2009, "A name is longer than 255 characters.")]
    public static Fault TooLong(Place place, string name) =>
        Of(2009, place, $"{name} is too long for a name.", $"A name has at most {Format.FormatBudget.NameLength} characters.");

    [FaultCode(2010, "Two cells of a sheet, or a cell and a column, have the same name; both are in fault until one is renamed.")]
    public static Fault DoubledName(Place place, string name, string other, int otherLine) =>
        Of(2010, place, $"The name {name} is also given to {other} in line {otherLine}.", "Rename one of the two.");

    [FaultCode(2011, "Two lines of a sheet have the same address; both are in fault until one is moved or removed.")]
    public static Fault DoubledAddress(Place place, string address, int otherLine) =>
        Of(2011, place, $"The address {address} is also used in line {otherLine}.", "Give one of the two another address.");

    [FaultCode(2012, "Two sheets have the same name; the second and its cells are not read until it is renamed.")]
    public static Fault DoubledSheet(Place place, string name, int otherLine) =>
        Of(2012, place, $"There is a sheet {name} in line {otherLine} already; the cells of this one are not read.", "Rename one of the two.");

    [FaultCode(2013, "Two functions have the same name; the second is not read until it is renamed.")]
    public static Fault DoubledFunction(Place place, string name, int otherLine) =>
        Of(2013, place, $"There is a function {name} in line {otherLine} already.", "Rename one of the two.");

    private static Fault Of(int code, Place place, string message, string remedy) => new(code, FaultKind.Name, message, remedy, place);
}
