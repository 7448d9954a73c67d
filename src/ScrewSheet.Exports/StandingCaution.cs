using System.Collections.Immutable;

namespace ScrewSheet.Exports;

/// <summary>The cautions that go with everything shown, printed or handed out.</summary>
public static class StandingCaution
{
    /// <summary>Stands under every output.</summary>
    public const string Sentence = "Estimates for people who test and teach. They permit nothing: what holds is shown by a test, not by a sheet.";

    /// <summary>What a reader must know before anything else.</summary>
    public static ImmutableArray<string> Usual { get; } =
    [
        "People can be hurt. Every figure here is an estimate that leaves things out: ice, rock, wear, cold, knots. None of them permits anybody to trust an anchor.",
        "The manufacturer's instructions, local codes and licensed or certified practice decide.",
        "A value marked as from memory has not been compared with its source: compare it before you use it.",
    ];
}
