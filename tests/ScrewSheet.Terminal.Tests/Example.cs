using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Tests;

/// <summary>A small workbook, and what its results are.</summary>
internal static class Example
{
    public const string Text =
        """
        screwsheet 1
        title Radial load on a short screw
        units SI

        sheet Placement "What the fall leaves on the screw"
        A2 "Peak force at the hanger"
        B2 peak [kN] = 8.5 kN ± 0.5 kN // from the fall sheet
        A3 "Exposed after the surface ice has gone"
        B3 exposed [mm] = 40 mm ± 10 mm rectangular within 0 mm to 120 mm
        B5 Torque moment [N·m, 1 decimal] => peak * exposed gives 340.0 N·m
        B6 strong => moment < 500 N·m gives holds

        """;

    /// <summary>A workbook that can be read.</summary>
    public static Workbook Read(string text) => Assert.IsType<WorkbookRead>(WorkbookText.Read(text)).Workbook;

    /// <summary>All well.</summary>
    public static FakeCalculator Fine => new FakeCalculator()
        .Gives("peak * exposed", "exposed", exposed => FakeCalculator.Quantity(8500 * exposed, "N·m", "Torque"))
        .Gives("moment < 500 N·m", "exposed", exposed => FakeCalculator.Truth(8500 * exposed < 500))
        .Kept("peak * exposed", KeptState.Same).Kept("moment < 500 N·m", KeptState.Same);

    /// <summary>One result changed, with a caution, and its check fails.</summary>
    public static FakeCalculator Worse => new FakeCalculator()
        .Gives("peak * exposed", FakeCalculator.Quantity(512.5, "N·m", "Torque"))
        .Cautions("peak * exposed", new Caution("The exposed length is beyond the range this was made for."), new Caution("Friction helps here; set 0 for design.", "Fall.B7"))
        .Gives("moment < 500 N·m", FakeCalculator.Truth(false))
        .Kept("peak * exposed", KeptState.Changed).Kept("moment < 500 N·m", KeptState.Changed);

    /// <summary>One result in fault, and its check waits for it.</summary>
    public static FakeCalculator Faulty => new FakeCalculator()
        .Gives("peak * exposed", FakeCalculator.Fault(FaultKind.Unit, "A force times a force is no torque.", "Multiply by a length."))
        .Gives("moment < 500 N·m", FakeCalculator.Fault(FaultKind.Waiting, "It waits for moment.", null, "Placement.B5"));
}
