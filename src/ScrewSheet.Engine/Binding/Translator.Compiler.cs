using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Binding;

/// <summary>The compiler's errors in plain words; its own id is kept.</summary>
internal sealed partial class Translator
{
    private Fault FromCompiler(BoundShape shape)
    {
        (ImmutableArray<Diagnostic> errors, WrongArgument? wrong) = (shape.Errors, shape.Wrong);
        if (errors.IsEmpty) return BindingFaults.NoValue(expression.SourceOf(0, expression.Code.Length));
        Diagnostic error = errors[0];
        Place place = expression.SourceOf(error.Location.SourceSpan.Start - codeStart, error.Location.SourceSpan.Length);
        if (wrong is not null && WantedBy(wrong) is { } parameter)
            return BindingFaults.Wanted(parameter.Type, Given(wrong), $"the parameter {parameter.Name} of {wrong.Function}", place) with { CompilerId = error.Id };
        return error.Id switch
        {
            "CS0117" or "CS1061" or "CS0234" or "CS0200" or "CS8852" => Member(error.Id, place, shape.IsMemberOfText),
            "CS1501" or "CS7036" or "CS1739" or "CS1740" or "CS1744" => Arguments(error.Id, place),
            "CS0019" or "CS0023" or "CS0029" or "CS0034" or "CS0173" or "CS0266" or "CS0411" or "CS1503" or "CS1929" or "CS8121" or "CS8506" or "CS8130" => BindingFaults.Kinds(error.Id, place),
            "CS0815" or "CS0818" or "CS8917" or "CS0149" or "CS0428" or "CS0119" or "CS0118" => BindingFaults.NoValue(place) with { CompilerId = error.Id },
            _ when error.Id.StartsWith("CS1", StringComparison.Ordinal) => BindingFaults.Incomplete(error.Id, place),
            _ => BindingFaults.NotInLanguage(error.Id, place),
        };
    }

    /// <summary>The parameter an argument is meant for; null where it takes more than one type.</summary>
    private (string Name, CellType Type)? WantedBy(WrongArgument wrong)
    {
        IEnumerable<(string Name, CellType? Type)> parameters = library.Function(wrong.Function)?.Parameters.Select(parameter => (parameter.Name, parameter.Type))
            ?? own.GetValueOrDefault(wrong.Function)?.Parameters.Select(parameter => (parameter.Name, (CellType?)parameter.Type)) ?? [];
        (string name, CellType? type) = parameters.Where((parameter, i) => wrong.Name is null ? i == wrong.Index : parameter.Name == wrong.Name).FirstOrDefault();
        return type is null ? null : (name, type);
    }

    private CellType Given(WrongArgument wrong) => wrong.Given switch
    {
        "Double" => CellType.Number,
        "Boolean" => CellType.Truth,
        "String" => CellType.Text,
        "Series" => new SeriesType(CellType.Number),
        _ when library.Records.FirstOrDefault(record => record.Clr.Name.Split('`')[0] == wrong.Given) is { } record => new RecordType(record.Clr),
        _ when library.Options.FirstOrDefault(option => option.Name == wrong.Given) is { } option => new OptionType(option),
        _ => new QuantityType(Quantities.Dimension.None, null),
    };

    private Fault Member(string id, Place place, bool ofText)
    {
        int at = expression.Tokens.Select((token, i) => (token, i)).FirstOrDefault(pair => pair.token.Start + 1 == place.Column).i;
        int name = at;
        while (name < expression.Tokens.Length && !(name > 0 && expression.Tokens[name - 1].Is("."))) name++;
        if (name >= expression.Tokens.Length) return BindingFaults.NotInLanguage(id, place);
        string member = expression.Tokens[name].Text;
        if (ofText) return BindingFaults.UnknownMember(member, "A text", null, "It has Length, Contains, StartsWith and EndsWith.", id, expression.Tokens[name].Place);
        string[] known = [.. library.Records.SelectMany(record => record.Members).Select(m => m.Name).Concat(AllValues(library.Values)).Concat(library.Options.SelectMany(Enum.GetNames)).Where(name => name != member).Distinct()];
        return BindingFaults.UnknownMember(member, "What stands before the point", Nearest.To(member, known), "See the list of functions for its members.", id, expression.Tokens[name].Place);
    }

    private static IEnumerable<string> AllValues(IEnumerable<LibraryValues> values) =>
        values.SelectMany(value => value.Members.Select(member => member.Name).Append(value.Clr.Name).Concat(AllValues(value.Nested)));

    private Fault Arguments(string id, Place place)
    {
        int at = 0;
        for (int i = 0; i < expression.Tokens.Length && expression.Tokens[i].Start + 1 <= place.Column + place.Length; i++)
            if (i + 1 < expression.Tokens.Length && expression.Tokens[i + 1].Is("(") && Signature(expression.Tokens[i].Text) is not null && expression.Tokens[i].Start + 1 <= place.Column) at = i;
        string name = expression.Tokens[at].Text;
        string parameters = Signature(name) ?? "other arguments";
        return id == "CS1739" ? BindingFaults.NoSuchArgument(name, parameters, id, place) : BindingFaults.Arguments(name, parameters, id, place);
    }

    private string? Signature(string name)
    {
        if (library.Function(name) is { } function) return List(function.Parameters.Select(parameter => parameter.HasDefault ? $"perhaps {parameter.Name}" : parameter.Name));
        if (own.GetValueOrDefault(name) is { } mine) return List(mine.Parameters.Select(parameter => parameter.Name));
        return name switch
        {
            "Sqrt" or "Cbrt" => "one value", "Pow" => "a value and an exponent", "Root" => "a value and the root's degree",
            "Contains" or "StartsWith" or "EndsWith" => "one text", "Values" => "values of one kind", "Count" or "Sum" => "a series", "Map" or "Where" or "All" or "Any" => "a series and a lambda", _ => null,
        };
    }

    private static string List(IEnumerable<string> names)
    {
        string[] all = [.. names];
        return all.Length == 0 ? "no arguments" : string.Join(", ", all);
    }
}
