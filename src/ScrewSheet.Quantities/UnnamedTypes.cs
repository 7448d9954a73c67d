using System.Collections.Frozen;
using UnitsNet;

namespace ScrewSheet.Quantities;

/// <summary>
/// The UnitsNet types that its own products and quotients of the kinds in <see cref="QuantityKinds"/> answer with, though no cell names them:
/// <c>Energy / Mass</c>, <c>Mass / Area</c>, … Here they are general quantities.
/// </summary>
public static class UnnamedTypes
{
    // UnitsNet's base unit of each is coherent SI but for mass flow, which it holds in grams a second; degrees Celsius a second are kelvins a second
    private static readonly FrozenDictionary<Type, (Dimension Dimension, double Factor)> Table = new Dictionary<Type, (Dimension, double)>
    {
        [typeof(AreaDensity)] = (Dimension.Of(-2, 1), 1),
        [typeof(BrakeSpecificFuelConsumption)] = (Dimension.Of(-2, 0, 2), 1),
        [typeof(Entropy)] = (Dimension.Of(2, 1, -2, temperature: -1), 1),
        [typeof(HeatFlux)] = (Dimension.Of(0, 1, -3), 1),
        [typeof(Jerk)] = (Dimension.Of(1, 0, -3), 1),
        [typeof(KinematicViscosity)] = (Dimension.Of(2, 0, -1), 1),
        [typeof(MassFlow)] = (Dimension.Of(0, 1, -1), 0.001),
        [typeof(MassFlux)] = (Dimension.Of(-2, 1, -1), 1),
        [typeof(PressureChangeRate)] = (Dimension.Of(-1, 1, -3), 1),
        [typeof(Ratio)] = (Dimension.None, 1),
        [typeof(ReciprocalArea)] = (Dimension.Of(-2), 1),
        [typeof(ReciprocalLength)] = (Dimension.Of(-1), 1),
        [typeof(RotationalStiffness)] = (Dimension.Of(2, 1, -2), 1),
        [typeof(RotationalStiffnessPerLength)] = (Dimension.Of(1, 1, -2), 1),
        [typeof(SpecificEnergy)] = (Dimension.Of(2, 0, -2), 1),
        [typeof(SpecificEntropy)] = (Dimension.Of(2, 0, -2, temperature: -1), 1),
        [typeof(TemperatureChangeRate)] = (Dimension.Of(0, 0, -1, temperature: 1), 1),
        [typeof(TemperatureGradient)] = (Dimension.Of(-1, temperature: 1), 1),
        [typeof(VolumeFlow)] = (Dimension.Of(3, 0, -1), 1),
    }.ToFrozenDictionary();

    /// <summary>All of them.</summary>
    public static IEnumerable<Type> All => Table.Keys;

    /// <summary>The dimension of values of such a type.</summary>
    public static bool TryFind(Type type, out Dimension dimension)
    {
        bool found = Table.TryGetValue(type, out (Dimension Dimension, double Factor) row);
        dimension = row.Dimension;
        return found;
    }

    /// <summary>The value in coherent SI.</summary>
    /// <exception cref="InvalidOperationException">The value is of no such type.</exception>
    public static double ToSi(IQuantity value) => Table.TryGetValue(value.GetType(), out (Dimension Dimension, double Factor) row)
        ? (double)value.As(value.QuantityInfo.BaseUnitInfo.Value) * row.Factor
        : throw new InvalidOperationException($"{value.QuantityInfo.Name} is no kind of quantity here.");
}
