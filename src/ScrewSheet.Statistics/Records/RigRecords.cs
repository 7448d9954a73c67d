using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;
using UnitsNet;

namespace ScrewSheet.Statistics;

/// <summary>The highest reading of a rig record.</summary>
/// <typeparam name="TX">Displacement or time.</typeparam>
/// <typeparam name="TY">What was measured.</typeparam>
/// <param name="Value">The highest reading.</param>
/// <param name="At">Where it was read first.</param>
/// <param name="Reading">Its number, counted from 1.</param>
/// <param name="Cautions">What the record leaves open.</param>
[SheetRecord("The highest reading of a rig record")]
public sealed record RigPeak<TX, TY>(
    [property: Member("", "", "the highest reading")] TY Value,
    [property: Member("", "", "displacement or time at which it was read")] TX At,
    [property: Member("", "", "number of the reading, counted from 1")] double Reading,
    IReadOnlyList<string> Cautions) : ICautioned where TX : struct where TY : struct;

/// <summary>The first drop of a rig record: the reading before it and the lowest one that follows before the record rises again.</summary>
/// <typeparam name="TX">Displacement or time.</typeparam>
/// <typeparam name="TY">What was measured.</typeparam>
/// <param name="Before">The highest reading before the drop.</param>
/// <param name="After">The lowest reading it drops to before rising again.</param>
/// <param name="At">Where the highest reading before the drop was read.</param>
/// <param name="Reading">Its number, counted from 1.</param>
/// <param name="Fall">The drop as a share of the reading before it, 0 to 1 (above 1 where the reading changes sign).</param>
[SheetRecord("The first drop of a rig record")]
public sealed record RigDrop<TX, TY>(
    [property: Member("", "", "highest reading before the drop")] TY Before,
    [property: Member("", "", "lowest reading it drops to before rising again")] TY After,
    [property: Member("", "", "displacement or time before the drop")] TX At,
    [property: Member("", "", "number of the reading before the drop, counted from 1")] double Reading,
    [property: Member("", "", "the drop as a share of the reading before it")] double Fall) where TX : struct where TY : struct;

/// <summary>The energy under a record of force against displacement.</summary>
/// <param name="Total">To the last reading.</param>
/// <param name="ToPeak">To the highest force.</param>
/// <param name="Cautions">What the record leaves open.</param>
[SheetRecord("The energy under a record of force against displacement")]
public sealed record RigEnergy(
    [property: Member("", "J", "to the last reading")] Energy Total,
    [property: Member("", "J", "to the highest force")] Energy ToPeak,
    IReadOnlyList<string> Cautions) : ICautioned;

/// <summary>The stiffness of a range of a record of force against displacement.</summary>
/// <param name="Stiffness">Slope of the line through the readings of the range.</param>
/// <param name="StandardError">Its standard error.</param>
/// <param name="ExplainedShare">R² of the line, 0 to 1.</param>
/// <param name="Readings">How many readings lie in the range.</param>
/// <param name="Cautions">What the record leaves open.</param>
[SheetRecord("The stiffness of a range of a record of force against displacement")]
public sealed record RigStiffness(
    [property: Member("K", "N/m", "slope of force on displacement")] ForcePerLength Stiffness,
    [property: Member("u(K)", "N/m", "its standard error")] ForcePerLength StandardError,
    [property: Member("R²", "", "share of the sum of squares explained, 0 to 1")] double ExplainedShare,
    [property: Member("n", "", "readings in the range")] double Readings,
    IReadOnlyList<string> Cautions) : ICautioned;

/// <summary>Peak, energy, stiffness and first drop of a rig record, each over a pair of series of equal length.</summary>
public static class RigRecords
{
    private const string OwnSource = "Elementary treatment of a sampled curve";

