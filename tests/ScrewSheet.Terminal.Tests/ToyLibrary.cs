using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;
using UnitsNet;

namespace ScrewSheet.Terminal.Tests;

/// <summary>Functions made for looking at how functions are shown; not mechanics.</summary>
public static class ToyLibrary
{
    [Callable("Falls", "How far does it fall before the rope tightens?", Assumes = "A toy: nothing here is physics.", NotFor = "Anything outside these tests.")]
    [Let("twice", "2 * above", "m")]
    [Formula("twice + slack", Symbol = "h")]
    [CautionWhen("slack > above", "More slack than rope above the piece.")]
    [CautionWhen("true", "A toy.")]
    [Example("ToyFall(1 m, 0.5 m)", "2.50000 m")]
    [Source("Nobody, Made for tests, 2020, table 1", Standing.FromMemory)]
    [Source("Counting on fingers", Standing.Derived)]
    public static Length ToyFall(
        [Parameter("a", "m", "rope between the piece and the climber, upward positive", AtLeast = 0, AtMost = 100, UsualTo = 5)] Length above,
        [Parameter("slack", "m", "slack in the rope", AtLeast = 0)] Length slack = default) =>
        Length.FromMeters((2 * above.Meters) + slack.Meters);

    [Callable("Sections", "What are the areas of a square of this side?")]
    [NoFormula("Multiplies.")]
    [Source("Common sense", Standing.CommonPractice)]
    public static ToySquare ToySection([Parameter("b", "mm", "side", Above = 0)] Length side) => new(side * side, 4, true);

    /// <summary>The library of this assembly.</summary>
    public static FunctionLibrary Library => FunctionLibrary.Of(typeof(ToyLibrary).Assembly);
}

/// <summary>What a toy section gives.</summary>
/// <param name="Area">Its area.</param>
/// <param name="Corners">How many corners it has.</param>
/// <param name="IsSquare">Whether it is one.</param>
[SheetRecord("A square, for tests.")]
public sealed record ToySquare(
    [property: Member("A", "mm²", "area")] Area Area,
    [property: Member("n", "", "corners")] double Corners,
    [property: Member("", "", "whether it is square")] bool IsSquare);
