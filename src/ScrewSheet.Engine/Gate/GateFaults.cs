using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Engine.Gate;

/// <summary>The wording of what the token gate refuses; codes 61xx and 62xx.</summary>
internal static class GateFaults
{
    public static Fault Empty() => new(6200, FaultKind.Language, "There is nothing after the sign.", "Write an expression.");

    public static Fault TooDeep(int depth, Place place) => new(6103, FaultKind.Budget, $"The expression is nested deeper than {depth}.", "Split it over several cells.", place);

    public static Fault LambdaTooDeep(Place place) => new(6104, FaultKind.Budget, "A lambda stands in a lambda in a lambda.", "Split it over several cells or functions.", place);

    public static Fault NotClosed(string bracket, Place place) => new(6201, FaultKind.Language, $"The bracket {bracket} is not closed.", $"Add {Closing(bracket)} where it ends.", place);

    public static Fault NotOpened(string bracket, Place place) => new(6202, FaultKind.Language, $"The bracket {bracket} closes nothing.", "Remove it or add its opening bracket.", place);

    public static Fault Crossed(string open, string close, Place place) => new(6203, FaultKind.Language, $"The bracket {open} is closed by {close}.", $"Close it with {Closing(open)}.", place);

    public static Fault Refused(string what, string remedy, Place place) => new(6204, FaultKind.Language, $"{what} is not part of the language of cells.", remedy, place);

    public static Fault ComparisonChain(Place place) => new(6205, FaultKind.Language, "Two values are compared at a time.", "Join comparisons with &&.", place);

    public static Fault HalfAndUnit(double top, double bottom, string unit, string better, Place place) =>
        new(6206, FaultKind.Unit, $"{top:R}/{bottom:R} {unit} can be read two ways.", $"Write {better} or {top:R} / ({bottom:R} {unit}).", place);

    public static Fault MissingOperator(string left, string right, Place place) => new(6207, FaultKind.Language, $"Between {left} and {right} an operator is missing.", null, place);

    public static Fault UnitAfterBracket(string unit, Place place) => new(6208, FaultKind.Unit, "A unit follows a number only.", $"Write * 1 {unit} to give the bracket a unit.", place);

    public static Fault Remainder(Place place) => new(6209, FaultKind.Language, "% is the unit percent; as a remainder it is not part of the language of cells.", "Write Remainder(a, b).", place);

    public static Fault DecimalComma(string better, Place place) => new(6210, FaultKind.Language, "A number is written with a point.", $"Write {better}.", place);

    private static string Closing(string bracket) => bracket switch { "(" => ")", "[" => "]", _ => "}" };
}
