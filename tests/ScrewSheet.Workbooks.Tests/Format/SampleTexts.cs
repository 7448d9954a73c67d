namespace ScrewSheet.Workbooks.Tests.Format;

/// <summary>Whole files used by several tests.</summary>
internal static class SampleTexts
{
    /// <summary>One of everything.</summary>
    public const string Full = """
        screwsheet 1
        title Radial load on a short screw
        author Training desk
        date 2026-11-25
        units SI
        seed 7
        made with 0.3.0
        correlate a, b 0.86

        // remarks stand on lines of their own or after a cell
        function Torque HingeMoment(Force f, Length arm) => f * arm

        sheet Placement "What the fall leaves on the screw"
        widths A 34, B 16

        A2 "Peak force at the hanger"
        B2 peak [kN] = 8.5 kN ± 0.5 kN // from the fall sheet
        A3 "Exposed after the \"surface\" ice // has gone"
        B3 exposed [mm] = 40 mm +- 10 mm rectangular within 0 mm to 120 mm source "Tape, 2026" // common practice
        B4 offset  [mm]   = 10 mm   
        // directly above the moment
        B5 Torque moment [N·m, 1 decimal] => HingeMoment(peak, exposed + offset) gives 425.0 N·m
        B6 strong => moment < 500 N·m gives holds
        B7 said => $"gives {moment}" gives "gives 425 N·m"
        B8 cold = -18 °C ± 2 K
        B9 share [%] = 5 % ± 1 %
        B10 ratio = 0.62 ± 5 % dof 18
        B11 = Sqrt(2) * 3 kN
        B12 yes = true
        B13 words = "in quotes"
        B14 Δ = 3

        what-if D2 "Moment by exposed length"
          vary exposed: 0 mm to 60 mm step 10 mm
          vary peak: 4 kN, 6 kN, 8 kN // three falls
          show moment

        column B force [kN]
        plot F2 "Moment" of D2
        reviewed KM 2026-11-25 0123456789abcdef
        B20 conflict
          ours = 3
          theirs = 4
        B21 what is this
        C1 = 40m

        sheet Fall
        A1 => Placement.peak * 2
        """;
}
