using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Weibull fits by maximum likelihood.</summary>
public static class WeibullLikelihood
{
    private const string Assumed = "Strength follows a two-parameter Weibull distribution; independent specimens of one failure mode.";
    private const string Method = "searches the shape at which the likelihood is highest, values scaled by the largest; errors from the observed information in ln b and ln e";

    /// <summary>Fit to a sample in which every specimen broke; at least two values, above zero, not all equal.</summary>
    [Callable(Topics.Weibull, "Which Weibull distribution fits the batch (maximum likelihood)?", Assumes = Assumed, NotFor = "Comparison with a fit by median ranks: the two differ for small batches.")]
    [NoFormula(Method)]
    [Source(Works.WeibullFit, Standing.Read)]
    [Example("WeibullMaximumLikelihood(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Shape", "25.00964")]
    public static WeibullFit<T> WeibullMaximumLikelihood<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct =>
        Fit(sample, WeibullData.Of(sample, null));

    /// <summary>Fit to a sample in which some specimens were taken off unbroken (right-censored); at least two must have broken.</summary>
    [Callable(Topics.Weibull, "Which Weibull distribution fits a batch with specimens the rig could not break?", Assumes = Assumed + " Specimens were taken off for reasons that have nothing to do with how close they were to breaking.",
        NotFor = "Comparison with a fit by median ranks: the two differ for small batches.")]
    [NoFormula(Method)]
    [Source(Works.WeibullFit, Standing.Read)]
    [Example("WeibullCensoredLikelihood(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), Values(0, 0, 1, 0, 0)).Shape", "19.92602")]
    public static WeibullFit<T> WeibullCensoredLikelihood<T>(
        [Parameter("x", "", "the test results: the breaking load, or the load at which the specimen was taken off unbroken")] Series<T> sample,
        [Parameter("c", "", Says.Censored)] Series<double> censored) where T : struct
    {
        ArgumentNullException.ThrowIfNull(censored);
        return Fit(sample, WeibullData.Of(sample, censored));
    }

    /// <summary>A fractile of the fitted distribution with one-sided bounds, by the delta method on logarithms.</summary>
    [Callable(Topics.Weibull, "Below which strength does this share break, and how low may it really be?", Assumes = Assumed + " Bounds hold for large batches and are somewhat too narrow for small ones.")]
    [NoFormula("e (-ln(1 - q))^(1/b); bounds by the variance of its logarithm from the observed information")]
    [Source(Works.WeibullFit, Standing.Read)]
    [Source("Bounds: delta method on ln b and ln e, elementary", Standing.Derived)]
    [Example("WeibullFractile(WeibullMaximumLikelihood(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)), 0.05).LowerBound", "8.155456 kN")]
    public static BoundedFractile<T> WeibullFractile<T>(
        [Parameter("fit", "", "the fitted distribution")] WeibullFit<T> fit,
        [Parameter("q", "", Says.Fraction, Above = 0, Below = 1, UsualTo = 0.5)] double fraction,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        ArgumentNullException.ThrowIfNull(fit);
        double q = Values.Share(fraction, nameof(fraction)), z = Distributions.Z(Values.Share(confidence, nameof(confidence)));
        double e = Values.Si(fit.Scale, nameof(fit)), value = WeibullDistribution.QuantileSi(fit.Shape, e, q);
        double slope = -Math.Log(value / e);
        (double shape, double scale, double both) = fit.LogVariances;
        double error = Math.Sqrt(Math.Max(0, scale + (slope * slope * shape) + (2 * slope * both)));
        Func<double, T> make = Values.Maker(fit.Scale);
        return new BoundedFractile<T>(make(value), make(value * Math.Exp(-z * error)), make(value * Math.Exp(z * error)), q, confidence, CautionList.Of([
            .. fit.Cautions.Select(sentence => (true, sentence)),
            (q < 1 / (fit.Failures + 1), $"This fractile lies below anything the {Values.Text(fit.Failures)} breaks can show: it rests on the assumed distribution alone."),
            (fit.Failures < 20, "For few specimens these bounds are too narrow; set them beside a tolerance limit."),
        ]));
    }

