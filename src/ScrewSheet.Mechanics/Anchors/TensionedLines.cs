using MathNet.Numerics.RootFinding;
using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>An elastic line as it hangs under a load at its middle.</summary>
[SheetRecord("an elastic line as it hangs under a load at its middle")]
public readonly record struct LoadedLine
{
    private readonly double tension, sag, included;

    internal LoadedLine(double tension, double sag, double included)
    {
        this.tension = tension;
        this.sag = sag;
        this.included = included;
    }

    /// <summary>Tension on each side.</summary>
    [Member("T", "kN", "tension in the line, the same at both anchors")]
    public Force Tension => Force.FromNewtons(tension);

    /// <summary>Sag of the middle below the anchors.</summary>
    [Member("s", "m", "sag of the middle below the line between the anchors")]
    public Length Sag => Length.FromMeters(sag);

    /// <summary>Angle between the two sides at the load.</summary>
    [Member("θ", "°", "angle between the two sides at the load")]
    public Angle IncludedAngle => Angle.FromRadians(included);
}

/// <summary>A weightless line between two anchors at the same height, loaded by a hanging weight.</summary>
public static class TensionedLines
{
    private const string Topic = "Anchors";
    private const string Statics = "statics of a weightless line between level anchors";
    private const string Weightless = "Level anchors, a line whose own weight is small beside the load.";
    private const string Flat = "A nearly flat line multiplies the load many times over.";

