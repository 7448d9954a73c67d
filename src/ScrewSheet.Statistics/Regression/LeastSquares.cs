using MathNet.Numerics.LinearAlgebra;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>
/// A polynomial in u = (x - centre) / scale by QR: centring keeps the digits that normal equations in raw x would lose.
/// Without intercept the centre stays at zero.
/// </summary>
internal sealed class LeastSquares
{
    private readonly double centre, scale;
    private readonly int lowest;
    private readonly Vector<double> coefficients;
    private readonly Matrix<double> inverse;

    private LeastSquares(double centre, double scale, int lowest, Vector<double> coefficients, Matrix<double> inverse) =>
        (this.centre, this.scale, this.lowest, this.coefficients, this.inverse) = (centre, scale, lowest, coefficients, inverse);

    public double ResidualSquares { get; private init; }

    public double TotalSquares { get; private init; }

    public int Count { get; private init; }

    public double From { get; private init; }

    public double To { get; private init; }

    public int Degrees => Count - coefficients.Count;

    public double Deviation => Math.Sqrt(ResidualSquares / Degrees);

    public double[] Residuals { get; private init; } = [];

    /// <summary>Fits the powers from <paramref name="lowest"/> to <paramref name="highest"/>.</summary>
    public static LeastSquares Fit(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int lowest, int highest)
    {
        double[] xs = x.ToArray(), ys = y.ToArray();
        int terms = highest - lowest + 1;
        if (xs.Distinct().Count() < terms + (lowest == 0 ? 0 : xs.Contains(0.0) ? 1 : 0))
            throw new DomainException($"The fit needs at least {terms} different values along the abscissa.", "x");
        double centre = lowest == 0 ? Moments.Of(xs).Mean : 0, scale = xs.Max(value => Math.Abs(value - centre));
        // The ordinate is centred too: the constant term takes its mean back, so residuals keep their digits.
        double offset = lowest == 0 ? Moments.Of(ys).Mean : 0;
        Matrix<double> design = Matrix<double>.Build.Dense(xs.Length, terms, (i, j) => Math.Pow((xs[i] - centre) / scale, lowest + j));
        Vector<double> target = Vector<double>.Build.Dense(xs.Length, i => ys[i] - offset);
        var qr = design.QR(MathNet.Numerics.LinearAlgebra.Factorization.QRMethod.Thin);
        Vector<double> solved = qr.R.Solve(qr.Q.TransposeThisAndMultiply(target));
        solved += qr.R.Solve(qr.Q.TransposeThisAndMultiply(target - (design * solved)));
        Vector<double> residuals = target - (design * solved);
        Matrix<double> root = qr.R.Inverse();
        double total = lowest == 0 ? Moments.Of(ys).SumOfSquares : ys.Sum(value => value * value);
        if (lowest == 0) solved[0] += offset;
        return new LeastSquares(centre, scale, lowest, solved, root * root.Transpose())
        {
            ResidualSquares = Values.Answer(residuals.DotProduct(residuals)), TotalSquares = Values.Answer(total), Count = xs.Length,
            From = xs.Min(), To = xs.Max(), Residuals = [.. residuals],
        };
    }

    /// <summary>Coefficient of a power of raw x and its standard error.</summary>
    public (double Value, double Error) Raw(int power)
    {
        Vector<double> weights = Vector<double>.Build.Dense(coefficients.Count);
        for (int j = 0; j < coefficients.Count; j++)
        {
            int degree = lowest + j;
            if (degree >= power) weights[j] = Binomial(degree, power) * Math.Pow(-centre, degree - power) / Math.Pow(scale, degree);
        }
        return (Values.Answer(weights.DotProduct(coefficients)), Deviation * Math.Sqrt(Math.Max(0, weights.DotProduct(inverse * weights))));
    }

    /// <summary>The curve at a raw x and its standard error.</summary>
    public (double Value, double Error) At(double x)
    {
        Vector<double> powers = Vector<double>.Build.Dense(coefficients.Count, j => Math.Pow((x - centre) / scale, lowest + j));
        return (Values.Answer(powers.DotProduct(coefficients)), Deviation * Math.Sqrt(Math.Max(0, powers.DotProduct(inverse * powers))));
    }

    private static double Binomial(int n, int k) => k == 0 || k == n ? 1 : n;
}
