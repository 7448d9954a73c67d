using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>Draws of one given: from a probability, or from a standard normal score, within the bounds of the given.</summary>
/// <remarks>Which distribution stands for what is known: JCGM 101:2008, section 6.4; Student's t for a value from few observations, 6.4.9.</remarks>
internal sealed class Distribution
{
    private const double Reach = 8, Step = 0.01;

    private readonly UncertainGiven given;
    private readonly double below, above;
    private readonly double[]? students;

    public Distribution(UncertainGiven given)
    {
        this.given = given;
        students = given.IsStudent ? Table(given.Freedom) : null;
        (below, above) = (double.IsFinite(given.LowSi) ? Below(given.LowSi) : 0, double.IsFinite(given.HighSi) ? Below(given.HighSi) : 1);
    }

    /// <summary>The share of the distribution its bounds cut off.</summary>
    public double CutOff => Math.Max(0, 1 - (above - below));

    /// <summary>True where a score gives the value without going through a probability.</summary>
    private bool IsScored => given.Shape is ToleranceShape.Normal or ToleranceShape.Standard && !(CutOff > 0);

    /// <summary>The value for a probability between 0 and 1.</summary>
    public double OfProbability(double probability) => IsScored ? OfScore(Quantiles.Z(probability)) : Bounded(Inverse(below + (probability * (above - below))));

    /// <summary>The value for a standard normal score.</summary>
    public double OfScore(double z) => IsScored ? given.Si + (given.StandardUncertainty * (students is null ? z : Student(z))) : OfProbability(Quantiles.Phi(z));

    private double Bounded(double value) => Math.Clamp(value, given.LowSi, given.HighSi);

    private double Inverse(double p) => given.Shape switch
    {
        ToleranceShape.Rectangular => given.Si + (given.HalfWidthSi * ((2 * p) - 1)),
        ToleranceShape.Triangular => given.Si + (given.HalfWidthSi * (p < 0.5 ? Math.Sqrt(2 * p) - 1 : 1 - Math.Sqrt(2 * (1 - p)))),
        _ => given.Si + (given.StandardUncertainty * (students is null ? Quantiles.Z(p) : Student(Quantiles.Z(p)))),
    };

    /// <summary>The chance of a value below this one.</summary>
    private double Below(double si)
    {
        double x = (si - given.Si) / (given.HalfWidthSi == 0 ? double.Epsilon : given.HalfWidthSi);
        switch (given.Shape)
        {
            case ToleranceShape.Rectangular: return Math.Clamp((x + 1) / 2, 0, 1);
            case ToleranceShape.Triangular: return x <= -1 ? 0 : x >= 1 ? 1 : x < 0 ? (1 + x) * (1 + x) / 2 : 1 - ((1 - x) * (1 - x) / 2);
            default:
                double t = (si - given.Si) / Math.Max(given.StandardUncertainty, double.Epsilon);
                if (!given.IsStudent) return Quantiles.Phi(t);
                return t < 0 ? Quantiles.Upper(-t, given.Freedom) : 1 - Quantiles.Upper(t, given.Freedom);
        }
    }

    /// <summary>Student's quantile of the probability a normal score stands for, by cubic interpolation in a table.</summary>
    private double Student(double z)
    {
        double place = (Math.Clamp(Math.Abs(z), 0, Reach - (2 * Step)) / Step) + 1;
        int at = (int)place;
        double t = place - at, a = students![at - 1], b = students[at], c = students[at + 1], d = students[at + 2];
        double value = b + (0.5 * t * (c - a + (t * ((2 * a) - (5 * b) + (4 * c) - d + (t * ((3 * (b - c)) + d - a))))));
        return z < 0 ? -value : value;
    }

    /// <summary>Quantiles at scores from one step below zero on.</summary>
    private static double[] Table(double freedom)
    {
        double[] table = new double[(int)(Reach / Step) + 2];
        for (int i = 1; i < table.Length; i++) table[i] = i == 1 ? 0 : Quantiles.Student(Quantiles.Phi(-(i - 1) * Step), freedom) * -1;
        table[0] = -table[2];
        return table;
    }
}
