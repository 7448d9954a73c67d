using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Documents.Tests;

/// <summary>Random arguments of a function inside its limits: half of them near those of its worked number, half anywhere in the usual range.</summary>
internal sealed class RandomPoints(LibraryFunction function)
{
    private readonly double[] worked = [.. Worked(function)];

    /// <summary>The arguments in coherent SI; NaN for what is no number or quantity.</summary>
    public double[] At(int seed)
    {
        Random random = new(seed);
        double[] si = [.. function.Parameters.Select((parameter, i) => CodeOf.IsScalar(parameter) ? Value(parameter, worked[i], random) : double.NaN)];
        // numbers of pieces must be whole; which numbers are such is not declared, but the worked number shows it
        for (int i = 0; i < si.Length; i++)
            if (seed % 2 == 1 && function.Parameters[i].Declaration.Unit.Length == 0 && worked[i] == Math.Round(worked[i])) si[i] = Math.Round(si[i]);
        return si;
    }

    private static double Value(LibraryParameter parameter, double near, Random random)
    {
        Unit unit = CodeOf.UnitOf(parameter);
        (double low, double high) = Range(parameter.Declaration);
        double share = random.NextDouble();
        if (double.IsNaN(near) || random.Next(2) == 0) return unit.ToSi(low + (share * (high - low)));
        double centre = unit.FromSi(near);
        double value = centre == 0 ? share * (high - low) / 50 : centre * (0.3 + (1.4 * share));
        return unit.ToSi(Math.Clamp(value, low, high));
    }

    /// <summary>The usual range where one is declared, else the limits, no wider than a thousand.</summary>
    private static (double Low, double High) Range(ParameterAttribute declared)
    {
        double low = First(declared.UsualFrom, declared.AtLeast, declared.Above, -50), high = First(declared.UsualTo, declared.AtMost, declared.Below, 1000);
        low = Math.Max(low, -1000);
        high = Math.Min(high, Math.Max(1000, First(declared.UsualTo, 0)));
        double inside = 1e-3 * (high - low);
        return (declared.Above >= low ? low + inside : low, declared.Below <= high ? high - inside : high);
    }

    private static double First(params double[] candidates) => candidates.First(value => !double.IsNaN(value));

    /// <summary>The arguments of the first worked number, read from the engine's tree of it.</summary>
    private static IEnumerable<double> Worked(LibraryFunction function)
    {
        BoundCall? call = TheLibrary.Examples.Where(each => each.Key.Function == function).Select(each => CallIn(each.Value.Bound, function)).FirstOrDefault(found => found is not null);
        return function.Parameters.Select((_, i) => call is null ? double.NaN : Literal(call.Arguments[i]));
    }

    private static BoundCall? CallIn(BoundExpression? tree, LibraryFunction function) => tree switch
    {
        BoundCall call when call.Function == function => call,
        BoundCall call => call.Arguments.Select(argument => CallIn(argument, function)).FirstOrDefault(found => found is not null),
        BoundMember member => CallIn(member.Target, function),
        _ => null,
    };

    private static double Literal(BoundExpression argument) => argument switch
    {
        BoundNumber number => number.Value,
        BoundUnitLiteral literal => literal.Unit.ToSi(literal.Value),
        BoundUnary { Operation: UnaryOperation.Negate } minus => -Literal(minus.Operand),
        _ => double.NaN,
    };
}
