using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Engine.Tests.Support;

/// <summary>Which way the toy pulls.</summary>
[SheetOption("a direction")]
public enum Pull
{
    Down,
    Up,
}

/// <summary>A record with members of several types, changed by <c>with</c>.</summary>
[SheetRecord("a toy bar")]
public sealed record Bar
{
    [Member("L", "mm", "its length")]
    public Length Span { get; init; } = Length.FromMillimeters(100);

    [Member("F", "kN", "its load")]
    public Force Load { get; init; } = Force.FromKilonewtons(2);

    [Member("n", "", "how many")]
    public double Count { get; init; } = 1;

    [Member("", "", "which way")]
    public Pull Way { get; init; }

    [Member("M", "N·m", "span times load")]
    public Torque Moment => Load * Span;
}

/// <summary>A generic record that brings cautions.</summary>
[SheetRecord("a toy spread")]
public sealed record Spread<T>(T Least, T Most, int Values) : ICautioned where T : struct
{
    [Member("", "", "the least")]
    public T Least { get; init; } = Least;

    [Member("", "", "the most")]
    public T Most { get; init; } = Most;

    public IReadOnlyList<string> Cautions => Values < 3 ? ["fewer than three values"] : [];
}

/// <summary>Ready values.</summary>
[SheetValues("toy values")]
public static class Stock
{
    [Member("F", "kN", "a rating")]
    [Source("a toy standard, 2020, table 1", Standing.FromMemory)]
    public static Force Rating => Force.FromKilonewtons(10);

    [Member("", "", "a bar")]
    public static Bar Plain => new();

    [SheetValues("nested ones")]
    public static class Deep
    {
        [Member("p", "MPa", "disputed")]
        public static Pressure Disputed => throw new DomainException("The sources differ; write the value of your edition as a given.");
    }
}

/// <summary>Functions enough to try every rule of calling.</summary>
public static class Toy
{
    [Callable("Toy", "What is the moment?")]
    [Formula("force * arm", Symbol = "M")]
    [Source("toy", Standing.CommonPractice)]
    public static Torque Moment(
        [Parameter("F", "N", "the force", AtLeast = 0, UsualTo = 50000)] Force force,
        [Parameter("a", "mm", "the arm")] Length arm)
    {
        Require.AtLeast(force.Newtons, 0, "N", nameof(force));
        return force * arm;
    }

    [Callable("Toy", "What is the capstan ratio?")]
    [Formula("Exp(friction * wrap)")]
    [CautionWhen("friction > 0", "friction helps here; set 0 for design")]
    public static double Ratio([Parameter("μ", "", "friction", AtLeast = 0)] double friction, [Parameter("θ", "deg", "wrap")] UnitsNet.Angle wrap = default) =>
        Math.Exp(friction * wrap.Radians);

    [Callable("Toy", "How much of it?")]
    [NoFormula("multiplies")]
    public static Force Scaled([Parameter("F", "kN", "force")] Force force, [Parameter("n", "", "times")] int times = 2, [Parameter("", "", "which way")] Pull way = Pull.Down) =>
        way == Pull.Down ? force * times : -force * times;

    [Callable("Toy", "The larger of two.")]
    [Formula("a > b ? a : b")]
    public static T Larger<T>([Parameter("a", "", "one")] T a, [Parameter("b", "", "other")] T b) where T : struct, IComparable<T> => a.CompareTo(b) >= 0 ? a : b;

    [Callable("Toy", "The mean.")]
    [NoFormula("sums")]
    public static T Mean<T>([Parameter("x", "", "values")] Series<T> sample) where T : struct => sample.Make(sample.Si.Average());

    [Callable("Toy", "Least and most.")]
    [NoFormula("looks")]
    public static Spread<T> SpreadOf<T>([Parameter("x", "", "values")] Series<T> sample) where T : struct =>
        new(sample.Make(sample.Si.Min()), sample.Make(sample.Si.Max()), sample.Count);

    [Callable("Toy", "A toughness.")]
    [Formula("stress * Sqrt(crack)")]
    [return: InUnit("MPa·m^0.5")]
    public static Quantity Toughness([Parameter("σ", "MPa", "stress")] Pressure stress, [Parameter("a", "mm", "crack")] Length crack) => Quantity.FromSi(stress.Pascals * Math.Sqrt(crack.Meters), Quantity.FromSi(1, QuantityKinds.ByName("Pressure")!.Dimension * QuantityKinds.ByName("Length")!.Dimension.Power(1, 2)!.Value).Dimension);

    [Callable("Toy", "The crack a toughness allows.")]
    [Formula("Pow(toughness / stress, 2)")]
    public static Length Crack([Parameter("K", "MPa·m^0.5", "toughness")] Quantity toughness, [Parameter("σ", "MPa", "stress")] Pressure stress) => Length.FromMeters(Math.Pow(toughness.Si / stress.Pascals, 2));

    [Callable("Toy", "An energy.")]
    [Formula("force * path")]
    public static Energy Work([Parameter("F", "N", "force")] Force force, [Parameter("s", "m", "path")] Length path) => Energy.FromJoules(force.Newtons * path.Meters);

    [Callable("Toy", "Reads an energy.")]
    [Formula("energy")]
    public static double Joules([Parameter("E", "J", "energy")] Energy energy) => energy.Joules;

    [Callable("Toy", "Sine.")]
    [Formula("Sin(angle)")]
    public static double Sin([Parameter("α", "rad", "angle")] UnitsNet.Angle angle) => Math.Sin(angle.Radians);

    [Callable("Toy", "A new bar.")]
    [NoFormula("makes it")]
    public static Bar NewBar([Parameter("L", "mm", "span", Above = 0)] Length span)
    {
        Require.Above(span.Millimeters, 0, "mm", nameof(span));
        return new Bar { Span = span };
    }

    [Callable("Toy", "A bar's length.")]
    [NoFormula("reads it")]
    public static Length SpanOf([Parameter("", "", "bar")] Bar bar) => bar.Span;
}
