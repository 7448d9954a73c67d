using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Falls;

/// <summary>Fall height and fall factor.</summary>
public static class FallFactors
{
    private const string AboveTwo = "A fall factor above 2 cannot happen when leading on a belay; it does on a fixed cable or a short lanyard, and forces are then very high.";

    /// <summary>Free-fall height over the rope that takes the load; a pure number. Lengths in any unit; <paramref name="ropeOut"/> above 0.</summary>
    /// <exception cref="DomainException">A length is negative, zero where it may not be, or beyond 10 km.</exception>
    [Callable(Topics.Falls, "How severe is a fall of this height on this length of rope?",
        Assumes = "All of the rope out takes the load; friction at pieces makes the effective fall factor higher (EffectiveFallFactor).",
        NotFor = "Comparing forces in proportion: factor 2 is not twice as hard as factor 1.")]
    [Formula("fall / ropeOut", Symbol = "f")]
    [Example("FallFactor(4.6 m, 2.6 m)", "1.76923077")]
    [CautionWhen("fall > 2 * ropeOut", AboveTwo)]
    [Source("f = h / L; " + Works.FallFactor, Standing.SecondHand)]
    public static double FallFactor(
        [Parameter("h", "m", "free-fall height before the rope begins to stretch, slack included", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L", "m", "unstretched length of the rope that takes the load", Above = 0, AtMost = Limits.LengthMetres)] Length ropeOut) =>
        Inputs.Distance(fall) / Inputs.RopeLength(ropeOut);

    /// <summary>How far a leader falls before the rope begins to stretch: twice the distance above the last piece, and the slack.</summary>
    /// <exception cref="DomainException">A length is negative or beyond 10 km.</exception>
    [Callable(Topics.Falls, "How far does a leader fall before the rope begins to stretch?",
        Assumes = "The last piece holds and the leader falls past it.",
        NotFor = "The whole drop: stretch and belay slip come on top (FallClearance).")]
    [Formula("2 * abovePiece + slack", Symbol = "h")]
    [Example("LeadFallHeight(2 m, 0.5 m)", "4.50000000 m")]
    [Source("h = 2 d + s; " + Works.FallFactor, Standing.SecondHand)]
    public static Length LeadFallHeight(
        [Parameter("d", "m", "height of the tie-in above the last piece", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 30)] Length abovePiece,
        [Parameter("s", "m", "slack in the rope", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 5)] Length slack) =>
        Length.FromMeters((2 * Inputs.Distance(abovePiece)) + Inputs.Distance(slack));

    /// <summary>The fall factor of a lead fall from the distance above the last piece, the rope out and the slack; a pure number.</summary>
    /// <exception cref="DomainException">A length is negative, zero where it may not be, or beyond 10 km.</exception>
    [Callable(Topics.Falls, "What is the fall factor of a leader so far above the last piece?",
        Assumes = "The rope out includes the slack.",
        NotFor = "Comparing forces in proportion: factor 2 is not twice as hard as factor 1.")]
    [Formula("(2 * abovePiece + slack) / ropeOut", Symbol = "f")]
    [Example("LeadFallFactor(2 m, 10 m, 0.5 m)", "0.450000000")]
    [CautionWhen("2 * abovePiece + slack > 2 * ropeOut", AboveTwo)]
    [CautionWhen("abovePiece + slack > ropeOut", "The rope out is shorter than the distance above the last piece with the slack: one of the lengths is wrong.")]
    [Source("h = 2 d + s, f = h / L; " + Works.FallFactor, Standing.SecondHand)]
    public static double LeadFallFactor(
        [Parameter("d", "m", "height of the tie-in above the last piece (not the fall height)", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 30)] Length abovePiece,
        [Parameter("L", "m", "unstretched length of the rope that takes the load", Above = 0, AtMost = Limits.LengthMetres)] Length ropeOut,
        [Parameter("s", "m", "slack in the rope", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 5)] Length slack) =>
        ((2 * Inputs.Distance(abovePiece)) + Inputs.Distance(slack)) / Inputs.RopeLength(ropeOut);
}
