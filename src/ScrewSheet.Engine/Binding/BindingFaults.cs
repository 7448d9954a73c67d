using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Binding;

/// <summary>The wording of types and units that do not go together; codes 31xx, and 63xx for what the compiler finds.</summary>
internal static class BindingFaults
{
    [FaultCode(3101, "Two values of different kinds are added, subtracted, multiplied, divided or compared.")]
    public static Fault Mixed(CellType left, CellType right, string verb, Place place) => left == right
        ? Unit(3101, $"{Plural(left)} cannot be {verb}.", null, place)
        : Unit(3101, $"{Capital(left.Phrase)} and {right.Phrase} cannot be {verb}.", Hint(left, right), place);

    [FaultCode(3102, "Temperatures on a scale with a zero are added, multiplied or raised; differences are in K.")]
    public static Fault Temperature(Place place) => Unit(3102, "Temperatures on a scale with a zero have no sums, products or powers.", "Write a difference in K.", place);

    [FaultCode(3103, "Two quantities are asked for exact equality; write `Near`.")]
    public static Fault QuantityEquality(Place place) => Unit(3103, "Two quantities are never exactly equal.", "Write Near(a, b, tolerance).", place);

    [FaultCode(3104, "A product has a power of a unit beyond any use.")]
    public static Fault DimensionTooHigh(Place place) => Unit(3104, "This product has a power of a unit that is beyond any use.", null, place);

    [FaultCode(3105, "A root of a quantity has no unit.")]
    public static Fault NoSuchRoot(CellType value, Place place) => Unit(3105, $"This root of {value.Phrase} has no unit.", null, place);

    [FaultCode(3106, "The exponent of a value with a unit is not written out as a number or a quotient of two.")]
    public static Fault ExponentNotFixed(Place place) => Unit(3106, "The exponent of a value with a unit is written as a number or a quotient of two.", "Write it out, such as Pow(x, 1 / 3), or divide the base by a unit first.", place);

    [FaultCode(3107, "An exponent is not a number.")]
    public static Fault ExponentUnit(CellType type, Place place) => Unit(3107, $"An exponent is a number, not {type.Phrase}.", null, place);

    [FaultCode(3108, "The branches of `?:` or `switch` give different kinds.")]
    public static Fault Branches(CellType left, CellType right, Place place) => Unit(3108, $"The branches give {left.Phrase} and {right.Phrase}.", "Let both give the same.", place);

    [FaultCode(3109, "A parameter, member or hole wants another kind of value.")]
    public static Fault Wanted(CellType wanted, CellType given, string where, Place place) => Unit(3109, $"{Capital(where)} is {wanted.Phrase}; {given.Phrase} was given.", Hint(wanted, given), place);

    [FaultCode(3110, "A function that takes values of one kind was given several.")]
    public static Fault OneKind(string function, CellType left, CellType right, Place place) =>
        Unit(3110, $"{function} takes values of one kind; {left.Phrase} and {right.Phrase} were given.", null, place);

    [FaultCode(3134, "A function that takes numbers or quantities was given something else.")]
    public static Fault NotMeasured(string function, CellType given, Place place) => Unit(3134, $"{function} takes numbers or quantities; {given.Phrase} was given.", null, place);

    [FaultCode(3112, "A number is wanted and a quantity or another value was given.")]
    public static Fault NotANumber(CellType type, Place place) => Unit(3112, $"A number is wanted here; {type.Phrase} was given.",
        type is QuantityType { Dimension.IsNone: true } ? "Divide the angle by 1 rad, or use Sin, Cos or Tan." : "Divide by a unit to get a number.", place);

    [FaultCode(3113, "A `switch` looks at a quantity; divide it by a unit first.")]
    public static Fault SwitchSubject(CellType type, Place place) => Unit(3113, $"A switch looks at a number, a text, a bool or an option, not at {type.Phrase}.", "Divide a quantity by a unit first: (exposed / 1 mm) switch { … }.", place);

    [FaultCode(3114, "A value has no minus or not.")]
    public static Fault NotNegated(CellType type, Place place) => Unit(3114, $"{Capital(type.Phrase)} has no minus or not.", null, place);

    [FaultCode(3115, "A value is joined to a text; write a composed text.")]
    public static Fault ValueInText(CellType type, Place place) => Unit(3115, $"{Capital(type.Phrase)} cannot be joined to a text.", "Write $\"… {value} …\".", place);

