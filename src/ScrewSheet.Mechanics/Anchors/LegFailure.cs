using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>How far the master point drops when a leg fails, and what the drop costs.</summary>
public static class LegFailure
{
    private const double StandardGravity = 9.80665;
    private const string Topic = "Anchors";
    private const string Geometry = "geometry of a two-leg anchor, one leg gone, derived here";

    /// <summary>Distance in m from the surviving anchor to the master point once a two-leg sliding loop has lost a leg: both leg lengths together; geometry.</summary>
    /// <exception cref="DomainException">A length is out of range.</exception>
    [Callable(Topic, "How far below the surviving anchor a sliding loop ends when the other leg fails.", Assumes = "An untied loop without limiter knots.", NotFor = "The drop itself: see SlidingDrop.")]
    [Formula("firstLeg + secondLeg", Symbol = "l")]
    [Example("LoopExtension(0.4 m, 0.4 m)", "0.800000 m")]
    [Source(Geometry, Standing.Derived)]
    public static Length LoopExtension(
        [Parameter("l_1", "m", "length of the first leg", AtLeast = 0, AtMost = Most.Metres)] Length firstLeg,
        [Parameter("l_2", "m", "length of the second leg", AtLeast = 0, AtMost = Most.Metres)] Length secondLeg) =>
        Length.FromMeters(Admit.Between(firstLeg.Meters, 0, Most.Metres, Scale.Metre, nameof(firstLeg)) + Admit.Between(secondLeg.Meters, 0, Most.Metres, Scale.Metre, nameof(secondLeg)));

    /// <summary>Drop in m of the master point when one of two equal legs of a sliding loop fails: 2 l − h, l = (w/2)/sin(θ/2), h = l cos(θ/2); geometry.</summary>
    /// <exception cref="DomainException">The spacing is negative or the angle is not between 0° and 180°.</exception>
    [Callable(Topic, "How far the load drops when one leg of a sliding two-leg rig fails.", Assumes = "An untied loop without limiter knots; anchors level.", NotFor = "Tied legs: see FixedLegDrop.")]
    [Let("l", "spacing/2/Sin(includedAngle/2)", "m")]
    [Formula("2*l - l*Cos(includedAngle/2)", Symbol = "x")]
    [CautionWhen("true", "The drop loads the surviving leg with a fall: see ShockBound.")]
    [Example("SlidingDrop(0.4 m, 60 °)", "0.4535898 m")]
    [Source(Geometry, Standing.Derived)]
    public static Length SlidingDrop(
        [Parameter("w", "m", "distance between the anchors", AtLeast = 0, AtMost = Most.Metres)] Length spacing,
        [Parameter("θ", "°", "angle between the legs at the load before the failure (included angle)", Above = 0, Below = 180)] Angle includedAngle)
    {
        (double leg, double depth) = LegAndDepth(spacing, includedAngle);
        return Length.FromMeters((2 * leg) - depth);
    }

    /// <summary>Drop in m of the master point when one of two equal tied legs fails: l − h; geometry.</summary>
    /// <exception cref="DomainException">The spacing is negative or the angle is not between 0° and 180°.</exception>
    [Callable(Topic, "How far the load drops when one of two tied legs fails.", Assumes = "Legs knotted at the master point; anchors level.", NotFor = "Sliding rigs: see SlidingDrop.")]
    [Let("l", "spacing/2/Sin(includedAngle/2)", "m")]
    [Formula("l - l*Cos(includedAngle/2)", Symbol = "x")]
    [Example("FixedLegDrop(0.4 m, 60 °)", "0.05358984 m")]
    [Source(Geometry, Standing.Derived)]
    public static Length FixedLegDrop(
        [Parameter("w", "m", "distance between the anchors", AtLeast = 0, AtMost = Most.Metres)] Length spacing,
        [Parameter("θ", "°", "angle between the legs at the load before the failure (included angle)", Above = 0, Below = 180)] Angle includedAngle)
    {
        (double leg, double depth) = LegAndDepth(spacing, includedAngle);
        return Length.FromMeters(leg - depth);
    }

