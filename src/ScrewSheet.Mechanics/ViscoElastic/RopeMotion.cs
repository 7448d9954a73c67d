using MathNet.Numerics.RootFinding;
using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.ViscoElastic;

/// <summary>The closed solution for a mass on a linear visco-elastic rope, from the rope coming taut; all in SI.</summary>
/// <remarks>Time is counted, and stretch measured, from the rope just taut. The speed is a sum of decaying motions; force and stretch follow from it.</remarks>
internal sealed class RopeMotion
{
    private const double Gravity = StandardGravity.MetresPerSecondSquared;
    private const int LongestSearch = 200;

    /// <summary>The last Newton's step towards a root (Halley's is all but 0 at a turning point as well), as a share of the time to rest without damping, is below this; what is left then is of the order of its cube.</summary>
    private const double LastStep = 1e-7;

    private readonly double mass, elasticTime, startJerk;
    private readonly bool withLone;
    private readonly Modes modes;
    private readonly Weights speed, acceleration, jerk;

    private RopeMotion(double mass, double entrySpeed, double stiffness, Modes modes, Weights speed, double startJerk)
    {
        (this.mass, this.modes, this.speed, this.startJerk) = (mass, modes, speed, startJerk);
        withLone = speed.Lone != 0;
        acceleration = modes.Derivative(speed);
        jerk = modes.Derivative(acceleration);
        double omega = Math.Sqrt(stiffness / mass);
        elasticTime = Math.Atan2(entrySpeed * omega, -Gravity) / omega;
    }

    /// <summary>Spring and dashpot side by side: stiffness in N/m, relaxation time C/K in s.</summary>
    public static RopeMotion KelvinVoigt(double mass, double stiffness, double relaxationTime, double entrySpeed)
    {
        double damping = stiffness * relaxationTime / (2 * mass);
        double start = Gravity - (2 * damping * entrySpeed);
        var modes = new Modes(0, damping, stiffness / mass);
        return new RopeMotion(mass, entrySpeed, stiffness, modes, modes.FitPair(entrySpeed, start), -(2 * damping * start) - (stiffness / mass * entrySpeed));
    }

    /// <summary>A spring (0 for none) beside a spring and dashpot in line: stiffnesses in N/m, relaxation time C/K2 in s.</summary>
    public static RopeMotion Solid(double mass, double spring, double dashpotSpring, double relaxationTime, double entrySpeed)
    {
        var (rate, damping, stiffness) = SolidRates.Of(spring / mass, dashpotSpring / mass, relaxationTime);
        double total = spring + dashpotSpring, startJerk = -total * entrySpeed / mass;
        var modes = new Modes(rate, damping, stiffness);
        return new RopeMotion(mass, entrySpeed, total, modes, modes.Fit(entrySpeed, Gravity, startJerk), startJerk);
    }

    /// <summary>Tension in N and stretch in m at a time.</summary>
    public (double Force, double Stretch) At(double t)
    {
        Weights motions = Motions(t);
        return (mass * (Gravity - acceleration.Of(motions)), modes.Integral(speed, motions, t));
    }

    /// <summary>Tension at a time, in N.</summary>
    public double ForceAt(double t) => mass * (Gravity - acceleration.Of(Motions(t)));

    /// <summary>Time of the greatest stretch: the first moment at rest after the start.</summary>
    /// <exception cref="DomainException">The mass only creeps on.</exception>
    public double RestTime()
    {
        if (modes.FirstZero(speed) is { } rest) return rest;
        double from = 0, to = elasticTime;
        Weights last = Motions(to);
        for (int step = 0; speed.Of(last) > 0; step++)
        {
            if (step == LongestSearch) throw new DomainException("The climber is not brought to rest: with this relaxationTime the rope is damped so strongly that it only creeps.", "relaxationTime");
            (from, to) = (to, to + (elasticTime / 2));
            last = Motions(to);
        }
        return Root(speed, from, to, last);
    }

    /// <summary>Time of the greatest force before the mass comes to rest at <paramref name="restTime"/>: where the jerk turns from negative to positive.</summary>
    /// <remarks>The jerk at time 0 is taken from the equation of motion, since for a fall of no height it is exactly 0 and its sign in the sum of motions is rounding.
    /// The bracket is short, since far behind the peak of a strongly damped rope the jerk is all but 0.</remarks>
    public double PeakTime(double restTime)
    {
        if (startJerk > 0) return 0;
        if (modes.FirstZero(-jerk) is { } zero) return Math.Min(zero, restTime);
        double from = 0, to = Math.Min(elasticTime / 2, restTime);
        Weights last = Motions(to);
        while (jerk.Of(last) < 0)
        {
            if (to == restTime) return restTime;
            (from, to) = (to, Math.Min(to + (elasticTime / 2), restTime));
            last = Motions(to);
        }
        return Root(-jerk, from, to, last);
    }

    private Weights Motions(double t) => modes.At(t, withLone);

    /// <summary>Halley's steps from the far end of the bracket, where the sum is not positive any more; should they leave the bracket, Brent's method inside it.</summary>
    /// <remarks>A fall of little or no height has a root at the start itself, which is not the one sought.</remarks>
    private double Root(Weights sum, double from, double to, Weights last)
    {
        Weights slope = modes.Derivative(sum), bend = modes.Derivative(slope), motions = last;
        double t = to, least = from == 0 ? to / 1000 : from;
        for (int i = 0; i < 20; i++)
        {
            double first = slope.Of(motions), newton = sum.Of(motions) / first;
            t -= newton / (1 - (newton * bend.Of(motions) / (2 * first)));
            if (!(t >= least && t <= to * (1 + LastStep))) break;
            if (Math.Abs(newton) < LastStep * elasticTime) return t;
            motions = Motions(t);
        }
        double Value(double at) => sum.Of(Motions(at));
        return sum.Of(last) == 0 ? to : Brent.FindRoot(Value, Value(least) > 0 ? least : from, to, 1e-11, 200);
    }
}
