using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>How much thread holds, and what pull it takes to shear the cylinder of ice round it.</summary>
public static class ThreadPullOuts
{
    internal const string Topic = "Threads";
    private const string Cylinder = "shear cylinder over the outer thread diameter; same form as the uniform-bond model of bonded anchors (Cook and others, 1998)";
    private const string NotFor = "A thread in old grooves or in a film of melt water, which hold next to nothing: count only length cut into fresh, dry ice, and take melt-out as more ice lost, not as weaker ice. Natural ice spreads by 30 to 50 %.";
    private const string Tau = "shear strength of the ice; 0.6 to 1.1 MPa were measured in fresh-water ice at −10 °C";

    /// <summary>Thread in sound ice after the surface ice has gone, in m: L − p − c − unthreaded tip − re-bored length, and 0 where nothing is left.</summary>
    /// <exception cref="DomainException">A length is negative or absurd.</exception>
    [Callable(Topic, "How much thread is left in sound ice after cone-out?", Assumes = "All lengths are measured along the axis of the body.", NotFor = "Old holes, unless the length running in old grooves is given as re-bored.")]
    [Formula("Max(0*bodyLength, bodyLength - protrusion - iceLost - unthreadedTip - reboredLength)", Symbol = "L_eff")]
    [CautionWhen("bodyLength - protrusion - iceLost - unthreadedTip - reboredLength <= 0", "No thread is left in sound ice.")]
    [CautionWhen("reboredLength > 0", "Grooves of an old hole hold little; results in re-bored holes scatter widely.")]
    [Source("National guides' school, laboratory page: the surface ice fails first, then depth and number of engaged threads decide", Standing.Read)]
    [Example("EngagedThreadLength(100 mm, 0 mm, 40 mm, 10 mm, 0 mm)", "50.0000 mm")]
    public static Length EngagedThreadLength(
        [Parameter("L", "mm", "length of the body from the hanger seat to the tip", Above = 0, AtMost = Most.Millimetres, UsualFrom = 80, UsualTo = 250)] Length bodyLength,
        [Parameter("p", "mm", "how far the body stands out of the original face", AtLeast = 0, AtMost = Most.Millimetres)] Length protrusion,
        [Parameter("c", "mm", "depth of ice lost, along the axis; common practice 30 to 50 mm", AtLeast = 0, AtMost = Most.Millimetres)] Length iceLost,
        [Parameter("l_t", "mm", "unthreaded tip, teeth included", AtLeast = 0, AtMost = Most.Millimetres)] Length unthreadedTip,
        [Parameter("l_r", "mm", "length running in the grooves of an old hole, 0 in fresh ice", AtLeast = 0, AtMost = Most.Millimetres)] Length reboredLength)
    {
        double left = Admit.Positive(bodyLength.Meters, Most.Millimetres, Scale.Millimetre, nameof(bodyLength))
            - Part(protrusion, nameof(protrusion)) - Part(iceLost, nameof(iceLost)) - Part(unthreadedTip, nameof(unthreadedTip)) - Part(reboredLength, nameof(reboredLength));
        return Length.FromMeters(Math.Max(0, left));
    }

    /// <summary>Axial pull that shears the ice round the thread, in N: π·D_t·L_eff·τ.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(Topic, "At which axial pull does the thread come out?", Assumes = "The ice shears on a cylinder over the crests of the thread, at one stress along its length.", NotFor = NotFor)]
    [Formula("pi*threadDiameter*engagedLength*shearStrength", Symbol = "N_po")]
    [Source(Cylinder, Standing.FromMemory)]
    [Example("ThreadPullOut(20 mm, 60 mm, 1.1 MPa)", "4.146902 kN")]
    public static Force ThreadPullOut(
        [Parameter("D_t", "mm", "outer diameter of the thread", Above = 0, AtMost = Most.Millimetres, UsualFrom = 12, UsualTo = 30)] Length threadDiameter,
        [Parameter("L_eff", "mm", "thread in sound ice, see EngagedThreadLength", AtLeast = 0, AtMost = Most.Millimetres)] Length engagedLength,
        [Parameter("τ", "MPa", Tau, Above = 0, AtMost = Most.Megapascals, UsualFrom = 0.3, UsualTo = 2)] Pressure shearStrength) =>
        Force.FromNewtons(Cylindrical(threadDiameter, engagedLength) * Shear(shearStrength));

    /// <summary>Share of the shear-cylinder pull that a thread of given depth and pitch reaches: 0.5 + 0.57735·h/p.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(Topic, "How much of the shear cylinder does the shape of the thread use?", Assumes = "The host material is continuous between the threads.", NotFor = "Threads that crumble the ice between their turns.")]
    [Formula("0.5 + 0.57735*threadDepth/pitch", Symbol = "TSF")]
    [Source("Chapman and others, J. Biomech. Eng. 118, 1996 (bone screws)", Standing.FromMemory)]
    [Example("ThreadShapeFactor(1.5 mm, 3 mm)", "0.788675")]
    public static double ThreadShapeFactor(
        [Parameter("h", "mm", "depth of the thread, crest to root", AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 4)] Length threadDepth,
        [Parameter("p_t", "mm", "pitch of the thread", Above = 0, AtMost = Most.Millimetres, UsualFrom = 1, UsualTo = 8)] Length pitch) =>
        0.5 + (0.57735 * Part(threadDepth, nameof(threadDepth)) / Admit.Positive(pitch.Meters, Most.Millimetres, Scale.Millimetre, nameof(pitch)));

