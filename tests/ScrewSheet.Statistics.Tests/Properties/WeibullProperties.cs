using CsCheck;

namespace ScrewSheet.Statistics.Tests.Properties;

/// <summary>The Weibull distribution keeps its digits where the share that breaks is small.</summary>
public sealed class WeibullProperties
{
    [Fact]
    public void FailureShare_OfAnyLoad_IsTheSumOfItsSeries() =>
        Gen.Double[-12, 0].Sample(power =>
        {
            double hazard = Math.Pow(10, power);
            double series = 0;
            for (int n = 24; n >= 1; n--) series = hazard / n * (1 - series);
            // 1 - exp(-h) = h (1 - h/2 (1 - h/3 (1 - …)))
            Assert.Equal(series, WeibullDistribution.WeibullFailureShare(1, 1.0, hazard), 1e-14 * series);
        }, iter: 500);

    [Fact]
    public void FailureShare_TurnsTheQuantileBack() =>
        Gen.Select(Gen.Double[0.5, 40], Gen.Double[-9, -0.01]).Sample((shape, power) =>
        {
            double share = Math.Pow(10, power);
            double load = WeibullDistribution.WeibullQuantile(shape, 10.0, share);
            Assert.Equal(share, WeibullDistribution.WeibullFailureShare(shape, 10.0, load), 1e-12 * share);
        }, iter: 500);
}
