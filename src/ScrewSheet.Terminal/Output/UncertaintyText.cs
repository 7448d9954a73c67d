using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Uncertainty;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>The spread of a result, for people: both methods side by side, what drives it, how often checks fail, and what every figure means.</summary>
internal sealed class UncertaintyText
{
    private readonly UncertaintyReport report;
    private readonly Head head;
    private readonly StudyFigures figures;
    private readonly int width;

    private UncertaintyText(UncertaintyReport report, Head head, int width)
    {
        (this.report, this.head, this.width) = (report, head, width);
        figures = new StudyFigures(report.Type, report.Format, head.Units);
    }

    private string Label => PlainText.Of(report.Label);

    private bool IsCheck => report.Type is TruthType;

    /// <summary>The lines in a width.</summary>
    public static IEnumerable<StyledLine> Lines(UncertaintyReport report, Head head, int width) => new UncertaintyText(report, head, width).Lines();

    private IEnumerable<StyledLine> Lines()
    {
        yield return new StyledLine($"{Label} = {PrintedText.Of(report.Value, report.Format, head.Units, IsCheck)}", Tone.Strong);
        foreach (string line in Methods()) yield return new StyledLine(line);
        yield return new StyledLine("");
        yield return new StyledLine("What drives it, each given moved alone", Tone.Strong);
        foreach (string line in Drivers()) yield return new StyledLine(line);
        foreach (StyledLine line in Checks()) yield return line;
        foreach (FaultCount fault in report.Faults)
            foreach (StyledLine line in Remark("fault", $"in {StudyFigures.Count(fault.Count)} draws, such as: {OriginText.Of(fault.Fault with { Place = null })}", Tone.Bad)) yield return line;
        foreach (CautionCount caution in report.Cautions)
            foreach (StyledLine line in Remark("caution", $"in {(caution.Count == report.Samples ? "every draw" : $"{StudyFigures.Count(caution.Count)} of {StudyFigures.Count(report.Samples)} draws")}: {PlainText.Of(caution.Sentence)}", Tone.Careful)) yield return line;
        foreach (Fault note in report.Notes)
            foreach (StyledLine line in Remark("note", PlainText.Of(note.Sentence), Tone.Careful)) yield return line;
        yield return new StyledLine("");
        foreach (string line in Wrapping.Lines(Meaning, width)) yield return new StyledLine(line);
        foreach (string line in Wrapping.Lines(TextReport.Caution, width)) yield return new StyledLine(line);
    }

    private IReadOnlyList<string> Methods()
    {
        if (report.MonteCarlo is not { } drawn) return [];
        FirstOrder? first = report.FirstOrder;
        Digits digits = EnoughFor(drawn.StandardUncertainty);
        List<IReadOnlyList<string>> rows =
        [
            ["", "first order", "Monte Carlo"],
            ["mean", first is null ? "" : figures.Value(SiOfValue, digits), figures.Value(drawn.Mean, digits)],
            ["standard uncertainty u", first is null ? "none" : figures.Difference(first.StandardUncertainty), figures.Difference(drawn.StandardUncertainty)],
            ["95 % interval, from", first is null ? "none" : figures.Value(first.Low, digits), figures.Value(drawn.Low, digits)],
            ["to", first is null ? "none" : figures.Value(first.High, digits), figures.Value(drawn.High, digits)],
            ["shortest 95 % interval, from", "", figures.Value(drawn.ShortestLow, digits)],
            ["to", "", figures.Value(drawn.ShortestHigh, digits)],
        ];
        if (first is not null && double.IsFinite(first.Freedom)) rows.Add(["effective degrees of freedom", StudyFigures.Count((long)first.Freedom), ""]);
        return TextTable.Lines(rows, 0);
    }

    private double SiOfValue => SiValue.Of(report.Value) ?? double.NaN;

