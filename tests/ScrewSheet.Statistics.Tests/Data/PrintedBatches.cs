namespace ScrewSheet.Statistics.Tests.Data;

/// <summary>Batches printed in handbooks and papers.</summary>
internal static class PrintedBatches
{
    /// <summary>18 strengths of a validation batch for CMH-17 methods.</summary>
    public static double[] Eighteen { get; } = [
        137.4438, 139.5395, 150.89, 141.4474, 141.8203, 151.8821, 143.9245, 132.9732, 136.6419, 138.1723, 148.7668, 143.283,
        143.5429, 141.7023, 137.4732, 152.338, 144.1589, 128.5218,
    ];

    /// <summary>22 strengths of the CMH-17 wet batches, in three batches of 7, 8 and 7.</summary>
    public static double[] Wet { get; } = [
        106.357525, 105.898733, 88.4640082, 103.901744, 80.2058219, 109.199597, 61.0139431, 99.3207107, 115.86177, 82.6133082, 85.3690411, 115.801622,
        44.3217741, 117.328077, 88.6782903, 107.676986, 108.960241, 116.12264, 80.2334815, 106.14557, 104.667866, 104.234953,
    ];

    /// <summary>Lieblein and Zelen, 1956: ball bearings, million revolutions.</summary>
    public static double[] BallBearings { get; } = [
        17.88, 28.92, 33.00, 41.52, 42.12, 45.60, 48.48, 51.84, 51.96, 54.12, 55.56, 67.80,
        68.64, 68.64, 68.88, 84.12, 93.12, 98.64, 105.12, 105.84, 127.92, 128.04, 173.40,
    ];

    /// <summary>NIST e-Handbook 7.2.6.2: resistivities.</summary>
    public static double[] Resistivity { get; } = [95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990, 95.1682];

    /// <summary>NIST e-Handbook 8.4.1.3: hours, the last ten units removed unfailed at 500 h.</summary>
    public static double[] Hours { get; } = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386, .. Enumerable.Repeat(500.0, 10)];

    /// <summary>For <see cref="Hours"/>: 1 where the unit was removed unfailed.</summary>
    public static double[] HoursCensored { get; } = [.. Enumerable.Repeat(0.0, 10), .. Enumerable.Repeat(1.0, 10)];

    /// <summary>Student's sleep data, first drug.</summary>
    public static double[] SleepFirst { get; } = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0];

    /// <summary>Student's sleep data, second drug.</summary>
    public static double[] SleepSecond { get; } = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

    /// <summary>NIST uranium data for Grubbs' test.</summary>
    public static double[] Uranium { get; } = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

    /// <summary>An invented batch of ten in kN, for arithmetic only.</summary>
    public static double[] Constructed { get; } = [12.4, 13.1, 11.8, 14.0, 12.9, 13.6, 12.2, 13.3, 12.7, 13.0];
}
