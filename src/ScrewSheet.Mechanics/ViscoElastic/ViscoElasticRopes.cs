using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.ViscoElastic;

/// <summary>Three linear rope models with damping: Kelvin–Voigt, Maxwell, standard linear solid. Damping is given as a relaxation time.</summary>
public static class ViscoElasticRopes
{
    private const string Fixed = "A rigid mass on a uniform rope, fixed belay, no friction at pieces, rope mass ignored; the rope is just taut at time 0. No parameters of a real rope are published with these models; take them from your own tests.";
    private const string Method = "Closed solution of the linear equation of motion; a root finder for the times of greatest force and stretch.";
    private const string Literature = "linear rope models as in M. Pavier, Sports Engineering 1 (1998), and U. Leuthäusser, The physics of a climbing rope (2015)";
    private const double ShortestTime = 1e-6, LongestTime = 1e9, StiffTime = 10;

    /// <summary>First loading of a Kelvin–Voigt rope: spring and dashpot side by side.</summary>
    /// <exception cref="DomainException">A value is outside its limits, or the rope is damped so strongly that it only creeps.</exception>
    [Callable(Topics.ViscoElastic, "What does a fall do to a rope of spring and dashpot side by side?", Assumes = Fixed, NotFor = "The first instant: the model's force jumps to C v0 as the rope comes taut.")]
    [NoFormula(Method)]
    [Example("KelvinVoigtFall(80 kg, 20 kN, 25 ms, 4.6 m, 2.6 m).PeakForce", "7077.70047 N")]
    [CautionWhen("PeakTime <= 0 && PeakForce > 0", "The greatest force is the model's own jump as the rope comes taut, which no rope shows.")]
    [Source("m x'' = m g - k x - c x'; " + Literature, Standing.Derived)]
    public static ViscoElasticFall KelvinVoigtFall(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K", "kN", "modulus of the spring", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 5, UsualTo = 200)] Force modulus,
        [Parameter("τ", "s", "relaxation time C / K; 0 for no damping (RelaxationTime)", AtLeast = 0, AtMost = StiffTime, UsualTo = 0.1)] Duration relaxationTime,
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L", "m", "unstretched length of the rope that takes the load", AtLeast = 0.01, AtMost = Limits.LengthMetres)] Length ropeOut)
    {
        var start = Start.Of(mass, fall, ropeOut);
        double k = Inputs.PositiveForce(modulus) / start.Length;
        var motion = RopeMotion.KelvinVoigt(start.Mass, k, Time(relaxationTime, 0, StiffTime), start.Speed);
        return Peak(motion, start, k, double.PositiveInfinity);
    }

    /// <summary>First loading of a Maxwell rope: spring and dashpot in line.</summary>
    /// <exception cref="DomainException">A value is outside its limits, or the rope creeps so fast that the climber is not brought to rest.</exception>
    [Callable(Topics.ViscoElastic, "What does a fall do to a rope of spring and dashpot in line?", Assumes = Fixed, NotFor = "Anything after the first peak: the model creeps without limit under the weight.")]
    [NoFormula(Method)]
    [Example("MaxwellFall(80 kg, 20 kN, 1 s, 4.6 m, 2.6 m).PeakForce", "7643.65517 N")]
    [Source("F' = k x' - F / tau; " + Literature, Standing.Derived)]
    public static ViscoElasticFall MaxwellFall(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K", "kN", "modulus of the spring", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 5, UsualTo = 200)] Force modulus,
        [Parameter("τ", "s", "relaxation time C / K (RelaxationTime)", AtLeast = ShortestTime, AtMost = LongestTime, UsualFrom = 0.1)] Duration relaxationTime,
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L", "m", "unstretched length of the rope that takes the load", AtLeast = 0.01, AtMost = Limits.LengthMetres)] Length ropeOut)
    {
        var start = Start.Of(mass, fall, ropeOut);
        double k = Inputs.PositiveForce(modulus) / start.Length;
        return Peak(RopeMotion.Solid(start.Mass, 0, k, Time(relaxationTime, ShortestTime, LongestTime), start.Speed), start, 0, k);
    }

    /// <summary>First loading of a standard linear solid: a spring beside a spring and dashpot in line.</summary>
    /// <exception cref="DomainException">A value is outside its limits, or the rope is damped so strongly that it only creeps.</exception>
    [Callable(Topics.ViscoElastic, "What does a fall do to a rope of the standard linear solid?", Assumes = Fixed, NotFor = "A rope's stiffening at large stretch, or the onset of friction near the peak that tests show.")]
    [NoFormula(Method)]
    [Example("StandardSolidFall(80 kg, 10 kN, 14 kN, 0.1 s, 4.6 m, 2.6 m).PeakForce", "6653.81824 N")]
    [CautionWhen("MaxStretch < mass * gn * ropeOut / springModulus", "The climber first rests above the hanging position and later sinks to it: the final stretch is the weight over K1, times the length.")]
    [Source("F = k1 x + q, q' = k2 x' - q / tau; " + Literature, Standing.Derived)]
    public static ViscoElasticFall StandardSolidFall(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K1", "kN", "modulus of the lone spring, which holds the climber at rest", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 2, UsualTo = 200)] Force springModulus,
        [Parameter("K2", "kN", "modulus of the spring in line with the dashpot", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 2, UsualTo = 200)] Force dashpotModulus,
        [Parameter("τ", "s", "relaxation time C / K2 (RelaxationTime)", AtLeast = ShortestTime, AtMost = LongestTime, UsualFrom = 0.01)] Duration relaxationTime,
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L", "m", "unstretched length of the rope that takes the load", AtLeast = 0.01, AtMost = Limits.LengthMetres)] Length ropeOut)
    {
        var start = Start.Of(mass, fall, ropeOut);
        double k1 = Inputs.PositiveForce(springModulus) / start.Length, k2 = Inputs.PositiveForce(dashpotModulus) / start.Length;
        return Peak(RopeMotion.Solid(start.Mass, k1, k2, Time(relaxationTime, ShortestTime, LongestTime), start.Speed), start, k1, k2);
    }

    /// <summary>Relaxation time from a viscosity constant C in N·s (force per rate of relative stretch) and the modulus of its spring.</summary>
    /// <exception cref="DomainException">A value is outside its limits or the viscosity constant is no force times time.</exception>
    [Callable(Topics.ViscoElastic, "What relaxation time do this viscosity constant and this modulus have?", Assumes = "C is force per rate of relative stretch.", NotFor = "A damping constant of one piece of rope in N s/m: multiply it by the length first.")]
    [Formula("viscosity / modulus", Symbol = "τ")]
    [Example("RelaxationTime(500 N·s, 20 kN)", "0.0250000000 s")]
    [Source("tau = C / K; definition", Standing.Derived)]
    public static Duration RelaxationTime(
        [Parameter("C", "N·s", "viscosity constant of the dashpot", AtLeast = 0, AtMost = 1e12)] Quantity viscosity,
        [Parameter("K", "kN", "modulus of the spring beside or in line with it", Above = 0, AtMost = Limits.ForceKilonewtons)] Force modulus)
    {
        if (viscosity.Dimension != Dimension.Of(1, 1, -1)) throw new DomainException("viscosity must be a force times a time, in N·s.", nameof(viscosity));
        double c = Require.AtMost(Require.AtLeast(viscosity.Si, 0, "N·s", nameof(viscosity)), 1e12, "N·s", nameof(viscosity));
        return Duration.FromSeconds(c / Inputs.PositiveForce(modulus));
    }

    internal static double Time(Duration relaxationTime, double least, double most) =>
        Require.AtMost(Require.AtLeast(relaxationTime.Seconds, least, "s", nameof(relaxationTime)), most, "s", nameof(relaxationTime));

    private static ViscoElasticFall Peak(RopeMotion motion, Start start, double k1, double k2)
    {
        double rest = motion.RestTime();
        double peak = motion.PeakTime(rest);
        var (force, stretch) = motion.At(rest);
        double branch = force - (k1 * stretch);
        double work = start.Mass * StandardGravity.MetresPerSecondSquared * (start.Fall + stretch);
        double stored = ((k1 * stretch * stretch) + (double.IsFinite(k2) ? branch * branch / k2 : 0)) / 2;
        return new ViscoElasticFall
        {
            PeakForce = Force.FromNewtons(motion.ForceAt(peak)),
            PeakTime = Duration.FromSeconds(peak),
            MaxStretch = Length.FromMeters(stretch),
            StretchTime = Duration.FromSeconds(rest),
            StartForce = Force.FromNewtons(Math.Max(0, motion.ForceAt(0))),
            ForceAtMaxStretch = Force.FromNewtons(force),
            FallEnergy = Energy.FromJoules(work),
            StoredEnergy = Energy.FromJoules(stored),
            DissipatedFraction = Math.Clamp(1 - (stored / work), 0, 1),
        };
    }
}
