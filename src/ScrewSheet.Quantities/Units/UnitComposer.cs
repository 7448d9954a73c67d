namespace ScrewSheet.Quantities.Units;

/// <summary>Makes one unit of several factors.</summary>
internal static class UnitComposer
{
    /// <summary>The unit, or null where its factor or dimension is beyond what a number can hold.</summary>
    public static Unit? Compose(IReadOnlyList<UnitFactor> factors)
    {
        ExactFactor factor = ExactFactor.One;
        Dimension dimension = Dimension.None;
        foreach (UnitFactor part in factors)
        {
            int twelfths = part.Below ? -part.Twelfths : part.Twelfths;
            if (part.Atom.Dimension.Power(twelfths, Dimension.Parts) is not { } powered) return null;
            dimension *= powered;
            factor *= part.Atom.Factor.Power(twelfths);
        }
        (double multiplier, double divisor) = factor.Split();
        bool usable = double.IsNormal(multiplier) && double.IsNormal(divisor) && double.IsNormal(multiplier / divisor);
        return usable ? new Unit(Write(factors), dimension, KindOf(factors, dimension), multiplier, divisor) : null;
    }

    /// <summary>The canonical spelling: dots, one stroke, brackets round more than one factor below it.</summary>
    public static string Write(IReadOnlyList<UnitFactor> factors)
    {
        string above = string.Join('·', factors.Where(part => !part.Below));
        string below = string.Join('·', factors.Where(part => part.Below));
        if (below.Length == 0) return above;
        return (above.Length == 0 ? "1" : above) + (factors.Count(part => part.Below) > 1 ? $"/({below})" : $"/{below}");
    }

    /// <summary>The default kind; where a dimension has none, a force times a length is a torque, one over a time a frequency, an angle over a time a turning speed.</summary>
    private static QuantityKind? KindOf(IReadOnlyList<UnitFactor> factors, Dimension dimension)
    {
        if (factors.Count == 1 && !factors[0].Below && factors[0].Twelfths == Dimension.Parts) return factors[0].Atom.Kind;
        if (QuantityKinds.DefaultOf(dimension) is { } kind) return kind;
        if (factors.Any(part => part.Twelfths != Dimension.Parts)) return null;
        string shape = string.Join(' ', factors.Select(part => (part.Below ? "/" : "") + part.Atom.Kind?.Name));
        return shape switch
        {
            "Force Length" or "Length Force" => QuantityKinds.Torque,
            "/Duration" => QuantityKinds.ByName("Frequency"),
            "Angle /Duration" => QuantityKinds.ByName("RotationalSpeed"),
            _ => null,
        };
    }
}
