using UnitsNet;

namespace ScrewSheet.Quantities;

/// <summary>
/// Products and quotients of any two quantities. The compiler prefers UnitsNet's own operators (<c>Force * Length</c> stays a torque);
/// these answer where there is none: <c>Torque / Volume</c>, <c>Force * Force</c>, <c>1 / Length</c>.
/// </summary>
/// <remarks>A temperature throws <see cref="InvalidOperationException"/>, as <see cref="Quantity.From"/> says.</remarks>
public static class QuantityOperators
{
    extension<TLeft, TRight>(TLeft) where TLeft : struct, IQuantity where TRight : struct, IQuantity
    {
        /// <summary>The product.</summary>
        public static Quantity operator *(TLeft left, TRight right) => Quantity.From(left) * Quantity.From(right);

        /// <summary>The quotient.</summary>
        /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
        public static Quantity operator /(TLeft left, TRight right) => Quantity.From(left) / Quantity.From(right);
    }

    extension<T>(T) where T : struct, IQuantity
    {
        /// <summary>A number divided by a quantity.</summary>
        /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
        public static Quantity operator /(double left, T right) => left / Quantity.From(right);
    }
}
