using System.Globalization;
using ScrewSheet.Engine;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Documents.Tests;

/// <summary>A cell that goes beyond a declared limit is in fault, with a sentence that names the parameter, the limit and the unit.</summary>
public sealed class RefusedArguments
{
    private static readonly Lazy<IReadOnlyDictionary<Beyond, CellResult>> Computed = new(Compute);

    public static IEnumerable<object[]> Functions => Computed.Value.Keys.Select(beyond => beyond.Function.Name).Distinct().Select(name => new object[] { name });

    [Theory]
    [MemberData(nameof(Functions))]
    public void BeyondEachLimit_TheCellIsInFaultAndSaysWhatMustBe(string name)
    {
        string[] wrong = [.. Computed.Value.Where(each => each.Key.Function.Name == name && !Says(each.Key, each.Value.Fault?.Message ?? "")).Select(each => $"{each.Key.Expression}: {each.Value.Fault?.Sentence ?? "an answer"}")];
        Assert.True(wrong.Length == 0, string.Join('\n', wrong));
    }

    private static bool Says(Beyond beyond, string told)
    {
        string unit = beyond.Parameter.Declaration.Unit;
        return told.Contains(beyond.Parameter.Name + " must ", StringComparison.Ordinal)
            && (unit.Length == 0 || told.Contains(" " + unit, StringComparison.Ordinal) || told.Contains("whole number", StringComparison.Ordinal));
    }

    [Fact]
    public void MostFunctions_HaveLimits() => Assert.True(Functions.Count() > 250, $"{Functions.Count()} functions");

    private static Dictionary<Beyond, CellResult> Compute()
    {
        Beyond[] all = [.. TheLibrary.Examples.GroupBy(each => each.Key.Function).SelectMany(function => Cases(function.Key, function.First().Key.Example.Expression))];
        Workbook workbook = Assert.IsType<WorkbookRead>(WorkbookText.Read("screwsheet 1\n\nsheet B\n" + string.Concat(all.Select((beyond, i) => $"A{i + 1} => {beyond.Expression}\n")))).Workbook;
        return all.Zip(new Calculator(TheLibrary.Functions).Calculate(workbook).Of(workbook.Sheets[0])).ToDictionary(pair => pair.First, pair => pair.Second);
    }

    private static IEnumerable<Beyond> Cases(LibraryFunction function, string example)
    {
        CallText call = CallText.In(example, function.Name);
        for (int i = 0; i < function.Parameters.Length; i++)
        {
            LibraryParameter parameter = function.Parameters[i];
            bool series = parameter.Clr.IsGenericType && ClrTypes.IsSeries(parameter.Clr);
            if (!series && !CodeOf.IsScalar(parameter)) continue;
            string unit = parameter.Clr.IsGenericParameter && i < call.Arguments.Count ? CallText.UnitIn(call.Arguments[i]) : parameter.Declaration.Unit;
            foreach (double value in Outside(parameter.Declaration, i < call.Arguments.Count && int.TryParse(call.Arguments[i], out _)))
            {
                string literal = value.ToString("0.##########", CultureInfo.InvariantCulture) + (unit.Length == 0 ? "" : " " + unit);
                if (call.With(i, parameter.Name, literal, series) is { } expression) yield return new Beyond(function, parameter, expression);
            }
        }
    }

    private static IEnumerable<double> Outside(ParameterAttribute declared, bool whole)
    {
        double step = whole ? 1 : 1e-3;
        if (!double.IsNaN(declared.Above)) yield return declared.Above;
        if (!double.IsNaN(declared.Above)) yield return declared.Above - 1;
        if (!double.IsNaN(declared.AtLeast)) yield return declared.AtLeast - (whole ? step : step * (1 + Math.Abs(declared.AtLeast)));
        if (!double.IsNaN(declared.Below)) yield return declared.Below;
        if (!double.IsNaN(declared.AtMost)) yield return declared.AtMost + (whole ? step : step * (1 + Math.Abs(declared.AtMost)));
    }

    private sealed record Beyond(LibraryFunction Function, LibraryParameter Parameter, string Expression);
}

/// <summary>A call in an expression, with the texts of its arguments.</summary>
internal sealed record CallText(string Before, IReadOnlyList<string> Arguments, string After)
{
    /// <summary>The first call of that function.</summary>
    public static CallText In(string expression, string function)
    {
        int open = expression.IndexOf(function + "(", StringComparison.Ordinal) + function.Length + 1, depth = 0, from = open, at = open;
        List<string> arguments = [];
        for (; depth >= 0; at++)
        {
            char sign = expression[at];
            if (sign == '(') depth++;
            if (sign == ')') depth--;
            if (depth > 0 || (depth == 0 && sign != ',')) continue;
            if (at > from) arguments.Add(expression[from..at].Trim());
            from = at + 1;
        }
        return new CallText(expression[..open], arguments, expression[(at - 1)..]);
    }

    /// <summary>The unit an argument is written in, the first of a series; a parameter of any kind has that of its call.</summary>
    public static string UnitIn(string argument)
    {
        string first = argument.StartsWith("Values(", StringComparison.Ordinal) ? In(argument, "Values").Arguments[0] : argument;
        string[] words = first.Split(' ', 2);
        return words.Length == 2 && double.TryParse(words[0], CultureInfo.InvariantCulture, out _) ? words[1] : "";
    }

    /// <summary>The expression with another argument; in a series its first value. Null where the argument is not written out.</summary>
    public string? With(int index, string name, string literal, bool series)
    {
        List<string> changed = [.. Arguments];
        if (series)
        {
            if (index >= changed.Count || !changed[index].StartsWith("Values(", StringComparison.Ordinal)) return null;
            CallText values = In(changed[index], "Values");
            changed[index] = values.Before + string.Join(", ", values.Arguments.Skip(1).Prepend(literal)) + values.After;
        }
        else if (index < changed.Count) changed[index] = literal;
        else changed.Add($"{name}: {literal}");
        return Before + string.Join(", ", changed) + After;
    }
}
