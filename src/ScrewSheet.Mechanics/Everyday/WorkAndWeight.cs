using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>Energy from a force along a way, and the force that gravity puts on a mass.</summary>
public static class WorkAndWeight
{
    /// <summary>Standard acceleration of free fall, m/s².</summary>
    internal const double Gn = 9.80665;

    /// <summary>The work of a constant force along its own direction, in joules: an energy, where a bare product of force and length could be a torque.</summary>
    /// <exception cref="DomainException">A value is not finite.</exception>
    [Callable("Everyday", "What work does a force do along a way?", Assumes = "The force is constant and acts along the way.", NotFor = "Torques.")]
    [Formula("force*distance", Symbol = "W")]
    [Source("Definition of work", Standing.Derived)]
    [Example("Work(2 kN, 0.5 m)", "1000 J")]
    public static Energy Work(
        [Parameter("F", "kN", "the force along the way; negative when it acts against it", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force force,
        [Parameter("s", "m", "the way", AtLeast = -Most.Metres, AtMost = Most.Metres)] Length distance) =>
        Energy.FromJoules(Admit.Signed(force.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(force))
            * Admit.Signed(distance.Meters, Most.Metres, Scale.Metre, nameof(distance)));

    /// <summary>The weight of a mass at standard gravity, in newtons.</summary>
    /// <exception cref="DomainException">The mass is negative or not finite.</exception>
    [Callable("Everyday", "What does a mass weigh?", Assumes = "Standard gravity, 9.80665 m/s²; the mass hangs still.", NotFor = "The force of a fall, which is several times the weight.")]
    [Formula("mass*gn", Symbol = "w")]
    [Source("Bureau international des poids et mesures, The International System of Units: standard acceleration of free fall, 9.80665 m/s² by definition", Standing.Derived)]
    [Example("Weight(80 kg)", "784.532 N")]
    public static Force Weight([Parameter("m", "kg", "the mass", AtLeast = 0, AtMost = Most.Kilograms)] Mass mass) =>
        Force.FromNewtons(Admit.Between(mass.Kilograms, 0, Most.Kilograms, Scale.Kilogram, nameof(mass)) * Gn);

    /// <summary>The standard acceleration of free fall, 9.80665 m/s².</summary>
    [Callable("Everyday", "What is the standard acceleration of free fall?", NotFor = "Matching a textbook that used 9.80 or 9.81 m/s² to its last digit.")]
    [Formula("gn", Symbol = "g_n")]
    [Source("Bureau international des poids et mesures, The International System of Units: standard acceleration of free fall, 9.80665 m/s² by definition", Standing.Derived)]
    [Example("StandardGravity()", "9.80665 m/s²")]
    public static Acceleration StandardGravity() => Acceleration.FromMetersPerSecondSquared(Gn);
}
