using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>The operations that can fail, each with its fault. Two arguments at most, which keeps interpreted calls fast.</summary>
internal static class Arithmetic
{
    public static double Finite(double value)
    {
        if (double.IsFinite(value)) return value;
        throw new EvaluationException(double.IsNaN(value) ? EvaluationFaults.NoNumber() : EvaluationFaults.TooLarge());
    }

    public static double Divide(double a, double b) => b == 0 ? throw new EvaluationException(EvaluationFaults.DivisionByZero()) : Finite(a / b);

    public static double Sqrt(double x) => x < 0 ? throw new EvaluationException(EvaluationFaults.NegativeRoot()) : Finite(Math.Sqrt(x));

    public static double Cbrt(double x) => Finite(Math.Cbrt(x));

    public static double Pow(double x, double exponent)
    {
        if (x == 0 && exponent < 0) throw new EvaluationException(EvaluationFaults.DivisionByZero());
        if (x < 0 && exponent != Math.Floor(exponent)) throw new EvaluationException(EvaluationFaults.NegativeRoot());
        return Finite(Math.Pow(x, exponent));
    }

    /// <summary>A root given by its exponent 1 / n; an odd root of a negative is negative.</summary>
    public static double Root(double x, double exponent)
    {
        double degree = Math.Round(1 / exponent);
        bool odd = Math.Abs((1 / exponent) - degree) < 1e-9 && Math.Abs(degree % 2) == 1;
        return x < 0 && odd ? -Pow(-x, exponent) : Pow(x, exponent);
    }

    public static double Math1(MathFunction function, double x) => Finite(MathFunctions.Of(function, x));

    public static string Join(string a, string b) => Text(a + b);

    public static string Text(string text) =>
        text.Length <= TextComposer.MaximumLength ? text : throw new EvaluationException(EvaluationFaults.TooLongText(TextComposer.MaximumLength));

    public static double Whole(double value, string parameter) =>
        value == Math.Floor(value) && Math.Abs(value) <= int.MaxValue ? value : throw new EvaluationException(EvaluationFaults.WholeNumber(parameter, value));

    public static T NoArm<T>() => throw new EvaluationException(EvaluationFaults.NoArm());
}
