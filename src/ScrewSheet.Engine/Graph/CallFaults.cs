using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Graph;

/// <summary>The wording of functions and givens that cannot be used; codes 32xx and 22xx.</summary>
internal static class CallFaults
{
    [FaultCode(2203, "A function called is in fault.")]
    public static Fault FunctionBroken(string name, Place? place) => new(2203, FaultKind.Name, $"The function {name} is in fault.", "Mend the function first.", place);

    [FaultCode(3201, "A function is declared to give one type and its body gives another.")]
    public static Fault FunctionGives(string name, CellType declared, CellType given, Place place) =>
        new(3201, FaultKind.Unit, $"The function {name} is declared to give {declared.Phrase}; its body gives {given.Phrase}.", "Change the type or the body.", place);

    [FaultCode(2204, "A given refers to a cell; write `=>` for a result.")]
    public static Fault GivenRefers(Place? place) => new(2204, FaultKind.Name, "A given refers to no cell.", "Write => for a result.", place);

    [FaultCode(4110, "A given is not within its limits.")]
    public static Fault OutsideLimits(string shown, string limits) => new(4110, FaultKind.Value, $"{shown} is not within {limits}.", "Change the value or its limits.");
}
