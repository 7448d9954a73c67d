using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>Two legs of one line that slides with friction.</summary>
[SheetRecord("the tensions in two legs of a line that slides with friction")]
public readonly record struct FrictionLegs
{
    private readonly double lighter, ratio;

    internal FrictionLegs(double lighter, double ratio)
    {
        this.lighter = lighter;
        this.ratio = ratio;
    }

    /// <summary>Tension in the leg that friction loads more.</summary>
    [Member("T_1", "kN", "tension in the heavier leg")]
    public Force Heavier => Force.FromNewtons(lighter * ratio);

    /// <summary>Tension in the leg that friction spares.</summary>
    [Member("T_2", "kN", "tension in the lighter leg")]
    public Force Lighter => Force.FromNewtons(lighter);

    /// <summary>Heavier over lighter.</summary>
    [Member("", "", "heavier over lighter tension, e^(μ w)")]
    public double Ratio => ratio;

    /// <summary>Lighter over the sum of both.</summary>
    [Member("", "", "part of the sum of both tensions in the lighter leg")]
    public double LighterShare => 1 / (1 + ratio);
}

/// <summary>Rigs in which one line slides through the master point.</summary>
public static class SlidingRigs
{
    private const string Topic = "Anchors";
    private const string Equal = "statics of one line with the same tension throughout";
    private const string Extends = "A sliding rig extends when a leg fails: see LoopExtension and ShockBound.";
    private const string Article = "Climbing-physics article, load on each anchor of a three-leg equal-tension belay";

    /// <summary>Tension in N of a frictionless two-leg sliding rig, at any direction of pull in its range: F/(2 cos(θ/2)); statics.</summary>
    /// <exception cref="DomainException">The load is negative or absurd, or the angle is negative or 180° or more.</exception>
    [Callable(Topic, "The tension in each leg of an ideal two-leg sliding rig, whichever way it is pulled.", Assumes = "No friction: both legs pull alike and the pull bisects them.",
        NotFor = "A real sliding rig, which has friction: see SlidingLegsWithFriction.")]
    [Formula("load/(2*Cos(includedAngle/2))", Symbol = "T")]
    [CautionWhen("true", Extends)]
    [Example("SlidingLegs(10 kN, 60 °)", "5.773503 kN")]
    [Source(Equal, Standing.Derived)]
    public static Force SlidingLegs(
        [Parameter("F", "kN", "load at the master point", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("θ", "°", "angle between the two legs at the load (included angle)", AtLeast = 0, Below = 180)] Angle includedAngle) => EqualLegs.LegTension(load, includedAngle);

    /// <summary>Tension in N of three legs of one sliding line: F/(1 + 2 cos θ), θ from the middle to each side leg; statics.</summary>
    /// <exception cref="DomainException">The load is negative or absurd, or the angle is not from 0° to less than 120°.</exception>
    [Callable(Topic, "The tension in each of three legs of one sliding line.", Assumes = "No friction; the middle leg lies on the line of the pull.",
        NotFor = "Three tied legs: short stiff ones take most, see ShareParallel and SharePlane.")]
    [Formula("load/(1 + 2*Cos(sideAngle))", Symbol = "T")]
    [CautionWhen("true", Extends)]
    [CautionWhen("sideAngle > pi/2 + 1e-9", "Beyond 90° the side legs pull with the load and each leg carries more than all of it.")]
    [Example("SlidingThreeLegs(8 kN, 45 °)", "3.313708 kN")]
    [Source(Article, Standing.Read)]
    public static Force SlidingThreeLegs(
        [Parameter("F", "kN", "load at the master point", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("θ", "°", "angle from the middle leg to each side leg", AtLeast = 0, Below = 120)] Angle sideAngle) =>
        Force.FromNewtons(EqualLegs.Load(load) / (1 + (2 * Math.Cos(Admit.Under(sideAngle.Radians, 0, 120, Scale.Degree, nameof(sideAngle))))));

    /// <summary>Tension in N of any number of legs of one sliding line in a plane: F over the length of the sum of the legs' unit vectors; statics.</summary>
    /// <exception cref="DomainException">There is no leg or more than 100, or the legs pull against each other.</exception>
    [Callable(Topic, "The tension in every leg of one sliding line with any number of legs in a plane.", Assumes = "No friction; the rig has slid to where it balances.", NotFor = "Tied legs: see SharePlane.")]
    [NoFormula("Sums the unit vectors of the legs.")]
    [CautionWhen("true", Extends)]
    [Example("SlidingLine(8 kN, Values(-45 °, 0 °, 45 °))", "3.313708 kN")]
    [Source(Equal, Standing.Derived)]
    public static Force SlidingLine(
        [Parameter("F", "kN", "load at the master point", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "°", "direction of each leg, all from one line and turning the same way", AtLeast = -360, AtMost = 360)] Series<Angle> legs)
    {
        LegInputs.Count(legs, nameof(legs), 1);
        double x = 0, y = 0;
        foreach (double angle in legs.Si)
        {
            double leg = Admit.Signed(angle, 360, Scale.Degree, nameof(legs));
            x += Math.Sin(leg);
            y += Math.Cos(leg);
        }
        double sum = Math.Sqrt((x * x) + (y * y));
        if (sum < 1e-9) throw new DomainException("legs must not cancel each other out; they pull in opposite directions and no tension holds the load.", nameof(legs));
        return Force.FromNewtons(EqualLegs.Load(load) / sum);
    }

    /// <summary>Tensions in N of a two-leg sliding rig at the edge of slipping: ratio e^(μ w), their resultant the load.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "How unequal friction at the master point may leave the two legs of a sliding rig.", Assumes = "The line is about to slip at the master point; in use the ratio is anything up to this.",
        NotFor = "Knotted legs.")]
    [Let("r", "Exp(friction*wrapAngle)", "")]
    [Let("light", "load/Sqrt(1 + r*r + 2*r*Cos(includedAngle))", "N")]
    [Formula("light*r", Symbol = "T_1", Member = "Heavier")]
    [Formula("light", Symbol = "T_2", Member = "Lighter")]
    [Formula("r", Member = "Ratio")]
    [Formula("1/(1 + r)", Member = "LighterShare")]
    [CautionWhen("true", Extends)]
    [Example("SlidingLegsWithFriction(10 kN, 60 °, 0.25, 120 °).LighterShare", "0.3720111")]
    [Source("capstan equation at the master point, with the balance of three forces", Standing.Derived)]
    public static FrictionLegs SlidingLegsWithFriction(
        [Parameter("F", "kN", "load at the master point", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("θ", "°", "angle between the two legs at the load (included angle)", AtLeast = 0, Below = 180)] Angle includedAngle,
        [Parameter("μ", "", "coefficient of friction of the line on the carabiner", AtLeast = 0, AtMost = 2, UsualTo = 0.6)] double friction,
        [Parameter("w", "°", "angle by which the line wraps the carabiner", AtLeast = 0, AtMost = 1080)] Angle wrapAngle)
    {
        double ratio = Math.Exp(Admit.Between(friction, 0, 2, Scale.None, nameof(friction)) * Admit.Between(wrapAngle.Radians, 0, 1080, Scale.Degree, nameof(wrapAngle)));
        double lighter = EqualLegs.Load(load) / Math.Sqrt(1 + (ratio * ratio) + (2 * ratio * Math.Cos(EqualLegs.Included(includedAngle))));
        return new FrictionLegs(lighter, ratio);
    }
}
