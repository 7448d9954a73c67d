using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>Two holes drilled toward each other that meet in the ice.</summary>
[SheetRecord("two holes drilled toward each other that meet in the ice")]
public readonly record struct DrilledThreadGeometry
{
    /// <summary>How deep the holes meet.</summary>
    [Member("z", "mm", "depth below the face at which the holes meet")]
    public Length Depth { get; internal init; }

    /// <summary>Length of each hole.</summary>
    [Member("l", "mm", "length of each hole")]
    public Length HoleLength { get; internal init; }

    /// <summary>Area of ice between the holes and the face.</summary>
    [Member("A", "mm²", "area of the triangle of ice between the holes and the face")]
    public Area IceArea { get; internal init; }
}

/// <summary>The geometry of a drilled thread and the pressure of its cord on the ice. No published formula gives its strength: use test data.</summary>
public static class DrilledThreads
{
    private const string NotStrength = "The strength of the thread: no published formula was found, use test data (7 to 11.5 kN in two campaigns, the cord sometimes the weak part).";

    /// <summary>Depth, hole length and enclosed area of two holes at an angle to the face: z = (s/2) tan ψ, l = s/(2 cos ψ), A = s² tan ψ/4.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(ThreadPullOuts.Topic, "How deep is a drilled thread and how much ice does it enclose?", Assumes = "Both holes lean equally and meet.", NotFor = NotStrength)]
    [Formula("mouthSpacing/2*Tan(fromFace)", Member = "Depth", Symbol = "z")]
    [Formula("mouthSpacing/(2*Cos(fromFace))", Member = "HoleLength", Symbol = "l")]
    [Formula("mouthSpacing*mouthSpacing*Tan(fromFace)/4", Member = "IceArea", Symbol = "A")]
    [Source("Plane geometry; layouts published: 45 to 50° at 170 to 200 mm, and 60° with a 210 to 220 mm screw", Standing.Derived)]
    [Example("DrilledThread(180 mm, 60 °).Depth", "155.8846 mm")]
    [Example("DrilledThread(180 mm, 45 °).IceArea", "8100.00 mm²")]
    public static DrilledThreadGeometry DrilledThread(
        [Parameter("s", "mm", "spacing of the two mouths on the face", Above = 0, AtMost = Most.Millimetres, UsualFrom = 150, UsualTo = 250)] Length mouthSpacing,
        [Parameter("ψ", "°", "angle between each hole and the face (90° would be square into it)", Above = 0, Below = 90, UsualFrom = 40, UsualTo = 65)] Angle fromFace)
    {
        double s = Admit.Positive(mouthSpacing.Meters, Most.Millimetres, Scale.Millimetre, nameof(mouthSpacing));
        double angle = Admit.Inside(fromFace.Radians, 0, 90, Scale.Degree, nameof(fromFace));
        return new DrilledThreadGeometry
        {
            Depth = Length.FromMeters(s / 2 * Math.Tan(angle)),
            HoleLength = Length.FromMeters(s / (2 * Math.Cos(angle))),
            IceArea = Area.FromSquareMeters(s * s * Math.Tan(angle) / 4),
        };
    }

    /// <summary>Mean pressure of a cord or tape on the edge of the hole, in Pa: F/(d·b).</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(ThreadPullOuts.Topic, "How hard does the cord press on the edge of the hole?", Assumes = "The pressure is even over the contact.", NotFor = "The strength of the thread; it only says why wide tape beats thin cord.")]
    [Formula("load/(cordDiameter*contactLength)", Symbol = "p")]
    [Source("Mean pressure, force over area", Standing.Derived)]
    [Example("CordBearingPressure(10 kN, 7 mm, 100 mm)", "14.28571 MPa")]
    public static Pressure CordBearingPressure(
        [Parameter("F", "kN", "force pressed on the ice", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("d", "mm", "diameter of the cord, or width of the tape", Above = 0, AtMost = Most.Millimetres)] Length cordDiameter,
        [Parameter("b", "mm", "length over which it bears on the ice", Above = 0, AtMost = Most.Millimetres)] Length contactLength) =>
        Pressure.FromPascals(Admit.Between(load.Newtons, 0, Most.Kilonewtons, Scale.Kilonewton, nameof(load))
            / (Admit.Positive(cordDiameter.Meters, Most.Millimetres, Scale.Millimetre, nameof(cordDiameter))
                * Admit.Positive(contactLength.Meters, Most.Millimetres, Scale.Millimetre, nameof(contactLength))));
}
