using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Friction;

/// <summary>The capstan law at one bend of the rope.</summary>
public static class CarabinerFriction
{
    private const string Sliding = "The rope slides or is about to; its bending stiffness is ignored; the radius does not matter.";

    /// <summary>Tension on the pulling side over tension on the holding side; a pure number of 1 or more.</summary>
    /// <exception cref="DomainException">Friction outside 0 to 2, or wrap outside 0 to 3600°.</exception>
    [Callable(Topics.Friction, "By what ratio does friction divide the tension where the rope bends over a carabiner?", Assumes = Sliding,
        NotFor = "A rope at rest between the two limits, or the ratio against the direction of sliding.")]
    [Formula("Exp(friction * wrap)", Symbol = "ρ")]
    [Example("FrictionRatio(0.3, 360 deg)", "6.58606196")]
    [Source(Works.Capstan, Standing.Read)]
    public static double FrictionRatio(
        [Parameter("μ", "", "friction coefficient between rope and metal", AtLeast = 0, AtMost = Limits.Friction, UsualFrom = 0.1, UsualTo = 0.3)] double friction,
        [Parameter("θ", "deg", "wrap: change of the rope's direction, 180° for strands that run parallel", AtLeast = 0, AtMost = Limits.WrapDegrees)] Angle wrap) =>
        Ratio(friction, wrap);

    /// <summary>The friction coefficient that explains a measured ratio of tensions at one bend.</summary>
    /// <exception cref="DomainException">A ratio below 1, or a wrap of 0.</exception>
    [Callable(Topics.Friction, "Which friction coefficient explains this ratio of tensions?", Assumes = Sliding, NotFor = "A ratio measured over several bends, unless the wrap is their sum.")]
    [Formula("Ln(frictionRatio) / wrap", Symbol = "μ")]
    [Example("FrictionFromRatio(1.5, 180 deg)", "0.129063552")]
    [Source(Works.Capstan + ", solved for friction", Standing.Derived)]
    public static double FrictionFromRatio(
        [Parameter("ρ", "", "greater tension over smaller", AtLeast = 1, AtMost = Limits.FrictionRatio)] double frictionRatio,
        [Parameter("θ", "deg", "wrap: change of the rope's direction", AtLeast = 0.1, AtMost = Limits.WrapDegrees)] Angle wrap)
    {
        Require.AtLeast(wrap.Degrees, 0.1, "deg", nameof(wrap));
        return Math.Log(Inputs.Number(frictionRatio, 1, Limits.FrictionRatio)) / Inputs.Angle(wrap, Limits.WrapDegrees);
    }

    /// <summary>The pull that keeps a load from sliding down over a bend.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Friction, "How little pull holds this load over a bend?", Assumes = Sliding + " The load is about to sink.", NotFor = "Raising the load (RaisingForce).")]
    [Formula("load * Exp(-friction * wrap)", Symbol = "T_hold")]
    [Example("HoldingForce(100 kgf, 0.2, 180 deg)", "523.173099 N")]
    [CautionWhen("friction > 0 && wrap > 0", "friction helps here; set 0 for design")]
    [Source(Works.Capstan, Standing.Read)]
    public static Force HoldingForce(
        [Parameter("T", "kN", "tension on the load's side", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force load,
        [Parameter("μ", "", "friction coefficient", AtLeast = 0, AtMost = Limits.Friction, UsualTo = 0.3)] double friction,
        [Parameter("θ", "deg", "wrap: change of the rope's direction", AtLeast = 0, AtMost = Limits.WrapDegrees)] Angle wrap) =>
        Force.FromNewtons(Inputs.Tension(load) / Ratio(friction, wrap));

    /// <summary>The pull that begins to raise a load over a bend.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Friction, "How much pull raises this load over a bend?", Assumes = Sliding + " The load is about to rise.", NotFor = "Holding or lowering the load (HoldingForce).")]
    [Formula("load * Exp(friction * wrap)", Symbol = "T_raise")]
    [Example("RaisingForce(100 kgf, 0.2, 180 deg)", "1838.21348 N")]
    [Source(Works.Capstan, Standing.Read)]
    public static Force RaisingForce(
        [Parameter("T", "kN", "tension on the load's side", AtLeast = 0, AtMost = 1000)] Force load,
        [Parameter("μ", "", "friction coefficient", AtLeast = 0, AtMost = Limits.Friction, UsualTo = 0.3)] double friction,
        [Parameter("θ", "deg", "wrap: change of the rope's direction", AtLeast = 0, AtMost = Limits.WrapDegrees)] Angle wrap)
    {
        Require.AtMost(load.Kilonewtons, 1000, "kN", nameof(load));
        return Force.FromNewtons(Inputs.Tension(load) * Ratio(friction, wrap));
    }

    /// <summary>The ratio of tensions, checked.</summary>
    internal static double Ratio(double friction, Angle wrap) =>
        Math.Exp(Inputs.Number(friction, 0, Limits.Friction) * Inputs.Angle(wrap, Limits.WrapDegrees));
}
