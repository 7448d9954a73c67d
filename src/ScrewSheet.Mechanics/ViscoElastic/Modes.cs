namespace ScrewSheet.Mechanics.ViscoElastic;

/// <summary>
/// The decaying motions of a linear rope: <c>e^(rate·t)</c>, <c>e^(-damping·t)·C</c> and <c>e^(-damping·t)·S</c>, where C and S are cos βt and sin βt / β,
/// or their hyperbolic kin when <c>β² = stiffness − damping²</c> is negative. Speed, its derivatives and its integral are sums of them with other weights,
/// so that one evaluation of the motions serves them all.
/// </summary>
internal readonly struct Modes
{
    private readonly double rate, damping, stiffness, beta2, beta;

    /// <param name="rate">Rate of the lone motion in 1/s; 0 for a steady one.</param>
    /// <param name="damping">Half the linear coefficient of the pair's polynomial, in 1/s.</param>
    /// <param name="stiffness">Constant coefficient of the pair's polynomial, in 1/s².</param>
    public Modes(double rate, double damping, double stiffness)
    {
        (this.rate, this.damping, this.stiffness) = (rate, damping, stiffness);
        beta2 = stiffness - (damping * damping);
        beta = Math.Sqrt(Math.Abs(beta2));
    }

    /// <summary>The weights that have that value and first and second derivative at time 0.</summary>
    public Weights Fit(double value, double first, double second)
    {
        double lone = (second + (2 * damping * first) + (stiffness * value)) / ((rate * rate) + (2 * damping * rate) + stiffness);
        double cosine = value - lone;
        return new Weights(lone, cosine, first - (rate * lone) + (damping * cosine));
    }

    /// <summary>The weights of the pair alone that have that value and derivative at time 0.</summary>
    public Weights FitPair(double value, double first) => new(0, value, first + (damping * value));

    /// <summary>The derivative in time.</summary>
    public Weights Derivative(Weights of) =>
        new(rate * of.Lone, of.Sine - (damping * of.Cosine), -(damping * of.Sine) - (beta2 * of.Cosine));

    /// <summary>The motions at a time; the lone one only where it is wanted.</summary>
    public Weights At(double t, bool withLone)
    {
        double lone = !withLone ? 0 : rate == 0 ? 1 : Math.Exp(rate * t);
        if (beta2 > 0)
        {
            var (sin, cos) = Math.SinCos(beta * t);
            double decay = damping == 0 ? 1 : Math.Exp(-damping * t);
            return new Weights(lone, decay * cos, decay * sin / beta);
        }
        double fast = damping + beta;
        double slow = stiffness / fast;
        double late = Math.Exp(-slow * t), early = Math.Exp(-fast * t);
        double s = beta * t > 1 ? (late - early) / (2 * beta) : Math.Exp(-damping * t) * (beta == 0 ? t : Math.Sinh(beta * t) / beta);
        return new Weights(lone, (late + early) / 2, s);
    }

    /// <summary>Integral of the sum from 0 to the time at which the motions stand.</summary>
    public double Integral(Weights of, Weights motions, double t)
    {
        double cosine = -((damping * of.Cosine) + of.Sine) / stiffness;
        double sine = ((beta2 * of.Cosine) - (damping * of.Sine)) / stiffness;
        return (of.Lone == 0 ? 0 : of.Lone * Grown(rate, t)) + (cosine * motions.Cosine) + (sine * motions.Sine) - cosine;
    }

    /// <summary>Where the pair alone first comes from positive to zero after the start, when it swings; null when it does not swing or a lone motion has a weight.</summary>
    /// <param name="of">Its cosine is at least 0, the value at the start.</param>
    public double? FirstZero(Weights of) =>
        beta2 > 0 && of.Lone == 0 ? Math.Atan2(Math.Max(0.0, of.Cosine) * beta, -of.Sine) / beta : null;

    private static double Grown(double rate, double t)
    {
        double half = rate * t / 2;
        if (half == 0) return t;
        return Math.Abs(half) > 1 ? (Math.Exp(2 * half) - 1) / rate : 2 * Math.Exp(half) * Math.Sinh(half) / rate;
    }
}

/// <summary>What stands before the three motions in a sum; also the three motions themselves at one time.</summary>
/// <param name="Lone">Of the lone motion.</param>
/// <param name="Cosine">Of C.</param>
/// <param name="Sine">Of S.</param>
internal readonly record struct Weights(double Lone, double Cosine, double Sine)
{
    /// <summary>The sum at the time at which the motions stand.</summary>
    public double Of(Weights motions) => (Lone * motions.Lone) + (Cosine * motions.Cosine) + (Sine * motions.Sine);

    /// <summary>The sum with the other sign.</summary>
    public static Weights operator -(Weights of) => new(-of.Lone, -of.Cosine, -of.Sine);
}
