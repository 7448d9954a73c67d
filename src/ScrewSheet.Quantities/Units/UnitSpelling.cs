namespace ScrewSheet.Quantities.Units;

/// <summary>Spellings that are read alike.</summary>
internal static class UnitSpelling
{
    /// <summary>True for every sign that may stand between two factors.</summary>
    public static bool IsDot(char c) => c is '·' or '.' or '⋅' or '*' or '∙' or '•';

    /// <summary>The table's spelling of a symbol: <c>deg</c> is °, the micro sign is the Greek letter.</summary>
    public static string Symbol(string typed) => typed == "deg" ? "°" : typed.Replace('\u00B5', '\u03BC');
}
