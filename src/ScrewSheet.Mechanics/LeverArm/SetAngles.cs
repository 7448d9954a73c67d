using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>The components of a pull along and square to the body.</summary>
[SheetRecord("a pull split into its parts along and square to the body")]
public readonly record struct ScrewPull
{
    private readonly double axial, transverse;

    internal ScrewPull(double axial, double transverse)
    {
        this.axial = axial;
        this.transverse = transverse;
    }

    /// <summary>Along the body, positive outward.</summary>
    [Member("N", "kN", "part along the body, positive outward (it pulls the screw out)")]
    public Force Axial => Force.FromNewtons(axial);

    /// <summary>Square to the body, positive down the face.</summary>
    [Member("V", "kN", "part square to the body, positive down the face")]
    public Force Transverse => Force.FromNewtons(transverse);
}

/// <summary>A load split by the angle at which the body was set.</summary>
public static class SetAngles
{
    internal const string Meaning = "set angle from the normal of the face, positive when the hanger end is lower than the tip (the body leans toward a load that pulls down the face)";
    private const string Topic = "Lever arm";
    private const string Statics = "statics: components along the axis u = cos α n + sin α d, n outward normal, d down the face";
    private const string Hanging = "A set angle above 15° is outside what the trade calls good practice in solid ice: threads carry only F sin α while the lip of ice under the hanger gets thin, and tests at 30° are mixed.";
    private const string Raised = "A negative set angle puts the hanger above the tip: the body is levered onto the lip of ice; the old advice to tilt the hanger up has been reversed by tests.";

    /// <summary>Part of a load down the face that pulls along the body, in N: F sin α; statics.</summary>
    /// <exception cref="DomainException">The load is absurd or the set angle is not between −90° and 90°.</exception>
    [Callable(Topic, "The part of a load down the face that pulls the body out.", Assumes = "The load runs down the face; for another pull use PullComponents.",
        NotFor = "A body that has already bent.")]
    [Formula("load*Sin(setAngle)", Symbol = "N")]
    [CautionWhen("setAngle > 15*pi/180 + 1e-9", Hanging)]
    [CautionWhen("setAngle < -1e-9", Raised)]
    [Example("AxialLoad(10 kN, 15 °)", "2588.190 N")]
    [Source(Statics, Standing.Derived)]
    public static Force AxialLoad(
        [Parameter("F", "kN", "load, positive down the face", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("α", "°", Meaning, Above = -90, Below = 90)] Angle setAngle) =>
        Force.FromNewtons(Load(load) * Math.Sin(Radians(setAngle)));

    /// <summary>Part of a load down the face that acts square to the body, in N: F cos α; statics.</summary>
    /// <exception cref="DomainException">The load is absurd or the set angle is not between −90° and 90°.</exception>
    [Callable(Topic, "The part of a load down the face that bends the body.", Assumes = "The load runs down the face; for another pull use PullComponents.",
        NotFor = "A body that has already bent.")]
    [Formula("load*Cos(setAngle)", Symbol = "V")]
    [CautionWhen("setAngle > 15*pi/180 + 1e-9", Hanging)]
    [CautionWhen("setAngle < -1e-9", Raised)]
    [Example("TransverseLoad(10 kN, 15 °)", "9659.258 N")]
    [Source(Statics, Standing.Derived)]
    public static Force TransverseLoad(
        [Parameter("F", "kN", "load, positive down the face", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("α", "°", Meaning, Above = -90, Below = 90)] Angle setAngle) =>
        Force.FromNewtons(Load(load) * Math.Cos(Radians(setAngle)));

    /// <summary>Components in N of a pull tilted away from the face: N = F sin(α + δ), V = F cos(α + δ); statics.</summary>
    /// <exception cref="DomainException">The load is absurd or an angle is out of range.</exception>
    [Callable(Topic, "The parts along and square to the body of a pull tilted away from the face.", NotFor = "A body that has already bent.")]
    [Let("β", "setAngle + outwardTilt", "rad")]
    [Formula("load*Sin(β)", Symbol = "N", Member = "Axial")]
    [Formula("load*Cos(β)", Symbol = "V", Member = "Transverse")]
    [CautionWhen("setAngle > 15*pi/180 + 1e-9", Hanging)]
    [CautionWhen("setAngle < -1e-9", Raised)]
    [Example("PullComponents(10 kN, 10 °, 5 °).Axial", "2588.190 N")]
    [Source(Statics, Standing.Derived)]
    public static ScrewPull PullComponents(
        [Parameter("F", "kN", "load along its own line, positive away from the body's hanger", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("α", "°", Meaning, Above = -90, Below = 90)] Angle setAngle,
        [Parameter("δ", "°", "tilt of the pull out of the plane of the face, positive away from the ice, 0 straight down the face", AtLeast = -90, AtMost = 90)] Angle outwardTilt)
    {
        double newtons = Admit.Between(load.Newtons, 0, Most.Kilonewtons, Scale.Kilonewton, nameof(load));
        double fromSquare = Radians(setAngle) + Admit.Signed(outwardTilt.Radians, 90, Scale.Degree, nameof(outwardTilt));
        return new ScrewPull(newtons * Math.Sin(fromSquare), newtons * Math.Cos(fromSquare));
    }

    private static double Load(Force load) => Admit.Signed(load.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(load));

    private static double Radians(Angle setAngle) => Admit.Inside(setAngle.Radians, -90, 90, Scale.Degree, nameof(setAngle));
}
