using System.Collections.Immutable;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Pages;

/// <summary>Puts together what a handout says, in the order its reader needs it.</summary>
internal sealed class PageBuilder(HandoutRequest request)
{
    private readonly StepTools tools = request.Tools;
    private readonly Answers answers = new(request.Tools);
    private readonly SourceList sources = new();
    private readonly List<CheckRow> checks = [];

    /// <summary>The page.</summary>
    public Page Build()
    {
        Workbook workbook = tools.Calculation.Workbook;
        SectionBuilder builder = new(request, sources, checks);
        ImmutableArray<Section> sections = [.. workbook.Sheets.Select(builder.Of)];
        return new Page
        {
            Title = workbook.Head.Title.Length > 0 ? workbook.Head.Title : "Workbook",
            Author = request.Author ?? workbook.Head.Author,
            Date = request.Date ?? workbook.Head.Date,
            Blanks = tools.Blanks,
            IsLetter = tools.Units.System == UnitSystem.US,
            Cautions = StandingCaution.Usual,
            OwnCautions = [.. OwnCautions(workbook).Distinct()],
            About = HeadRemarks.Of(workbook),
            Functions = [.. Functions()],
            Sections = sections,
            Checks = [.. checks],
            Sources = sources.Rows,
            MadeWith = request.MadeWith,
        };
    }

    private IEnumerable<string> OwnCautions(Workbook workbook)
    {
        foreach (Fault fault in tools.Calculation.Faults) yield return $"A line of the file is in fault: {answers.Hidden(fault.Sentence)}";
        CellResult[] cells = [.. workbook.Sheets.SelectMany(tools.Calculation.Of)];
        foreach (CellResult cell in cells)
        {
            string name = Name(cell);
            if (cell.Fault is { } fault) yield return $"{name} has no value: {answers.Hidden(fault.Sentence)}";
            if (!tools.Blanks && cell is { IsCheck: true, Value: TruthValue { Value: false } }) yield return $"The check {name} FAILS.";
            if (cell.Kept is KeptState.Changed or KeptState.Unreadable) yield return $"{name} is not what the file says it was.";
        }
        foreach (var caution in cells.SelectMany(cell => cell.Cautions.Select(caution => (caution.Message, Name: caution.Origin ?? Name(cell)))).GroupBy(pair => pair.Message))
            yield return $"{string.Join(", ", caution.Select(pair => pair.Name).Distinct().Take(4))}: {answers.Hidden(caution.Key)}";
        foreach (string work in cells.SelectMany(SourceList.FromMemory).Distinct()) yield return $"From memory, {work}";
    }

    private IEnumerable<(Notation, Notation)> Functions()
    {
        HashSet<OwnFunction> known = [];
        foreach (CellResult cell in tools.Calculation.Workbook.Sheets.SelectMany(tools.Calculation.Of))
        {
            if (cell.Bound is null) continue;
            foreach (BoundOwnCall call in BoundChildren.All(cell.Bound).OfType<BoundOwnCall>())
                if (known.Add(call.Function) && StepBuilder.Own(call.Function) is { } own) yield return own;
        }
    }

    private static string Name(CellResult cell) => cell.Cell.Name is { } name ? $"{cell.Id.Sheet}.{name}" : cell.Id.ToString();
}
