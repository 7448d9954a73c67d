using GridSession = ScrewSheet.Terminal.Grid.State.Session;

namespace ScrewSheet.Terminal.Tests.Grid.Studies;

/// <summary>A workbook with two tables, and short ways to look at them.</summary>
internal static class StudyBook
{
    public const string Text =
        """
        screwsheet 1
        title A study
        seed 7

        sheet Fall
        A1 peak [kN] = 8 kN ± 0.5 kN
        A2 exposed [mm] = 40 mm ± 10 mm rectangular within 0 mm to 120 mm
        A3 Torque moment [N·m, 1 decimal] => peak * exposed
        A4 strong => moment < 400 N·m
        A5 share => 1 kN / (peak - 4 kN)
        A6 other = 3
        A7 doubled => 2 * other
        B1 "words"

        what-if D2 "Moment by length"
          vary exposed: 0 mm to 60 mm step 20 mm
          show moment, strong

        what-if D9 "Both"
          vary exposed: 20 mm, 40 mm
          vary peak: 4 kN, 8 kN
          show moment, share

        sheet Other
        A1 twice => Fall.moment * 2

        """;

    public static Walk Open(string text = Text, int width = 140, int height = 34) => new(text, width, height);

    /// <summary>The line of the screen that shows a row of the sheet.</summary>
    public static string Row(this Walk walk, int row) => walk.Screen.Split('\n')[1 + row - walk.State.Open.Corner.Row + 1];

    /// <summary>What is drawn at an address without a cell: mark and text.</summary>
    public static string Drawn(this Walk walk, string address) => Drawn(walk.State.Open, address);

    public static string Drawn(GridSession session, string address)
    {
        Assert.True(ScrewSheet.Workbooks.Model.CellAddress.TryParse(address, out var at));
        return session.Tables.On(session).Face(session, at) is { } face ? $"{face.Mark}{face.Text}".Trim() : "";
    }
}
