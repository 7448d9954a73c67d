using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Code that several cells share: the author's functions and the guards of library functions.</summary>
internal sealed class CodeCache(FunctionLibrary library)
{
    private readonly Dictionary<OwnFunction, OwnCode> own = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<LibraryFunction, FunctionGuard?> guards = [];

    /// <summary>The code of one of the author's functions.</summary>
    public OwnCode OwnCodeOf(OwnFunction function)
    {
        if (!own.TryGetValue(function, out OwnCode? code)) own.Add(function, code = new OwnCode(function, this));
        return code;
    }

    /// <summary>What looks for cautions after a call, or null where the function declares none.</summary>
    public FunctionGuard? GuardOf(LibraryFunction function)
    {
        if (!guards.TryGetValue(function, out FunctionGuard? guard))
        {
            guards.Add(function, null);
            guards[function] = guard = FunctionGuard.Make(function, library, this);
        }
        return guard;
    }

    /// <summary>Forgets the author's functions when they change.</summary>
    public void ForgetOwn() => own.Clear();

    /// <summary>The sentence for a ready value known from memory only, or null.</summary>
    public static string? MemoryCaution(BoundLibraryValue value) =>
        value.Member.Sources.FirstOrDefault(source => source.Standing == Standing.FromMemory) is { } source
            ? $"{value.Path} is from memory; check it against {source.Work}." : null;
}
