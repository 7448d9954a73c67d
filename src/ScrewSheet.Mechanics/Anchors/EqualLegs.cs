using System.Runtime.CompilerServices;
using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>Two equal legs that meet at the load, by whichever angle or lengths are known.</summary>
public static class EqualLegs
{
    private const string Topic = "Anchors";
    private const string Statics = "statics of two equal legs";
    private const string Wide = "Beyond 120° each leg carries more than the whole load.";
    private const string Narrow = "Very narrow legs share badly as soon as the pull is off its line; see OffAxisLegs.";
    private const string Article = "Climbing-physics article, load on each anchor of a two-leg belay against the included angle";
    private const string SlingChart = "Trade sling-angle chart in the manner of ASME B30.9, factors by angle from horizontal";

    /// <summary>Share of the load that each of two equal legs carries, a number: 1/(2 cos(θ/2)), θ from 0° to less than 180°; statics.</summary>
    /// <exception cref="DomainException">The angle is negative, 180° or more, or not finite.</exception>
    [Callable(Topic, "The share of the load on each of two equal legs, by the angle between them.", Assumes = "The pull bisects the angle and the legs do not stretch.",
        NotFor = "Angles from the vertical or the horizontal (see FromHorizontalToIncluded), unequal legs, or 180°, where real legs stretch and the angle closes (see StretchedLine).")]
    [Formula("1/(2*Cos(includedAngle/2))")]
    [CautionWhen("includedAngle > 120*pi/180 + 1e-9", Wide)]
    [Example("LegShare(90 °)", "0.7071068")]
    [Source(Statics, Standing.Derived)]
    [Source(Article, Standing.Read)]
    public static double LegShare(
        [Parameter("θ", "°", "angle between the two legs at the load (included angle, not the angle from the vertical)", AtLeast = 0, Below = 180)] Angle includedAngle) =>
        1 / (2 * Math.Cos(Included(includedAngle) / 2));

