namespace ScrewSheet.Statistics.Common;

/// <summary>The works the functions are taken from.</summary>
internal static class Works
{
    public const string StrdUnivariate = "NIST, Statistical Reference Datasets, univariate summary statistics (definitions and certified values)";
    public const string StrdRegression = "NIST, Statistical Reference Datasets, linear regression (models and certified values)";
    public const string StrdAnova = "NIST, Statistical Reference Datasets, analysis of variance (definitions and certified values)";
    public const string HyndmanFan = "R. J. Hyndman and Y. Fan, Sample quantiles in statistical packages, The American Statistician 50, 1996";
    public const string Tolerance = "NIST/SEMATECH, e-Handbook of Statistical Methods, 7.2.6.3 (tolerance intervals)";
    public const string Cmh17 = "CMH-17-1G, Composite Materials Handbook, volume 1, chapter 8, 2012";
    public const string En1990 = "EN 1990, Basis of structural design, Annex D, table D1";
    public const string Wilks = "S. S. Wilks, Determination of sample sizes for setting tolerance limits, Annals of Mathematical Statistics 12, 1941";
    public const string ClopperPearson = "C. J. Clopper and E. S. Pearson, The use of confidence or fiducial limits, Biometrika 26, 1934";
    public const string Vangel = "M. G. Vangel, One-sided nonparametric tolerance limits, Communications in Statistics, Simulation and Computation 23, 1994; CMH-17-1G table 8.5.14";
    public const string WeibullFit = "NIST/SEMATECH, e-Handbook of Statistical Methods, 8.4.1.3 (maximum likelihood with censored units)";
    public const string WeibullRanks = "NIST/SEMATECH, e-Handbook of Statistical Methods, 8.2.2.1 (probability plots and median ranks)";
    public const string TwoSamples = "NIST/SEMATECH, e-Handbook of Statistical Methods, 7.3.1 (do two processes have the same mean)";
    public const string Levene = "NIST/SEMATECH, e-Handbook of Statistical Methods, 1.3.5.10 (Levene test, with the median form of Brown and Forsythe)";
    public const string Grubbs = "NIST/SEMATECH, e-Handbook of Statistical Methods, 1.3.5.17 (Grubbs' test); CMH-17-1G table 8.5.7";
    public const string SamplingPlans = "NIST/SEMATECH, e-Handbook of Statistical Methods, 6.2 (test product for acceptability)";
    public const string Iso2859 = "ISO 2859-1, Sampling procedures for inspection by attributes, tables 1 and 2-A; MIL-STD-105E holds the same scheme";
    public const string Variables = "ISO 3951-1, ASQ Z1.9 and MIL-STD-414, sampling by variables, k-method and M-method";
    public const string Charts = "NIST/SEMATECH, e-Handbook of Statistical Methods, 6.3.2 (variables control charts)";
    public const string Capability = "NIST/SEMATECH, e-Handbook of Statistical Methods, 6.1.6 (process capability)";
    public const string Arithmetic = "Elementary definition";
    public const string Interference = "Stress-strength interference of independent strength and load: the integral of the strength density times the chance that the load is higher";
}
