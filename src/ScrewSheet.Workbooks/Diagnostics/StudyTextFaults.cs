namespace ScrewSheet.Workbooks.Diagnostics;

/// <summary>The wording of faults in the lines of what-if tables, plots and correlated givens; codes 1040 to 1049.</summary>
internal static class StudyTextFaults
{
    [FaultCode(1040, "A `vary` line cannot be read.")]
    public static Fault VaryLine(Place place) =>
        Of(1040, place, "This vary line cannot be read.", "Write it like vary exposed: 0 mm to 60 mm step 10 mm, or vary peak: 4 kN, 6 kN.");

    [FaultCode(1041, "The range of a `vary` line cannot be read.")]
    public static Fault VaryRange(Place place) =>
        Of(1041, place, "This range cannot be read.", "Write it like 0 mm to 60 mm step 10 mm, 1 kN to 9 kN over 8 steps, or 1 kN to 100 kN log over 4 steps.");

    [FaultCode(1042, "The number of steps of a `vary` line is no whole number of at least 1.")]
    public static Fault VarySteps(Place place) =>
        Of(1042, place, "A whole number of at least 1 and the word steps follow over.", "Write it like over 12 steps, which are 13 values.");

    [FaultCode(1043, "A `show` line cannot be read.")]
    public static Fault ShowLine(Place place) =>
        Of(1043, place, "This show line cannot be read.", "Write names of results with commas between, like show moment, strong.");

    [FaultCode(1044, "A `correlate` line cannot be read.")]
    public static Fault CorrelateLine(Place place) =>
        Of(1044, place, "This correlate line cannot be read.", "Write two givens and a coefficient from -1 to 1, like correlate peak, exposed 0.86.");

    [FaultCode(1045, "A `plot` line cannot be read.")]
    public static Fault PlotLine(Place place) =>
        Of(1045, place, "This plot line cannot be read.", "Write where it stands and the what-if table it draws, like plot F2 \"Moment by length\" of D2.");

    [FaultCode(1046, "A `show` line names more than 256 results.")]
    public static Fault ShowTooMany(Place place) =>
        new(1046, FaultKind.Budget, $"A show line names at most {Format.FormatBudget.Shown} results.", "Split it over several tables.", place);

    private static Fault Of(int code, Place place, string message, string remedy) => new(code, FaultKind.Format, message, remedy, place);
}