    /// <summary>Drop in m of a sliding rig with limiter knots when one leg fails: l − h plus the way to the knot, never more than without knots; geometry.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(Topic, "How far the load drops when one leg of a sliding rig with limiter knots fails.", Assumes = "The knot stops the master point and holds; anchors level.", NotFor = "A knot that may roll or slip through.")]
    [Let("l", "spacing/2/Sin(includedAngle/2)", "m")]
    [Let("h", "l*Cos(includedAngle/2)", "m")]
    [Formula("Min(2*l - h, l - h + knotDistance)", Symbol = "x")]
    [CautionWhen("true", "The drop loads the surviving leg with a fall: see ShockBound.")]
    [Example("LimiterDrop(0.4 m, 60 °, 0.1 m)", "0.1535898 m")]
    [Source(Geometry, Standing.Derived)]
    public static Length LimiterDrop(
        [Parameter("w", "m", "distance between the anchors", AtLeast = 0, AtMost = Most.Metres)] Length spacing,
        [Parameter("θ", "°", "angle between the legs at the load before the failure (included angle)", Above = 0, Below = 180)] Angle includedAngle,
        [Parameter("s", "m", "how far the master point may slide before it meets the limiter knot of the failing leg", AtLeast = 0, AtMost = Most.Metres)] Length knotDistance)
    {
        (double leg, double depth) = LegAndDepth(spacing, includedAngle);
        double slide = Admit.Between(knotDistance.Meters, 0, Most.Metres, Scale.Metre, nameof(knotDistance));
        return Length.FromMeters(Math.Min((2 * leg) - depth, leg - depth + slide));
    }

    /// <summary>Upper bound in N of the force when a mass hung on a line drops by x: m g (1 + √(1 + 2 k x/(m g))); energy balance.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "An upper bound of the force on what is left when the load drops by the extension.", Assumes = "A rigid mass hung straight from the surviving leg, no loss.",
        NotFor = "A forecast: a dynamic rope in series keeps the real force near the lower end.")]
    [Formula("mass*gn*(1 + Sqrt(1 + 2*lineStiffness*drop/(mass*gn)))", Symbol = "F")]
    [Example("ShockBound(80 kg, 20 kN/m, 0.05 m)", "2262.556 N")]
    [Source("energy balance of a mass on a linear spring", Standing.Derived)]
    public static Force ShockBound(
        [Parameter("m", "kg", "mass that hangs on the master point", Above = 0, AtMost = Most.Kilograms, UsualFrom = 30, UsualTo = 300)] Mass mass,
        [Parameter("k", "kN/m", "stiffness of what is left between the surviving anchor and the mass", Above = 0, AtMost = Most.KilonewtonsPerMetre)] ForcePerLength lineStiffness,
        [Parameter("x", "m", "drop of the load before the line is taut again", AtLeast = 0, AtMost = Most.Metres)] Length drop)
    {
        double weight = Admit.Positive(mass.Kilograms, Most.Kilograms, Scale.Kilogram, nameof(mass)) * StandardGravity;
        double stiff = Admit.Positive(lineStiffness.NewtonsPerMeter, Most.KilonewtonsPerMetre, Scale.KilonewtonPerMetre, nameof(lineStiffness));
        return Force.FromNewtons(weight * (1 + Math.Sqrt(1 + (2 * stiff * Admit.Between(drop.Meters, 0, Most.Metres, Scale.Metre, nameof(drop)) / weight))));
    }

    /// <summary>Probability that all legs fail, a number: the product of the legs' own, for independent legs without a cascade.</summary>
    /// <exception cref="DomainException">A probability is not from 0 to 1 or there is no leg.</exception>
    [Callable(Topic, "The probability that all legs fail, if they fail independently.", Assumes = "Independent legs, no cascade.", NotFor = "Legs in the same sheet of ice or exposed to the same melt-out.")]
    [NoFormula("Multiplies the probabilities of the legs.")]
    [CautionWhen("true", "A common cause (the same ice sheet, melt-out) removes the benefit of independent legs.")]
    [Example("AllLegsFail(Values(0.01, 0.02))", "0.000200000")]
    [Source("probability of independent events", Standing.Derived)]
    public static double AllLegsFail([Parameter("P", "", "probability that each leg fails", AtLeast = 0, AtMost = 1)] Series<double> legProbabilities)
    {
        LegInputs.Count(legProbabilities, nameof(legProbabilities), 1);
        double product = 1;
        foreach (double probability in legProbabilities.Si) product *= Admit.Between(probability, 0, 1, Scale.None, nameof(legProbabilities));
        return product;
    }

    private static (double Leg, double Depth) LegAndDepth(Length spacing, Angle includedAngle)
    {
        double half = Admit.Inside(includedAngle.Radians, 0, 180, Scale.Degree, nameof(includedAngle)) / 2;
        double leg = Admit.Between(spacing.Meters, 0, Most.Metres, Scale.Metre, nameof(spacing)) / 2 / Math.Sin(half);
        return (leg, leg * Math.Cos(half));
    }
}
