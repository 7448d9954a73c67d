using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>The call around the caret: its parameters, and the one being typed.</summary>
/// <param name="Name">The function.</param>
/// <param name="Parameters">Their names.</param>
/// <param name="Current">The one being typed, from 0; beyond the last where there are too many.</param>
/// <param name="Meaning">What that one is, with its unit and limits; else what the function answers.</param>
internal sealed record CallHelp(string Name, ImmutableArray<string> Parameters, int Current, string Meaning)
{
    /// <summary>Of the text before the caret; null outside a call.</summary>
    public static CallHelp? At(string before, Session session, Lexicon lexicon)
    {
        (int open, int argument) = OpenCall(before);
        if (open <= 0) return null;
        int start = open;
        while (start > 0 && (char.IsLetterOrDigit(before[start - 1]) || before[start - 1] == '_')) start--;
        string name = before[start..open];
        if (name.Length == 0) return null;
        if (lexicon.Library.Function(name) is { } function) return OfLibrary(function, argument);
        if (session.Workbook.Functions.FirstOrDefault(own => own.Name == name) is { } mine) return OfOwn(mine, argument);
        if (Lexicon.IntrinsicOf(name) is not { } intrinsic) return null;
        return new CallHelp(name, [.. intrinsic.Parameters.Split(", ")], argument, intrinsic.Meaning);
    }

    private static CallHelp OfLibrary(LibraryFunction function, int argument)
    {
        LibraryParameter? parameter = function.Parameters.ElementAtOrDefault(argument);
        string meaning = parameter is null ? function.Declaration.Answers : Describe(parameter);
        return new CallHelp(function.Name, [.. function.Parameters.Select(each => each.HasDefault ? each.Name + "?" : each.Name)], argument, PlainText.Of(meaning));
    }

    private static CallHelp OfOwn(FunctionDefinition own, int argument) =>
        new(own.Name, [.. own.Parameters.Select(each => $"{each.Type} {each.Name}")], argument, PlainText.Of($"{own.ReturnType}: {own.Body}"));

    private static string Describe(LibraryParameter parameter)
    {
        ParameterAttribute declared = parameter.Declaration;
        List<string> parts = [declared.Unit.Length == 0 ? declared.Meaning : $"{declared.Meaning}, in {declared.Unit}"];
        if (!double.IsNaN(declared.Above)) parts.Add("above " + Number(declared.Above));
        if (!double.IsNaN(declared.AtLeast)) parts.Add("at least " + Number(declared.AtLeast));
        if (!double.IsNaN(declared.Below)) parts.Add("below " + Number(declared.Below));
        if (!double.IsNaN(declared.AtMost)) parts.Add("at most " + Number(declared.AtMost));
        if (!double.IsNaN(declared.UsualFrom)) parts.Add("usual from " + Number(declared.UsualFrom));
        if (!double.IsNaN(declared.UsualTo)) parts.Add("usual to " + Number(declared.UsualTo));
        if (parameter.HasDefault) parts.Add("may be left out");
        return $"{parameter.Name}: {string.Join("; ", parts)}";
    }

    private static string Number(double value) => value.ToString("G6", CultureInfo.InvariantCulture);

    /// <summary>Index of the innermost bracket that is open at the end, and how many commas follow it at its own depth.</summary>
    private static (int Open, int Argument) OpenCall(string before)
    {
        Stack<(int Open, int Commas)> calls = new();
        bool inside = false;
        for (int i = 0; i < before.Length; i++)
        {
            char c = before[i];
            if (inside && c == '\\') i++;
            else if (c == '"') inside = !inside;
            else if (inside) continue;
            else if (c is '(' or '[' or '{') calls.Push((i, 0));
            else if (c is ')' or ']' or '}') calls.TryPop(out _);
            else if (c == ',' && calls.TryPop(out var call)) calls.Push((call.Open, call.Commas + 1));
        }
        while (calls.TryPop(out var open))
        {
            if (before[open.Open] == '(') return open;
        }
        return (-1, 0);
    }
}
