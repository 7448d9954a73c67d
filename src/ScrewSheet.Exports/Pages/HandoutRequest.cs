using System.Collections.Immutable;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Exports.Tables;

namespace ScrewSheet.Exports.Pages;

/// <summary>What a handout is made from.</summary>
public sealed record HandoutRequest
{
    /// <summary>The workbook, calculated, and what worked steps need; its <see cref="StepTools.Blanks"/> makes the variant for students.</summary>
    public required StepTools Tools { get; init; }

    /// <summary>The what-if tables of the file, worked out.</summary>
    public ImmutableArray<ComputedTable> Tables { get; init; } = [];

    /// <summary>The author to be named; null for the one the file names.</summary>
    public string? Author { get; init; }

    /// <summary>The date to be printed; null for the one in the file. No handout takes today's by itself.</summary>
    public string? Date { get; init; }

    /// <summary>The program and its version, for the last line.</summary>
    public string MadeWith { get; init; } = "";
}
