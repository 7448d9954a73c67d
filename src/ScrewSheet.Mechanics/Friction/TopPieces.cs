using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Friction;

/// <summary>The three loads of a held fall: climber, top piece, belayer.</summary>
public static class TopPieces
{
    private const string Helps = "friction helps here; set 0 for design";

    /// <summary>Load on the piece that holds the fall, strands parallel, from the climber-side tension and the ratio of tensions (1 for no friction).</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Friction, "How hard is the top piece loaded when both strands run parallel?", Assumes = "Parallel strands; the rope slides toward the climber.",
        NotFor = "An open angle between the strands, which loads the piece less (TopPieceLoadOpen).")]
    [Formula("climberTension * (1 + 1 / frictionRatio)", Symbol = "R")]
    [Example("TopPieceLoad(6 kN, 1.5)", "10000.0000 N")]
    [CautionWhen("frictionRatio > 1", "friction helps here; set the ratio to 1 for design")]
    [Source("R = T0 + T1; R. Goldstone's 5/3 as cited in a 2009 revision of the " + Works.FallFactor, Standing.SecondHand)]
    public static Force TopPieceLoad(
        [Parameter("T0", "kN", "tension on the climber's side", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force climberTension,
        [Parameter("ρ", "", "climber-side over belay-side tension; 1.5 is the trade's usual value, 1 is no friction", AtLeast = 1, AtMost = Limits.FrictionRatio, UsualTo = 3)] double frictionRatio) =>
        Force.FromNewtons(Inputs.Tension(climberTension) * (1 + (1 / Inputs.Number(frictionRatio, 1, Limits.FrictionRatio))));

    /// <summary>Tension on the belayer's side of the pieces.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Friction, "How hard does the rope pull on the belayer?", Assumes = "The rope slides toward the climber at every piece.", NotFor = "The climber's or the top piece's load.")]
    [Formula("climberTension / frictionRatio", Symbol = "T1")]
    [Example("BelayerTension(6 kN, 1.5)", "4000.00000 N")]
    [CautionWhen("frictionRatio > 1", "friction helps here; set the ratio to 1 for design")]
    [Source("2/3 of the climber's force on the belayer; R. Goldstone as cited in a 2009 revision of the " + Works.FallFactor, Standing.SecondHand)]
    public static Force BelayerTension(
        [Parameter("T0", "kN", "tension on the climber's side", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force climberTension,
        [Parameter("ρ", "", "climber-side over belay-side tension of all pieces together", AtLeast = 1, AtMost = Limits.FrictionRatio)] double frictionRatio) =>
        Force.FromNewtons(Inputs.Tension(climberTension) / Inputs.Number(frictionRatio, 1, Limits.FrictionRatio));

    /// <summary>Resultant of two strands with an angle between them (0 for parallel strands, 180° for a straight rope).</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Friction, "What do two strands at an angle pull on the piece between them?", Assumes = "Both tensions are known; they add as vectors.", NotFor = "Strands whose tensions are to be found from friction (TopPieceLoadOpen).")]
    [Formula("Sqrt(climberTension * climberTension + belayerTension * belayerTension + 2 * climberTension * belayerTension * Cos(openAngle))", Symbol = "R")]
    [Example("TopPieceResultant(6 kN, 4 kN, 60 deg)", "8717.79789 N")]
    [Source("vector sum of two tensions", Standing.Derived)]
    public static Force TopPieceResultant(
        [Parameter("T0", "kN", "tension on the climber's side", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force climberTension,
        [Parameter("T1", "kN", "tension on the belayer's side", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force belayerTension,
        [Parameter("φ", "deg", "angle between the strands: 0 parallel, 180 a straight rope", AtLeast = 0, AtMost = 180)] Angle openAngle) =>
        Force.FromNewtons(Resultant(Inputs.Tension(climberTension), Inputs.Tension(belayerTension), Inputs.Angle(openAngle, 180)));

    /// <summary>Load on the top piece when the strands open: the wrap shrinks to 180° less the open angle, so friction does too.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Friction, "How hard is the top piece loaded when the strands open at an angle?", Assumes = "One bend with the wrap 180° less the open angle; the rope slides toward the climber.",
        NotFor = "A rope pinched or crossed in the carabiner.")]
    [Let("belayerTension", "climberTension * Exp(-friction * (pi - openAngle))", "N")]
    [Formula("Sqrt(climberTension * climberTension + belayerTension * belayerTension + 2 * climberTension * belayerTension * Cos(openAngle))", Symbol = "R")]
    [Example("TopPieceLoadOpen(6 kN, 0.129063552, 60 deg)", "9189.07357 N")]
    [CautionWhen("friction > 0 && R < 2 * climberTension * Cos(openAngle / 2)", Helps)]
    [Source("vector sum with " + Works.Capstan, Standing.Derived)]
    public static Force TopPieceLoadOpen(
        [Parameter("T0", "kN", "tension on the climber's side", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force climberTension,
        [Parameter("μ", "", "friction coefficient between rope and carabiner", AtLeast = 0, AtMost = Limits.Friction, UsualTo = 0.3)] double friction,
        [Parameter("φ", "deg", "angle between the strands: 0 parallel, 180 a straight rope", AtLeast = 0, AtMost = 180)] Angle openAngle)
    {
        double t0 = Inputs.Tension(climberTension);
        double phi = Inputs.Angle(openAngle, 180);
        return Force.FromNewtons(Resultant(t0, t0 * Math.Exp(-Inputs.Number(friction, 0, Limits.Friction) * (Math.PI - phi)), phi));
    }

    /// <summary>The wrap that is left when the strands open.</summary>
    /// <exception cref="DomainException">An angle outside 0 to 180°.</exception>
    [Callable(Topics.Friction, "How far does the rope wrap round the carabiner when its strands open at this angle?", Assumes = "A single bend.", NotFor = "A rope wound round more than once.")]
    [Formula("pi - openAngle", Symbol = "θ")]
    [Example("WrapOfOpenAngle(60 deg)", "120.000000 deg")]
    [Source("theta = pi - phi; geometry of one bend", Standing.Derived)]
    public static Angle WrapOfOpenAngle(
        [Parameter("φ", "deg", "angle between the strands: 0 parallel, 180 a straight rope", AtLeast = 0, AtMost = 180)] Angle openAngle) =>
        Angle.FromRadians(Math.PI - Inputs.Angle(openAngle, 180));

    /// <summary>Resultant of two tensions in N with an angle in rad between them.</summary>
    internal static double Resultant(double t0, double t1, double phi) => Math.Sqrt(Math.Max(0, (t0 * t0) + (t1 * t1) + (2 * t0 * t1 * Math.Cos(phi))));
}
