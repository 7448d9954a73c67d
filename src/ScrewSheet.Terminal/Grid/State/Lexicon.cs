using System.Collections.Immutable;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>A word the language of cells knows, and what it is in one line.</summary>
/// <param name="Text">As written.</param>
/// <param name="Meaning">One line.</param>
internal readonly record struct KnownWord(string Text, string Meaning);

/// <summary>The words of the library and the language, for completion and help.</summary>
internal sealed class Lexicon
{
    private static readonly (string Name, string Parameters, string Meaning)[] Intrinsic =
    [
        ("Sqrt", "x", "square root, with its unit"), ("Cbrt", "x", "cube root, with its unit"), ("Root", "x, n", "n-th root"), ("Pow", "x, n", "x to the n"),
        ("Values", "first, …", "a series written out"), ("Count", "series", "how many values"), ("Sum", "series", "sum of a series"),
        ("Map", "series, each", "each value through a lambda x => …"), ("Where", "series, each", "the values for which a lambda holds"),
        ("All", "series, each", "true where a lambda holds for every value"), ("Any", "series, each", "true where it holds for one"),
        ("Series", "first, last", "the run of cells between two corners"),
    ];

    /// <summary>The members of a series.</summary>
    public static ImmutableArray<KnownWord> OfSeries { get; } =
    [
        new("Count", "how many values"), new("Where", "the values in rows in which another column has a value: Where(mode, \"pull-out\")"),
        new("WhereNot", "those in rows in which it has another value"), new("Beside", "those in rows in which another column has a value too"),
    ];

    private readonly Lazy<(FunctionLibrary Library, ImmutableArray<KnownWord> Functions, ImmutableArray<KnownWord> Values, ImmutableArray<KnownWord> Units)> words;

    /// <summary>The words of a library, which is asked for with the first of them.</summary>
    public Lexicon(Func<FunctionLibrary> library) => words = new(() => Of(library()));

    /// <summary>The library.</summary>
    public FunctionLibrary Library => words.Value.Library;

    /// <summary>What can be called.</summary>
    public ImmutableArray<KnownWord> Functions => words.Value.Functions;

    /// <summary>Ready values and options.</summary>
    public ImmutableArray<KnownWord> Values => words.Value.Values;

    /// <summary>The units.</summary>
    public ImmutableArray<KnownWord> Units => words.Value.Units;

    private static (FunctionLibrary, ImmutableArray<KnownWord>, ImmutableArray<KnownWord>, ImmutableArray<KnownWord>) Of(FunctionLibrary library)
    {
        ImmutableArray<KnownWord> functions = [.. library.Functions.Select(function => new KnownWord(function.Name, function.Declaration.Answers)), .. Intrinsic.Select(word => new KnownWord(word.Name, word.Meaning))];
        ImmutableArray<KnownWord> values = [.. library.Values.Select(values => new KnownWord(values.Clr.Name, values.Meaning)), .. library.Options.Select(option => new KnownWord(option.Name, "a choice")), new KnownWord("Math", "functions and constants of mathematics")];
        ImmutableArray<KnownWord> units = [.. UnitTable.All.Select(unit => new KnownWord(unit.Symbol, unit.Kind is { } kind ? "unit: " + kind.Phrase : "unit"))];
        return (library, functions, values, units);
    }

    /// <summary>The parameters and meaning of a function of the language itself.</summary>
    public static (string Parameters, string Meaning)? IntrinsicOf(string name)
    {
        foreach (var word in Intrinsic)
        {
            if (word.Name == name) return (word.Parameters, word.Meaning);
        }
        return null;
    }

    /// <summary>What may follow a path of ready values and a dot: <c>Standards.En568.</c>; empty where the path is none.</summary>
    public IEnumerable<KnownWord> MembersOf(string path)
    {
        string[] steps = path.Split('.');
        if (Library.Options.FirstOrDefault(option => option.Name == path) is { } option) return Enum.GetNames(option).Select(name => new KnownWord(name, option.Name));
        LibraryValues? values = Library.Values.FirstOrDefault(candidate => candidate.Clr.Name == steps[0]);
        foreach (string step in steps.Skip(1)) values = values?.Nested.FirstOrDefault(nested => nested.Clr.Name == step);
        return values is null ? [] : values.Members.Select(Word).Concat(values.Nested.Select(nested => new KnownWord(nested.Clr.Name, nested.Meaning)));
    }

    /// <summary>The members of a value of that type; empty where it has none.</summary>
    public IEnumerable<KnownWord> MembersOf(CellType type) => type is RecordType record
        ? Library.Record(record.Clr.IsGenericType ? record.Clr.GetGenericTypeDefinition() : record.Clr)?.Members.Select(Word) ?? []
        : type is SeriesType ? OfSeries : type is TextType ? [new("Length", "how many characters"), new("Contains", "a text stands in it"), new("StartsWith", "it begins so"), new("EndsWith", "it ends so")] : [];

    private static KnownWord Word(LibraryMember member) => new(member.Name, member.Declaration.Unit.Length == 0 ? member.Declaration.Meaning : $"{member.Declaration.Meaning} [{member.Declaration.Unit}]");
}
