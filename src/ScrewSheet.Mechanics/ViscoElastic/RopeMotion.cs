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

    /// <summary>The last Newton step, in s, is below this; what is left then is about its square.</summary>
    private const double LastStep = 1e-8;

    private readonly double mass, elasticTime, startJerk;
    private readonly Modes speed, acceleration, jerk;

    private RopeMotion(double mass, double entrySpeed, double stiffness, Modes speed, double startJerk)
    {
        this.mass = mass;
        this.speed = speed;
        this.startJerk = startJerk;
        acceleration = speed.Derivative();
        jerk = acceleration.Derivative();
        double omega = Math.Sqrt(stiffness / mass);
        elasticTime = Math.Atan2(entrySpeed * omega, -Gravity) / omega;
    }

    /// <summary>Spring and dashpot side by side: stiffness in N/m, relaxation time C/K in s.</summary>
    public static RopeMotion KelvinVoigt(double mass, double stiffness, double relaxationTime, double entrySpeed)
    {
        double damping = stiffness * relaxationTime / (2 * mass);
        double start = Gravity - (2 * damping * entrySpeed);
        var speed = Modes.FitPair(damping, stiffness / mass, entrySpeed, start);
        return new RopeMotion(mass, entrySpeed, stiffness, speed, -(2 * damping * start) - (stiffness / mass * entrySpeed));
    }

    /// <summary>A spring (0 for none) beside a spring and dashpot in line: stiffnesses in N/m, relaxation time C/K2 in s.</summary>
    public static RopeMotion Solid(double mass, double spring, double dashpotSpring, double relaxationTime, double entrySpeed)
    {
        var (rate, damping, stiffness) = SolidRates.Of(spring / mass, dashpotSpring / mass, relaxationTime);
        double total = spring + dashpotSpring, startJerk = -total * entrySpeed / mass;
        var speed = Modes.Fit(rate, damping, stiffness, entrySpeed, Gravity, startJerk);
        return new RopeMotion(mass, entrySpeed, total, speed, startJerk);
    }

    /// <summary>Tension at a time, in N.</summary>
    public double ForceAt(double t) => mass * (Gravity - acceleration.At(t));

    /// <summary>Stretch at a time, in m.</summary>
    public double StretchAt(double t) => speed.IntegralTo(t);

    /// <summary>Time of the greatest stretch: the first moment at rest after the start.</summary>
    /// <exception cref="DomainException">The mass only creeps on.</exception>
    public double RestTime()
    {
        double from = AfterStart(speed, elasticTime, 1), to = elasticTime;
        for (int step = 0; speed.At(to) > 0; step++)
        {
            if (step == LongestSearch) throw new DomainException("The climber is not brought to rest: with this relaxationTime the rope is damped so strongly that it only creeps.", "relaxationTime");
            (from, to) = (to, to + (elasticTime / 2));
        }
        return Root(speed, from, to);
    }

    /// <summary>Time of the greatest force before the mass comes to rest at <paramref name="restTime"/>: where the jerk turns from negative to positive.</summary>
    /// <remarks>The jerk at time 0 is taken from the equation of motion, since for a fall of no height it is exactly 0 and its sign in the sum of motions is rounding.
    /// The bracket is short, since far behind the peak of a strongly damped rope the jerk is all but 0.</remarks>
    public double PeakTime(double restTime)
    {
        if (startJerk > 0) return 0;
        double from = AfterStart(jerk, restTime, -1), to = Math.Min(elasticTime / 2, restTime);
        while (jerk.At(to) < 0)
        {
            if (to == restTime) return restTime;
            (from, to) = (to, Math.Min(to + (elasticTime / 2), restTime));
        }
        return Root(jerk, from, to);
    }

    /// <summary>A time just after the start where the function has the sign it starts with; a fall of little or no height has a root at the start itself.</summary>
    private static double AfterStart(Modes function, double span, int sign) => function.At(span / 1000) * sign > 0 ? span / 1000 : 0;

    /// <summary>Newton's steps from where the chord over the bracket crosses; should they leave it, Brent's method inside it.</summary>
    private static double Root(Modes function, double from, double to)
    {
        double first = function.At(from), last = function.At(to);
        double t = from + ((to - from) * first / (first - last));
        for (int i = 0; i < 20 && t >= from && t <= to + LastStep; i++)
        {
            var (value, slope) = function.WithSlope(t);
            double step = value / slope;
            t -= step;
            if (Math.Abs(step) < LastStep) return t;
        }
        return last == 0 ? to : Brent.FindRoot(function.At, from, to, 1e-11, 200);
    }
}
