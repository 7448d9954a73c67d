using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Falls;

/// <summary>Speed, time and energy of a free fall, without and with air drag.</summary>
public static class FreeFalls
{
    private const string NoDrag = "No air drag: under 3 % too fast for a climber's fall of up to 10 m.";
    private const string Drag = "Drag grows with the square of the speed; the fall starts from rest.";

    /// <summary>Speed after a free fall from rest, without drag.</summary>
    /// <exception cref="DomainException">The height is negative or beyond 10 km.</exception>
    [Callable(Topics.Falls, "How fast is a body after falling this far?", Assumes = NoDrag, NotFor = "Falls of tens of metres and more (FallSpeedWithDrag).")]
    [Formula("Sqrt(2 * gn * fall)", Symbol = "v")]
    [Example("FallSpeed(4.6 m)", "9.49848304 m/s")]
    [Source("v = sqrt(2 g h); " + Works.OpenStax, Standing.Read)]
    public static Speed FallSpeed(
        [Parameter("h", "m", "free-fall height", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 50)] Length fall) =>
        Speed.FromMetersPerSecond(Math.Sqrt(2 * StandardGravity.MetresPerSecondSquared * Inputs.Distance(fall)));

    /// <summary>Time of a free fall from rest, without drag.</summary>
    /// <exception cref="DomainException">The height is negative or beyond 10 km.</exception>
    [Callable(Topics.Falls, "How long does a fall of this height take?", Assumes = NoDrag, NotFor = "Falls of tens of metres and more (FallTimeWithDrag).")]
    [Formula("Sqrt(2 * fall / gn)", Symbol = "t")]
    [Example("FallTime(10 m)", "1.42808698 s")]
    [Source("t = sqrt(2 h / g); " + Works.OpenStax, Standing.Read)]
    public static Duration FallTime(
        [Parameter("h", "m", "free-fall height", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 50)] Length fall) =>
        Duration.FromSeconds(Math.Sqrt(2 * Inputs.Distance(fall) / StandardGravity.MetresPerSecondSquared));

    /// <summary>Energy of a free fall.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Falls, "How much energy does a fall of this height bring?", Assumes = "The weight's work on the way down; the stretch adds more.", NotFor = "All the energy the rope takes: add the weight times the stretch.")]
    [Formula("mass * gn * fall", Symbol = "E")]
    [Example("FallEnergy(80 kg, 5 m)", "3922.66000 J")]
    [Source("E = m g h; " + Works.OpenStax, Standing.Derived)]
    public static Energy FallEnergy(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("h", "m", "free-fall height", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall) =>
        Energy.FromJoules(Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared * Inputs.Distance(fall));

    /// <summary>The speed at which drag balances weight.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Falls, "At what speed does air drag balance the weight?", Assumes = Drag, NotFor = "Small slow bodies, whose drag is viscous.")]
    [Formula("Sqrt(2 * mass * gn / (airDensity * frontalArea * dragCoefficient))", Symbol = "v_t")]
    [Example("TerminalSpeed(85 kg, 1.21 kg/m³, 0.70 m², 1.0)", "44.3652664 m/s")]
    [Source("v_t = sqrt(2 m g / (rho C A)); " + Works.OpenStax, Standing.Read)]
    public static Speed TerminalSpeed(
        [Parameter("m", "kg", "mass of the body", Above = 0, AtMost = Limits.MassKilograms)] Mass mass,
        [Parameter("ρ", "kg/m³", "density of the air", Above = 0, AtMost = 100, UsualFrom = 0.4, UsualTo = 1.5)] Density airDensity,
        [Parameter("A", "m²", "area facing the flow", Above = 0, AtMost = 1000, UsualFrom = 0.01, UsualTo = 1.5)] Area frontalArea,
        [Parameter("C", "", "drag coefficient", Above = 0, AtMost = 10, UsualFrom = 0.3, UsualTo = 1.5)] double dragCoefficient)
    {
        double weight = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        double density = Positive(airDensity.KilogramsPerCubicMeter, 100, "kg/m³", nameof(airDensity));
        double area = Positive(frontalArea.SquareMeters, 1000, "m²", nameof(frontalArea));
        return Speed.FromMetersPerSecond(Math.Sqrt(2 * weight / (density * area * Positive(dragCoefficient, 10, "", nameof(dragCoefficient)))));
    }

    /// <summary>Speed after a free fall from rest with quadratic drag.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Falls, "How fast is a body after falling this far through air?", Assumes = Drag, NotFor = "A body that tumbles and changes its frontal area.")]
    [Formula("terminalSpeed * Sqrt(1 - Exp(-2 * gn * fall / (terminalSpeed * terminalSpeed)))", Symbol = "v")]
    [Example("FallSpeedWithDrag(10 m, 44.3652667 m/s)", "13.6630018 m/s")]
    [Source("v = v_t sqrt(1 - exp(-2 g h / v_t^2)); quadratic drag integrated", Standing.Derived)]
    public static Speed FallSpeedWithDrag(
        [Parameter("h", "m", "free-fall height", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("v_t", "m/s", "terminal speed", AtLeast = 0.1, AtMost = 10_000, UsualFrom = 20, UsualTo = 130)] Speed terminalSpeed)
    {
        double v = Terminal(terminalSpeed);
        return Speed.FromMetersPerSecond(v * Math.Sqrt(1 - Math.Exp(-2 * StandardGravity.MetresPerSecondSquared * Inputs.Distance(fall) / (v * v))));
    }

    /// <summary>Time of a free fall from rest with quadratic drag.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Falls, "How long does a fall of this height through air take?", Assumes = Drag, NotFor = "A body that tumbles and changes its frontal area.")]
    [Let("z", "gn * fall / (terminalSpeed * terminalSpeed)", "")]
    [Formula("terminalSpeed / gn * (z + Ln(1 + Sqrt(1 - Exp(-2 * z))))", Symbol = "t")]
    [Example("FallTimeWithDrag(10 m, 44.3652667 m/s)", "1.43997472 s")]
    [Source("t = (v_t / g) acosh(exp(g h / v_t^2)); quadratic drag integrated, written so that a long fall does not overflow", Standing.Derived)]
    public static Duration FallTimeWithDrag(
        [Parameter("h", "m", "free-fall height", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("v_t", "m/s", "terminal speed", AtLeast = 0.1, AtMost = 10_000, UsualFrom = 20, UsualTo = 130)] Speed terminalSpeed)
    {
        double v = Terminal(terminalSpeed);
        double z = StandardGravity.MetresPerSecondSquared * Inputs.Distance(fall) / (v * v);
        return Duration.FromSeconds(v / StandardGravity.MetresPerSecondSquared * (z + Math.Log(1 + Math.Sqrt(1 - Math.Exp(-2 * z)))));
    }

    private static double Terminal(Speed terminalSpeed) =>
        Require.AtMost(Require.AtLeast(terminalSpeed.MetersPerSecond, 0.1, "m/s", nameof(terminalSpeed)), 10_000, "m/s", nameof(terminalSpeed));

    private static double Positive(double value, double most, string unit, string parameter) =>
        Require.AtMost(Require.Above(value, 0, unit, parameter), most, unit, parameter);
}
