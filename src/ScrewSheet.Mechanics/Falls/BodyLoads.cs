using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Falls;

/// <summary>What a rope's pull means for the body on it: the three readings that are often mixed.</summary>
public static class BodyLoads
{
    /// <summary>Rope tension over the weight of the body: what an accelerometer on it shows, in g; a pure number, 1 when hanging at rest.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "How many g does the body on the rope feel?", Assumes = "A rigid body; the reading of an accelerometer, so 1 when hanging at rest.", NotFor = "The deceleration of the body, which is 1 g less (NetStoppingForce).")]
    [Formula("tension / (mass * gn)", Symbol = "n")]
    [Example("LoadInG(12 kN, 80 kg)", "15.2957432")]
    [CautionWhen("tension > 15 * mass * gn", "Above 15 g, the bound taken from parachutist studies for a body of 80 kg.")]
    [CautionWhen("tension > 6000", "Above 6 kN, the limit that fall arrest sets for a user's body.")]
    [Source("anchor-line designer's note on parachutist studies: 80 kg tolerates up to 15 g, fall arrest halves 1200 kgf to 6 kN", Standing.Read)]
    public static double LoadInG(
        [Parameter("F", "kN", "tension on the body's side", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force tension,
        [Parameter("m", "kg", "mass of the body", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass) =>
        Inputs.Tension(tension) / (Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared);

    /// <summary>Net force that slows the body: tension less weight, positive upward.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "What net force slows the falling body?", Assumes = "Tension straight up; positive means slowing a fall.", NotFor = "The rope's tension or the anchor's load.")]
    [Formula("tension - mass * gn", Symbol = "F_net")]
    [Example("NetStoppingForce(6 kN, 80 kg)", "5215.46800 N")]
    [Source("F - w; Newton's second law", Standing.Derived)]
    public static Force NetStoppingForce(
        [Parameter("F", "kN", "tension on the body's side", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force tension,
        [Parameter("m", "kg", "mass of the body", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass) =>
        Force.FromNewtons(Inputs.Tension(tension) - (Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared));

    /// <summary>Time in which a constant deceleration stops a body over a distance: twice the distance over the entry speed.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Falls, "How long does a stop over this distance take at constant deceleration?", Assumes = "Constant deceleration from the entry speed to rest.", NotFor = "A rope, whose force grows with stretch (ElasticPeakTime).")]
    [Formula("2 * distance / speed", Symbol = "t")]
    [Example("StoppingTime(10 m/s, 1 m)", "0.200000000 s")]
    [Source("x = v t / 2; uniform deceleration", Standing.Derived)]
    public static Duration StoppingTime(
        [Parameter("v", "m/s", "speed on entry", Above = 0, AtMost = 10_000)] Speed speed,
        [Parameter("x", "m", "stopping distance", AtLeast = 0, AtMost = Limits.LengthMetres)] Length distance)
    {
        double v = Require.AtMost(Require.Above(speed.MetersPerSecond, 0, "m/s", nameof(speed)), 10_000, "m/s", nameof(speed));
        return Duration.FromSeconds(2 * Inputs.Distance(distance) / v);
    }

    /// <summary>Time from the rope coming taut to the greatest force on an elastic rope.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "How long after the rope comes taut does an elastic rope pull hardest?", Assumes = "A rigid mass on a linear rope, fixed belay, no friction.", NotFor = "Ropes with damping (KelvinVoigtFall, MaxwellFall, StandardSolidFall).")]
    [Let("omega", "Sqrt(modulus / (ropeOut * mass))", "1/s")]
    [Let("speed", "Sqrt(2 * gn * fall)", "m/s")]
    [Formula("Atan2(speed * omega, -gn) / omega", Symbol = "t_F")]
    [Example("ElasticPeakTime(80 kg, 20 kN, 4.6 m, 2.6 m)", "0.170888422 s")]
    [Source("m x'' = m g - k x from x = 0 at speed v0; harmonic motion", Standing.Derived)]
    public static Duration ElasticPeakTime(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K", "kN", "rope modulus, all strands together", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 5, UsualTo = 200)] Force modulus,
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L", "m", "unstretched length of the rope that takes the load", Above = 0, AtMost = Limits.LengthMetres)] Length ropeOut)
    {
        double omega = Math.Sqrt(Inputs.PositiveForce(modulus) / (Inputs.RopeLength(ropeOut) * Inputs.Mass(mass)));
        double speed = Math.Sqrt(2 * StandardGravity.MetresPerSecondSquared * Inputs.Distance(fall));
        return Duration.FromSeconds(Math.Atan2(speed * omega, -StandardGravity.MetresPerSecondSquared) / omega);
    }
}
