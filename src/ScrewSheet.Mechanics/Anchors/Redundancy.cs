using System.Globalization;
using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>What happens to every remaining leg when each leg in turn is lost.</summary>
[SheetRecord("what every remaining leg has to carry when each leg in turn is lost")]
public sealed class RedundancyCheck : ICautioned, IEquatable<RedundancyCheck>
{
    private readonly double[] still, dropped, drops;

    /// <summary>The first two hold, for each lost leg in turn, one value for each leg.</summary>
    internal RedundancyCheck(double[] still, double[] dropped, double[] drops, IReadOnlyList<string> cautions)
    {
        this.still = still;
        this.dropped = dropped;
        this.drops = drops;
        Cautions = cautions;
        Utilisations = Series.OfNumbers(still);
        UtilisationsWithImpact = Series.OfNumbers(dropped);
        Drops = Series.Of<Length>(drops);
    }

    /// <summary>Largest utilisation of a remaining leg in the new geometry, without impact.</summary>
    [Member("", "", "largest utilisation of any remaining leg, in the new geometry, without the impact of the drop")]
    public double Worst => still.Max();

    /// <summary>Largest utilisation of a remaining leg in the new geometry, with the impact of the drop.</summary>
    [Member("", "", "largest utilisation of any remaining leg, in the new geometry, with the impact of the drop")]
    public double WorstWithImpact => dropped.Max();

    /// <summary>Number of the leg whose loss is worst, counted from 1.</summary>
    [Member("", "", "number of the leg whose loss is worst (impact included), counted from 1")]
    public double WorstLoss => (Array.IndexOf(dropped, dropped.Max()) / drops.Length) + 1;

    /// <summary>Number of the leg that is then used most, counted from 1.</summary>
    [Member("", "", "number of the leg that is then used most (impact included), counted from 1")]
    public double WorstLeg => (Array.IndexOf(dropped, dropped.Max()) % drops.Length) + 1;

    /// <summary>True when every remaining leg holds, whichever leg is lost, impact included.</summary>
    [Member("", "", "holds when no remaining leg is used beyond 1, whichever leg is lost, impact included")]
    public bool Redundant => WorstWithImpact <= 1;

    /// <summary>For each lost leg in turn, tension over capacity of every leg (0 for the lost one), without impact.</summary>
    [Member("", "", "for each lost leg in turn, tension over capacity of every leg (0 for the lost one), without impact")]
    public Series<double> Utilisations { get; }

    /// <summary>For each lost leg in turn, tension over capacity of every leg (0 for the lost one), with impact.</summary>
    [Member("", "", "for each lost leg in turn, tension over capacity of every leg (0 for the lost one), with impact")]
    public Series<double> UtilisationsWithImpact { get; }

    /// <summary>Drop of the master point along the pull for each lost leg.</summary>
    [Member("x", "mm", "drop of the master point along the pull for each lost leg")]
    public Series<Length> Drops { get; }

    /// <inheritdoc/>
    public IReadOnlyList<string> Cautions { get; }

    /// <summary>Equal when all utilisations and drops are.</summary>
    public bool Equals(RedundancyCheck? other) => other is not null && still.AsSpan().SequenceEqual(other.still)
        && dropped.AsSpan().SequenceEqual(other.dropped) && drops.AsSpan().SequenceEqual(other.drops);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RedundancyCheck);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(drops.Length, still[0], dropped[^1], drops[0]);
}

/// <summary>One-leg-out checks of tied anchors.</summary>
public static class Redundancy
{
    private const string Topic = "Anchors";
    private const string Rule = "one-leg-out check: every remaining leg satisfies E_d ≤ R_d with the new geometry plus the extension impact; derived here with Hooke's law";
    private const string CommonCause = "A common cause (the same ice sheet, melt-out) can take several legs at once; this check takes one.";
    private const string Tied = "Legs follow Hooke's law, are just taut before the load, and are tied at the master point.";

