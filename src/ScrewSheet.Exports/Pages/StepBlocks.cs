using System.Collections.Immutable;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Pages;

/// <summary>Makes the numbered steps of results.</summary>
internal sealed class StepBlocks(StepTools tools, SourceList sources, List<CheckRow> checks)
{
    private readonly StepBuilder builder = new(tools);
    private readonly Figures figures = new(tools);
    private readonly Answers answers = new(tools);
    private readonly Dictionary<string, int> explained = [];
    private int last;

    /// <summary>The block of a result, or of a line that could not be read.</summary>
    public Block Of(CellResult cell, string label)
    {
        if (cell.Cell.Content is BrokenContent broken) return new MissingBlock($"{cell.Id.Address} cannot be read: {broken.Fault.Sentence}");
        int number = ++last;
        WorkedStep step = Shortened(builder.Of(cell), number);
        string expression = ((ResultContent)cell.Cell.Content).Expression;
        if (cell.IsCheck) checks.Add(new CheckRow(number, label.Length > 0 ? label : cell.Cell.Name ?? cell.Id.Address.ToString(), step.Formula is null ? expression : LinearText.Of(step.Formula), Outcome(cell), !tools.Blanks && cell.Value is TruthValue { Value: false }));
        return new StepBlock(number, label, cell.Id.Address.ToString(), step)
        {
            Words = Words(cell, step),
            Members = cell.Value is RecordValue record ? [.. Members(record.Value, "")] : [],
            Remarks = cell.Cell.Remark is { Length: > 0 } remark ? [remark] : [],
            Cautions = [.. cell.Cautions.Select(caution => answers.Hidden(caution.Origin is null ? caution.Message : $"{caution.Origin}: {caution.Message}"))],
            Fault = cell.Fault is { } fault ? answers.Hidden(fault.Sentence) : null,
            CallSources = step.Calls.DistinctBy(call => call.Function).ToImmutableDictionary(call => call.Function, call => sources.Add(call.Function, call.Sources)),
            Sources = Others(cell, step),
        };
    }

    // a call that an earlier step of the handout explained with the same arguments is not explained again
    private WorkedStep Shortened(WorkedStep step, int number) => step with
    {
        Calls = [.. step.Calls.Select(call =>
        {
            string key = $"{step.Cell.Id.Sheet} {call.Function} {string.Join(", ", call.Parameters.Select(parameter => LinearText.Of(parameter.Argument)))}";
            if (explained.TryAdd(key, number) || call.Parameters.IsEmpty || explained[key] == number) return call;
            return call with { EarlierStep = explained[key], Parameters = [], Lets = [] };
        })],
    };

    // what the calls shown do not name themselves
    private ImmutableArray<int> Others(CellResult cell, WorkedStep step)
    {
        HashSet<int> named = [.. step.Calls.SelectMany(call => sources.Add(call.Function, call.Sources))];
        return [.. sources.Of(cell).Where(number => !named.Contains(number))];
    }

    private string Outcome(CellResult cell)
    {
        if (cell.Value is not TruthValue truth) return "no value";
        return answers.Figure(truth.Value ? "holds" : "FAILS");
    }

    private string? Words(CellResult cell, WorkedStep step)
    {
        if (step.Result is not null || cell.Value is not TextValue text) return null;
        return tools.Blanks ? new string('_', 30) : text.Value;
    }

    private IEnumerable<(string, string, string)> Members(object record, string path)
    {
        foreach (MemberValue member in MemberValues.Of(record))
        {
            if (member.Value is RecordValue inner)
            {
                foreach (var each in Members(inner.Value, $"{path}{member.Name}.")) yield return each;
                continue;
            }
            (string Figure, string Unit)? shown = member.Value is null ? null : figures.Shown(member.Value, null, isCheck: false);
            string value = shown is { } text ? answers.Figure(text.Figure) + (text.Unit.Length == 0 ? "" : "\u00A0" + text.Unit) : member.Value is TextValue words ? answers.Figure(words.Value) : "none";
            yield return (path + member.Name, value, member.Declaration.Meaning);
        }
    }
}