    [FaultCode(6301, "An expression gives no value.")]
    public static Fault NoValue(Place place) => new(6301, FaultKind.Language, "This is no value.", "Write an expression that gives a number, a quantity, a bool, a text or a library value.", place);

    [FaultCode(6302, "An expression is not complete or has something too much.")]
    public static Fault Incomplete(string? id, Place place) => new(6302, FaultKind.Language, "The expression is not complete or has something too much here.", null, place, id);

    [FaultCode(6303, "A form of C# is not part of the language of cells.")]
    public static Fault NotInLanguage(string? id, Place place) => new(6303, FaultKind.Language, "This form of C# is not part of the language of cells.", "Use literals, arithmetic, comparisons, ?:, switch, calls and members.", place, id);

    [FaultCode(6306, "A type in brackets stands before a value, which would convert it.")]
    public static Fault Cast(Place place) => new(6306, FaultKind.Language, "A conversion is not part of the language of cells.", "Values need no conversion; remove the brackets and the type.", place);

    [FaultCode(6106, "A `switch` has more than 32 arms.")]
    public static Fault TooManyArms(int most, Place place) => new(6106, FaultKind.Budget, $"A switch has more than {most} arms.", "Split it over several cells.", place);

    [FaultCode(6113, "A workbook has more different expressions, or longer ones, than are bound in one calculation.")]
    public static Fault TooManyShapes() => new(6113, FaultKind.Budget, "The workbook has too many different expressions.", "Use the same expression in more rows, or split the workbook.");

    [FaultCode(2117, "A record, text or series has no such member.")]
    public static Fault UnknownMember(string member, string owner, string? near, string known, string? id, Place place) =>
        new(2117, FaultKind.Name, $"{owner} has no member {member}.", near is null ? known : $"Did you mean {near}?", place, id);

    [FaultCode(6304, "A function is called with too few or too many arguments; the sentence lists them.")]
    public static Fault Arguments(string function, string parameters, string? id, Place place) => new(6304, FaultKind.Language, $"{function} takes {parameters}.", null, place, id);

    [FaultCode(2118, "A named argument does not exist; the sentence lists those that do.")]
    public static Fault NoSuchArgument(string function, string parameters, string? id, Place place) => new(2118, FaultKind.Name, $"{function} has no such parameter; it takes {parameters}.", null, place, id);

    [FaultCode(3116, "Values do not go together where they stand: a condition, a text and a number.")]
    public static Fault Kinds(string? id, Place place) => new(3116, FaultKind.Unit, "These values do not go together here.", "Compare numbers with numbers, give conditions where conditions are wanted, and keep texts apart.", place, id);

    [FaultCode(6305, "A lambda stands where none is taken.")]
    public static Fault LambdaDepth(Place place) => new(6305, FaultKind.Language, "A lambda stands only as an argument of Map, Where, All or Any.", null, place);

    [FaultCode(3131, "Rows are picked by a column without a value to compare it with.")]
    public static Fault SelectionValues(string member, Place place) => Unit(3131, $"{member} needs a value that rows are picked by.", $"Write it like force.{member}(mode, \"pull-out\").", place);

    [FaultCode(3132, "Rows are picked by an exact quantity; write a lambda.")]
    public static Fault SelectionByQuantity(string member, Place place) =>
        Unit(3132, $"{member} picks rows by texts or pure numbers; two quantities are never exactly equal.", "Write a lambda: force.Where(depth, d => d > 100 mm).", place);

    /// <summary>With a capital first.</summary>
    public static string Capital(string sentence) => sentence.Length == 0 ? sentence : char.ToUpperInvariant(sentence[0]) + sentence[1..];

    private static string Plural(CellType type) => $"Two values that are each {type.Phrase}";

    private static string? Hint(CellType left, CellType right) => (left, right) switch
    {
        (QuantityType { Kind.Name: "Torque" }, QuantityType { Kind.Name: "Energy" }) or (QuantityType { Kind.Name: "Energy" }, QuantityType { Kind.Name: "Torque" }) =>
            "Both are in N·m yet differ; Work(force, distance) makes an energy.",
        (QuantityType { Dimension.IsNone: true }, NumberType) or (NumberType, QuantityType { Dimension.IsNone: true }) => "An angle alone is no number; divide it by 1 rad.",
        (QuantityType, NumberType) or (NumberType, QuantityType) => "Give the number a unit.",
        _ => null,
    };

    private static Fault Unit(int code, string message, string? remedy, Place place) => new(code, FaultKind.Unit, message, remedy, place);
}