    /// <summary>The highest reading and where it was read first; at least one reading.</summary>
    [Callable(Topics.Records, "What is the peak of a rig record, and where is it?", Assumes = "The rig samples fast enough to catch the peak.")]
    [NoFormula("the largest reading; the first of equal ones")]
    [Source(OwnSource, Standing.Derived)]
    [Example("RecordPeak(Values(0 mm, 10 mm, 20 mm), Values(0 kN, 6 kN, 4 kN)).Value", "6 kN")]
    public static RigPeak<TX, TY> RecordPeak<TX, TY>(
        [Parameter("x", "", "displacement or time, one value a reading")] Series<TX> position,
        [Parameter("y", "", Says.Y)] Series<TY> reading) where TX : struct where TY : struct
    {
        (_, double[] y) = Pair(position, reading, 1);
        int peak = Highest(y);
        return new RigPeak<TX, TY>(reading[peak], position[peak], peak + 1, CautionList.Of(
            (peak == y.Length - 1, "The highest reading is the last one: the record may have ended before the peak."),
            (y.Count(value => value == y[peak]) > 2, "Three or more readings share the highest value: the rig may have run into its limit.")));
    }

    /// <summary>The energy under force against displacement, exact for straight pieces between readings; displacement must not go back.</summary>
    [Callable(Topics.Records, "How much energy did the specimen take up?", Assumes = "Force acts along the displacement; straight pieces between readings.", NotFor = "Force against time: that area is an impulse.")]
    [NoFormula("trapezoids on the recorded displacements")]
    [Source(OwnSource, Standing.Derived)]
    [Example("RecordEnergy(Values(0 mm, 10 mm, 20 mm), Values(0 kN, 4 kN, 6 kN)).Total", "70 J")]
    public static RigEnergy RecordEnergy(
        [Parameter("x", "", "displacement, one value a reading, never falling")] Series<Length> displacement,
        [Parameter("F", "", "force, one value a reading")] Series<Force> force)
    {
        (double[] x, double[] y) = Pair(displacement, force, 2);
        NeverBack(x);
        int peak = Highest(y);
        double total = 0, toPeak = 0;
        for (int i = 1; i < x.Length; i++)
        {
            total += (x[i] - x[i - 1]) * (y[i] + y[i - 1]) / 2;
            if (i == peak) toPeak = total;
        }
        return new RigEnergy(Energy.FromJoules(Values.Answer(total)), Energy.FromJoules(Values.Answer(toPeak)), CautionList.Of(
            (Repeats(x), "Some readings share a displacement: the force jumped there, which adds no energy."),
            (y.Min() < 0, "The force is negative in places: energy given back is taken off.")));
    }

    /// <summary>The slope of force on displacement between two forces, on the way up to the first peak; at least three readings in the range.</summary>
    [Callable(Topics.Records, "How stiff is the specimen between two forces?", Assumes = "Force rises in a straight line within the range; only readings up to the highest one count.")]
    [NoFormula("least-squares line through the readings between both forces, up to the highest reading")]
    [Source(OwnSource, Standing.Derived)]
    [Example("RecordStiffness(Values(0 mm, 1 mm, 2 mm, 3 mm), Values(0 kN, 2.1 kN, 3.9 kN, 6.2 kN), 1 kN, 7 kN).Stiffness", "2050 kN/m")]
    public static RigStiffness RecordStiffness(
        [Parameter("x", "", "displacement, one value a reading")] Series<Length> displacement,
        [Parameter("F", "", "force, one value a reading")] Series<Force> force,
        [Parameter("F1", "N", "the force at which the range begins")] Force from,
        [Parameter("F2", "N", "the force at which the range ends")] Force to)
    {
        (double[] x, double[] y) = Pair(displacement, force, 3);
        double low = Values.Si(from, nameof(from)), high = Values.Si(to, nameof(to));
        if (!(low < high)) throw new DomainException("The range must begin at a smaller force than it ends at.", nameof(from));
        int peak = Highest(y);
        int[] inside = [.. Enumerable.Range(0, peak + 1).Where(i => y[i] >= low && y[i] <= high)];
        if (inside.Length < 3) throw new DomainException($"Only {inside.Length} readings lie between these forces before the peak; at least three are needed.", nameof(from));
        LineFit<Length, Force> line = Regressions.LinearRegression(displacement.With(inside.Select(i => x[i])), force.With(inside.Select(i => y[i])));
        return new RigStiffness(ForcePerLength.FromNewtonsPerMeter(line.Slope.Si), ForcePerLength.FromNewtonsPerMeter(line.SlopeError.Si), line.ExplainedShare, inside.Length, CautionList.Of(
            (y[peak] < high, "The record does not reach the end of the range."),
            (inside.Length < 10, $"Only {inside.Length} readings lie in the range."),
            (line.ExplainedShare < 0.99, "The readings of the range do not lie on a straight line: one stiffness does not describe them.")));
    }

