using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Engine.Gate;

/// <summary>The wording of what the token gate refuses; codes 61xx and 62xx.</summary>
internal static class GateFaults
{
    [FaultCode(6200, "Nothing stands after the sign.")]
    public static Fault Empty() => new(6200, FaultKind.Language, "There is nothing after the sign.", "Write an expression.");

    [FaultCode(6103, "An expression is nested deeper than 64.")]
    public static Fault TooDeep(int depth, Place place) => new(6103, FaultKind.Budget, $"The expression is nested deeper than {depth}.", "Split it over several cells.", place);

    [FaultCode(6104, "Lambdas are nested deeper than two.")]
    public static Fault LambdaTooDeep(Place place) => new(6104, FaultKind.Budget, "A lambda stands in a lambda in a lambda.", "Split it over several cells or functions.", place);

    [FaultCode(6201, "A bracket is not closed.")]
    public static Fault NotClosed(string bracket, Place place) => new(6201, FaultKind.Language, $"The bracket {bracket} is not closed.", $"Add {Closing(bracket)} where it ends.", place) { IsOpen = true };

    [FaultCode(6202, "A bracket closes nothing.")]
    public static Fault NotOpened(string bracket, Place place) => new(6202, FaultKind.Language, $"The bracket {bracket} closes nothing.", "Remove it or add its opening bracket.", place);

    [FaultCode(6203, "A bracket is closed by one of another kind.")]
    public static Fault Crossed(string open, string close, Place place) => new(6203, FaultKind.Language, $"The bracket {open} is closed by {close}.", $"Close it with {Closing(open)}.", place);

    [FaultCode(6204, "A word or sign of C# is not part of the language of cells; the sentence names what to write instead.")]
    public static Fault Refused(string what, string remedy, Place place) => new(6204, FaultKind.Language, $"{what} is not part of the language of cells.", remedy, place);

    [FaultCode(6205, "More than two values are compared in one chain.")]
    public static Fault ComparisonChain(Place place) => new(6205, FaultKind.Language, "Two values are compared at a time.", "Join comparisons with &&.", place);

    [FaultCode(6206, "A quotient with a unit behind it can be read two ways, such as `1/2 in`.")]
    public static Fault HalfAndUnit(double top, double bottom, string unit, string better, Place place) =>
        new(6206, FaultKind.Unit, $"{top:R}/{bottom:R} {unit} can be read two ways.", $"Write {better} or {top:R} / ({bottom:R} {unit}).", place);

    [FaultCode(6207, "Two values stand side by side without an operator.")]
    public static Fault MissingOperator(string left, string right, Place place) => new(6207, FaultKind.Language, $"Between {left} and {right} an operator is missing.", null, place);

    [FaultCode(6208, "A unit stands after a bracket; a unit follows a number only.")]
    public static Fault UnitAfterBracket(string unit, Place place) => new(6208, FaultKind.Unit, "A unit follows a number only.", $"Write * 1 {unit} to give the bracket a unit.", place);

    [FaultCode(6209, "`%` is used as a remainder; it is the unit percent.")]
    public static Fault Remainder(Place place) => new(6209, FaultKind.Language, "% is the unit percent; as a remainder it is not part of the language of cells.", "Write Remainder(a, b).", place);

    [FaultCode(6210, "A number is written with a comma.")]
    public static Fault DecimalComma(string better, Place place) => new(6210, FaultKind.Language, "A number is written with a point.", $"Write {better}.", place);

    private static string Closing(string bracket) => bracket switch { "(" => ")", "[" => "]", _ => "}" };
}
