namespace ScrewSheet.Mechanics.ViscoElastic;

/// <summary>
/// A sum of the decaying motions of a linear rope: <c>lone·e^(rate·t) + e^(-damping·t)·(cosine·C + sine·S)</c>, where C and S are cos βt and sin βt / β,
/// or their hyperbolic kin when <c>β² = stiffness − damping²</c> is negative. Derivatives are of the same form.
/// </summary>
/// <param name="Rate">Rate of the lone motion in 1/s; 0 for a steady one.</param>
/// <param name="Damping">Half the linear coefficient of the pair's polynomial, in 1/s.</param>
/// <param name="Stiffness">Constant coefficient of the pair's polynomial, in 1/s².</param>
/// <param name="Lone">Weight of the lone motion.</param>
/// <param name="Cosine">Weight of C.</param>
/// <param name="Sine">Weight of S.</param>
internal readonly record struct Modes(double Rate, double Damping, double Stiffness, double Lone, double Cosine, double Sine)
{
    /// <summary>β², kept since every evaluation needs it and its root.</summary>
    private readonly double beta2 = Stiffness - (Damping * Damping), beta = Math.Sqrt(Math.Abs(Stiffness - (Damping * Damping)));

    /// <summary>The motion with that value and first and second derivative at time 0.</summary>
    public static Modes Fit(double rate, double damping, double stiffness, double value, double first, double second)
    {
        double lone = (second + (2 * damping * first) + (stiffness * value)) / ((rate * rate) + (2 * damping * rate) + stiffness);
        double cosine = value - lone;
        return new Modes(rate, damping, stiffness, lone, cosine, first - (rate * lone) + (damping * cosine));
    }

    /// <summary>The motion of the pair alone with that value and derivative at time 0.</summary>
    public static Modes FitPair(double damping, double stiffness, double value, double first) =>
        new(0, damping, stiffness, 0, value, first + (damping * value));

    /// <summary>Value at a time.</summary>
    public double At(double t)
    {
        var (c, s) = Pair(t);
        return (Lone == 0 ? 0 : Lone * Math.Exp(Rate * t)) + (Cosine * c) + (Sine * s);
    }

    /// <summary>Value and slope at a time.</summary>
    public (double Value, double Slope) WithSlope(double t)
    {
        var (c, s) = Pair(t);
        double lone = Lone == 0 ? 0 : Lone * Math.Exp(Rate * t);
        return (lone + (Cosine * c) + (Sine * s), (Rate * lone) + ((Sine - (Damping * Cosine)) * c) - (((Damping * Sine) + (beta2 * Cosine)) * s));
    }

    /// <summary>Integral from 0 to a time.</summary>
    public double IntegralTo(double t)
    {
        double cosine = -((Damping * Cosine) + Sine) / Stiffness;
        double sine = ((beta2 * Cosine) - (Damping * Sine)) / Stiffness;
        var (c, s) = Pair(t);
        return (Lone == 0 ? 0 : Lone * Grown(Rate, t)) + (cosine * c) + (sine * s) - cosine;
    }

    /// <summary>The derivative in time.</summary>
    public Modes Derivative() => this with
    {
        Lone = Rate * Lone,
        Cosine = Sine - (Damping * Cosine),
        Sine = -(Damping * Sine) - (beta2 * Cosine),
    };

    private (double C, double S) Pair(double t)
    {
        if (beta2 > 0)
        {
            var (sin, cos) = Math.SinCos(beta * t);
            double decay = Math.Exp(-Damping * t);
            return (decay * cos, decay * sin / beta);
        }
        double spread = beta;
        double fast = Damping + spread;
        double slow = Stiffness / fast;
        double late = Math.Exp(-slow * t), early = Math.Exp(-fast * t);
        double s = spread * t > 1 ? (late - early) / (2 * spread) : Math.Exp(-Damping * t) * (spread == 0 ? t : Math.Sinh(spread * t) / spread);
        return ((late + early) / 2, s);
    }

    private static double Grown(double rate, double t)
    {
        double half = rate * t / 2;
        if (half == 0) return t;
        return Math.Abs(half) > 1 ? (Math.Exp(2 * half) - 1) / rate : 2 * Math.Exp(half) * Math.Sinh(half) / rate;
    }
}
