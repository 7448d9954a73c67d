using System.Globalization;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;
using ScrewSheet.Engine.Tests.Support;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Tests.Language;

/// <summary>C#'s own script runner, over the real library and UnitsNet, must give the values and static types we give.</summary>
public sealed class OracleTests
{
    private const int Batches = 13;
    private const int PerBatch = 400;

    [Fact]
    public async Task RandomExpressionsMeanWhatTheyMeanInCSharp()
    {
        int seed = int.TryParse(Environment.GetEnvironmentVariable("SCREWSHEET_SEED"), CultureInfo.InvariantCulture, out int given) ? given : Environment.TickCount;
        RandomExpressions source = new(new Random(seed));
        int compared = 0;
        for (int batch = 0; batch < Batches; batch++)
        {
            string[] expressions = [.. Enumerable.Range(0, PerBatch).Select(_ => source.Next())];
            (Type Type, object Value)[] theirs = await Run(expressions);
            Book ours = Book.Of([.. expressions.Select((expression, i) => $"A{i + 1} => {expression}")]);
            for (int i = 0; i < expressions.Length; i++)
                if (Compare(expressions[i], theirs[i], ours[$"A{i + 1}"], seed)) compared++;
        }
        Assert.True(compared >= 5000, $"only {compared} of {Batches * PerBatch} expressions could be compared; seed {seed}");
    }

    private static async Task<(Type Type, object Value)[]> Run(string[] expressions)
    {
        ScriptOptions options = ScriptOptions.Default.WithReferences(typeof(Toy).Assembly, typeof(Quantity).Assembly, typeof(UnitsNet.Force).Assembly, typeof(Enumerable).Assembly)
            .WithImports("System", "ScrewSheet.Quantities", "ScrewSheet.Quantities.Units", "ScrewSheet.Engine.Tests.Support", "ScrewSheet.Engine.Tests.Support.Toy").WithLanguageVersion(Microsoft.CodeAnalysis.CSharp.LanguageVersion.CSharp14);
        // UnitsNet throws where a quotient that becomes a power or a volume is infinite, the general quantity where a divisor is zero or a value too large; that is no finite number either
        string methods = string.Join('\n', expressions.Select((expression, i) => $"(Type, object) E{i}() {{ try {{ return Typed({expression}); }} catch (Exception e) when (e is ArgumentException or ArithmeticException) {{ return (typeof(double), double.NaN); }} }}"));
        string all = string.Join(", ", expressions.Select((_, i) => $"E{i}()"));
        string script = $"static (Type, object) Typed<T>(T value) => (typeof(T), value);\n{methods}\nnew (Type, object)[] {{ {all} }}";
        return await CSharpScript.EvaluateAsync<(Type, object)[]>(script, options);
    }

    /// <summary>True when compared; false when C# gives no finite number, which must be a fault here, or met one on the way.</summary>
    private static bool Compare(string expression, (Type Type, object Value) theirs, CellResult ours, int seed)
    {
        string told = $"{expression}\nC#: {theirs.Value} ({theirs.Type.Name})\nours: {ours.Value} {ours.Fault?.Sentence}\nseed {seed}";
        double? expected = Si(theirs.Value);
        if (expected is { } number && !double.IsFinite(number))
        {
            Assert.True(ours.Fault is not null, told);
            return false;
        }
        if (ours.Fault is { Code: >= 4101 and <= 4104 }) return false; // an infinity or NaN on the way; how many is looked at in the end
        Assert.True(ours.Value is not null, told);
        Assert.True(SameType(theirs, ours.Type!), told);
        object? plain = ours.Value switch { TruthValue truth => truth.Value, TextValue text => text.Value, _ => null };
        if (plain is not null) Assert.True(plain.Equals(theirs.Value), told);
        else Assert.True(Math.Abs(ValueOf(ours) - expected!.Value) <= 1e-11 * Math.Max(Math.Abs(expected.Value), Scale(expression)), told);
        return true;
    }

    /// <summary>Differences of large numbers may cancel; what they cancel from bounds the rounding.</summary>
    private static double Scale(string expression) => expression.Contains('-', StringComparison.Ordinal) || expression.Contains('+', StringComparison.Ordinal) ? 1e-3 : 0;

    private static double ValueOf(CellResult result) => result.Value is NumberValue number ? number.Value : ((QuantityValue)result.Value!).Si;

    private static double? Si(object value) => value switch
    {
        double number => number,
        int number => number,
        Quantity quantity => quantity.Si,
        bool or string => null,
        _ => QuantityKinds.ByType(value.GetType())?.ToSi(value) ?? (UnnamedTypes.TryFind(value.GetType(), out _) ? UnnamedTypes.ToSi((UnitsNet.IQuantity)value) : throw new InvalidOperationException(value.GetType().Name)),
    };

    private static bool SameType((Type Type, object Value) theirs, CellType ours)
    {
        if (theirs.Type == typeof(Quantity) || UnnamedTypes.TryFind(theirs.Type, out _)) return Dimension(ours) == (theirs.Value is Quantity quantity ? quantity.Dimension : Quantity.From((UnitsNet.IQuantity)theirs.Value).Dimension);
        if (ours is QuantityType { Kind: null } undecided) return QuantityKinds.ByType(theirs.Type)?.Dimension == undecided.Dimension;
        return ClrTypes.ToCellType(theirs.Type) == ours;
    }

    private static Dimension Dimension(CellType type) => type is QuantityType quantity ? quantity.Dimension : default;
}
