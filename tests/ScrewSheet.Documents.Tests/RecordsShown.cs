using ScrewSheet.Engine;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Documents.Tests;

/// <summary>A cell may hold a whole record; each that the library gives can be shown, also where a member of it has no value.</summary>
public sealed class RecordsShown
{
    [Fact]
    public void EveryRecordOfAWorkedNumber_HasMembersThatCanBeShown()
    {
        string[] expressions = [.. TheLibrary.Examples.Where(each => each.Value.Bound is BoundMember).Select(each => Whole(each.Key.Example.Expression, each.Value.Bound!)).Distinct()];
        Assert.True(expressions.Length > 40, $"only {expressions.Length} records");
        Workbook workbook = Assert.IsType<WorkbookRead>(WorkbookText.Read("screwsheet 1\n\nsheet R\n" + string.Concat(expressions.Select((text, i) => $"A{i + 1} => {text}\n")))).Workbook;
        Assert.All(new Calculator(TheLibrary.Functions).Calculate(workbook).Cells.Values, cell => Deep(Assert.IsType<RecordValue>(cell.Value)));
    }

    private static void Deep(RecordValue record)
    {
        MemberValue[] members = [.. MemberValues.Of(record.Value)];
        Assert.NotEmpty(members);
        foreach (MemberValue member in members)
        {
            if (member.Value is RecordValue inner) Deep(inner);
            else if (member.Value is { } value) Assert.NotNull(ValueText.Format(value, null, default).Number);
        }
    }

    /// <summary>The call without the members read from its answer.</summary>
    private static string Whole(string expression, BoundExpression bound) => bound is BoundMember member ? Whole(expression[..expression.LastIndexOf('.')], member.Target) : expression;
}
