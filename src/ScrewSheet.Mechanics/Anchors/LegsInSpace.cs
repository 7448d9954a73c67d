using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>Legs in space by statics alone, and with the master point free to move.</summary>
public static class LegsInSpace
{
    private const string Topic = "Anchors";
    private const string Balance = "balance of forces at the master point, Σ T u + F = 0";
    private const string Swings = "A leg would have to push: it is slack, the master point swings, and the answer holds where it comes to rest.";

    /// <summary>Tensions in N of three legs in space that neither slide nor stretch; a leg that would push goes slack and the master point swings; statics.</summary>
    /// <exception cref="DomainException">There are not three legs, a value is out of range, there is no pull, or the three legs lie in one plane and the pull does not.</exception>
    [Callable(Topic, "The tensions in three legs in space.", Assumes = "Legs of fixed length, just taut before the load.", NotFor = "More than three legs, which share by stiffness: see ShareSpace and TiedLegs.")]
    [NoFormula("Solves the balance at the master point; if a leg would push, finds where the legs of fixed length let the master point come to rest.")]
    [Example("ThreeLegs(0 kN, 0 kN, -10 kN, Values(0.3 m, -0.4 m, 0.05 m), Values(0.1 m, 0.1 m, -0.2 m), Values(0.8 m, 0.6 m, 1 m)).Largest", "4.229114 kN")]
    [Source(Balance, Standing.Derived)]
    public static LegSharing ThreeLegs(
        [Parameter("F_x", "kN", "x component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullX,
        [Parameter("F_y", "kN", "y component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullY,
        [Parameter("F_z", "kN", "z component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullZ,
        [Parameter("x", "m", "x from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> x,
        [Parameter("y", "m", "y from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> y,
        [Parameter("z", "m", "z from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> z)
    {
        Vector[] anchors = SpaceInputs.Anchors(x, y, z, 3);
        if (anchors.Length != 3) throw new DomainException("x must have exactly 3 values, one for each leg; more legs share by stiffness, see ShareSpace.", nameof(x));
        Vector pull = SomePull(pullX, pullY, pullZ);
        (double[] tensions, Vector moved) = RigidLegs.Settle(anchors, pull)
            ?? throw new DomainException("The three legs lie so nearly in one plane that statics does not settle their tensions; use ShareSpace or TiedLegs.", nameof(x));
        for (int leg = 0; leg < 3; leg++) tensions[leg] = Math.Max(0, tensions[leg]);
        return new LegSharing(tensions, moved, moved.Length > 0 ? [Swings] : StiffnessSharing.SlackCaution(tensions));
    }

    /// <summary>Tensions in N of any number of tied elastic legs, the master point followed to where it comes to rest; minimum of energy.</summary>
    /// <exception cref="DomainException">A value is out of range, the series differ in number, or there is no pull.</exception>
    [Callable(Topic, "The tensions in any number of tied legs, with the master point followed to where the pull takes it.", Assumes = "Legs follow Hooke's law, are just taut before the load, and are tied at the master point.",
        NotFor = "Sliding rigs, knots that slip, or a load that falls.")]
    [NoFormula("Minimises the energy of legs and load (Newton steps with a search along each, to 1e-10 of the pull); legs carry no push.", Steps = 10_000)]
    [Example("TiedLegs(0 kN, 0 kN, -10 kN, Values(0.3 m, -0.4 m, 0.05 m), Values(0.1 m, 0.1 m, -0.2 m), Values(0.8 m, 0.6 m, 1 m), Values(100 MN, 100 MN, 100 MN)).Largest", "4.227775 kN")]
    [Source(Balance + ", with Hooke's law", Standing.Derived)]
    public static LegSharing TiedLegs(
        [Parameter("F_x", "kN", "x component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullX,
        [Parameter("F_y", "kN", "y component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullY,
        [Parameter("F_z", "kN", "z component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullZ,
        [Parameter("x", "m", "x from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> x,
        [Parameter("y", "m", "y from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> y,
        [Parameter("z", "m", "z from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> z,
        [Parameter("EA", "kN", StiffnessSharing.StiffnessMeaning, Above = 0, AtMost = Most.AxialKilonewtons)] Series<Force> stiffness)
    {
        Vector[] anchors = SpaceInputs.Anchors(x, y, z, 1);
        return new ElasticLegs(anchors, SpaceInputs.Springs(anchors, stiffness)).Settle(SomePull(pullX, pullY, pullZ), -1);
    }

    internal static Vector SomePull(Force pullX, Force pullY, Force pullZ)
    {
        Vector pull = SpaceInputs.Pull(pullX, pullY, pullZ);
        return pull.Length > 0 ? pull : throw new DomainException("pullX, pullY and pullZ must not all be 0 kN.", nameof(pullX));
    }
}
