namespace ScrewSheet.Workbooks.Expressions;

/// <summary>Which members of a library record a cell may change.</summary>
public static class LibraryRecords
{
    /// <summary>
    /// True where <c>with</c> may set the member: the record is one that authors fill in, which has a constructor without parameters;
    /// a record that a function answers with is not changed by a cell.
    /// </summary>
    public static bool CanSet(Type record, LibraryMember member) => record.IsClass && record.GetConstructor(Type.EmptyTypes) is not null && member.Property.SetMethod is { IsPublic: true };
}
