namespace ScrewSheet.Exports;

/// <summary>The caution that stands under everything printed or handed out.</summary>
public static class StandingCaution
{
    /// <summary>The sentence.</summary>
    public const string Sentence = "Estimates for people who test and teach. They permit nothing: what holds is shown by a test, not by a sheet.";
}
