using System.Globalization;

namespace ScrewSheet.Engine.Tests.Language;

/// <summary>
/// Random expressions that mean the same to C# and to a cell. Left out are our deliberate differences:
/// whole-number arithmetic (1/2 is one half here), products in N·m and 1/s inside larger expressions (undecided here, a torque to UnitsNet),
/// a division by zero, an infinity or NaN on the way to a finite answer or a comparison (a fault here),
/// &lt;= and &gt;= between quantities (a hair of allowance here), == between quantities and % and bit operations (refused here).
/// </summary>
internal sealed class RandomExpressions(Random random)
{
    private static readonly Dictionary<string, string[]> Suffixes = new()
    {
        ["Force"] = ["N", "kN", "lbf", "kgf"], ["Length"] = ["m", "mm", "inch", "ft"], ["Area"] = ["m2", "mm2", "cm2"], ["Pressure"] = ["Pa", "MPa", "ksi"],
        ["Mass"] = ["kg", "lb"], ["Duration"] = ["s", "ms"], ["Acceleration"] = ["m_per_s2"], ["Speed"] = ["m_per_s"], ["Torque"] = ["N_m"], ["Volume"] = ["m3", "cm3"],
    };

    /// <summary>An expression of any type.</summary>
    public string Next()
    {
        string[] roots = ["number", "number", "bool", "string", "Force", "Length", "Area", "Pressure", "Mass", "Duration", "Acceleration", "Speed", "Torque", "Volume", "Quantity"];
        return Of(roots[random.Next(roots.Length)], 4);
    }

    private string Of(string type, int depth)
    {
        if (depth == 0 || random.Next(8) == 0) return Leaf(type);
        string Sub(string of) => Of(of, depth - 1);
        Func<string>[] ways = type switch
        {
            "number" => [.. Common("number", depth), () => $"{Sub("number")} * {Bracket("number", depth)}", () => $"{Sub("number")} / {Bracket("number", depth)}", () => $"{Bracket("Force", depth)} / {Bracket("Force", depth)}",
                () => $"{Bracket("Length", depth)} / {Bracket("Length", depth)}", () => $"Math.Max({Sub("number")}, {Sub("number")})", () => $"Math.Sqrt(Math.Abs({Sub("number")}))", () => $"Math.Pow(Math.Abs({Sub("number")}), 0.5)",
                () => $"Ratio(Math.Min(Math.Abs({Sub("number")}), 50.0) / 100.0, 20.0.deg)", () => $"({Sub("number")}) switch {{ < 2.0 => {Sub("number")}, > 5.0 when {Sub("bool")} => {Sub("number")}, _ => {Sub("number")} }}", () => $"Joules(Work({Sub("Force")}, {Sub("Length")}))"],
            "bool" => [() => $"{Bracket("number", depth)} < {Bracket("number", depth)}", () => $"{Bracket("number", depth)} >= {Bracket("number", depth)}", () => $"{Bracket("Force", depth)} < {Bracket("Force", depth)}", () => $"{Bracket("Length", depth)} > {Bracket("Length", depth)}",
                () => $"({Sub("bool")}) && ({Sub("bool")})", () => $"({Sub("bool")}) || ({Sub("bool")})", () => $"!({Sub("bool")})", () => $"({Sub("string")}).StartsWith(\"a\")", () => $"({Sub("string")}).Contains(\"b\")", () => $"({Sub("string")}) == ({Sub("string")})", () => $"({Sub("bool")} ? {Sub("bool")} : {Sub("bool")})"],
            "string" => [() => $"{Sub("string")} + {Sub("string")}", () => $"({Sub("bool")} ? {Sub("string")} : {Sub("string")})", () => $"(({Sub("number")}) > 1.0) switch {{ true => \"ab\", _ => \"ba\" }}"],
            "Force" => [.. Scaled(type, depth), () => $"{Bracket("Pressure", depth)} * {Bracket("Area", depth)}", () => $"{Bracket("Mass", depth)} * {Bracket("Acceleration", depth)}", () => $"Scaled({Sub("Force")})", () => $"Scaled({Sub("Force")}, 3, Pull.Up)", () => $"(Stock.Plain with {{ Load = {Sub("Force")} }}).Load"],
            "Area" => [.. Scaled(type, depth), () => $"{Bracket("Length", depth)} * {Bracket("Length", depth)}"],
            "Volume" => [.. Scaled(type, depth), () => $"{Bracket("Area", depth)} * {Bracket("Length", depth)}"],
            "Length" => [.. Scaled(type, depth), () => $"{Bracket("Area", depth)} / {Bracket("Length", depth)}", () => $"{Bracket("Volume", depth)} / {Bracket("Area", depth)}", () => $"{Bracket("Speed", depth)} * {Bracket("Duration", depth)}", () => "Stock.Plain.Span"],
            "Pressure" => [.. Scaled(type, depth), () => $"{Bracket("Force", depth)} / {Bracket("Area", depth)}"],
            "Speed" => [.. Scaled(type, depth), () => $"{Bracket("Length", depth)} / {Bracket("Duration", depth)}"],
            "Torque" => [.. Scaled(type, depth), () => $"Moment(Scaled({Leaf("Force")}), {Sub("Length")})"],
            "Quantity" => [() => $"{Bracket("Force", depth)} * {Bracket("Force", depth)}", () => $"{Bracket("Torque", depth)} / {Bracket("Volume", depth)}", () => $"{Bracket("Pressure", depth)} * {Bracket("Length", depth)}", () => $"{Bracket("Force", depth)} * {Bracket("Length", depth)}",
                () => $"{Bracket("Mass", depth)} * {Bracket("Force", depth)} / {Bracket("Length", depth)}", () => $"1.0 / {Bracket("Duration", depth)}", () => $"{Bracket("Force", depth)} * {Bracket("Mass", depth)} - {Bracket("Mass", depth)} * {Bracket("Force", depth)}"],
            _ => Scaled(type, depth),
        };
        return ways[random.Next(ways.Length)]();
    }

    private Func<string>[] Common(string type, int depth) =>
        [() => $"{Of(type, depth - 1)} + {Bracket(type, depth)}", () => $"{Of(type, depth - 1)} - {Bracket(type, depth)}", () => $"-({Of(type, depth - 1)})", () => $"({Of("bool", depth - 1)} ? {Of(type, depth - 1)} : {Of(type, depth - 1)})", () => $"Larger({Of(type, depth - 1)}, {Of(type, depth - 1)})"];

    private Func<string>[] Scaled(string type, int depth) => [.. Common(type, depth), () => $"{Bracket("number", depth)} * {Bracket(type, depth)}", () => $"{Bracket(type, depth)} * {Bracket("number", depth)}", () => $"{Bracket(type, depth)} / {Bracket("number", depth)}"];

    private string Bracket(string type, int depth) => $"({Of(type, depth - 1)})";

    private string Leaf(string type)
    {
        if (type == "bool") return random.Next(2) == 0 ? "true" : "false";
        if (type == "string") return random.Next(2) == 0 ? "\"ab\"" : "\"b\\u00e4\"";
        if (type == "Quantity") return $"({Leaf("Force")} * {Leaf("Force")})";
        string number = (random.Next(1, 400) / 16.0).ToString("0.0###", CultureInfo.InvariantCulture);
        return type == "number" ? number : $"{number}.{Suffixes[type][random.Next(Suffixes[type].Length)]}";
    }
}
