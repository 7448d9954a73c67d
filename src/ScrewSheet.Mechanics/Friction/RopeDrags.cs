using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Friction;

/// <summary>Rope drag: friction at the pieces keeps rope on the belay side from stretching, so less rope catches the fall.</summary>
public static class RopeDrags
{
    private const string Quasistatic = "First loading; the rope slides toward the climber at every piece (upper bound of drag); linear rope.";
    private const string Source = "derived from the capstan law on a linear rope; effective length and actual fall factor are standard trade language";

    /// <summary>Length of frictionless rope as stiff, for the climber, as this rope over its pieces.</summary>
    /// <exception cref="DomainException">A strand or bend is outside its limits, or there is not one bend between each pair of strands.</exception>
    [Callable(Topics.Friction, "How much of the rope catches the fall when it drags over pieces?", Assumes = Quasistatic, NotFor = "Rebound and second loading, where the rope slides the other way.")]
    [NoFormula("Sums each strand over the product of the friction ratios between it and the climber: L1 + L2/R1 + L3/R2 + ...")]
    [Example("EffectiveLength(Values(5 m, 15 m), Values(180 deg), 0.129063552)", "15.0000000 m")]
    [Source("(7.1), " + Source, Standing.Derived)]
    public static Length EffectiveLength(
        [Parameter("L", "m", "strands in order from the climber: to the first piece, between pieces, to the belayer", Above = 0, AtMost = Limits.LengthMetres)] Series<Length> strands,
        [Parameter("θ", "deg", "wrap at each piece in order from the climber, one fewer than strands", AtLeast = 0, AtMost = Limits.WrapDegrees)] Series<Angle> bends,
        [Parameter("μ", "", "friction coefficient between rope and carabiners", AtLeast = 0, AtMost = Limits.Friction, UsualTo = 0.3)] double friction) =>
        Length.FromMeters(RopeCourse.Over(strands, bends, friction).EffectiveLength);

    /// <summary>Effective length with a single piece.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Friction, "How much of the rope catches the fall when one piece is clipped?", Assumes = Quasistatic, NotFor = "More than one piece (EffectiveLength).")]
    [Formula("beforePiece + afterPiece * Exp(-friction * wrap)", Symbol = "L_eff")]
    [Example("EffectiveLengthOnePiece(5 m, 15 m, 0.129063552, 180 deg)", "15.0000000 m")]
    [Source("(7.1) with two strands, " + Source, Standing.Derived)]
    public static Length EffectiveLengthOnePiece(
        [Parameter("L1", "m", "rope from the climber to the piece", Above = 0, AtMost = Limits.LengthMetres)] Length beforePiece,
        [Parameter("L2", "m", "rope from the piece to the belayer", AtLeast = 0, AtMost = Limits.LengthMetres)] Length afterPiece,
        [Parameter("μ", "", "friction coefficient between rope and carabiner", AtLeast = 0, AtMost = Limits.Friction, UsualTo = 0.3)] double friction,
        [Parameter("θ", "deg", "wrap at the piece: change of the rope's direction", AtLeast = 0, AtMost = Limits.WrapDegrees)] Angle wrap) =>
        Length.FromMeters(Inputs.RopeLength(beforePiece) + (Inputs.Distance(afterPiece) / CarabinerFriction.Ratio(friction, wrap)));

