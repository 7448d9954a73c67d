using System.Collections.Frozen;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Words that cannot be names.</summary>
internal static class Keywords
{
    /// <summary>All reserved words of C#, then the contextual ones that change how an expression reads, then the format's own.</summary>
    private static readonly FrozenSet<string> All = (
        "abstract as base bool break byte case catch char checked class const continue decimal default delegate do double else enum event explicit extern "
        + "false finally fixed float for foreach goto if implicit in int interface internal is lock long namespace new null object operator out override "
        + "params private protected public readonly ref return sbyte sealed short sizeof stackalloc static string struct switch this throw true try typeof "
        + "uint ulong unchecked unsafe ushort using virtual void volatile while "
        + "and async await dynamic field from nameof nint not nuint or scoped var when with "
        + "conflict gives source within").Split(' ').ToFrozenSet(StringComparer.Ordinal);

    public static bool Has(string word) => All.Contains(word);
}
