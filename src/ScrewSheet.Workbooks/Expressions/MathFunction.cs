namespace ScrewSheet.Workbooks.Expressions;

/// <summary>The functions of mathematics that declared formulas and <c>Math.</c> know; names as in a formula.</summary>
public enum MathFunction
{
#pragma warning disable CS1591 // named as mathematics names them
    Exp, Ln, Log10, Abs, Min, Max, Floor, Ceiling,
    Sin, Cos, Tan, Asin, Acos, Atan, Atan2,
    Sinh, Cosh, Tanh, Asinh, Acosh, Atanh,
#pragma warning restore CS1591
}

/// <summary>What a <see cref="MathFunction"/> computes.</summary>
public static class MathFunctions
{
    /// <summary>How many arguments it takes.</summary>
    public static int Arity(MathFunction function) => function is MathFunction.Min or MathFunction.Max or MathFunction.Atan2 ? 2 : 1;

    /// <summary>The value for one argument.</summary>
    public static double Of(MathFunction function, double x) => function switch
    {
        MathFunction.Exp => Math.Exp(x),
        MathFunction.Ln => Math.Log(x),
        MathFunction.Log10 => Math.Log10(x),
        MathFunction.Abs => Math.Abs(x),
        MathFunction.Floor => Math.Floor(x),
        MathFunction.Ceiling => Math.Ceiling(x),
        MathFunction.Sin => Math.Sin(x),
        MathFunction.Cos => Math.Cos(x),
        MathFunction.Tan => Math.Tan(x),
        MathFunction.Asin => Math.Asin(x),
        MathFunction.Acos => Math.Acos(x),
        MathFunction.Atan => Math.Atan(x),
        MathFunction.Sinh => Math.Sinh(x),
        MathFunction.Cosh => Math.Cosh(x),
        MathFunction.Tanh => Math.Tanh(x),
        MathFunction.Asinh => Math.Asinh(x),
        MathFunction.Acosh => Math.Acosh(x),
        MathFunction.Atanh => Math.Atanh(x),
        _ => throw new ArgumentOutOfRangeException(nameof(function), function, "It takes two arguments."),
    };

    /// <summary>The value for two arguments.</summary>
    public static double Of(MathFunction function, double x, double y) => function switch
    {
        MathFunction.Min => Math.Min(x, y),
        MathFunction.Max => Math.Max(x, y),
        MathFunction.Atan2 => Math.Atan2(x, y),
        _ => throw new ArgumentOutOfRangeException(nameof(function), function, "It takes one argument."),
    };
}
