using System.Collections.Frozen;
using static ScrewSheet.Quantities.Dimension;

namespace ScrewSheet.Quantities;

/// <summary>Every kind of quantity a cell, a function or a unit can name. The one table of them.</summary>
public static class QuantityKinds
{
    /// <summary>All kinds, in the order the trade reads them.</summary>
    public static IReadOnlyList<QuantityKind> All { get; } =
    [
        Kind<UnitsNet.Force>("a force", Of(1, 1, -2), "N", si => UnitsNet.Force.FromNewtons(si), q => q.Newtons),
        Kind<UnitsNet.Length>("a length", Of(1), "m", si => UnitsNet.Length.FromMeters(si), q => q.Meters),
        Kind<UnitsNet.Area>("an area", Of(2), "m²", si => UnitsNet.Area.FromSquareMeters(si), q => q.SquareMeters),
        Kind<UnitsNet.Volume>("a volume", Of(3), "m³", si => UnitsNet.Volume.FromCubicMeters(si), q => q.CubicMeters),
        Kind<UnitsNet.AreaMomentOfInertia>("a second moment of area", Of(4), "m⁴", si => UnitsNet.AreaMomentOfInertia.FromMetersToTheFourth(si), q => q.MetersToTheFourth),
        Kind<UnitsNet.Pressure>("a stress or pressure", Of(-1, 1, -2), "Pa", si => UnitsNet.Pressure.FromPascals(si), q => q.Pascals),
        Kind<UnitsNet.Torque>("a torque", Of(2, 1, -2), "N·m", si => UnitsNet.Torque.FromNewtonMeters(si), q => q.NewtonMeters, isDefault: false),
        Kind<UnitsNet.Energy>("an energy", Of(2, 1, -2), "J", si => UnitsNet.Energy.FromJoules(si), q => q.Joules, isDefault: false),
        Kind<UnitsNet.Mass>("a mass", Of(0, 1), "kg", si => UnitsNet.Mass.FromKilograms(si), q => q.Kilograms),
        Kind<UnitsNet.Density>("a density", Of(-3, 1), "kg/m³", si => UnitsNet.Density.FromKilogramsPerCubicMeter(si), q => q.KilogramsPerCubicMeter),
        Kind<UnitsNet.LinearDensity>("a mass per length", Of(-1, 1), "kg/m", si => UnitsNet.LinearDensity.FromKilogramsPerMeter(si), q => q.KilogramsPerMeter),
        Kind<UnitsNet.ForcePerLength>("a force per length", Of(0, 1, -2), "N/m", si => UnitsNet.ForcePerLength.FromNewtonsPerMeter(si), q => q.NewtonsPerMeter),
        Kind<UnitsNet.SpecificWeight>("a force per volume", Of(-2, 1, -2), "N/m³", si => UnitsNet.SpecificWeight.FromNewtonsPerCubicMeter(si), q => q.NewtonsPerCubicMeter),
        Kind<UnitsNet.Speed>("a speed", Of(1, 0, -1), "m/s", si => UnitsNet.Speed.FromMetersPerSecond(si), q => q.MetersPerSecond),
        Kind<UnitsNet.Acceleration>("an acceleration", Of(1, 0, -2), "m/s²", si => UnitsNet.Acceleration.FromMetersPerSecondSquared(si), q => q.MetersPerSecondSquared),
        Kind<UnitsNet.Duration>("a time", Of(0, 0, 1), "s", si => UnitsNet.Duration.FromSeconds(si), q => q.Seconds),
        Kind<UnitsNet.Frequency>("a frequency", Of(0, 0, -1), "1/s", si => UnitsNet.Frequency.FromHertz(si), q => q.Hertz, isDefault: false),
        Kind<UnitsNet.RotationalSpeed>("a turning speed", Of(0, 0, -1), "rad/s", si => UnitsNet.RotationalSpeed.FromRadiansPerSecond(si), q => q.RadiansPerSecond, isDefault: false),
        Kind<UnitsNet.Power>("a power", Of(2, 1, -3), "W", si => UnitsNet.Power.FromWatts(si), q => (double)q.Watts),
        Kind<UnitsNet.MassMomentOfInertia>("a mass moment of inertia", Of(2, 1), "kg·m²", si => UnitsNet.MassMomentOfInertia.FromKilogramSquareMeters(si), q => q.KilogramSquareMeters),
        Kind<UnitsNet.RotationalAcceleration>("a turning acceleration", Of(0, 0, -2), "rad/s²", si => UnitsNet.RotationalAcceleration.FromRadiansPerSecondSquared(si), q => q.RadiansPerSecondSquared),
        Kind<UnitsNet.DynamicViscosity>("a viscosity", Of(-1, 1, -1), "Pa·s", si => UnitsNet.DynamicViscosity.FromPascalSeconds(si), q => q.PascalSeconds),
        Kind<UnitsNet.Angle>("an angle", None, "rad", si => UnitsNet.Angle.FromRadians(si), q => q.Radians, isDefault: false),
        Kind<UnitsNet.Temperature>("a temperature", Of(temperature: 1), "K", si => UnitsNet.Temperature.FromKelvins(si), q => q.Kelvins, isDefault: false),
        Kind<UnitsNet.TemperatureDelta>("a temperature difference", Of(temperature: 1), "K", si => UnitsNet.TemperatureDelta.FromKelvins(si), q => q.Kelvins),
    ];

    private static readonly FrozenDictionary<string, QuantityKind> ByNameTable = All.ToFrozenDictionary(kind => kind.Name);
    private static readonly FrozenDictionary<Type, QuantityKind> ByTypeTable = All.ToFrozenDictionary(kind => kind.ClrType);
    private static readonly FrozenDictionary<Dimension, QuantityKind> DefaultTable = All.Where(kind => kind.IsDefault).ToFrozenDictionary(kind => kind.Dimension);

    /// <summary>Angles: dimensionless in a product, never a number when alone.</summary>
    public static QuantityKind Angle { get; } = ByTypeTable[typeof(UnitsNet.Angle)];

    /// <summary>Temperatures on a scale with a zero: no sums, no products.</summary>
    public static QuantityKind Temperature { get; } = ByTypeTable[typeof(UnitsNet.Temperature)];

    /// <summary>Turning moments, never mixed with energies.</summary>
    public static QuantityKind Torque { get; } = ByTypeTable[typeof(UnitsNet.Torque)];

    /// <summary>Energies, never mixed with turning moments.</summary>
    public static QuantityKind Energy { get; } = ByTypeTable[typeof(UnitsNet.Energy)];

    /// <summary>The kind of that name, or null.</summary>
    public static QuantityKind? ByName(string name) => ByNameTable.GetValueOrDefault(name);

    /// <summary>The kind a UnitsNet type holds, or null.</summary>
    public static QuantityKind? ByType(Type type) => ByTypeTable.GetValueOrDefault(type);

    /// <summary>The kind a bare product of this dimension is read as, or null where none or more than one could be meant.</summary>
    public static QuantityKind? DefaultOf(Dimension dimension) => DefaultTable.GetValueOrDefault(dimension);

    private static QuantityKind<T> Kind<T>(string phrase, Dimension dimension, string siSymbol, Func<double, T> make, Func<T, double> read, bool isDefault = true)
        where T : struct, UnitsNet.IQuantity => new(phrase, dimension, siSymbol, make, read, isDefault);
}