    /// <summary>Load along the face that the thread alone limits, in N: N_po/sin α. Does not act at a set angle of 0 or less, where nothing pulls along the thread.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(Topic, "Which load along the face does the thread limit while the body stands straight?", Assumes = "The body is straight; only F sin α pulls along it.", NotFor = "A body that has folded: then the whole pull is axial and ThreadPullOut counts.")]
    [NoFormula("pull-out divided by the sine of the set angle; does not act at a set angle of 0 or less")]
    [Source("statics: axial part F sin α", Standing.Derived)]
    [Example("ThreadLimit(4.146902 kN, 10 °).Force", "23.88106 kN")]
    public static Capacity ThreadLimit(
        [Parameter("N_po", "kN", "axial pull-out, see ThreadPullOut", AtLeast = 0, AtMost = Most.Kilonewtons)] Force pullOut,
        [Parameter("α", "°", SetAngles.Meaning, Above = -90, Below = 90)] Angle setAngle)
    {
        double sine = Math.Sin(Admit.Inside(setAngle.Radians, -90, 90, Scale.Degree, nameof(setAngle)));
        double force = Admit.Between(pullOut.Newtons, 0, Most.Kilonewtons, Scale.Kilonewton, nameof(pullOut));
        return sine > 1e-12 ? Capacity.Of(force / sine) : Capacity.DoesNotAct("at a set angle of 0 or less nothing pulls along the thread");
    }

    /// <summary>Shear strength of the ice that a thread needs for a given axial pull, in Pa.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(Topic, "How strong must the ice be for a thread to carry an axial pull?", Assumes = "The ice shears on a cylinder over the crests of the thread, at one stress along its length.", NotFor = NotFor)]
    [Formula("pull/(pi*threadDiameter*engagedLength)", Symbol = "τ")]
    [CautionWhen("τ > 1.1e6", "More than the 0.6 to 1.1 MPa measured in fresh-water ice at −10 °C.")]
    [Source(Cylinder, Standing.FromMemory)]
    [Example("RequiredIceShear(10 kN, 20 mm, 60 mm)", "2.652582 MPa")]
    public static Pressure RequiredIceShear(
        [Parameter("N", "kN", "axial pull", AtLeast = 0, AtMost = Most.Kilonewtons)] Force pull,
        [Parameter("D_t", "mm", "outer diameter of the thread", Above = 0, AtMost = Most.Millimetres, UsualFrom = 12, UsualTo = 30)] Length threadDiameter,
        [Parameter("L_eff", "mm", "thread in sound ice, more than 0", Above = 0, AtMost = Most.Millimetres)] Length engagedLength)
    {
        double force = Admit.Between(pull.Newtons, 0, Most.Kilonewtons, Scale.Kilonewton, nameof(pull));
        Admit.Positive(engagedLength.Meters, Most.Millimetres, Scale.Millimetre, nameof(engagedLength));
        return Pressure.FromPascals(force / Cylindrical(threadDiameter, engagedLength));
    }

    /// <summary>Withdrawal of a lag screw from wood for each length of thread, in N/m: W = 1800·G^1.5·D^0.75 lbf/in with D in inches. A handbook rule of the same structure, here for comparison.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(Topic, "What does a lag screw in wood hold for each length of thread?", Assumes = "Withdrawal from side grain.", NotFor = "Ice: a rule for wood, kept to check the form of a thread formula against printed rows.")]
    [Formula("1800*Pow(specificGravity, 1.5)*Pow(diameter/0.0254, 0.75)*4.4482216152605/0.0254", Symbol = "W")]
    [CautionWhen("true", "A rule for wood, not for ice.")]
    [Source("National Design Specification for Wood Construction, lag screw withdrawal", Standing.FromMemory)]
    [Example("LagScrewWithdrawal(0.5, 12.7 mm)", "66.26859 kN/m")]
    public static ForcePerLength LagScrewWithdrawal(
        [Parameter("G", "", "specific gravity of the wood", Above = 0, AtMost = 2, UsualFrom = 0.3, UsualTo = 0.75)] double specificGravity,
        [Parameter("D", "mm", "diameter of the unthreaded shank", Above = 0, AtMost = Most.Millimetres, UsualFrom = 6, UsualTo = 32)] Length diameter)
    {
        double inches = Admit.Positive(diameter.Meters, Most.Millimetres, Scale.Millimetre, nameof(diameter)) / 0.0254;
        double gravity = Admit.Positive(specificGravity, 2, Scale.None, nameof(specificGravity));
        return ForcePerLength.FromNewtonsPerMeter(1800 * Math.Pow(gravity, 1.5) * Math.Pow(inches, 0.75) * 4.4482216152605 / 0.0254);
    }

    private static double Cylindrical(Length threadDiameter, Length engagedLength) =>
        Math.PI * Admit.Positive(threadDiameter.Meters, Most.Millimetres, Scale.Millimetre, nameof(threadDiameter)) * Part(engagedLength, nameof(engagedLength));

    private static double Shear(Pressure shearStrength) => Admit.Positive(shearStrength.Pascals, Most.Megapascals, Scale.Megapascal, nameof(shearStrength));

    private static double Part(Length length, string name) => Admit.Between(length.Meters, 0, Most.Millimetres, Scale.Millimetre, name);
}
