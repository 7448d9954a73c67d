using System.Globalization;
using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tethers;

/// <summary>Absorbers that tear or brake at a constant force.</summary>
public static class EnergyAbsorbers
{
    private const string Light = "An absorber tuned for adults may not tear under a light user: check the 40 kg row of its standard.";

    /// <summary>How much of an absorber tears; the tear force must exceed the weight.</summary>
    /// <exception cref="DomainException">A value is outside its limits, or the tear force is no more than the weight, so that the fall is never stopped.</exception>
    [Callable(Topics.Tethers, "How much of an energy absorber tears in this fall?", Assumes = "The absorber tears at a constant force and takes all the energy; lanyard and body do not give.", NotFor = "Whether it tears at all: below its tear force it does not act.")]
    [Let("w", "mass * gn", "N")]
    [Needs("tearForce > w")]
    [Formula("w * fall / (tearForce - w)", Symbol = "d")]
    [Example("AbsorberTear(100 kg, 4 m, 6 kN)", "0.781509901 m")]
    [CautionWhen("d > 1.75", "More than the 1.75 m that EN 355:2002 allows an absorber to extend.")]
    [CautionWhen("mass < 50", Light)]
    [CautionWhen("tearForce > 6000", "A tear force above 6 kN, the limit for a user's body.")]
    [Source("energy balance; extension and force limits EN 355:2002", Standing.Read)]
    public static Length AbsorberTear(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 40, UsualTo = 120)] Mass mass,
        [Parameter("h", "m", "free-fall height before the absorber begins to tear", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 6)] Length fall,
        [Parameter("F_a", "kN", "force at which it tears, constant", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 1.3, UsualTo = 6)] Force tearForce)
    {
        double w = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        double h = Inputs.Distance(fall);
        double force = Inputs.PositiveForce(tearForce);
        return force > w ? Length.FromMeters(w * h / (force - w)) : throw NeverStopped(force, w);
    }

    /// <summary>Mean force of an absorber that stops a fall over a known tear length.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Tethers, "What mean force stops a fall over this tear length?", Assumes = "Energy balance: mean over the tear length.", NotFor = "The peak, which is higher.")]
    [Formula("mass * gn * (fall + tear) / tear", Symbol = "F_mean")]
    [Example("AbsorberMeanForce(100 kg, 4 m, 1.75 m)", "3222.18500 N")]
    [CautionWhen("mass < 50", Light)]
    [Source("w (h + d) / d; energy balance", Standing.Derived)]
    public static Force AbsorberMeanForce(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 40, UsualTo = 120)] Mass mass,
        [Parameter("h", "m", "free-fall height before the absorber begins to tear", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 6)] Length fall,
        [Parameter("d", "m", "tear length", AtLeast = 0.001, AtMost = Limits.LengthMetres, UsualTo = 2.2)] Length tear)
    {
        double w = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        double d = Require.AtMost(Require.AtLeast(tear.Meters, 0.001, "m", nameof(tear)), Limits.LengthMetres, "m", nameof(tear));
        return Force.FromNewtons(w * (Inputs.Distance(fall) + d) / d);
    }

    /// <summary>Clear height below the anchor for a lanyard with absorber.</summary>
    /// <exception cref="DomainException">A length is negative or beyond 10 km.</exception>
    [Callable(Topics.Tethers, "How much clear height below the anchor does a lanyard with absorber need?", Assumes = "The anchor does not move.", NotFor = "Swinging falls, or a flexible anchor line that sags.")]
    [Formula("lanyard + tear + person + margin", Symbol = "H")]
    [Example("AbsorberClearance(2 m, 1.75 m, 2 m, 1 m)", "6.75000000 m")]
    [Source("published example: lanyard 2 + torn absorber 1.75 + person 2 + margin 1 = 6.75 m", Standing.Read)]
    public static Length AbsorberClearance(
        [Parameter("l", "m", "length of the lanyard with its connectors", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 2)] Length lanyard,
        [Parameter("d", "m", "tear length", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 2.2)] Length tear,
        [Parameter("p", "m", "person below the attachment", AtLeast = 0, AtMost = Limits.LengthMetres, UsualFrom = 1, UsualTo = 2)] Length person,
        [Parameter("c", "m", "margin kept free", AtLeast = 0, AtMost = Limits.LengthMetres, UsualFrom = 0.5)] Length margin) =>
        Length.FromMeters(Inputs.Distance(lanyard) + Inputs.Distance(tear) + Inputs.Distance(person) + Inputs.Distance(margin));

    private static DomainException NeverStopped(double force, double w) => new(string.Create(CultureInfo.InvariantCulture,
        $"The fall is never stopped: tearForce must be greater than the weight of {w / 1000:G6} kN; it is {force / 1000:G6} kN."), "tearForce");
}
