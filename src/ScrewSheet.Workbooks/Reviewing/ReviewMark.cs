using System.Collections.Immutable;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>That a person has checked a result: <c>reviewed KM 2026-11-25 HASH</c>, directly above the cell.</summary>
/// <param name="Initials">Who.</param>
/// <param name="Date">When, as that person says: year, month and day.</param>
/// <param name="Hash">What was checked, as <see cref="ReviewHash"/> writes it.</param>
public sealed record ReviewMark(string Initials, string Date, string Hash);

/// <summary>A mark held against the workbook as it is.</summary>
/// <param name="Mark">The mark.</param>
/// <param name="Broken">What was changed since, such as <c>the expression was changed</c>; null while the mark holds.</param>
public sealed record CellReview(ReviewMark Mark, string? Broken)
{
    /// <summary>True while nothing the result depends on has changed.</summary>
    public bool Holds => Broken is null;

    /// <summary>One line: <c>reviewed by KM, 2026-11-25</c>, or that the review no longer holds and why.</summary>
    public override string ToString() => Broken is null
        ? $"reviewed by {Mark.Initials}, {Mark.Date}"
        : $"the review by {Mark.Initials} of {Mark.Date} no longer holds: {Broken}.";
}

/// <summary>The marks of a calculated workbook.</summary>
/// <param name="Marks">Every cell that has any, each mark with whether it holds.</param>
/// <param name="Tally">How much is reviewed.</param>
public sealed record ReviewOverview(IReadOnlyDictionary<CellId, ImmutableArray<CellReview>> Marks, ReviewTally Tally);

/// <summary>How much of a workbook is reviewed.</summary>
/// <param name="Results">How many results there are.</param>
/// <param name="Reviewed">How many have a mark that holds.</param>
/// <param name="Broken">How many marks no longer hold.</param>
public readonly record struct ReviewTally(int Results, int Reviewed, int Broken);