    /// <summary>Fall height over effective length; a pure number, never less than the plain fall factor.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Friction, "What fall factor does the climber really get when the rope drags?", Assumes = Quasistatic, NotFor = "The belayer's side: the tension there is the climber's over the friction ratio.")]
    [Formula("fall / effectiveLength", Symbol = "f_eff")]
    [Example("EffectiveFallFactor(10 m, 15 m)", "0.666666667")]
    [CautionWhen("fall > 2 * effectiveLength", "An effective fall factor above 2: the rope hardly runs through the pieces, the linear rope is only a formal bound.")]
    [Source("f_eff = h / L_eff, " + Source, Standing.Derived)]
    public static double EffectiveFallFactor(
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L_eff", "m", "effective length (EffectiveLength)", Above = 0, AtMost = Limits.LengthMetres)] Length effectiveLength) =>
        Inputs.Distance(fall) / Inputs.RopeLength(effectiveLength);

    /// <summary>Ratio of climber-side to belayer-side tension over all bends; a pure number of 1 or more.</summary>
    /// <exception cref="DomainException">A bend or the friction is outside its limits.</exception>
    [Callable(Topics.Friction, "By what ratio do all pieces together divide the tension?", Assumes = "The rope slides toward the climber at every piece.", NotFor = "Taking in rope, where friction works against the belayer.")]
    [NoFormula("Exponential of friction times the sum of the wraps.")]
    [Example("TotalFrictionRatio(Values(180 deg, 30 deg, 45 deg), 0.13)", "1.78349808")]
    [Source(Works.Capstan, Standing.Read)]
    public static double TotalFrictionRatio(
        [Parameter("θ", "deg", "wrap at each piece", AtLeast = 0, AtMost = Limits.WrapDegrees)] Series<Angle> bends,
        [Parameter("μ", "", "friction coefficient between rope and carabiners", AtLeast = 0, AtMost = Limits.Friction, UsualTo = 0.3)] double friction)
    {
        ArgumentNullException.ThrowIfNull(bends);
        double total = 0;
        foreach (double wrap in bends.Si) total += Inputs.Angle(Angle.FromRadians(wrap), Limits.WrapDegrees, nameof(bends));
        Require.AtMost(total * 180 / Math.PI, Limits.WrapDegrees, "deg", nameof(bends));
        return Math.Exp(Inputs.Number(friction, 0, Limits.Friction) * total);
    }

    /// <summary>Forces and energies of a fall held over any number of pieces with friction, fixed belay.</summary>
    /// <exception cref="DomainException">A value is outside its limits, or there is not one bend between each pair of strands.</exception>
    [Callable(Topics.Friction, "What do climber, top piece and belayer get when the rope drags over the pieces?", Assumes = Quasistatic + " Fixed belay.", NotFor = "A belay that slips (DynamicBelay with the effective length).")]
    [NoFormula("EffectiveLength, then ImpactForce at the effective fall factor, then each strand's tension and energy.")]
    [Example("FallWithRopeDrag(80 kg, 20 kN, 10 m, Values(5 m, 15 m), Values(180 deg), 0.129063552).ClimberForce", "5425.25864 N")]
    [CautionWhen("friction > 0", "Friction raises the climber's force and lowers the belayer's and often the top piece's: friction helps here; set 0 for design of those two.")]
    [Source("(7.1) and (3.1), " + Source, Standing.Derived)]
    public static DraggedFall FallWithRopeDrag(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K", "kN", "rope modulus, all strands together", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 5, UsualTo = 200)] Force modulus,
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L", "m", "strands in order from the climber", Above = 0, AtMost = Limits.LengthMetres)] Series<Length> strands,
        [Parameter("θ", "deg", "wrap at each piece in order from the climber, one fewer than strands", AtLeast = 0, AtMost = Limits.WrapDegrees)] Series<Angle> bends,
        [Parameter("μ", "", "friction coefficient between rope and carabiners", AtLeast = 0, AtMost = Limits.Friction, UsualTo = 0.3)] double friction)
    {
        double w = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        double k = Inputs.PositiveForce(modulus);
        double h = Inputs.Distance(fall);
        var course = RopeCourse.Over(strands, bends, friction);
        double peak = ImpactForces.Elastic(w, k * h / course.EffectiveLength);
        double stretch = peak * course.EffectiveLength / k;
        double stored = peak * peak * course.EnergyLength / (2 * k);
        return new DraggedFall
        {
            EffectiveLength = Length.FromMeters(course.EffectiveLength),
            FallFactor = h / course.Length,
            EffectiveFallFactor = h / course.EffectiveLength,
            ClimberForce = Force.FromNewtons(peak),
            BelayerForce = Force.FromNewtons(peak / course.TotalRatio),
            TopPieceForce = Force.FromNewtons(course.TopPieceFactor * peak),
            Stretch = Length.FromMeters(stretch),
            FallEnergy = Energy.FromJoules(w * (h + stretch)),
            RopeEnergy = Energy.FromJoules(stored),
            FrictionEnergy = Energy.FromJoules((w * (h + stretch)) - stored),
        };
    }
}