    /// <summary>The first time the record falls from its highest value so far by at least a share of it; refused where it never does.</summary>
    [Callable(Topics.Records, "Where does the force first drop (first crack, first slip)?", Assumes = "Positive readings; noise smaller than the share.")]
    [NoFormula("the running highest value, and the first reading below it by the share")]
    [Source(OwnSource, Standing.Derived)]
    [Example("RecordFirstDrop(Values(0 mm, 10 mm, 20 mm), Values(0 kN, 6 kN, 4 kN)).Fall", "0.3333333")]
    public static RigDrop<TX, TY> RecordFirstDrop<TX, TY>(
        [Parameter("x", "", "displacement or time, one value a reading")] Series<TX> position,
        [Parameter("y", "", Says.Y)] Series<TY> reading,
        [Parameter("d", "", "how much it must fall, as a share of the highest value so far", Above = 0, Below = 1, UsualFrom = 0.01)] double share = 0.05) where TX : struct where TY : struct
    {
        (_, double[] y) = Pair(position, reading, 2);
        Values.Share(share, nameof(share));
        int highest = 0;
        for (int i = 1; i < y.Length; i++)
        {
            if (y[i] > y[highest]) highest = i;
            if (!(y[highest] > 0 && y[highest] - y[i] >= share * y[highest])) continue;
            int lowest = i;
            while (lowest + 1 < y.Length && y[lowest + 1] <= y[lowest]) lowest++;
            return new RigDrop<TX, TY>(reading[highest], reading[lowest], position[highest], highest + 1, (y[highest] - y[lowest]) / y[highest]);
        }
        throw new DomainException($"The record never falls by {Values.Percent(share)} of its highest value so far.", nameof(share));
    }

    private static (double[] X, double[] Y) Pair(Series position, Series reading, int least)
    {
        ArgumentNullException.ThrowIfNull(position);
        ArgumentNullException.ThrowIfNull(reading);
        Sample.SameLength(position, reading, "positions", "readings");
        if (reading.Count < least) throw new DomainException($"The record needs at least {least} reading{(least == 1 ? "" : "s")}; it has {reading.Count}.", nameof(reading));
        if (!position.Si.All(double.IsFinite) || !reading.Si.All(double.IsFinite)) throw new DomainException("The record holds something that is not a finite number.", nameof(reading));
        return ([.. position.Si], [.. reading.Si]);
    }

    private static int Highest(double[] y) => Array.IndexOf(y, y.Max());

    private static void NeverBack(double[] x)
    {
        for (int i = 1; i < x.Length; i++)
            if (x[i] < x[i - 1]) throw new DomainException($"The displacement goes back at reading {i + 1}: the energy under such a record is not defined here. Cut the record or sort it.", "displacement");
        if (x[0] == x[^1]) throw new DomainException("All displacements are equal: there is no curve to take an area under.", "displacement");
    }

    private static bool Repeats(double[] x) => x.Zip(x.Skip(1)).Any(pair => pair.First == pair.Second);
}
