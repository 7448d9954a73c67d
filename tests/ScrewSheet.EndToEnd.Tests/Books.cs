namespace ScrewSheet.EndToEnd.Tests;

/// <summary>Workbooks to walk through.</summary>
internal static class Books
{
    /// <summary>Everything a reader meets: givens, results, checks, a fault, a second sheet, two columns to draw.</summary>
    public const string Fall =
        """
        screwsheet 1
        title A walk
        units SI

        sheet Fall "What the fall leaves"
        widths A 26, B 14, C 12

        A2 "Peak force"
        B2 peak [kN] = 8.5 kN ± 0.5 kN // from the fall sheet
        A3 "Exposed length"
        B3 exposed [mm] = 40 mm ± 10 mm rectangular within 0 mm to 120 mm
        A4 "Moment"
        B4 Torque moment [N·m, 1 decimal] => peak * exposed
        B5 strong => moment < 500 N·m
        B6 broken => peak + exposed
        B7 => broken * 2

        sheet Other
        A1 twice [kN] => Fall.peak * 2
        A2 => Fall.B4 / Fall.B3

        """;

    /// <summary>Three rows of lengths and forces.</summary>
    public const string Rows =
        """
        screwsheet 1

        sheet Tests
        A1 "length"
        B1 "force"
        A2 = 10 mm
        B2 = 3 kN
        A3 = 20 mm
        B3 = 1 kN
        A4 = 30 mm
        B4 = 2 kN
        C2 => A2 * B2

        """;
}
