using System.Collections.Immutable;

namespace ScrewSheet.Exports.Steps;

/// <summary>Functions every reader knows: they are written as mathematics writes them, and not explained.</summary>
internal static class Elementary
{
    private static readonly (string Name, string Written)[] Words =
    [
        ("Sin", "sin"), ("Cos", "cos"), ("Tan", "tan"), ("Asin", "arcsin"), ("Acos", "arccos"), ("Atan", "arctan"), ("Atan2", "atan2"), ("Sinh", "sinh"), ("Cosh", "cosh"),
        ("Tanh", "tanh"), ("Asinh", "arsinh"), ("Acosh", "arcosh"), ("Atanh", "artanh"), ("Ln", "ln"), ("Max", "max"), ("Min", "min"), ("Floor", "floor"), ("Ceiling", "ceiling"),
    ];

    /// <summary>True for a function that is not explained.</summary>
    public static bool Is(string name) => name is "Abs" or "Exp" or "Log10" or "Near" or "Count" or "Sum" || Words.Any(word => word.Name == name);

    /// <summary>True where the argument is an angle.</summary>
    public static bool TakesAngle(string name) => name is "Sin" or "Cos" or "Tan";

    /// <summary>How it is written with its arguments; null for any other function.</summary>
    public static Func<ImmutableArray<Notation>, Notation>? Written(string name, int count)
    {
        if (name == "Abs" && count == 1) return parts => new BracketNotation(parts[0], "|", "|");
        if (name == "Exp" && count == 1) return parts => new PowerNotation(new SymbolNotation("e"), parts[0]);
        if (name == "Log10" && count == 1) return parts => new CallNotation(new SymbolNotation("log_10"), parts);
        string? word = Words.FirstOrDefault(pair => pair.Name == name).Written;
        return word is null ? null : parts => new CallNotation(new WordNotation(word), parts);
    }
}
