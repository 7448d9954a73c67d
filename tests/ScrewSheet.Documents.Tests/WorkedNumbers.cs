using System.Globalization;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Documents.Tests;

/// <summary>Every worked number of the library is what the engine computes for it, to its last printed digit.</summary>
public sealed class WorkedNumbers
{
    public static IEnumerable<object[]> All => TheLibrary.Examples.Keys.Select(key => new object[] { key.Function.Name, key.Example.Expression });

    public static TheoryData<string> Names => [.. TheLibrary.Functions.Functions.Select(function => function.Name)];

    [Theory]
    [MemberData(nameof(All))]
    public void AWorkedNumber_IsWhatTheEngineGives(string name, string expression)
    {
        var (key, result) = TheLibrary.Examples.Single(each => each.Key.Function.Name == name && each.Key.Example.Expression == expression);
        Assert.True(result.Fault is null, $"{expression}: {result.Fault?.Sentence}");
        string gives = key.Example.Gives;
        if (result.Value is not (NumberValue or QuantityValue))
        {
            string shown = ValueText.Format(result.Value!, null, UnitSystem.SI).Joined;
            Assert.True(gives == shown, $"{expression} gives {shown}, not {gives}");
            return;
        }
        (double printed, Unit unit, double allowed) = Read(gives);
        double si = result.Value switch { QuantityValue quantity => quantity.Si, NumberValue number => number.Value, _ => double.NaN };
        if (result.Value is QuantityValue { Quantity: var type }) Assert.True(type.Dimension == unit.Dimension, $"{expression} is {type.Phrase}, not in {unit.Symbol}");
        else Assert.True(unit.Dimension.IsNone, $"{expression} is a number, not in {unit.Symbol}");
        double ours = unit.FromSi(si);
        Assert.True(Math.Abs(ours - printed) <= allowed, $"{expression} gives {ours:R} {unit.Symbol}, not {gives}");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryFunction_HasAWorkedNumberThatCallsIt(string name)
    {
        var examples = TheLibrary.Named(name).Examples;
        Assert.NotEmpty(examples);
        Assert.All(examples, example => Assert.Contains(name + "(", example.Expression, StringComparison.Ordinal));
    }

    /// <summary>A printed value: the number, its unit, and half a unit of its last digit.</summary>
    private static (double Value, Unit Unit, double Allowed) Read(string gives)
    {
        int end = 0;
        while (end < gives.Length && (char.IsAsciiDigit(gives[end]) || gives[end] is '-' or '.' or '+' || (gives[end] is 'e' or 'E' && end + 1 < gives.Length && (char.IsAsciiDigit(gives[end + 1]) || gives[end + 1] is '-' or '+')))) end++;
        string numeral = gives[..end], symbol = gives[end..].Trim();
        Unit unit = symbol.Length == 0 ? UnitTable.Number : UnitText.TryParse(symbol, out Unit? read, out string? problem) ? read : throw new FormatException($"{gives}: {problem}");
        string[] parts = numeral.Split('e', 'E');
        int decimals = parts[0].Contains('.', StringComparison.Ordinal) ? parts[0].Length - parts[0].IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        int exponent = parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 0;
        double value = double.Parse(numeral, CultureInfo.InvariantCulture);
        return (value, unit, (0.5000001 * Math.Pow(10, exponent - decimals)) + (1e-13 * Math.Abs(value)));
    }
}