    /// <summary>Tension in N of a line loaded at its middle: F √((w/2)² + s²)/(2 s); statics.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The tension of a line between two anchors, loaded at its middle, from span and sag.", Assumes = Weightless, NotFor = "A dynamic load or a load that is not at the middle: see LineTensions.")]
    [Formula("load*Sqrt(Pow(span/2, 2) + Pow(sag, 2))/(2*sag)", Symbol = "T")]
    [CautionWhen("sag < span/40", Flat)]
    [Example("LineTension(700 N, 10 m, 0.4374433 m)", "4015.80 N")]
    [Source(Statics, Standing.Derived)]
    public static Force LineTension(
        [Parameter("F", "kN", "load at the middle, straight down", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("w", "m", "distance between the anchors", Above = 0, AtMost = Most.Metres)] Length span,
        [Parameter("s", "m", "sag of the middle below the line between the anchors", Above = 0, AtMost = Most.Metres)] Length sag)
    {
        double half = Positive(span, nameof(span)) / 2, drop = Positive(sag, nameof(sag));
        return Force.FromNewtons(EqualLegs.Load(load) * Math.Sqrt((half * half) + (drop * drop)) / (2 * drop));
    }

    /// <summary>Sag in m of a line loaded at its middle that pulls with a given tension: (w/2) F/√(4 T² − F²); statics.</summary>
    /// <exception cref="DomainException">The tension is not above half the load, or a value is out of range.</exception>
    [Callable(Topic, "The sag of a line between two anchors, loaded at its middle, from span and tension.", Assumes = Weightless, NotFor = "Tensions up to half the load, at which the line cannot hold it at any sag.")]
    [Formula("span/2*load/Sqrt(4*Pow(tension, 2) - Pow(load, 2))", Symbol = "s")]
    [Example("LineSag(700 N, 10 m, 4015.80 N)", "0.437443 m")]
    [Source(Statics, Standing.Derived)]
    public static Length LineSag(
        [Parameter("F", "kN", "load at the middle, straight down", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("w", "m", "distance between the anchors", Above = 0, AtMost = Most.Metres)] Length span,
        [Parameter("T", "kN", "tension in the line under the load, more than half the load", Above = 0, AtMost = Most.Kilonewtons)] Force tension)
    {
        double newtons = EqualLegs.Load(load), pull = Pull(tension, newtons);
        return Length.FromMeters(Positive(span, nameof(span)) / 2 * newtons / Math.Sqrt(((2 * pull) - newtons) * ((2 * pull) + newtons)));
    }

    /// <summary>Span in m that a line loaded at its middle may have at a given tension and sag: 2 s √(4 T² − F²)/F; statics.</summary>
    /// <exception cref="DomainException">The tension is not above half the load, or a value is out of range.</exception>
    [Callable(Topic, "The span of a line loaded at its middle, from tension and sag.", Assumes = Weightless, NotFor = "Tensions up to half the load.")]
    [Formula("2*sag*Sqrt(4*Pow(tension, 2) - Pow(load, 2))/load", Symbol = "w")]
    [Example("LineSpan(700 N, 4015.80 N, 0.4374433 m)", "10.0000 m")]
    [Source(Statics, Standing.Derived)]
    public static Length LineSpan(
        [Parameter("F", "kN", "load at the middle, straight down", Above = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("T", "kN", "tension in the line under the load, more than half the load", Above = 0, AtMost = Most.Kilonewtons)] Force tension,
        [Parameter("s", "m", "sag of the middle below the line between the anchors", Above = 0, AtMost = Most.Metres)] Length sag)
    {
        double newtons = Admit.Positive(load.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(load)), pull = Pull(tension, newtons);
        return Length.FromMeters(2 * Positive(sag, nameof(sag)) * Math.Sqrt(((2 * pull) - newtons) * ((2 * pull) + newtons)) / newtons);
    }

    /// <summary>Tensions in N on both sides of a load anywhere on a line: horizontal part F x (w − x)/(w s), times the slope of each side; statics.</summary>
    /// <exception cref="DomainException">The load is not between the anchors or a value is out of range.</exception>
    [Callable(Topic, "The tensions on both sides of a load that hangs anywhere on a line between two anchors.", Assumes = Weightless + " The load does not slide along the line.",
        NotFor = "A pulley on the line: it runs to where both sides pull alike.")]
    [Let("x", "fromFirst", "m")]
    [Let("y", "span - fromFirst", "m")]
    [Let("H", "load*x*y/(span*sag)", "N")]
    [Needs("fromFirst < span")]
    [Formula("H*Sqrt(1 + Pow(sag/x, 2))", Symbol = "T_1", Member = "First")]
    [Formula("H*Sqrt(1 + Pow(sag/y, 2))", Symbol = "T_2", Member = "Second")]
    [Formula("Max(H*Sqrt(1 + Pow(sag/x, 2)), H*Sqrt(1 + Pow(sag/y, 2)))", Symbol = "T_max", Member = "Largest")]
    [CautionWhen("sag < span/40", Flat)]
    [Example("LineTensions(10 kN, 7 m, 3 m, 4 m).First", "7.14286 kN")]
    [Source(Statics, Standing.Derived)]
    public static LegPair LineTensions(
        [Parameter("F", "kN", "load, straight down", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("w", "m", "distance between the anchors", Above = 0, AtMost = Most.Metres)] Length span,
        [Parameter("x", "m", "horizontal distance from the first anchor to the load, less than the span", Above = 0, AtMost = Most.Metres)] Length fromFirst,
        [Parameter("s", "m", "sag at the load below the line between the anchors", Above = 0, AtMost = Most.Metres)] Length sag)
    {
        double width = Positive(span, nameof(span)), drop = Positive(sag, nameof(sag));
        double left = Admit.Inside(fromFirst.Meters, 0, width, Scale.Metre, nameof(fromFirst)), right = width - left;
        double scale = EqualLegs.Load(load) / (width * drop);
        return new LegPair(scale * right * Math.Sqrt((left * left) + (drop * drop)), scale * left * Math.Sqrt((right * right) + (drop * drop)));
    }

    /// <summary>Tension (N), sag (m) and angle of an elastic line loaded at its middle: stretch and balance together.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "How a real, elastic line hangs under a load at its middle: even a taut flat one has a finite tension.",
        Assumes = Weightless + " It follows Hooke's law and is loaded slowly.", NotFor = "A fall onto the line, or a line near breaking.")]
    [NoFormula("Finds the half-angle at which F = 2 E A (L/L₀ − 1) sin β (Brent's method to 1e-14), L the stretched and L₀ the unloaded length.")]
    [Example("StretchedLine(1 kN, 10 m, 10 m, 100 kN).Tension", "2.347828 kN")]
    [Source("statics with Hooke's law", Standing.Derived)]
    public static LoadedLine StretchedLine(
        [Parameter("F", "kN", "load at the middle, straight down", Above = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("w", "m", "distance between the anchors", Above = 0, AtMost = Most.Metres)] Length span,
        [Parameter("L_0", "m", "length of the unloaded line between the anchors; shorter than the span if it is pre-tensioned", Above = 0, AtMost = Most.Metres)] Length unloadedLength,
        [Parameter("EA", "kN", "axial stiffness of the line: force for a stretch to double length", Above = 0, AtMost = Most.AxialKilonewtons)] Force axialStiffness)
    {
        double newtons = Admit.Positive(load.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(load)), half = Positive(span, nameof(span)) / 2;
        double natural = Positive(unloadedLength, nameof(unloadedLength)) / 2;
        double stiff = Admit.Positive(axialStiffness.Newtons, Most.AxialKilonewtons, Scale.Kilonewton, nameof(axialStiffness));
        double Excess(double sag)
        {
            double side = Math.Sqrt((half * half) + (sag * sag));
            return (2 * stiff * ((side / natural) - 1) * sag / side) - newtons;
        }
        double least = Math.Sqrt(Math.Max(0, (natural - half) * (natural + half)));
        double most = least + natural + half;
        while (Excess(most) < 0) most *= 2;
        double drop = Brent.FindRoot(Excess, least, most, most * 1e-15, 300);
        double slant = Math.Sqrt((half * half) + (drop * drop));
        return new LoadedLine(newtons * slant / (2 * drop), drop, 2 * Math.Atan2(half, drop));
    }

    private static double Positive(Length length, string name) => Admit.Positive(length.Meters, Most.Metres, Scale.Metre, name);

    private static double Pull(Force tension, double load) =>
        Admit.Inside(Admit.Positive(tension.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(tension)), load / 2e3, 2 * Most.Kilonewtons, Scale.Kilonewton, nameof(tension));
}