    /// <summary>Two-sided confidence interval of the shape: b exp(± z u(b)/b).</summary>
    [Callable(Topics.Weibull, "Between which values does the Weibull shape lie?", Assumes = Assumed)]
    [NoFormula("shape times and over the exponential of the normal quantile times the standard error of its logarithm")]
    [Source(Works.WeibullFit, Standing.Read)]
    [Example("WeibullShapeInterval(WeibullMaximumLikelihood(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))).Lower", "12.49196")]
    public static Interval<double> WeibullShapeInterval<T>(
        [Parameter("fit", "", "the fitted distribution")] WeibullFit<T> fit,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        ArgumentNullException.ThrowIfNull(fit);
        double factor = Math.Exp(Distributions.Z((1 + Values.Share(confidence, nameof(confidence))) / 2) * Math.Sqrt(fit.LogVariances.Shape));
        return new Interval<double>(fit.Shape / factor, fit.Shape * factor, confidence);
    }

    /// <summary>Two-sided confidence interval of the characteristic strength: e exp(± z u(e)/e).</summary>
    [Callable(Topics.Weibull, "Between which values does the characteristic strength lie?", Assumes = Assumed)]
    [NoFormula("scale times and over the exponential of the normal quantile times the standard error of its logarithm")]
    [Source(Works.WeibullFit, Standing.Read)]
    [Example("WeibullScaleInterval(WeibullMaximumLikelihood(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))).Lower", "9.630518 kN")]
    public static Interval<T> WeibullScaleInterval<T>(
        [Parameter("fit", "", "the fitted distribution")] WeibullFit<T> fit,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        ArgumentNullException.ThrowIfNull(fit);
        double factor = Math.Exp(Distributions.Z((1 + Values.Share(confidence, nameof(confidence))) / 2) * Math.Sqrt(fit.LogVariances.Scale));
        double e = Values.Si(fit.Scale, nameof(fit));
        Func<double, T> make = Values.Maker(fit.Scale);
        return new Interval<T>(make(e / factor), make(e * factor), confidence);
    }

    private static WeibullFit<T> Fit<T>(Series<T> sample, WeibullData data) where T : struct
    {
        double largest = data.Values.Max();
        // Logarithms of the scaled values: x^b becomes exp(b ln x), which neither overflows nor underflows as a sum.
        double[] logs = [.. data.Values.Select(value => Math.Log(value / largest))];
        double failureMean = Failed(logs, data).Average();
        int r = data.Failures;
        if (failureMean == 0) throw new DomainException("All broken specimens stand at the highest value of the sample: the likelihood has no highest point.", nameof(sample));
        double shape = Solve.From(b => Score(logs, failureMean, b), 0, 1);
        (double sum0, double sum1, double sum2) = Sums(logs, shape);
        double logScale = Math.Log(sum0 / r) / shape, scale = largest * Math.Exp(logScale);
        // Observed information in (ln b, ln e); w = (x/e)^b and y = b ln(x/e), whose weighted sums follow from those above.
        double y1 = shape * ((sum1 / sum0) - logScale), y2 = shape * shape * ((sum2 / sum0) - (2 * logScale * sum1 / sum0) + (logScale * logScale));
        double bb = r * (1 + y2), ee = r * shape * shape, be = -r * shape * y1;
        double determinant = (bb * ee) - (be * be);
        var variances = (Shape: ee / determinant, Scale: bb / determinant, Both: -be / determinant);
        double likelihood = (r * (Math.Log(shape) - Math.Log(scale))) + ((shape - 1) * r * (failureMean - logScale)) - r;
        return new WeibullFit<T>(shape, sample.Make(scale), shape * Math.Sqrt(variances.Shape), sample.Make(scale * Math.Sqrt(variances.Scale)),
            sample.Make(WeibullDistribution.MeanSi(shape, scale)), sample.Make(WeibullDistribution.DeviationSi(shape, scale)),
            Values.Answer(likelihood), 4 - (2 * likelihood), data.Count, r, data.Cautions(ranks: false)) { LogVariances = variances };
    }

    private static IEnumerable<double> Failed(double[] logs, WeibullData data) => logs.Where((_, i) => data.Broke[i]);

    /// <summary>Rises with b from minus infinity; zero at the most likely shape.</summary>
    private static double Score(double[] logs, double failureMean, double b)
    {
        if (b <= 0) return -1;
        (double sum0, double sum1, _) = Sums(logs, b);
        return (sum1 / sum0) - (1 / b) - failureMean;
    }

    private static (double Zero, double One, double Two) Sums(double[] logs, double b)
    {
        double zero = 0, one = 0, two = 0;
        foreach (double log in logs)
        {
            double weight = Math.Exp(b * log);
            zero += weight;
            one += weight * log;
            two += weight * log * log;
        }
        return (zero, one, two);
    }
}
