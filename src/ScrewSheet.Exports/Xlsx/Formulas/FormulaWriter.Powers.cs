using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>Powers, roots and the functions of mathematics.</summary>
internal sealed partial class FormulaWriter
{
#pragma warning disable CS1591 // one member for each kind of node; the kinds are documented where they are
    public override FormulaText Visit(BoundPower node)
    {
        FormulaText value = Emit(node.Base);
        if (node.Form == PowerForm.Sqrt) return FormulaText.Call("SQRT", value);
        if (node.Form == PowerForm.Cbrt) return OddRoot(value, 3);
        FormulaText exponent = Emit(node.Exponent);
        if (node.Form == PowerForm.Root) return exponent.Constant is { } inverse && IsOdd(1 / inverse) ? OddRoot(value, Math.Round(1 / inverse)) : Power(value, exponent);
        if (exponent.Constant == 0) return FormulaText.Binary(FormulaText.Number(1), "+", FormulaText.Binary(FormulaText.Number(0), "*", value, Hold.Product), Hold.Sum);
        if (exponent.Constant is not null) return Power(value, exponent);
        // a zeroth power is one here, also of zero, for which the standard has none
        exponent = Shared(exponent, 2, "exponent");
        return FormulaText.Call("IF", Compared(exponent, "=", FormulaText.Number(0)), FormulaText.Number(1), Power(value, exponent));
    }

    private static FormulaText Power(FormulaText value, FormulaText exponent) => new(value.At(Hold.Atom) + "^" + exponent.At(Hold.Atom), Hold.Power);

    private static bool IsOdd(double degree) => Math.Abs(degree - Math.Round(degree)) < 1e-9 && Math.Abs(Math.Round(degree) % 2) == 1;

    /// <summary>An odd root of a negative number is negative.</summary>
    private FormulaText OddRoot(FormulaText value, double degree)
    {
        value = Shared(value, 2, "below the root");
        FormulaText part = Power(FormulaText.Call("ABS", value), FormulaText.Binary(FormulaText.Number(1), "/", FormulaText.Number(degree), Hold.Product));
        return FormulaText.Binary(FormulaText.Call("SIGN", value), "*", part, Hold.Product);
    }

    public override FormulaText Visit(BoundMath node)
    {
        FormulaText first = Emit(node.Arguments[0]);
        switch (node.Function)
        {
            case MathFunction.Min or MathFunction.Max: return FormulaText.Call(Name(node.Function), first, Emit(node.Arguments[1]));
            case MathFunction.Atan2: return Angle(first, Emit(node.Arguments[1]));
            case MathFunction.Floor: return Whole(first, "<", "-");
            case MathFunction.Ceiling: return Whole(first, ">", "+");
            default: return FormulaText.Call(Name(node.Function), first);
        }
    }

    /// <summary>The whole number below or above. The standard's INT would say it shorter; a program that takes INT(-1) for -2 was met, and TRUNC no program gets wrong.</summary>
    private FormulaText Whole(FormulaText value, string beyond, string step)
    {
        value = Shared(value, 3, "to a whole number");
        FormulaText part = FormulaText.Call("TRUNC", value);
        return FormulaText.Call("IF", Compared(value, beyond, part), FormulaText.Binary(part, step, FormulaText.Number(1), Hold.Sum), part);
    }

    /// <summary>The standard takes the arguments the other way round, and has no angle of nothing, which is zero here.</summary>
    private FormulaText Angle(FormulaText y, FormulaText x)
    {
        (y, x) = (Shared(y, 2, "upward"), Shared(x, 2, "sideways"));
        FormulaText none = FormulaText.Call("AND", Compared(x, "=", FormulaText.Number(0)), Compared(y, "=", FormulaText.Number(0)));
        return FormulaText.Call("IF", none, FormulaText.Number(0), FormulaText.Call("ATAN2", x, y));
    }
#pragma warning restore CS1591

    private static string Name(MathFunction function) => function.ToString().ToUpperInvariant();
}
