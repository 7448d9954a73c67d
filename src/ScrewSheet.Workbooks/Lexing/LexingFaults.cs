using System.Globalization;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Lexing;

/// <summary>The wording of what the lexer refuses; codes 60xx.</summary>
internal static class LexingFaults
{
    [FaultCode(6001, "A `#` stands in an expression; cells have no preprocessor lines.")]
    public static Fault Preprocessor(Place place) => Language(6001, "A cell has no # lines.", "Remove the #.", place);

    [FaultCode(6002, "A character has no meaning in an expression; remove it.")]
    public static Fault Character(string shown, Place place) => Language(6002, $"{shown} has no meaning in an expression.", "Remove it.", place);

    [FaultCode(6003, "A unit touches its number; put a blank between them.")]
    public static Fault UnitTouches(string number, string rest, Place place) => Language(6003, $"{number}{rest} is no number.", $"Write {number} {rest} with a blank between number and unit.", place);

    [FaultCode(6004, "A number goes on with something that is no digit, decimal or exponent.")]
    public static Fault NumberTail(string written, Place place) => Language(6004, $"{written} is no number.", "Write digits, perhaps a point and decimals, perhaps an exponent, such as 1.5e3.", place);

    [FaultCode(6005, "A number begins with a zero that says nothing.")]
    public static Fault LeadingZero(string written, string better, Place place) => Language(6005, $"{written} begins with a zero that says nothing.", $"Write {better}.", place);

    [FaultCode(6006, "A number is larger than any number here.")]
    public static Fault TooLarge(string written, Place place) => Language(6006, $"{written} is larger than any number here.", null, place);

    [FaultCode(3001, "A unit is unknown; the sentence says what was probably meant.")]
    public static Fault Unit(string problem, Place place) => new(3001, FaultKind.Unit, Results.VisibleText.Of(problem), null, place);

    [FaultCode(6007, "A text has no closing quote.")]
    public static Fault OpenText(Place place) => Language(6007, "This text has no closing quote.", "Close it with \".", place) with { IsOpen = true };

    [FaultCode(6008, "An escape in a text is unknown.")]
    public static Fault Escape(string shown, Place place) => Language(6008, $"{shown} is no escape in a text.", @"Known are \\ \"" \n \t and \u with four hexadecimal digits.", place);

    [FaultCode(6009, "A text is written in a form cells do not have.")]
    public static Fault TextForm(Place place) => Language(6009, "Texts are written \"…\" or $\"…\".", "Use one of these.", place);

    [FaultCode(6010, "A hole of a composed text holds a text of its own.")]
    public static Fault NestedText(Place place) => Language(6010, "A hole of a composed text holds no text of its own.", "Put the text into a cell and name the cell.", place);

    [FaultCode(6011, "A hole of a composed text is not closed.")]
    public static Fault OpenHole(Place place) => Language(6011, "This hole is not closed.", "Close it with }.", place) with { IsOpen = true };

    [FaultCode(6012, "A single `}` stands in a composed text.")]
    public static Fault LoneBrace(Place place) => Language(6012, "A single } stands in a composed text.", "Write }} for the character.", place);

    [FaultCode(6013, "A hole of a composed text is empty.")]
    public static Fault EmptyHole(Place place) => Language(6013, "This hole is empty.", "Write a name or an expression between { and }.", place);

    [FaultCode(6014, "The format in a hole of a composed text is neither a unit nor digits.")]
    public static Fault HoleFormat(string problem, Place place) => Language(6014, problem, "Write a unit, digits or both, such as {peak:kN, 1 decimal}.", place);

    [FaultCode(6015, "A sign of mathematics or print stands where C# has another.")]
    public static Fault TypedSign(string shown, string remedy, Place place) => Language(6015, $"{shown} is not written in an expression.", remedy, place);

    [FaultCode(6101, "An expression is longer than 8,192 bytes.")]
    public static Fault TooLong(int bytes) => new(6101, FaultKind.Budget, string.Create(CultureInfo.InvariantCulture, $"The expression is longer than {bytes:N0} bytes."), "Split it over several cells.");

    [FaultCode(6102, "An expression has more than 2,000 words and signs.")]
    public static Fault TooManyTokens(int tokens, Place place) => new(6102, FaultKind.Budget, string.Create(CultureInfo.InvariantCulture, $"The expression has more than {tokens:N0} words and signs."), "Split it over several cells.", place);

    private static Fault Language(int code, string message, string? remedy, Place place) => new(code, FaultKind.Language, message, remedy, place);
}
