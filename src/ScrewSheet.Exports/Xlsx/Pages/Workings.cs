using System.Globalization;
using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Exports.Xlsx.Naming;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>The sheet with the parts of formulas that are used more than once, one a row, in coherent SI: what a formula would else repeat until nobody can read it.</summary>
/// <param name="name">The sheet's name.</param>
/// <param name="cells">The cells the formulas read.</param>
internal sealed class Workings(string name, PlacedCells cells) : IWorkings
{
    private const int First = 4, Most = 1_000_000;

    private readonly Dictionary<string, FormulaText> known = [];
    private int row = First;

    /// <summary>The sheet.</summary>
    public Page Page { get; } = Begin(name);

    /// <summary>True where nothing stands on it.</summary>
    public bool IsEmpty => row == First;

    /// <inheritdoc/>
    public FormulaText Put(FormulaText part, string of, string what)
    {
        string formula = cells.ForOtherSheet(part.Text);
        if (known.TryGetValue(formula, out FormulaText there)) return there;
        FormulaLength.Check(formula);
        if (row > Most) throw new NoForm("there are more workings than rows");
        Page.Add(new PageCell(new CellAddress(1, row), Values.Words(of), Role.Note));
        Page.Add(new PageCell(new CellAddress(2, row), Values.Words(what), Role.Note));
        Page.Add(new PageCell(new CellAddress(3, row), new Content.None(), Role.Working) { Formula = formula });
        FormulaText made = FormulaText.Atom(string.Create(CultureInfo.InvariantCulture, $"{SheetNames.Quoted(name)}!$C${row++}"));
        known.Add(formula, made);
        return made;
    }

    private static Page Begin(string name)
    {
        Page page = new(name) { FrozenRows = First - 1 };
        page.Add(new PageCell(new CellAddress(1, 1), Values.Words("Parts of formulas that are used more than once, in coherent SI (N, m, kg, s, rad)"), Role.Title));
        string[] heads = ["Of", "What", "Value"];
        for (int column = 1; column <= heads.Length; column++) page.Add(new PageCell(new CellAddress(column, First - 1), Values.Words(heads[column - 1]), Role.Head));
        (page.Widths[1], page.Widths[2], page.Widths[3]) = (34, 38, 22);
        return page;
    }
}