    /// <summary>Tensions in N of the remaining tied legs when one is lost, the master point followed to its new place.</summary>
    /// <exception cref="DomainException">A value is out of range, the series differ in number, there is no pull, or there is no such leg.</exception>
    [Callable(Topic, "What the remaining tied legs carry at rest when one leg is lost, in their new geometry.", Assumes = Tied, NotFor = "The impact of the drop: see OneLegOut.")]
    [NoFormula("As TiedLegs, without the lost leg.", Steps = 10_000)]
    [Example("WithoutLeg(0 kN, 0 kN, -10 kN, Values(-0.2 m, 0.2 m), Values(0 m, 0 m), Values(0.3464102 m, 0.3464102 m), Values(100 MN, 100 MN), 1).Largest", "10.0000 kN")]
    [Source(Rule, Standing.Derived)]
    public static LegSharing WithoutLeg(
        [Parameter("F_x", "kN", "x component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullX,
        [Parameter("F_y", "kN", "y component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullY,
        [Parameter("F_z", "kN", "z component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullZ,
        [Parameter("x", "m", "x from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> x,
        [Parameter("y", "m", "y from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> y,
        [Parameter("z", "m", "z from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> z,
        [Parameter("EA", "kN", StiffnessSharing.StiffnessMeaning, Above = 0, AtMost = Most.AxialKilonewtons)] Series<Force> stiffness,
        [Parameter("i", "", "number of the leg that is lost, counted from 1", AtLeast = 1, AtMost = LegInputs.MostLegs)] double lostLeg)
    {
        Vector[] anchors = SpaceInputs.Anchors(x, y, z, 2);
        double lost = Admit.Between(lostLeg, 1, anchors.Length, Scale.None, nameof(lostLeg));
        if (lost != Math.Floor(lost)) throw new DomainException(string.Create(CultureInfo.InvariantCulture, $"lostLeg must be a whole number; it is {lost:G6}."), nameof(lostLeg));
        return new ElasticLegs(anchors, SpaceInputs.Springs(anchors, stiffness)).Settle(LegsInSpace.SomePull(pullX, pullY, pullZ), (int)lost - 1);
    }

    /// <summary>Utilisation (number) of every remaining leg when each leg in turn is lost: new geometry, at rest and with the bound of the drop's impact.</summary>
    /// <exception cref="DomainException">A value is out of range, the series differ in number, or there is no pull.</exception>
    [Callable(Topic, "Whether an anchor holds when any one of its tied legs is lost: utilisation of every remaining leg.",
        Assumes = Tied + " The impact is ShockBound's upper bound for the drop of the master point, in the direction of the pull.", NotFor = "Sliding rigs, cascades, or the loss of two legs.")]
    [NoFormula("For each lost leg: TiedLegs without it, the drop along the pull, then TiedLegs again under the larger of the pull and ShockBound.", Steps = 10_000)]
    [CautionWhen("true", CommonCause)]
    [Example("OneLegOut(0 kN, 0 kN, -5 kN, Values(-0.2 m, 0.2 m), Values(0 m, 0 m), Values(0.3464102 m, 0.3464102 m), Values(100 MN, 100 MN), Values(10 kN, 8 kN), 80 kg, 20 kN/m).Worst", "0.625000")]
    [Source(Rule, Standing.Derived)]
    public static RedundancyCheck OneLegOut(
        [Parameter("F_x", "kN", "x component of the design pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullX,
        [Parameter("F_y", "kN", "y component of the design pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullY,
        [Parameter("F_z", "kN", "z component of the design pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullZ,
        [Parameter("x", "m", "x from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> x,
        [Parameter("y", "m", "y from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> y,
        [Parameter("z", "m", "z from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> z,
        [Parameter("EA", "kN", StiffnessSharing.StiffnessMeaning, Above = 0, AtMost = Most.AxialKilonewtons)] Series<Force> stiffness,
        [Parameter("R_d", "kN", "design capacity of each leg with its anchor", Above = 0, AtMost = Most.Kilonewtons)] Series<Force> capacities,
        [Parameter("m", "kg", "mass that hangs on the master point", Above = 0, AtMost = Most.Kilograms)] Mass mass,
        [Parameter("k", "kN/m", "stiffness of what is left between the surviving anchors and the mass", Above = 0, AtMost = Most.KilonewtonsPerMetre)] ForcePerLength lineStiffness)
    {
        Vector[] anchors = SpaceInputs.Anchors(x, y, z, 2);
        LegInputs.Same(capacities, nameof(capacities), anchors.Length);
        double[] holds = [.. capacities.Si.Select(capacity => Admit.Positive(capacity, Most.Kilonewtons, Scale.Kilonewton, nameof(capacities)))];
        ElasticLegs legs = new(anchors, SpaceInputs.Springs(anchors, stiffness));
        return Check(legs, LegsInSpace.SomePull(pullX, pullY, pullZ), holds, drop => LegFailure.ShockBound(mass, lineStiffness, Length.FromMeters(drop)).Newtons);
    }

    private static RedundancyCheck Check(ElasticLegs legs, Vector pull, double[] holds, Func<double, double> impact)
    {
        int count = legs.Count;
        double[] still = new double[count * count], dropped = new double[count * count], drops = new double[count];
        Vector whole = legs.Settle(pull, -1).Moved;
        for (int lost = 0; lost < count; lost++)
        {
            LegSharing after = legs.Settle(pull, lost);
            drops[lost] = Math.Max(0, (after.Moved - whole).Dot(pull) / pull.Length);
            double peak = Math.Max(pull.Length, impact(drops[lost]));
            LegSharing jolted = legs.Settle(peak / pull.Length * pull, lost);
            for (int leg = 0; leg < count; leg++)
            {
                still[(lost * count) + leg] = after.Si[leg] / holds[leg];
                dropped[(lost * count) + leg] = jolted.Si[leg] / holds[leg];
            }
        }
        return new RedundancyCheck(still, dropped, drops, dropped.Max() > 1 ? ["At least one leg would be loaded beyond its capacity when another is lost."] : []);
    }
}
