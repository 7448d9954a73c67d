namespace ScrewSheet.Benchmarks;

/// <summary>Prints one line for each measurement and remembers whether every target was met.</summary>
internal static class Report
{
    /// <summary>True while no target was missed.</summary>
    public static bool AllMet { get; private set; } = true;

    /// <summary>A ratio against a target.</summary>
    public static void Ratio(string name, double ratio, string ours, string theirs, double target, string? note = null) =>
        Line(name, $"ratio {ratio:G3}", ours, theirs, $"<= {target:G4}", ratio <= target, note);

    /// <summary>How many times faster, against the least that is asked; where <paramref name="counts"/> is false the machine decides too much to hold it against the program.</summary>
    public static void Times(string name, double times, string ours, string theirs, double target, string? note = null, bool counts = true) =>
        Line(name, $"times {times:G3}", ours, theirs, $">= {target:G4}", times >= target || !counts, counts ? note : $"{(times >= target ? "" : "below target, ")}reported only{(note is null ? "" : "; " + note)}");

    /// <summary>A size or time against a target in the same unit.</summary>
    public static void Amount(string name, double amount, string unit, string ours, string theirs, double target, string? note = null) =>
        Line(name, $"{amount:F1} {unit}", ours, theirs, $"<= {target:G4} {unit}", amount <= target, note);

    /// <summary>Something worth knowing that has no target.</summary>
    public static void Note(string text) => Console.WriteLine($"#   {text}");

    private static void Line(string name, string figure, string ours, string theirs, string target, bool met, string? note)
    {
        AllMet &= met;
        Console.WriteLine($"{name} {figure} | ours {ours} | theirs {theirs} | target {target} {(met ? "met" : "MISSED")}{(note is null ? "" : " | " + note)}");
    }
}
