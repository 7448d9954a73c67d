using System.Globalization;
using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Belay;

/// <summary>A belay that slips at a force, and the clear height a fall needs.</summary>
public static class DynamicBelays
{
    /// <summary>Peak, slip, drop and energies of a fall on a belay that slips at <paramref name="deviceLimit"/>.</summary>
    /// <exception cref="DomainException">A value is outside its limits, or the slip limit on the climber's side is no more than the weight, so that the fall is never stopped.</exception>
    [Callable(Topics.Belay, "How hard and how far is a fall that the belay holds by slipping?",
        Assumes = "The device slips at a constant force; linear rope, first loading; the belayer is not lifted and the hand does not tire.",
        NotFor = "Peak alone: a low slip limit lengthens the fall, read the total drop with it.")]
    [Let("w", "mass * gn", "N")]
    [Let("limit", "deviceLimit * frictionRatio", "N")]
    [Let("peak", "Min(limit, w * (1 + Sqrt(1 + 2 * modulus * fall / (effectiveLength * w))))", "N")]
    [Let("stretch", "peak * effectiveLength / modulus", "m")]
    [Let("slip", "peak < limit ? 0 : Max(0, (w * (fall + stretch) - peak * stretch / 2) / (peak - w))", "m")]
    [Needs("limit > w")]
    [Formula("peak", Symbol = "F", Member = nameof(BelayedFall.PeakForce))]
    [Formula("peak / frictionRatio", Symbol = "T_b", Member = nameof(BelayedFall.BelayerForce))]
    [Formula("limit", Symbol = "T_c", Member = nameof(BelayedFall.SlipLimit))]
    [Formula("stretch", Symbol = "x", Member = nameof(BelayedFall.Stretch))]
    [Formula("slip", Symbol = "s", Member = nameof(BelayedFall.Slip))]
    [Formula("slip / (1 + peak / modulus)", Symbol = "s_0", Member = nameof(BelayedFall.RopeThroughDevice))]
    [Formula("fall + stretch + slip", Symbol = "H", Member = nameof(BelayedFall.TotalDrop))]
    [Formula("w * (fall + stretch + slip)", Symbol = "E", Member = nameof(BelayedFall.FallEnergy))]
    [Formula("peak * stretch / 2", Symbol = "E_rope", Member = nameof(BelayedFall.RopeEnergy))]
    [Formula("deviceLimit * slip", Symbol = "E_device", Member = nameof(BelayedFall.DeviceEnergy))]
    [Formula("(limit - deviceLimit) * slip", Symbol = "E_pieces", Member = nameof(BelayedFall.PiecesEnergy))]
    [Example("DynamicBelay(80 kg, 20 kN, 10 m, 15 m, 2500 N, 1.5).Slip", "1.61134052 m")]
    [CautionWhen("peak >= limit", "The belay slips: the peak is lower and the fall longer; check the total drop against the clear height.")]
    [CautionWhen("frictionRatio > 1", "Friction lowers the belayer's load here; set the ratio to 1 for its design. It raises the slip limit on the climber's side.")]
    [Source("(8.1), energy balance; principle from " + Works.Wexler, Standing.Derived)]
    public static BelayedFall DynamicBelay(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K", "kN", "rope modulus, all strands together", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 5, UsualTo = 200)] Force modulus,
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("L_eff", "m", "rope that takes the load; with friction the effective length", Above = 0, AtMost = Limits.LengthMetres)] Length effectiveLength,
        [Parameter("T_slip", "kN", "tension on the belayer's side at which the device slips", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 0.5, UsualTo = 9)] Force deviceLimit,
        [Parameter("R", "", "climber-side over belay-side tension of all pieces together; 1 without friction", AtLeast = 1, AtMost = Limits.FrictionRatio, UsualTo = 5)] double frictionRatio = 1)
    {
        double w = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        double k = Inputs.PositiveForce(modulus);
        double h = Inputs.Distance(fall);
        double length = Inputs.RopeLength(effectiveLength);
        double device = Inputs.PositiveForce(deviceLimit);
        double ratio = Inputs.Number(frictionRatio, 1, Limits.FrictionRatio);
        double limit = device * ratio;
        if (limit <= w) throw NeverStopped(limit, w);
        double peak = Math.Min(limit, ImpactForces.Elastic(w, k * h / length));
        double stretch = peak * length / k;
        double slip = peak < limit ? 0 : Math.Max(0, ((w * (h + stretch)) - (peak * stretch / 2)) / (peak - w));
        return Held(w, h, k, ratio, device, limit, peak, stretch, slip);
    }

    /// <summary>Clear height below the tie-in that a fall needs.</summary>
    /// <exception cref="DomainException">A length is negative or beyond 10 km.</exception>
    [Callable(Topics.Belay, "How much clear height does a fall need?", Assumes = "Everything below the tie-in at the start of the fall adds up.", NotFor = "Swinging falls, or ledges beside the line of fall.")]
    [Formula("fall + stretch + slip + person + margin", Symbol = "H")]
    [Example("FallClearance(10 m, 2.8125 m, 1.61134052 m, 1 m, 1 m)", "16.4238405 m")]
    [Source("clearance = h + x + s + person + margin; sum of lengths", Standing.Derived)]
    public static Length FallClearance(
        [Parameter("h", "m", "free-fall height before the rope begins to stretch", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("x", "m", "stretch of the rope at the peak", AtLeast = 0, AtMost = Limits.LengthMetres)] Length stretch,
        [Parameter("s", "m", "slip of the belay", AtLeast = 0, AtMost = Limits.LengthMetres)] Length slip,
        [Parameter("p", "m", "person below the tie-in", AtLeast = 0, AtMost = Limits.LengthMetres, UsualFrom = 0.8, UsualTo = 2)] Length person,
        [Parameter("c", "m", "margin kept free", AtLeast = 0, AtMost = Limits.LengthMetres, UsualFrom = 0.5)] Length margin) =>
        Length.FromMeters(Inputs.Distance(fall) + Inputs.Distance(stretch) + Inputs.Distance(slip) + Inputs.Distance(person) + Inputs.Distance(margin));

    private static BelayedFall Held(double w, double h, double k, double ratio, double device, double limit, double peak, double stretch, double slip) => new()
    {
        PeakForce = Force.FromNewtons(peak),
        BelayerForce = Force.FromNewtons(peak / ratio),
        SlipLimit = Force.FromNewtons(limit),
        Stretch = Length.FromMeters(stretch),
        Slip = Length.FromMeters(slip),
        RopeThroughDevice = Length.FromMeters(slip / (1 + (peak / k))),
        TotalDrop = Length.FromMeters(h + stretch + slip),
        FallEnergy = Energy.FromJoules(w * (h + stretch + slip)),
        RopeEnergy = Energy.FromJoules(peak * stretch / 2),
        DeviceEnergy = Energy.FromJoules(device * slip),
        PiecesEnergy = Energy.FromJoules((limit - device) * slip),
    };

    private static DomainException NeverStopped(double limit, double w) => new(string.Create(CultureInfo.InvariantCulture,
        $"The fall is never stopped: the belay slips at {limit / 1000:G6} kN on the climber's side, and deviceLimit times frictionRatio must be greater than the weight of {w / 1000:G6} kN."), "deviceLimit");
}
