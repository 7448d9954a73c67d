using System.Collections.Frozen;
namespace ScrewSheet.Engine.Gate;

/// <summary>The words of C# that no cell may use, with what to write instead.</summary>
internal static class RefusedWords
{
    private const string NoStatements = "A cell holds one expression.";
    private const string NoTypes = "Write a type before the cell's name.";

    private static readonly FrozenDictionary<string, string> Remedies = new Dictionary<string, string>()
    {
        ["new"] = "Call a library function that gives what you need.",
        ["typeof"] = "Types are no values here.", ["nameof"] = "Write the name as a text in quotes.", ["sizeof"] = "Types are no values here.",
        ["default"] = "Write the value.", ["checked"] = "Arithmetic is always checked.", ["unchecked"] = "Arithmetic is always checked.",
        ["is"] = "Use a comparison or a switch.", ["as"] = "Values need no conversion.", ["throw"] = "A value without an answer is a fault by itself.",
        ["await"] = "Cells compute at once.", ["async"] = "Cells compute at once.", ["from"] = "Use Map, Where and Sum over a series.",
        ["out"] = "Arguments are values.", ["ref"] = "Arguments are values.", ["in"] = "Arguments are values.", ["params"] = "Arguments are values.",
        ["var"] = NoStatements, ["dynamic"] = NoTypes, ["null"] = "Every value is there or in fault.", ["this"] = "Name the cell.", ["base"] = "Name the cell.",
        ["stackalloc"] = "Use Series(first, last).", ["delegate"] = "Write a lambda, such as x => x / 2.", ["unsafe"] = NoStatements, ["fixed"] = NoStatements,
        ["and"] = "Use a when or &&.", ["or"] = "Use another arm or ||.", ["not"] = "Use !.",
    }.ToFrozenDictionary();

    private static readonly HashSet<string> OtherKeywords =
    [
        "abstract", "bool", "break", "byte", "case", "catch", "char", "class", "const", "continue", "decimal", "do", "double", "else", "enum", "event", "explicit",
        "extern", "finally", "float", "for", "foreach", "goto", "if", "implicit", "int", "interface", "internal", "lock", "long", "namespace", "object", "operator",
        "override", "private", "protected", "public", "readonly", "return", "sbyte", "sealed", "short", "static", "string", "struct", "try", "uint", "ulong", "ushort",
        "using", "virtual", "void", "volatile", "while",
    ];

    /// <summary>True for <c>switch with when</c>, which stand between operands.</summary>
    public static bool IsOwnOperator(Workbooks.Lexing.Token token) => token is { Kind: Workbooks.Lexing.TokenKind.Word, Text: "switch" or "with" or "when" };

    /// <summary>True for a word that no cell may use or be named.</summary>
    public static bool Contains(string word) => Remedies.ContainsKey(word) || OtherKeywords.Contains(word);

    /// <summary>What to do instead of writing a refused word.</summary>
    public static string Remedy(string word) => Remedies.GetValueOrDefault(word, NoStatements);
}
