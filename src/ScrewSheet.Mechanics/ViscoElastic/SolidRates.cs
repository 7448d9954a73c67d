using MathNet.Numerics.RootFinding;

namespace ScrewSheet.Mechanics.ViscoElastic;

/// <summary>The three rates of a mass on a standard linear solid: roots of λ³ + λ²/τ + (a1 + a2) λ + a1/τ, split into a lone real one and a pair.</summary>
internal static class SolidRates
{
    /// <summary>Where the three rates nearly coincide the lone one cannot be told from the pair; the relaxation time is then moved by one part in a million.</summary>
    private const double Coincidence = 1e-8, Nudge = 1 + 1e-6;

    /// <summary>Lone rate (0 for a Maxwell rope), and damping and stiffness of the pair, from stiffnesses over mass in 1/s² and the relaxation time in s.</summary>
    public static (double Rate, double Damping, double Stiffness) Of(double a1, double a2, double relaxationTime)
    {
        if (a1 == 0) return (0, 1 / (2 * relaxationTime), a2);
        var split = Isolated(Split(a1, a2, relaxationTime));
        double apart = (split.Rate * split.Rate) + (2 * split.Damping * split.Rate) + split.Stiffness;
        return Math.Abs(apart) < Coincidence * split.Rate * split.Rate ? Isolated(Split(a1, a2, relaxationTime * Nudge)) : split;
    }

    private static (double Rate, double Damping, double Stiffness) Split(double a1, double a2, double tau)
    {
        double rate = -LoneRoot((a1 + a2) * tau * tau, a1 * tau * tau) / tau;
        double stiffness = -a1 / (tau * rate);
        double twiceDamping = -rate * tau > 0.5 ? (stiffness - a1 - a2) / rate : (1 / tau) + rate;
        return (rate, Math.Max(0, twiceDamping / 2), stiffness);
    }

    /// <summary>A root s between 0 and 1 of s³ − s² + P s − Q, where λ = −s/τ; one is always there since the ends differ in sign.</summary>
    /// <remarks>For P of 1/3 and more the cubic only rises and Newton's steps from its turning point find the root; below that the greatest root is sought from 1.</remarks>
    private static double LoneRoot(double p, double q)
    {
        double s = p < 1.0 / 3 ? 1 : 1.0 / 3;
        for (int i = 0; i < 60; i++)
        {
            double step = (((((s - 1) * s) + p) * s) - q) / ((((3 * s) - 2) * s) + p);
            s -= step;
            if (!(s > 0 && s <= 1)) break;
            if (Math.Abs(step) <= 1e-9 * s) return s;
        }
        return Brent.FindRoot(x => ((((x - 1) * x) + p) * x) - q, 0, 1, 1e-16, 300);
    }

    /// <summary>With three real rates, the one furthest from the other two becomes the lone one.</summary>
    private static (double Rate, double Damping, double Stiffness) Isolated((double Rate, double Damping, double Stiffness) split)
    {
        double spread2 = (split.Damping * split.Damping) - split.Stiffness;
        if (spread2 <= 0) return split;
        double fast = -split.Damping - Math.Sqrt(spread2), slow = split.Stiffness / fast, lone = split.Rate;
        if (lone > fast && lone < slow) (lone, fast, slow) = lone - fast > slow - lone ? (fast, lone, slow) : (slow, fast, lone);
        else if (lone >= slow && lone - slow < slow - fast) (lone, fast, slow) = (fast, slow, lone);
        else if (lone <= fast && fast - lone < slow - fast) (lone, fast, slow) = (slow, lone, fast);
        return (lone, -(fast + slow) / 2, fast * slow);
    }
}
