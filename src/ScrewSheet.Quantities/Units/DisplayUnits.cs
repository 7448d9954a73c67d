using System.Collections.Frozen;

namespace ScrewSheet.Quantities.Units;

/// <summary>The unit a value is shown in where its cell does not say.</summary>
public static class DisplayUnits
{
    /// <summary>Kind, SI, US. A section modulus is a volume, hence mm³.</summary>
    private static readonly (string Kind, string SI, string US)[] Rows =
    [
        ("Force", "kN", "lbf"), ("Length", "mm", "in"), ("Area", "mm²", "in²"), ("Volume", "mm³", "in³"), ("AreaMomentOfInertia", "mm⁴", "in⁴"),
        ("Pressure", "MPa", "ksi"), ("Torque", "N·m", "ft·lbf"), ("Energy", "J", "ft·lbf"), ("Mass", "kg", "lb"), ("Density", "kg/m³", "lb/ft³"),
        ("LinearDensity", "kg/m", "lb/ft"), ("ForcePerLength", "kN/m", "lbf/in"), ("SpecificWeight", "N/m³", "lbf/ft³"),
        ("Speed", "m/s", "ft/s"), ("Acceleration", "m/s²", "ft/s²"), ("Duration", "s", "s"), ("Frequency", "1/s", "1/s"), ("RotationalSpeed", "rad/s", "rad/s"),
        ("Power", "W", "W"), ("MassMomentOfInertia", "kg·m²", "lb·ft²"), ("RotationalAcceleration", "rad/s²", "rad/s²"), ("DynamicViscosity", "Pa·s", "Pa·s"),
        ("Angle", "°", "°"), ("Temperature", "°C", "°C"), ("TemperatureDelta", "K", "K"),
    ];

    /// <summary>For dimensions without one default kind, by an example unit of the dimension.</summary>
    private static readonly (string SI, string US)[] Unnamed = [("N·m", "ft·lbf"), ("1/s", "1/s"), ("N·m²", "lbf·in²"), ("MPa·m^0.5", "ksi·in^0.5")];

    private static readonly FrozenDictionary<QuantityKind, (Unit SI, Unit US)> ByKind =
        Rows.ToFrozenDictionary(row => QuantityKinds.ByName(row.Kind)!, row => (Read(row.SI), Read(row.US)));

    private static readonly FrozenDictionary<Dimension, (Unit SI, Unit US)> ByDimension =
        Unnamed.Select(pair => (SI: Read(pair.SI), US: Read(pair.US))).ToFrozenDictionary(pair => pair.SI.Dimension);

    /// <summary>The unit for values of this dimension and, where known, kind; for dimensions nobody named, the coherent SI unit written with N where that is shorter.</summary>
    public static Unit For(Dimension dimension, QuantityKind? kind, UnitSystem system)
    {
        kind ??= QuantityKinds.DefaultOf(dimension);
        if (kind is not null && ByKind.TryGetValue(kind, out (Unit SI, Unit US) named)) return system == UnitSystem.US ? named.US : named.SI;
        if (dimension.IsNone) return UnitTable.Number;
        if (ByDimension.TryGetValue(dimension, out (Unit SI, Unit US) known)) return system == UnitSystem.US ? known.US : known.SI;
        return Coherent(dimension);
    }

    /// <summary>The coherent SI unit of a dimension: <c>N²</c>, <c>N/m^0.5</c>, <c>kg·m/s</c>; empty for a pure number.</summary>
    public static Unit Coherent(Dimension dimension) =>
        dimension.IsNone ? UnitTable.Number : new Unit(DimensionText.WithNewtons(dimension), dimension, QuantityKinds.DefaultOf(dimension), 1);

    private static Unit Read(string text) => UnitText.TryParse(text, out Unit? unit, out string? problem) ? unit : throw new InvalidOperationException(problem);
}
