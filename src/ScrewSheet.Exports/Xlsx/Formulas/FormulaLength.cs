namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>How long and how deep a formula may be for the programs that read the format.</summary>
internal static class FormulaLength
{
    private const int Longest = 8_000, Deepest = 60;

    /// <summary>Refuses one that is longer or deeper.</summary>
    /// <exception cref="NoForm">It is.</exception>
    public static void Check(string formula)
    {
        if (formula.Length > Longest) throw new NoForm("its formula is longer than programs read");
        int depth = 0;
        bool inText = false;
        foreach (char c in formula)
        {
            if (c == '"') inText = !inText;
            if (inText) continue;
            depth += c switch { '(' => 1, ')' => -1, _ => 0 };
            if (depth > Deepest) throw new NoForm("its formula has more brackets than programs read");
        }
    }
}
