using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.ViscoElastic;

/// <summary>Sampled histories of the three visco-elastic rope models.</summary>
public static class FallHistories
{
    private const string Fixed = "A rigid mass on a uniform rope, fixed belay, no friction at pieces, rope mass ignored; the rope is just taut at time 0.";
    private const string Slack = "What follows once the rope goes slack: a rope cannot push.";
    private const string Method = "Closed solution of the linear equation of motion, evaluated at even times from 0 to the end.";
    private const string Literature = "linear rope models as in M. Pavier, Sports Engineering 1 (1998), and U. Leuthäusser, The physics of a climbing rope (2015)";
    private const double ShortestTime = 1e-6, LongestTime = 1e9, StiffTime = 10, LongestHistory = 1000, MostSamples = 100_000;

    /// <summary>Tension and stretch of a Kelvin–Voigt rope over time.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.ViscoElastic, "How do tension and stretch of a Kelvin-Voigt rope run over time?", Assumes = Fixed, NotFor = Slack)]
    [NoFormula(Method)]
    [Example("KelvinVoigtHistory(80 kg, 20 kN, 25 ms, 4.6 m, 2.6 m, 0.2 s, 201).Forces.Count", "201")]
    [Source("m x'' = m g - k x - c x'; " + Literature, Standing.Derived)]
    public static FallHistory KelvinVoigtHistory(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K", "kN", "modulus of the spring", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 5, UsualTo = 200)] Force modulus,
        [Parameter("τ", "s", "relaxation time C / K; 0 for no damping", AtLeast = 0, AtMost = StiffTime, UsualTo = 0.1)] Duration relaxationTime,
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L", "m", "unstretched length of the rope that takes the load", AtLeast = 0.01, AtMost = Limits.LengthMetres)] Length ropeOut,
        [Parameter("t_end", "s", "time of the last sample", Above = 0, AtMost = LongestHistory)] Duration until,
        [Parameter("n", "", "samples, both ends included; a whole number", AtLeast = 2, AtMost = MostSamples)] double samples)
    {
        var start = Start.Of(mass, fall, ropeOut);
        double k = Inputs.PositiveForce(modulus) / start.Length;
        return Sample(RopeMotion.KelvinVoigt(start.Mass, k, ViscoElasticRopes.Time(relaxationTime, 0, StiffTime), start.Speed), until, samples);
    }

    /// <summary>Tension and stretch of a Maxwell rope over time.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.ViscoElastic, "How do tension and stretch of a Maxwell rope run over time?", Assumes = Fixed, NotFor = Slack)]
    [NoFormula(Method)]
    [Example("MaxwellHistory(80 kg, 20 kN, 1 s, 4.6 m, 2.6 m, 0.2 s, 201).Forces.Count", "201")]
    [Source("F' = k x' - F / tau; " + Literature, Standing.Derived)]
    public static FallHistory MaxwellHistory(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K", "kN", "modulus of the spring", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 5, UsualTo = 200)] Force modulus,
        [Parameter("τ", "s", "relaxation time C / K", AtLeast = ShortestTime, AtMost = LongestTime, UsualFrom = 0.1)] Duration relaxationTime,
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L", "m", "unstretched length of the rope that takes the load", AtLeast = 0.01, AtMost = Limits.LengthMetres)] Length ropeOut,
        [Parameter("t_end", "s", "time of the last sample", Above = 0, AtMost = LongestHistory)] Duration until,
        [Parameter("n", "", "samples, both ends included; a whole number", AtLeast = 2, AtMost = MostSamples)] double samples)
    {
        var start = Start.Of(mass, fall, ropeOut);
        double k = Inputs.PositiveForce(modulus) / start.Length;
        return Sample(RopeMotion.Solid(start.Mass, 0, k, ViscoElasticRopes.Time(relaxationTime, ShortestTime, LongestTime), start.Speed), until, samples);
    }

    /// <summary>Tension and stretch of a standard linear solid over time.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.ViscoElastic, "How do tension and stretch of a standard linear solid run over time?", Assumes = Fixed, NotFor = Slack)]
    [NoFormula(Method)]
    [Example("StandardSolidHistory(80 kg, 10 kN, 14 kN, 0.1 s, 4.6 m, 2.6 m, 0.2 s, 201).Forces.Count", "201")]
    [Source("F = k1 x + q, q' = k2 x' - q / tau; " + Literature, Standing.Derived)]
    public static FallHistory StandardSolidHistory(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K1", "kN", "modulus of the lone spring, which holds the climber at rest", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 2, UsualTo = 200)] Force springModulus,
        [Parameter("K2", "kN", "modulus of the spring in line with the dashpot", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 2, UsualTo = 200)] Force dashpotModulus,
        [Parameter("τ", "s", "relaxation time C / K2", AtLeast = ShortestTime, AtMost = LongestTime, UsualFrom = 0.01)] Duration relaxationTime,
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L", "m", "unstretched length of the rope that takes the load", AtLeast = 0.01, AtMost = Limits.LengthMetres)] Length ropeOut,
        [Parameter("t_end", "s", "time of the last sample", Above = 0, AtMost = LongestHistory)] Duration until,
        [Parameter("n", "", "samples, both ends included; a whole number", AtLeast = 2, AtMost = MostSamples)] double samples)
    {
        var start = Start.Of(mass, fall, ropeOut);
        double k1 = Inputs.PositiveForce(springModulus) / start.Length, k2 = Inputs.PositiveForce(dashpotModulus) / start.Length;
        return Sample(RopeMotion.Solid(start.Mass, k1, k2, ViscoElasticRopes.Time(relaxationTime, ShortestTime, LongestTime), start.Speed), until, samples);
    }

    private static FallHistory Sample(RopeMotion motion, Duration until, double samples)
    {
        double end = Require.AtMost(Require.Above(until.Seconds, 0, "s", nameof(until)), LongestHistory, "s", nameof(until));
        double count = Inputs.Number(samples, 2, MostSamples);
        return count == Math.Floor(count) ? FallHistory.Sample(motion, end, (int)count) : throw new DomainException("samples must be a whole number.", nameof(samples));
    }
}
