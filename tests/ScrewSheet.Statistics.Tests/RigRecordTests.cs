using ScrewSheet.Quantities;
using ScrewSheet.Statistics.Tests.Data;
using UnitsNet;

namespace ScrewSheet.Statistics.Tests;

/// <summary>Peak, energy, stiffness and first drop of a record worked out by hand.</summary>
public sealed class RigRecordTests
{
    private static Series<Length> Places => Of.Millimetres(0, 1, 2, 3, 4, 5, 6, 7);

    private static Series<Force> Forces => Of.Kilonewtons(0, 2, 4, 6, 5, 5.5, 8, 1);

    [Fact]
    public void Peak_IsTheHighestReadingAndItsPlace()
    {
        RigPeak<Length, Force> peak = RigRecords.RecordPeak(Places, Forces);
        Assert.Equal((8.0, 6.0, 7.0), (peak.Value.Kilonewtons, peak.At.Millimeters, peak.Reading));
        Assert.Empty(peak.Cautions);
    }

    [Fact]
    public void Peak_OverTime_KeepsItsKinds() =>
        Assert.Equal(0.2, RigRecords.RecordPeak(Series.Of<Duration>([0, 0.1, 0.2, 0.3]), Of.Kilonewtons(0, 1, 3, 2)).At.Seconds);

    [Fact]
    public void Peak_AtTheEndOrAtARigLimit_IsSaid()
    {
        Assert.Contains("ended before", RigRecords.RecordPeak(Of.Millimetres(0, 1), Of.Kilonewtons(0, 1)).Cautions[0], StringComparison.Ordinal);
        Assert.Contains("limit", RigRecords.RecordPeak(Of.Millimetres(0, 1, 2, 3, 4), Of.Kilonewtons(0, 9, 9, 9, 1)).Cautions[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Energy_ToPeak_LeavesTheRestOut()
    {
        RigEnergy energy = RigRecords.RecordEnergy(Places, Forces);
        Assert.Equal(26.5, energy.ToPeak.Joules, 1e-12);
        Assert.Equal(31.0, energy.Total.Joules, 1e-12);
    }

    [Fact]
    public void Energy_OfAJumpAtOnePlace_AddsNothingAndSaysSo()
    {
        RigEnergy energy = RigRecords.RecordEnergy(Of.Millimetres(0, 1, 1, 2), Of.Kilonewtons(0, 2, 1, 1));
        Assert.Equal(2.0, energy.Total.Joules, 1e-12);
        Assert.Single(energy.Cautions);
    }

    [Fact]
    public void Stiffness_OfAStraightRange_IsItsSlope()
    {
        RigStiffness stiffness = RigRecords.RecordStiffness(Of.Millimetres(0, 1, 2, 3, 4), Of.Kilonewtons(0, 2, 4, 6, 3), Force.FromKilonewtons(1), Force.FromKilonewtons(7));
        Assert.Equal(2.0, stiffness.Stiffness.KilonewtonsPerMillimeter, 1e-9);
        Assert.Equal(3, stiffness.Readings);
        Assert.Contains(stiffness.Cautions, sentence => sentence.Contains("does not reach", StringComparison.Ordinal));
    }

    [Fact]
    public void FirstDrop_IsTheFirstNotTheLargest()
    {
        RigDrop<Length, Force> drop = RigRecords.RecordFirstDrop(Places, Forces);
        Assert.Equal((6.0, 5.0, 3.0, 4.0), (drop.Before.Kilonewtons, drop.After.Kilonewtons, drop.At.Millimeters, drop.Reading));
        Assert.Equal(1.0 / 6, drop.Fall, 1e-12);
    }

    [Fact]
    public void FirstDrop_OfALargerShare_PassesOverTheSmallOne() =>
        Assert.Equal(7, RigRecords.RecordFirstDrop(Places, Forces, 0.5).Reading);
}
