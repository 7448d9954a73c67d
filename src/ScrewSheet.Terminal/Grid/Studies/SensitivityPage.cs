using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Uncertainty;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>What drives a result: each given moved alone over its interval, the one that moves it most first, each with a bar.</summary>
internal sealed class SensitivityPage
{
    private const int LeastBar = 12, MostBar = 40;
    private readonly UncertaintyReport report;
    private readonly Head head;
    private readonly StudyFigures figures;

    private SensitivityPage(UncertaintyReport report, Head head)
    {
        (this.report, this.head) = (report, head);
        figures = new StudyFigures(report.Type, report.Format, head.Units);
    }

    private bool IsCheck => report.Type is TruthType;

    /// <summary>Works it out for the result under the cursor.</summary>
    public static GridState Begin(GridState state)
    {
        Calculation calculation = state.Open.Known!.Calculation;
        // the draws that come along are not shown, so the fewest will do
        UncertaintyRequest request = new() { Cell = StudyMenu.Exactly(state.Open.At), Samples = UncertaintyRequest.FewestSamples, Method = StudyMethod.CellByCell };
        return StudyKeys.Start(state, $"Moving the givens of {StudyMenu.NameOf(state)}", (runner, progress, stop) =>
        {
            StudyOutcome<UncertaintyReport> outcome = runner.Uncertainty(calculation, request, progress, stop);
            if (!outcome.IsAnswered) return next => next.Say(PlainText.Of(outcome.Fault.Sentence), trouble: true);
            SensitivityPage page = new(outcome.Answer, calculation.Workbook.Head);
            return next => next with { Mode = new Finding($"What drives {PlainText.Of(outcome.Answer.Label)}?", width => [.. page.Lines(width)], []) };
        });
    }

    private IEnumerable<StyledLine> Lines(int width)
    {
        string label = PlainText.Of(report.Label), unit = figures.Symbol is { } symbol && !IsCheck ? $" [{symbol}]" : "";
        yield return new StyledLine($"{label} = {PrintedText.Of(report.Value, report.Format, head.Units, IsCheck)}", Tone.Strong);
        yield return new StyledLine("");
        List<IReadOnlyList<string>> rows = [["given", "from", "to", $"{label}{unit} from", "to"]];
        foreach (GivenShare share in report.Givens)
        {
            StudyFigures given = new(share.Given.Type, share.Given.Format, head.Units);
            rows.Add([PlainText.Of(share.Given.Label), given.Value(share.Given.Si - share.Given.ReachSi), given.Value(share.Given.Si + share.Given.ReachSi), End(share.AtLow), End(share.AtHigh)]);
        }
        IReadOnlyList<string> lines = TextTable.Lines(rows, 0);
        int widest = lines.Max(DisplayWidth.Of), room = Math.Min(MostBar, width - widest - 2);
        for (int i = 0; i < lines.Count; i++) yield return new StyledLine((DisplayWidth.PadRight(lines[i], widest) + "  " + (i == 0 || IsCheck || room < LeastBar ? "" : Bar(report.Givens[i - 1], room))).TrimEnd(), i == 0 ? Tone.Strong : Tone.Plain);
        yield return new StyledLine("");
        foreach (string line in Wrapping.Lines("Each given is moved alone from one end of its interval to the other, all others as they are" + (IsCheck ? "." : "; the one that moves the result most stands first."), width)) yield return new StyledLine(line);
        foreach (string line in Wrapping.Lines(TextReport.Caution, width)) yield return new StyledLine(line);
    }

    /// <summary>Where the result goes between the least and the greatest of all; a stroke where it is now.</summary>
    private string Bar(GivenShare share, int room)
    {
        double[] ends = [.. report.Givens.SelectMany(each => new[] { each.AtLow, each.AtHigh }).Where(double.IsFinite), Now];
        if (!double.IsFinite(share.Swing) || double.IsNaN(share.AtLow + share.AtHigh)) return "";
        (double least, double most) = (ends.Min(), ends.Max());
        int Place(double si) => (int)Math.Round((si - least) / (most > least ? most - least : 1) * (room - 1));
        (int from, int to, int now) = (Place(Math.Min(share.AtLow, share.AtHigh)), Place(Math.Max(share.AtLow, share.AtHigh)), Place(Now));
        return string.Concat(Enumerable.Range(0, room).Select(at => at == now ? '│' : at >= from && at <= to ? '━' : ' '));
    }

    private double Now => SiValue.Of(report.Value) ?? double.NaN;

    private string End(double si) => double.IsNaN(si) ? "fault" : IsCheck ? si > 0 ? "holds" : "FAILS" : QuantityText.Format(si, figures.Unit, report.Format?.Digits).Number;
}
