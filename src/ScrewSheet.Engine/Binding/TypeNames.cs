using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Binding;

/// <summary>Types as they are written before a cell's name or in a function's head.</summary>
internal static class TypeNames
{
    /// <summary>The type of that name, or null.</summary>
    public static CellType? Find(string name, FunctionLibrary library)
    {
        if (QuantityKinds.ByName(name) is { } kind) return CellType.Of(kind);
        if (library.Records.FirstOrDefault(record => record.Clr.Name == name) is { } found) return new RecordType(found.Clr);
        if (library.Options.FirstOrDefault(option => option.Name == name) is { } choice) return new OptionType(choice);
        return name switch { "double" => CellType.Number, "bool" => CellType.Truth, "string" => CellType.Text, _ => null };
    }

    /// <summary>All names that can be written.</summary>
    public static IEnumerable<string> Known(FunctionLibrary library) =>
        QuantityKinds.All.Select(kind => kind.Name).Concat(["double", "bool", "string"]).Concat(library.Options.Select(option => option.Name)).Concat(library.Records.Where(r => !r.Clr.IsGenericType).Select(r => r.Clr.Name));
}
