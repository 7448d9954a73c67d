using System.Globalization;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>What must be said about a study of uncertainty that was done; codes 433x and 434x.</summary>
internal static class UncertaintyNotes
{
    [FaultCode(4330, "First order and Monte Carlo disagree by more than JCGM 101 allows; use Monte Carlo.")]
    public static Fault Disagree(string low, string high, string allowed, int digits) => new(4330, FaultKind.Value,
        $"First order and Monte Carlo disagree: the ends of their intervals differ by {low} and {high}, {allowed} is allowed (JCGM 101, section 8, u to {(digits == 1 ? "1 digit" : "2 digits")}).",
        "Use the interval of Monte Carlo.");

    [FaultCode(4331, "The first-order result is zero or missing though the draws vary.")]
    public static Fault NoSlope() =>
        new(4331, FaultKind.Value, "The result has no slope at the file's own givens, so first order says nothing about its spread.", "Use the interval of Monte Carlo.");

    [FaultCode(4332, "Limits cut off part of a given's distribution; draws stay inside, first order does not know it.")]
    public static Fault Cut(string given, double share) =>
        new(4332, FaultKind.Value, string.Create(CultureInfo.InvariantCulture, $"The limits of {given} cut off {100 * share:G2} % of its distribution; draws stay inside, first order does not know of them."), null);

    [FaultCode(4333, "Draws ended in a fault; they are in no mean and no interval.")]
    public static Fault Faulted(long count, long of) => new(4333, FaultKind.Value,
        string.Create(CultureInfo.InvariantCulture, $"{count:#,0} of {of:#,0} draws ended in a fault and are in no mean and no interval: what is shown is the spread of the others."), null);

    [FaultCode(4334, "A given has so few degrees of freedom that its draws have no standard deviation.")]
    public static Fault NoDeviation(string given) =>
        new(4334, FaultKind.Value, $"{given} has 2 degrees of freedom or fewer: draws of it have no standard deviation, whatever the figure says.", "Use the interval.");

    [FaultCode(4335, "Givens are correlated: shares by Sobol' are not defined and effective degrees of freedom are not worked out.")]
    public static Fault Correlated() =>
        new(4335, FaultKind.Value, "Givens are correlated: shares of a single given in the variance are those of first order, and degrees of freedom are not worked out.", null);

    [FaultCode(4336, "The tails rest on fewer than ten failing draws.")]
    public static Fault FewFailures(string check, long failed) => new(4336, FaultKind.Value,
        string.Create(CultureInfo.InvariantCulture, $"{check} failed in {failed:#,0} draws only: mind the interval of its probability, and that tails are where distributions are least known."), null);
}