    /// <summary>Tension in N in each of two equal legs: F/(2 cos(θ/2)), θ from 0° to less than 180°; statics.</summary>
    /// <exception cref="DomainException">The load is negative or absurd, or the angle is negative or 180° or more.</exception>
    [Callable(Topic, "The tension in each of two equal legs, by the angle between them.", Assumes = "The pull bisects the angle and the legs do not stretch.",
        NotFor = "Angles from the vertical or the horizontal (see FromHorizontalToIncluded), unequal legs, or 180°, where real legs stretch and the angle closes (see StretchedLine).")]
    [Formula("load/(2*Cos(includedAngle/2))", Symbol = "T")]
    [CautionWhen("includedAngle > 120*pi/180 + 1e-9", Wide)]
    [CautionWhen("includedAngle < 20*pi/180", Narrow)]
    [Example("LegTension(8 kN, 120 °)", "8.00000 kN")]
    [Source(Statics, Standing.Derived)]
    [Source(Article, Standing.Read)]
    public static Force LegTension(
        [Parameter("F", "kN", "load at the point where the legs meet", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("θ", "°", "angle between the two legs at the load (included angle, not the angle from the vertical)", AtLeast = 0, Below = 180)] Angle includedAngle)
    {
        double force = Load(load), half = Included(includedAngle) / 2;
        return Force.FromNewtons(force / (2 * Math.Cos(half)));
    }

    /// <summary>Tension in N in each of two equal legs from their angle h above the horizontal: F/(2 sin h), h above 0° up to 90°; statics.</summary>
    /// <exception cref="DomainException">The load is negative or absurd, or the angle is not above 0° and at most 90°.</exception>
    [Callable(Topic, "The tension in each of two equal legs, by their angle from the horizontal.", Assumes = "The pull is vertical and bisects the angle.",
        NotFor = "Included angles: 60° from the horizontal is an included angle of 60°, but 30° from the horizontal is one of 120°.")]
    [Formula("load/(2*Sin(fromHorizontal))", Symbol = "T")]
    [CautionWhen("fromHorizontal < 30*pi/180 - 1e-9", "Below 30° from the horizontal each leg carries more than the whole load.")]
    [Example("LegTensionFromHorizontal(686.4655 N, 5 °)", "3938.15 N")]
    [Source(SlingChart, Standing.Read)]
    public static Force LegTensionFromHorizontal(
        [Parameter("F", "kN", "load at the point where the legs meet", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("h", "°", "angle of each leg from the horizontal", Above = 0, AtMost = 90)] Angle fromHorizontal) =>
        Force.FromNewtons(Load(load) / (2 * Math.Sin(FromHorizontal(fromHorizontal))));

    /// <summary>Tension over load per leg, a number: 1/sin h, h the angle from the horizontal, above 0° up to 90°; ASME B30.9.</summary>
    /// <exception cref="DomainException">The angle is not above 0° and at most 90°.</exception>
    [Callable(Topic, "How much more than its share of the weight a sling leg carries, by its angle from the horizontal.", NotFor = "Included angles.")]
    [Formula("1/Sin(fromHorizontal)")]
    [Example("SlingFactor(60 °)", "1.154701")]
    [Source(SlingChart, Standing.Read)]
    public static double SlingFactor([Parameter("h", "°", "angle of each leg from the horizontal", Above = 0, AtMost = 90)] Angle fromHorizontal) =>
        1 / Math.Sin(FromHorizontal(fromHorizontal));

    /// <summary>Part of its straight capacity a leg keeps, a number: sin h, h the angle from the horizontal, above 0° up to 90°; ASME B30.9.</summary>
    /// <exception cref="DomainException">The angle is not above 0° and at most 90°.</exception>
    [Callable(Topic, "The part of its straight capacity that a sling leg keeps, by its angle from the horizontal.", NotFor = "Included angles.")]
    [Formula("Sin(fromHorizontal)")]
    [Example("SlingCapacityFactor(60 °)", "0.8660254")]
    [Source(SlingChart, Standing.Read)]
    public static double SlingCapacityFactor([Parameter("h", "°", "angle of each leg from the horizontal", Above = 0, AtMost = 90)] Angle fromHorizontal) =>
        Math.Sin(FromHorizontal(fromHorizontal));

    /// <summary>Tension in N in a sloping leg from its share of the weight, its length and its height: W S/H; ASME B30.9.</summary>
    /// <exception cref="DomainException">A value is out of range or the height exceeds the length.</exception>
    [Callable(Topic, "The tension in a sloping leg from its share of the weight, its length and its height.", NotFor = "The whole load: give the load per leg.")]
    [Needs("height <= legLength")]
    [Formula("loadPerLeg*legLength/height", Symbol = "T")]
    [Example("SlantTension(1200 lbf, 120 in, 96 in)", "1500.00 lbf")]
    [Source(SlingChart, Standing.Read)]
    public static Force SlantTension(
        [Parameter("W", "kN", "load that this leg lifts", AtLeast = 0, AtMost = Most.Kilonewtons)] Force loadPerLeg,
        [Parameter("S", "m", "length of the leg along its slope", Above = 0, AtMost = Most.Metres)] Length legLength,
        [Parameter("H", "m", "height of the leg, at most its length", Above = 0, AtMost = Most.Metres)] Length height)
    {
        double slope = Admit.Positive(legLength.Meters, Most.Metres, Scale.Metre, nameof(legLength));
        return Force.FromNewtons(Admit.Between(loadPerLeg.Newtons, 0, Most.Kilonewtons, Scale.Kilonewton, nameof(loadPerLeg)) * slope
            / Admit.Positive(height.Meters, slope, Scale.Metre, nameof(height)));
    }

    /// <summary>What a leg may lift in N from its straight capacity, its length and its height: C H/S; ASME B30.9.</summary>
    /// <exception cref="DomainException">A value is out of range or the height exceeds the length.</exception>
    [Callable(Topic, "What a sloping leg may lift, from its straight capacity, its length and its height.", NotFor = "Two legs together: it is for one leg.")]
    [Needs("height <= legLength")]
    [Formula("capacity*height/legLength", Symbol = "W")]
    [Example("SlantCapacity(8000 lbf, 96 in, 84 in)", "7000.00 lbf")]
    [Source(SlingChart, Standing.Read)]
    public static Force SlantCapacity(
        [Parameter("C", "kN", "capacity of the leg pulled straight", AtLeast = 0, AtMost = Most.Kilonewtons)] Force capacity,
        [Parameter("S", "m", "length of the leg along its slope", Above = 0, AtMost = Most.Metres)] Length legLength,
        [Parameter("H", "m", "height of the leg, at most its length", Above = 0, AtMost = Most.Metres)] Length height)
    {
        double slope = Admit.Positive(legLength.Meters, Most.Metres, Scale.Metre, nameof(legLength));
        return Force.FromNewtons(Admit.Between(capacity.Newtons, 0, Most.Kilonewtons, Scale.Kilonewton, nameof(capacity))
            * Admit.Positive(height.Meters, slope, Scale.Metre, nameof(height)) / slope);
    }

    /// <summary>Included angle from the angle h of each leg above the horizontal: 180° − 2 h; geometry.</summary>
    /// <exception cref="DomainException">The angle is not above 0° and at most 90°.</exception>
    [Callable(Topic, "The included angle of two equal legs from their angle above the horizontal.", NotFor = "Legs that do not rise alike.")]
    [Formula("pi - 2*fromHorizontal", Symbol = "θ")]
    [Example("FromHorizontalToIncluded(30 °)", "120.0000 °")]
    [Source("geometry", Standing.Derived)]
    public static Angle FromHorizontalToIncluded([Parameter("h", "°", "angle of each leg from the horizontal", Above = 0, AtMost = 90)] Angle fromHorizontal) =>
        Angle.FromRadians(Math.PI - (2 * FromHorizontal(fromHorizontal)));

    /// <summary>Included angle of two equal legs from the distance of their anchors and their length: 2 asin(w/(2 l)); geometry.</summary>
    /// <exception cref="DomainException">A length is out of range or the spacing is not less than both legs together.</exception>
    [Callable(Topic, "The included angle of two equal legs from anchor spacing and leg length.", NotFor = "Legs of different length.")]
    [Formula("2*Asin(spacing/(2*legLength))", Symbol = "θ")]
    [Example("IncludedAngle(0.4 m, 0.4 m)", "60.0000 °")]
    [Source("geometry", Standing.Derived)]
    public static Angle IncludedAngle(
        [Parameter("w", "m", "distance between the anchors, less than both legs together", AtLeast = 0, AtMost = Most.Metres)] Length spacing,
        [Parameter("l", "m", "length of each leg", Above = 0, AtMost = Most.Metres)] Length legLength)
    {
        double leg = Admit.Positive(legLength.Meters, Most.Metres, Scale.Metre, nameof(legLength));
        return Angle.FromRadians(2 * Math.Asin(Admit.Under(spacing.Meters, 0, 2 * leg, Scale.Metre, nameof(spacing)) / (2 * leg)));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double Load(Force load) => Admit.Between(load.Newtons, 0, Most.Kilonewtons, Scale.Kilonewton, nameof(load));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double Included(Angle includedAngle) => Admit.Under(includedAngle.Radians, 0, 180, Scale.Degree, nameof(includedAngle));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double FromHorizontal(Angle fromHorizontal) => Admit.Positive(fromHorizontal.Radians, 90, Scale.Degree, nameof(fromHorizontal));
}
