using CsCheck;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests;

public sealed class ThreadTests
{
    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static string Refusal(Action call) => Assert.Throws<DomainException>(call).Message;

    [Theory]
    [InlineData(0)]
    [InlineData(-10)]
    public void ThreadLimit_AtNoPositiveSetAngle_DoesNotAct(double degrees)
    {
        Capacity limit = ThreadPullOuts.ThreadLimit(Force.FromKilonewtons(4), Angle.FromDegrees(degrees));
        Assert.False(limit.Acts);
        Assert.StartsWith("This mode does not act", Refusal(() => limit.Force.ToString()), StringComparison.Ordinal);
    }

    [Fact]
    public void EngagedThreadLength_WhereNothingIsLeft_IsZeroAndHoldsNothing()
    {
        Length left = ThreadPullOuts.EngagedThreadLength(Mm(100), Mm(40), Mm(50), Mm(15), Mm(0));
        Assert.Equal(0, left.Millimeters);
        Assert.Equal(0, ThreadPullOuts.ThreadPullOut(Mm(20), left, Pressure.FromMegapascals(1)).Newtons);
    }

    [Fact]
    public void ThreadPullOut_GrowsWithLengthDiameterAndStrength() =>
        Gen.Select(Gen.Double[12, 30], Gen.Double[10, 200], Gen.Double[0.3, 2], Gen.Double[1.1, 3]).Sample((d, l, tau, more) =>
        {
            double Pull(double diameter, double length, double shear) => ThreadPullOuts.ThreadPullOut(Mm(diameter), Mm(length), Pressure.FromMegapascals(shear)).Newtons;
            double once = Pull(d, l, tau);
            return Math.Abs(Pull(d * more, l, tau) - (once * more)) < 1e-6 * once && Math.Abs(Pull(d, l * more, tau) - (once * more)) < 1e-6 * once && Pull(d, l, tau * more) > once;
        });

    [Fact]
    public void RequiredIceShear_UndoesThreadPullOut() =>
        Gen.Select(Gen.Double[12, 30], Gen.Double[10, 200], Gen.Double[0.3, 2]).Sample((d, l, tau) =>
            Math.Abs(ThreadPullOuts.RequiredIceShear(ThreadPullOuts.ThreadPullOut(Mm(d), Mm(l), Pressure.FromMegapascals(tau)), Mm(d), Mm(l)).Megapascals - tau) < 1e-9);

    [Fact]
    public void ALengthInOldGrooves_CountsForNothing() =>
        Assert.Equal(60, ThreadPullOuts.EngagedThreadLength(Mm(200), Mm(0), Mm(30), Mm(10), Mm(100)).Millimeters, 1e-9);

    [Fact]
    public void BadInput_IsRefusedWithParameterLimitAndUnit()
    {
        Assert.Equal("threadDiameter must be greater than 0 mm; it is 0 mm.", Refusal(() => ThreadPullOuts.ThreadPullOut(Mm(0), Mm(60), Pressure.FromMegapascals(1))));
        Assert.Equal("engagedLength must be at least 0 mm; it is -1 mm.", Refusal(() => ThreadPullOuts.ThreadPullOut(Mm(20), Mm(-1), Pressure.FromMegapascals(1))));
        Assert.Equal("shearStrength must be at most 100000 MPa; it is 1E+06 MPa.", Refusal(() => ThreadPullOuts.ThreadPullOut(Mm(20), Mm(60), Pressure.FromMegapascals(1e6))));
        Assert.Equal("iceLost must be at least 0 mm; it is -40 mm.", Refusal(() => ThreadPullOuts.EngagedThreadLength(Mm(160), Mm(0), Mm(-40), Mm(10), Mm(0))));
        Assert.Equal("fromFace must be less than 90 °; it is 90 °.", Refusal(() => DrilledThreads.DrilledThread(Mm(180), Angle.FromDegrees(90))));
        Assert.Equal("mouthSpacing must be greater than 0 mm; it is 0 mm.", Refusal(() => DrilledThreads.DrilledThread(Mm(0), Angle.FromDegrees(45))));
    }

    [Fact]
    public void CordBearingPressure_OfWideTape_IsLower() =>
        Assert.True(DrilledThreads.CordBearingPressure(Force.FromKilonewtons(10), Mm(25), Mm(100)) < DrilledThreads.CordBearingPressure(Force.FromKilonewtons(10), Mm(7), Mm(100)));
}