    /// <summary>As many decimals as show two digits of u.</summary>
    private Digits EnoughFor(double u)
    {
        double shown = Math.Abs(figures.InUnit(u));
        return new Digits(shown > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(shown)), 0, 12) : 4, false);
    }

    private IReadOnlyList<string> Drivers()
    {
        bool shares = report.Givens.Any(given => !double.IsNaN(given.Share)), sobol = report.Givens.Any(given => !double.IsNaN(given.Sobol));
        List<IReadOnlyList<string>> rows = [["given", "is", "low end", "high end", .. shares ? ["share"] : Array.Empty<string>(), .. sobol ? ["alone", "with others"] : Array.Empty<string>()]];
        foreach (GivenShare given in report.Givens)
        {
            rows.Add([PlainText.Of(given.Given.Label), Is(given.Given), End(given.AtLow), End(given.AtHigh), .. shares ? [StudyFigures.Percent(given.Share)] : Array.Empty<string>(),
                .. sobol ? [StudyFigures.Percent(given.Sobol), StudyFigures.Percent(given.SobolTotal)] : Array.Empty<string>()]);
        }
        return TextTable.Lines(rows, 0, 1);
    }

    private string Is(UncertainGiven given)
    {
        StudyFigures shown = new(given.Type, given.Format, head.Units);
        string shape = given.Shape switch { ToleranceShape.Rectangular => " rectangular", ToleranceShape.Triangular => " triangular", ToleranceShape.Standard => " k=1", _ => "" };
        return $"{shown.Value(given.Si)} ± {NumberText.Format(shown.InUnit(given.HalfWidthSi), null)}{shape}";
    }

    private string End(double si) => double.IsNaN(si) ? "fault" : IsCheck ? si > 0 ? "holds" : "FAILS" : QuantityText.Format(si, figures.Unit, EnoughFor(report.MonteCarlo!.StandardUncertainty)).Number;

    private IEnumerable<StyledLine> Checks()
    {
        if (report.Checks.IsEmpty) yield break;
        yield return new StyledLine("");
        foreach (CheckOdds odds in report.Checks)
        {
            string faulted = odds.Faulted > 0 ? $", {StudyFigures.Count(odds.Faulted)} more ended in a fault" : "";
            string text = $"{PlainText.Of(odds.Label)} fails in {Share(odds.Probability)} of the draws (95 % interval {Share(odds.Low)} to {Share(odds.High)}; {StudyFigures.Count(odds.Failed)} of {StudyFigures.Count(odds.Draws)}{faulted}).";
            foreach (string line in Wrapping.Lines(text, width)) yield return new StyledLine(line, odds.Failed > 0 ? Tone.Bad : Tone.Plain);
        }
    }

    private static string Share(double probability) => probability == 0 ? "0 %" : NumberText.Format(100 * probability, new Digits(3, true)) + " %";

    private string Meaning
    {
        get
        {
            string by = report.IsCompiled ? "" : " worked out cell by cell";
            string meaning = $"{StudyFigures.Count(report.Samples)} draws{by}, seed {report.Seed.ToString(System.Globalization.CultureInfo.InvariantCulture)}. After a given, ± is half of a 95 % interval (u is half of it) unless a word says otherwise; low and high end are the result at either end of it.";
            bool sobol = report.Givens.Any(given => !double.IsNaN(given.Sobol));
            if (IsCheck) return sobol ? meaning + " Alone and with others are Sobol' indices, the shares of the variance of holding and failing, by draws." : meaning;
            string k = report.FirstOrder is { } first && double.IsFinite(first.Freedom) ? $"{NumberText.Format(first.Coverage, new Digits(4, true))} u, Student's t," : "1.96 u";
            string alone = sobol ? " Share is of the variance by first order; alone and with others are Sobol' indices, by draws." : " Share is of the variance by first order.";
            return meaning + $" The interval of first order is the value ± {k}; that of Monte Carlo has 2.5 % of the draws beyond either end.{alone}";
        }
    }

    private IEnumerable<StyledLine> Remark(string word, string text, Tone tone) => Wrapping.Hanging($"{word}: ", text, width).Select(line => new StyledLine(line, tone));
}
