namespace ScrewSheet.Quantities.Declarations;

/// <summary>Words for how well a source is known.</summary>
public static class StandingText
{
    /// <summary>In brackets after a source.</summary>
    public static string Of(Standing standing) => standing switch
    {
        Standing.Read => "read in the source",
        Standing.SecondHand => "read in a text that quotes it",
        Standing.FromMemory => "from memory; check it before use",
        Standing.CommonPractice => "common practice",
        Standing.Derived => "derived from first principles",
        _ => throw new ArgumentOutOfRangeException(nameof(standing)),
    };
}
