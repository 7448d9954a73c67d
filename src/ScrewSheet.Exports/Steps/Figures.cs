using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Steps;

/// <summary>Values as notation: numbers with units, words, and blanks where the reader is to fill them in.</summary>
internal sealed class Figures(StepTools tools)
{
    private const int LongestText = 160, LeastBlank = 5, MostBlank = 12;

    /// <summary>The value of a cell as it is shown; null where it has none that can be written beside mathematics.</summary>
    public Notation? OfCell(CellResult cell, bool isAnswer) => cell.Value is { } value ? Of(value, tools.FormatOf(cell), cell.IsCheck, isAnswer) : null;

    /// <summary>A value; an answer is left blank where the reader is to fill it in.</summary>
    public Notation? Of(CellValue value, DisplayFormat? format, bool isCheck = false, bool isAnswer = true)
    {
        (string figure, string unit)? shown = Shown(value, format, isCheck);
        if (shown is not { } text) return null;
        if (isAnswer && tools.Blanks) return new BlankNotation(Math.Clamp(text.figure.Length + 2, LeastBlank, MostBlank), text.unit);
        return value is NumberValue or QuantityValue ? new FigureNotation(text.figure, text.unit) : new WordNotation(text.figure);
    }

    /// <summary>Figure or words, and unit; null for what is too long to stand in a line.</summary>
    public (string Figure, string Unit)? Shown(CellValue value, DisplayFormat? format, bool isCheck)
    {
        if (SiValue.Of(value) is { } si) format = tools.Units.Format(value.Type, format, si);
        ShownValue shown = ValueText.Format(value, format, tools.Units.System, isCheck);
        return value switch
        {
            RecordValue or TextValue { Value.Length: > LongestText } => null,
            TruthValue { Value: false } when isCheck => ("FAILS", ""),
            TextValue text => ($"\"{text.Value}\"", ""),
            SeriesValue or TextSeriesValue => (shown.Joined, ""),
            OptionValue option => (option.Value.ToString(), ""),
            _ => (shown.Number, shown.Unit),
        };
    }

    /// <summary>A number in coherent SI units of a dimension, with all the digits a formula shows.</summary>
    public Notation Coherent(double si, Dimension dimension)
    {
        (string number, string unit) = QuantityText.Format(si, DisplayUnits.Coherent(dimension), null);
        return tools.Blanks ? new BlankNotation(Math.Clamp(number.Length + 2, LeastBlank, MostBlank), unit) : new FigureNotation(number, unit);
    }

    /// <summary>An angle as the number of its radians.</summary>
    public Notation Radians(double si)
    {
        string number = NumberText.Format(si, null);
        return tools.Blanks ? new BlankNotation(Math.Clamp(number.Length + 2, LeastBlank, MostBlank), "rad") : new FigureNotation(number, "rad");
    }

    /// <summary>A constant as its author wrote it; where all units are of one system, in that system.</summary>
    public Notation Literal(BoundUnitLiteral literal, bool convert)
    {
        if (convert && literal.Type is QuantityType type && tools.Units.Unit(type, literal.Unit) is { } other)
        {
            (string number, string symbol) = QuantityText.Format(literal.Unit.ToSi(literal.Value), other, null);
            return new FigureNotation(number, symbol);
        }
        return new FigureNotation(NumberText.Exact(literal.Value), literal.Unit.Symbol);
    }
}
