using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Reflection;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>A marked record of the library: what its members are and which of them <c>with</c> can set.</summary>
/// <param name="Clr">Its type, open when generic.</param>
/// <param name="Meaning">What it is.</param>
/// <param name="Members">Its marked members.</param>
public sealed record LibraryRecord(Type Clr, string Meaning, ImmutableArray<LibraryMember> Members);

/// <summary>A marked class of ready values: its values and its nested classes.</summary>
/// <param name="Clr">The class.</param>
/// <param name="Meaning">What it holds.</param>
/// <param name="Members">Its values.</param>
/// <param name="Nested">Its nested classes.</param>
public sealed record LibraryValues(Type Clr, string Meaning, ImmutableArray<LibraryMember> Members, ImmutableArray<LibraryValues> Nested);

/// <summary>
/// Everything a workbook may call or read, found by its marks. What is not in here does not exist for a cell.
/// </summary>
public sealed class FunctionLibrary
{
    private readonly FrozenDictionary<string, LibraryFunction> byName;
    private readonly FrozenSet<string> typeNames;

    private FunctionLibrary(IEnumerable<Assembly> assemblies)
    {
        Type[] types = [.. assemblies.SelectMany(assembly => assembly.GetExportedTypes())];
        Functions = [.. types.Where(type => type is { IsAbstract: true, IsSealed: true }).SelectMany(LibraryReader.FunctionsOf).OrderBy(f => f.Name, StringComparer.Ordinal)];
        Records = [.. types.Where(ClrTypes.IsRecord).Select(LibraryReader.Record)];
        Values = [.. types.Where(type => !type.IsNested && type.IsDefined(typeof(SheetValuesAttribute), false)).Select(LibraryReader.Values)];
        Options = [.. types.Where(type => type.IsEnum && type.IsDefined(typeof(SheetOptionAttribute), false))];
        byName = Functions.ToFrozenDictionary(function => function.Name);
        typeNames = Records.Select(r => r.Clr.Name.Split('`')[0]).Concat(Values.Select(v => v.Clr.Name)).Concat(Options.Select(o => o.Name)).ToFrozenSet();
    }

    /// <summary>All callable functions by name.</summary>
    public ImmutableArray<LibraryFunction> Functions { get; }

    /// <summary>All marked records.</summary>
    public ImmutableArray<LibraryRecord> Records { get; }

    /// <summary>All marked classes of ready values.</summary>
    public ImmutableArray<LibraryValues> Values { get; }

    /// <summary>All marked enumerations.</summary>
    public ImmutableArray<Type> Options { get; }

    /// <summary>The library found in these assemblies.</summary>
    /// <exception cref="NotSupportedException">A mark is used wrongly.</exception>
    /// <exception cref="ArgumentException">Two functions have the same name.</exception>
    public static FunctionLibrary Of(params Assembly[] assemblies) => new(assemblies);

    /// <summary>The function of that name, or null.</summary>
    public LibraryFunction? Function(string name) => byName.GetValueOrDefault(name);

    /// <summary>True where the name is that of a record, a class of values or an option.</summary>
    public bool IsTypeName(string name) => typeNames.Contains(name);

    /// <summary>The record of that type.</summary>
    public LibraryRecord? Record(Type clr) => Records.FirstOrDefault(record => record.Clr == clr);
}
