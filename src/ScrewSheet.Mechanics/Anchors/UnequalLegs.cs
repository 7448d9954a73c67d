using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>The tensions in two legs that differ.</summary>
[SheetRecord("the tensions in two legs of an anchor or two sides of a line")]
public readonly record struct LegPair
{
    private readonly double first, second;

    internal LegPair(double first, double second)
    {
        this.first = first;
        this.second = second;
    }

    /// <summary>Tension in the first leg.</summary>
    [Member("T_1", "kN", "tension in the first leg")]
    public Force First => Force.FromNewtons(first);

    /// <summary>Tension in the second leg.</summary>
    [Member("T_2", "kN", "tension in the second leg")]
    public Force Second => Force.FromNewtons(second);

    /// <summary>The larger of the two.</summary>
    [Member("T_max", "kN", "the larger of the two tensions")]
    public Force Largest => Force.FromNewtons(Math.Max(first, second));
}

/// <summary>Two legs of different angle or length, and a pull off its line.</summary>
public static class UnequalLegs
{
    private const string Topic = "Anchors";
    private const string Lami = "sine rule of three forces in balance (Lami)";
    private const string Rigging = "rigging trade, tensions of a two-leg bridle from distances and height";

    /// <summary>Tensions in N of two legs at angles a₁ and a₂ from the line of the load, one to each side: T₁ = F sin a₂/sin(a₁ + a₂); Lami.</summary>
    /// <exception cref="DomainException">A value is out of range, or both angles together are 0° or 180° or more.</exception>
    [Callable(Topic, "The tensions in two legs at different angles from the line of the load.", Assumes = "The legs lie on opposite sides of the load's line.",
        NotFor = "The sine of a leg's own angle: each leg's share goes with the sine of the other's.")]
    [Let("both", "firstAngle + secondAngle", "rad")]
    [Needs("firstAngle + secondAngle > 0 && firstAngle + secondAngle < pi")]
    [Formula("load*Sin(secondAngle)/Sin(both)", Symbol = "T_1", Member = "First")]
    [Formula("load*Sin(firstAngle)/Sin(both)", Symbol = "T_2", Member = "Second")]
    [Formula("Max(load*Sin(secondAngle)/Sin(both), load*Sin(firstAngle)/Sin(both))", Symbol = "T_max", Member = "Largest")]
    [CautionWhen("firstAngle + secondAngle > 120*pi/180 + 1e-9", "Beyond 120° between the legs one of them carries more than the whole load.")]
    [Example("TwoLegs(735.4988 N, 40 °, 60 °).First", "646.7868 N")]
    [Source(Lami, Standing.Derived)]
    public static LegPair TwoLegs(
        [Parameter("F", "kN", "load at the point where the legs meet", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a_1", "°", "angle of the first leg from the line of the load, positive to its own side", AtLeast = 0, Below = 180)] Angle firstAngle,
        [Parameter("a_2", "°", "angle of the second leg from the line of the load, positive to the other side; less than 180° less a_1", AtLeast = 0, Below = 180)] Angle secondAngle)
    {
        double first = Admit.Under(firstAngle.Radians, 0, 180, Scale.Degree, nameof(firstAngle));
        double second = Admit.Under(secondAngle.Radians, 0, 180, Scale.Degree, nameof(secondAngle));
        Admit.Inside(first + second, 0, 180, Scale.Degree, $"{nameof(firstAngle)} + {nameof(secondAngle)}");
        double scale = EqualLegs.Load(load) / Math.Sin(first + second);
        return new LegPair(scale * Math.Sin(second), scale * Math.Sin(first));
    }

    /// <summary>Tensions in N of a bridle from the horizontal distance of each anchor to the load and the common height: T₁ = W D₂ S₁/(H (D₁ + D₂)).</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The tensions in two legs from the horizontal distances and the height.", Assumes = "Both anchors at the same height above the load.", NotFor = "Anchors at different heights.")]
    [Let("S1", "Sqrt(Pow(firstDistance, 2) + Pow(height, 2))", "m")]
    [Let("S2", "Sqrt(Pow(secondDistance, 2) + Pow(height, 2))", "m")]
    [Formula("load*secondDistance*S1/(height*(firstDistance + secondDistance))", Symbol = "T_1", Member = "First")]
    [Formula("load*firstDistance*S2/(height*(firstDistance + secondDistance))", Symbol = "T_2", Member = "Second")]
    [Formula("Max(load*secondDistance*S1, load*firstDistance*S2)/(height*(firstDistance + secondDistance))", Symbol = "T_max", Member = "Largest")]
    [Example("BridleLegs(10 kN, 3 m, 4 m, 4 m).First", "7.14286 kN")]
    [Source(Rigging, Standing.Read)]
    public static LegPair BridleLegs(
        [Parameter("W", "kN", "load, straight down", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("D_1", "m", "horizontal distance from the first anchor to the load", Above = 0, AtMost = Most.Metres)] Length firstDistance,
        [Parameter("D_2", "m", "horizontal distance from the second anchor to the load", Above = 0, AtMost = Most.Metres)] Length secondDistance,
        [Parameter("H", "m", "height of the anchors above the load", Above = 0, AtMost = Most.Metres)] Length height)
    {
        double first = Admit.Positive(firstDistance.Meters, Most.Metres, Scale.Metre, nameof(firstDistance));
        double second = Admit.Positive(secondDistance.Meters, Most.Metres, Scale.Metre, nameof(secondDistance));
        double up = Admit.Positive(height.Meters, Most.Metres, Scale.Metre, nameof(height));
        double scale = EqualLegs.Load(load) / (up * (first + second));
        return new LegPair(scale * second * Math.Sqrt((first * first) + (up * up)), scale * first * Math.Sqrt((second * second) + (up * up)));
    }

    /// <summary>Tensions in N of two tied legs, set up for equal shares, when the pull swings by φ toward the first leg: legs then at θ/2 − φ and θ/2 + φ.</summary>
    /// <exception cref="DomainException">The load is negative or absurd, or an angle is out of range.</exception>
    [Callable(Topic, "The tensions in two tied legs when the pull swings off its line.", Assumes = "Tied legs that neither slide nor stretch; the angle between them stays.",
        NotFor = "Self-adjusting rigs: see SlidingLegs.")]
    [Let("half", "includedAngle/2", "rad")]
    [Formula("Abs(offAxis) < half ? load*Sin(half + offAxis)/Sin(includedAngle) : offAxis > 0 ? load : 0", Symbol = "T_1", Member = "First")]
    [Formula("Abs(offAxis) < half ? load*Sin(half - offAxis)/Sin(includedAngle) : offAxis > 0 ? 0 : load", Symbol = "T_2", Member = "Second")]
    [Formula("Abs(offAxis) < half ? load*Sin(half + Abs(offAxis))/Sin(includedAngle) : load", Symbol = "T_max", Member = "Largest")]
    [CautionWhen("Abs(offAxis) >= half - 1e-9", "The pull has swung to or past one leg: it carries everything and the other is slack.")]
    [CautionWhen("includedAngle < 45*pi/180 - 1e-9", "Narrow tied legs share badly when the pull wanders; measurements by a rescue trainer point to 45° to 60° as the practical optimum.")]
    [Example("OffAxisLegs(1 kN, 60 °, 5 °).First", "0.6623090 kN")]
    [Source(Lami, Standing.Derived)]
    public static LegPair OffAxisLegs(
        [Parameter("F", "kN", "load at the point where the legs meet", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("θ", "°", "angle between the two legs at the load (included angle)", Above = 0, Below = 180)] Angle includedAngle,
        [Parameter("φ", "°", "how far the pull has swung from the line that bisects the legs, positive toward the line of the first leg", AtLeast = -90, AtMost = 90)] Angle offAxis)
    {
        double included = Admit.Inside(includedAngle.Radians, 0, 180, Scale.Degree, nameof(includedAngle));
        double swing = Admit.Signed(offAxis.Radians, 90, Scale.Degree, nameof(offAxis));
        double newtons = EqualLegs.Load(load);
        if (Math.Abs(swing) >= included / 2) return swing > 0 ? new LegPair(newtons, 0) : new LegPair(0, newtons);
        double scale = newtons / Math.Sin(included);
        return new LegPair(scale * Math.Sin((included / 2) + swing), scale * Math.Sin((included / 2) - swing));
    }
}
