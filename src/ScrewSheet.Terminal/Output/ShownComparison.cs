using System.Text.RegularExpressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>A comparison in a check that a reader can do with the figures on the page: a cell against a constant or another cell.</summary>
/// <param name="Left">The cell on the left.</param>
/// <param name="Sign">Such as <c>&lt;=</c>.</param>
/// <param name="Right">The cell on the right, or null for a constant.</param>
/// <param name="Literal">The constant in coherent SI, or null for a cell.</param>
internal sealed partial record ShownComparison(CellResult Left, string Sign, CellResult? Right, double? Literal)
{
    private const double Allowance = 1e-12;

    /// <summary>Every such comparison of a check; a comparison of anything longer than a name, an address or a constant is none.</summary>
    public static IEnumerable<ShownComparison> In(CellResult check, Calculation calculation)
    {
        if (check.Cell.Content is not ResultContent { Expression: string expression } || expression.Contains('"', StringComparison.Ordinal)) yield break;
        foreach (string part in Junction().Split(expression))
        {
            Match match = Comparison().Match(part);
            if (!match.Success) continue;
            (string left, string sign, string right) = (match.Groups[1].Value, match.Groups[2].Value, match.Groups[3].Value);
            (CellResult? leftCell, CellResult? rightCell) = (Find(left, check, calculation), Find(right, check, calculation));
            if (leftCell is not null && (rightCell is not null || Constant(right) is not null)) yield return new ShownComparison(leftCell, sign, rightCell, rightCell is null ? Constant(right) : null);
            else if (rightCell is not null && Constant(left) is double constant) yield return new ShownComparison(rightCell, Turned(sign), null, constant);
        }
    }

    /// <summary>Whether it holds for two values in coherent SI; null where one is none.</summary>
    public bool? Of(double? left, double? right)
    {
        if (left is not double a || right is not double b) return null;
        double slack = Allowance * Math.Max(Math.Abs(a), Math.Abs(b));
        return Sign switch
        {
            "<" => a < b,
            "<=" => a <= b + slack,
            ">" => a > b,
            _ => a >= b - slack,
        };
    }

    private static CellResult? Find(string name, CellResult check, Calculation calculation)
    {
        int dot = name.IndexOf('.', StringComparison.Ordinal);
        string sheetName = dot < 0 ? check.Id.Sheet : name[..dot];
        string bare = name[(dot + 1)..];
        if (calculation.Workbook.Sheets.FirstOrDefault(candidate => candidate.Name == sheetName) is not Sheet sheet) return null;
        if (CellAddress.TryParse(bare, out CellAddress address)) return calculation.Cells.GetValueOrDefault(new CellId(sheetName, address));
        return sheet.Names.TryGetValue(bare, out CellAddress named) ? calculation.Cells.GetValueOrDefault(new CellId(sheetName, named)) : null;
    }

    private static double? Constant(string text) =>
        CellText.ReadEntry("= " + text, new CellAddress(1, 1)) is EntryRead { Cell.Content: GivenContent { Literal: NumberLiteral number, Tolerance: null } } ? number.Si : null;

    private static string Turned(string sign) => (sign[0] == '<' ? ">" : "<") + sign[1..];

    [GeneratedRegex(@"&&|\|\|")]
    private static partial Regex Junction();

    [GeneratedRegex(@"^\s*([^<>=()!?:]+?)\s*(<=|>=|<|>)\s*([^<>=()!?:]+?)\s*$")]
    private static partial Regex Comparison();
}
