using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>The middle and the side legs of a symmetric three-leg anchor.</summary>
[SheetRecord("tensions in the middle leg and in each side leg")]
public readonly record struct ThreeBarTensions
{
    private readonly double middle, side;

    internal ThreeBarTensions(double middle, double side)
    {
        this.middle = middle;
        this.side = side;
    }

    /// <summary>Tension in the middle leg.</summary>
    [Member("T_mid", "kN", "tension in the middle leg")]
    public Force Middle => Force.FromNewtons(middle);

    /// <summary>Tension in each side leg.</summary>
    [Member("T_side", "kN", "tension in each side leg")]
    public Force Side => Force.FromNewtons(side);
}

/// <summary>How tied legs of different stiffness share a load before the master point has moved far.</summary>
public static class StiffnessSharing
{
    internal const string StiffnessMeaning = "axial stiffness EA of each leg: force for a stretch to double length";
    private const string Topic = "Anchors";
    private const string Method = "displacement method for a statically indeterminate anchor, slack legs dropped and the rest solved again";
    private const string Small = "Legs follow Hooke's law, are just taut before the load, and stretch little against their length.";
    private const string Mechanism = "The legs that stay taut do not hold a pull in this direction: the master point swings. Use TiedLegs, which follows it.";

    /// <summary>Tensions in N of parallel legs just taut together: F kᵢ/Σ k, kᵢ = EA/L; displacement method.</summary>
    /// <exception cref="DomainException">A value is out of range or the series differ in number.</exception>
    [Callable(Topic, "How parallel legs of different length and stiffness share a load: short stiff legs take most.", Assumes = Small, NotFor = "Legs of which one is slack: see ShareWithSlack.")]
    [NoFormula("Each leg's share is its EA/L over the sum of all.")]
    [Example("ShareParallel(10 kN, Values(0.3 m, 0.5 m, 0.8 m), Values(100 kN, 100 kN, 100 kN)).Largest", "5.063291 kN")]
    [Source(Method, Standing.Derived)]
    public static LegSharing ShareParallel(
        [Parameter("F", "kN", "load along the legs", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("L", "m", "length of each leg", Above = 0, AtMost = Most.Metres)] Series<Length> lengths,
        [Parameter("EA", "kN", StiffnessMeaning, Above = 0, AtMost = Most.AxialKilonewtons)] Series<Force> stiffness)
    {
        double[] springs = Springs(lengths, stiffness, LegInputs.Count(lengths, nameof(lengths), 1));
        double stretch = EqualLegs.Load(load) / springs.Sum();
        return new LegSharing([.. springs.Select(k => k * stretch)], new Vector(stretch, 0, 0));
    }

    /// <summary>Tensions in N of parallel legs of which some have slack: each leg takes up load once the others have stretched by its slack.</summary>
    /// <exception cref="DomainException">A value is out of range or the series differ in number.</exception>
    [Callable(Topic, "How parallel legs share a load when some were tied longer than others.", Assumes = "Legs follow Hooke's law.", NotFor = "Legs at an angle to each other.")]
    [NoFormula("Takes the legs in the order of their slack until the stretch that balances the load reaches no further leg.")]
    [Example("ShareWithSlack(10 kN, Values(200 kN/m, 200 kN/m), Values(0 mm, 10 mm)).Largest", "6.00000 kN")]
    [Source(Method, Standing.Derived)]
    public static LegSharing ShareWithSlack(
        [Parameter("F", "kN", "load along the legs", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("k", "kN/m", "stiffness of each leg as tied", Above = 0, AtMost = Most.KilonewtonsPerMetre)] Series<ForcePerLength> legStiffness,
        [Parameter("s", "mm", "how much too long each leg is", AtLeast = 0, AtMost = Most.Millimetres)] Series<Length> slack)
    {
        int count = LegInputs.Count(legStiffness, nameof(legStiffness), 1);
        LegInputs.Same(slack, nameof(slack), count);
        double[] springs = [.. legStiffness.Si.Select(k => Admit.Positive(k, Most.KilonewtonsPerMetre, Scale.KilonewtonPerMetre, nameof(legStiffness)))];
        double[] late = [.. slack.Si.Select(s => Admit.Between(s, 0, Most.Millimetres, Scale.Millimetre, nameof(slack)))];
        double newtons = EqualLegs.Load(load), taut = 0, preload = 0, stretch = 0;
        int[] order = [.. Enumerable.Range(0, count).OrderBy(leg => late[leg])];
        for (int next = 0; next < count; next++)
        {
            if (next > 0 && stretch <= late[order[next]]) break;
            taut += springs[order[next]];
            preload += springs[order[next]] * late[order[next]];
            stretch = (newtons + preload) / taut;
        }
        return new LegSharing([.. springs.Select((k, leg) => k * Math.Max(0, stretch - late[leg]))], new Vector(stretch, 0, 0));
    }

    /// <summary>Tensions in N of two like parallel legs of which one is too long by s: (F ± k s)/2, the longer one slack if F ≤ k s.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "What an error in length does to two like parallel legs.", Assumes = "Two legs of the same stiffness; the first is the shorter.", NotFor = "Legs of different stiffness: see ShareWithSlack.")]
    [Let("ks", "legStiffness*lengthError", "N")]
    [Formula("Min(load, (load + ks)/2)", Symbol = "T_1", Member = "First")]
    [Formula("Max(0, (load - ks)/2)", Symbol = "T_2", Member = "Second")]
    [Formula("Min(load, (load + ks)/2)", Symbol = "T_max", Member = "Largest")]
    [CautionWhen("load <= ks", "The longer leg stays slack: the other carries the whole load.")]
    [Example("PairWithLengthError(10 kN, 200 kN/m, 10 mm).First", "6.00000 kN")]
    [Source(Method, Standing.Derived)]
    public static LegPair PairWithLengthError(
        [Parameter("F", "kN", "load along the legs", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("k", "kN/m", "stiffness of each leg as tied", Above = 0, AtMost = Most.KilonewtonsPerMetre)] ForcePerLength legStiffness,
        [Parameter("s", "mm", "how much longer the second leg is", AtLeast = 0, AtMost = Most.Millimetres)] Length lengthError)
    {
        double newtons = EqualLegs.Load(load);
        double late = Admit.Positive(legStiffness.NewtonsPerMeter, Most.KilonewtonsPerMetre, Scale.KilonewtonPerMetre, nameof(legStiffness))
            * Admit.Between(lengthError.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(lengthError));
        return new LegPair(Math.Min(newtons, (newtons + late) / 2), Math.Max(0, (newtons - late) / 2));
    }

    /// <summary>Tensions in N of a middle leg and two like side legs at θ, all of one line and to one depth: F/(1 + 2 cos³θ), side legs cos²θ of it; Timoshenko.</summary>
    /// <exception cref="DomainException">The load is negative or absurd, or the angle is not from 0° to less than 90°.</exception>
    [Callable(Topic, "How a middle leg and two side legs of the same line share a load.", Assumes = Small + " The same EA and the same depth below the anchors.", NotFor = "Sliding rigs: see SlidingThreeLegs.")]
    [Let("c", "Cos(sideAngle)", "")]
    [Formula("load/(1 + 2*c*c*c)", Symbol = "T_mid", Member = "Middle")]
    [Formula("load*c*c/(1 + 2*c*c*c)", Symbol = "T_side", Member = "Side")]
    [Example("ThreeBar(8 kN, 45 °).Middle", "4.686292 kN")]
    [Source("Timoshenko, Strength of Materials, three bars in a plane; derived again here", Standing.Derived)]
    public static ThreeBarTensions ThreeBar(
        [Parameter("F", "kN", "load along the middle leg", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("θ", "°", "angle from the middle leg to each side leg", AtLeast = 0, Below = 90)] Angle sideAngle)
    {
        double cosine = Math.Cos(Admit.Under(sideAngle.Radians, 0, 90, Scale.Degree, nameof(sideAngle)));
        double middle = EqualLegs.Load(load) / (1 + (2 * cosine * cosine * cosine));
        return new ThreeBarTensions(middle, middle * cosine * cosine);
    }

    /// <summary>Tensions in N of any number of legs in a plane, shared by stiffness: K = Σ k u uᵀ, d = K⁻¹ F, Tᵢ = kᵢ uᵢ·d; displacement method.</summary>
    /// <exception cref="DomainException">A value is out of range, the series differ in number, or the legs that stay taut do not hold the pull.</exception>
    [Callable(Topic, "How any number of tied legs in a plane share a pull, by their stiffness.", Assumes = Small, NotFor = "A pull that swings the master point: see TiedLegs.")]
    [NoFormula("Solves the stiffness of all taut legs for the movement, drops legs that would push, takes back legs that would pull, and repeats.")]
    [Example("SharePlane(10 kN, 0 °, Values(-30 °, 0 °, 30 °), Values(0.5 m, 0.4 m, 0.6 m), Values(100 kN, 100 kN, 100 kN)).Largest", "4.782609 kN")]
    [Source(Method, Standing.Derived)]
    public static LegSharing SharePlane(
        [Parameter("F", "kN", "load at the master point", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("ψ", "°", "direction of the pull from a line of your choice, such as straight down, positive to one side; y lies along that line and x to the positive side", AtLeast = -360, AtMost = 360)] Angle direction,
        [Parameter("a", "°", "direction of each leg from its anchor to the master point, from the same line and positive to the same side", AtLeast = -360, AtMost = 360)] Series<Angle> legs,
        [Parameter("L", "m", "length of each leg", Above = 0, AtMost = Most.Metres)] Series<Length> lengths,
        [Parameter("EA", "kN", StiffnessMeaning, Above = 0, AtMost = Most.AxialKilonewtons)] Series<Force> stiffness)
    {
        int count = LegInputs.Count(legs, nameof(legs), 1);
        double[] springs = Springs(lengths, stiffness, count);
        double pull = Admit.Signed(direction.Radians, 360, Scale.Degree, nameof(direction)), newtons = EqualLegs.Load(load);
        Vector[] units = [.. legs.Si.Select(a => Admit.Signed(a, 360, Scale.Degree, nameof(legs))).Select(a => new Vector(Math.Sin(a), Math.Cos(a), 0))];
        return Share(new Vector(newtons * Math.Sin(pull), newtons * Math.Cos(pull), 0), units, springs, planar: true);
    }

    /// <summary>Tensions in N of any number of legs in space, shared by stiffness, for a pull given by its components; displacement method.</summary>
    /// <exception cref="DomainException">A value is out of range, the series differ in number, or the legs that stay taut do not hold the pull.</exception>
    [Callable(Topic, "How any number of tied legs in space share a pull, by their stiffness.", Assumes = Small, NotFor = "A pull that swings the master point, or legs in one plane with a pull out of it: see TiedLegs.")]
    [NoFormula("Solves the stiffness of all taut legs for the movement, drops legs that would push, takes back legs that would pull, and repeats.")]
    [Example("ShareSpace(0 kN, 0 kN, -10 kN, Values(0.3 m, -0.4 m, 0.05 m), Values(0.1 m, 0.1 m, -0.2 m), Values(0.8 m, 0.6 m, 1 m), Values(100 kN, 100 kN, 100 kN)).Largest", "4.229114 kN")]
    [Source(Method, Standing.Derived)]
    public static LegSharing ShareSpace(
        [Parameter("F_x", "kN", "x component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullX,
        [Parameter("F_y", "kN", "y component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullY,
        [Parameter("F_z", "kN", "z component of the pull", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force pullZ,
        [Parameter("x", "m", "x from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> x,
        [Parameter("y", "m", "y from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> y,
        [Parameter("z", "m", "z from the master point to the anchor of each leg", AtLeast = -Most.Metres, AtMost = Most.Metres)] Series<Length> z,
        [Parameter("EA", "kN", StiffnessMeaning, Above = 0, AtMost = Most.AxialKilonewtons)] Series<Force> stiffness)
    {
        Vector[] anchors = SpaceInputs.Anchors(x, y, z, 1);
        double[] springs = SpaceInputs.Springs(anchors, stiffness);
        Vector[] units = [.. anchors.Select(anchor => -1 / anchor.Length * anchor)];
        return Share(SpaceInputs.Pull(pullX, pullY, pullZ), units, springs, planar: false);
    }

    /// <summary>Units point from anchor to master point. A leg is taut where the movement lengthens it.</summary>
    private static LegSharing Share(Vector pull, Vector[] units, double[] springs, bool planar) =>
        Settle(pull, units, springs, planar, takeBack: true) ?? Settle(pull, units, springs, planar, takeBack: false)
            ?? throw new DomainException(Mechanism, planar ? "direction" : "pullX");

    /// <summary>Solves until the same legs stay taut; null when they never do, or do not hold the pull. Dropped legs are taken back only if told so.</summary>
    private static LegSharing? Settle(Vector pull, Vector[] units, double[] springs, bool planar, bool takeBack)
    {
        bool[] taut = [.. units.Select(_ => true)];
        double[] stretch = new double[units.Length];
        for (int round = 0; round < 2 * LegInputs.MostLegs; round++)
        {
            Stiffness whole = default;
            for (int leg = 0; leg < units.Length; leg++) whole.Add(taut[leg] ? springs[leg] : 0, units[leg]);
            if (planar) whole.Add(springs.Max(), new Vector(0, 0, 1));
            Vector moved = whole.Solve(pull) ?? whole.LeastMovement(pull);
            bool settled = true;
            for (int leg = 0; leg < units.Length; leg++)
            {
                stretch[leg] = units[leg].Dot(moved);
                bool pulls = (stretch[leg] > 0 && (taut[leg] || takeBack)) || (taut[leg] && stretch[leg] == 0);
                settled &= pulls == taut[leg];
                taut[leg] = pulls;
            }
            if (settled) return Balanced(pull, units, springs, stretch, moved);
        }
        return null;
    }

    private static LegSharing? Balanced(Vector pull, Vector[] units, double[] springs, double[] stretch, Vector moved)
    {
        double[] tensions = [.. springs.Zip(stretch, (k, s) => k * Math.Max(0, s))];
        Vector open = pull;
        for (int leg = 0; leg < units.Length; leg++) open -= tensions[leg] * units[leg];
        return open.Length <= 1e-6 * pull.Length ? new LegSharing(tensions, moved, SlackCaution(tensions)) : null;
    }

    internal static IEnumerable<string> SlackCaution(double[] tensions) =>
        tensions.Length > 1 && tensions.Any(tension => tension <= 0) && tensions.Any(tension => tension > 0)
            ? ["At least one leg is slack and carries nothing."] : [];

    private static double[] Springs(Series<Length> lengths, Series<Force> stiffness, int count)
    {
        LegInputs.Same(lengths, nameof(lengths), count);
        LegInputs.Same(stiffness, nameof(stiffness), count);
        return [.. stiffness.Si.Zip(lengths.Si, (ea, length) =>
            Admit.Positive(ea, Most.AxialKilonewtons, Scale.Kilonewton, nameof(stiffness)) / Admit.Positive(length, Most.Metres, Scale.Metre, nameof(lengths)))];
    }
}
