using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Tables;

/// <summary>What a what-if table is to show.</summary>
public sealed record WhatIfRequest
{
    /// <summary>The givens that are varied, in order: the first makes rows, the second columns, more a long list.</summary>
    public required ImmutableArray<VarySpec> Vary { get; init; }

    /// <summary>The cells that are shown, as written.</summary>
    public required ImmutableArray<PlacedText> Show { get; init; }

    /// <summary>The sheet on which bare names are looked for first; null for anywhere.</summary>
    public string? Sheet { get; init; }

    /// <summary>The words above the table, or null.</summary>
    public string? Title { get; init; }

    /// <summary>The table's top left cell where the file has it; null for one that is in no file.</summary>
    public CellAddress? Anchor { get; init; }

    /// <summary>Where the table stands in the file, or null.</summary>
    public Place? Place { get; init; }

    /// <summary>How it is worked out.</summary>
    public StudyMethod Method { get; init; }

    /// <summary>The request a table of the file makes.</summary>
    /// <param name="block">The table as written.</param>
    /// <param name="sheet">The sheet it stands on.</param>
    public static StudyOutcome<WhatIfRequest> Of(WhatIfBlock block, string sheet)
    {
        ArgumentNullException.ThrowIfNull(block);
        StudyOutcome<WhatIfRequest> read = Read(block.Vary, block.Show);
        return read.IsAnswered ? read.Answer with { Sheet = sheet, Title = block.Title, Anchor = block.Anchor, Place = block.Place } : read;
    }

    /// <summary>The request some lines make, without the words <c>vary</c> and <c>show</c>.</summary>
    /// <param name="vary">What would follow each <c>vary</c>.</param>
    /// <param name="show">What would follow each <c>show</c>.</param>
    public static StudyOutcome<WhatIfRequest> Read(IEnumerable<PlacedText> vary, IEnumerable<PlacedText> show)
    {
        ArgumentNullException.ThrowIfNull(vary);
        ArgumentNullException.ThrowIfNull(show);
        var specs = ImmutableArray.CreateBuilder<VarySpec>();
        var names = ImmutableArray.CreateBuilder<PlacedText>();
        foreach (PlacedText text in vary)
        {
            if (StudyText.ReadVary(text, out Fault? fault) is not { } spec) return fault!;
            specs.Add(spec);
        }
        foreach (PlacedText text in show)
        {
            names.AddRange(StudyText.ReadShow(text, out Fault? fault));
            if (fault is not null) return fault;
        }
        return new WhatIfRequest { Vary = specs.ToImmutable(), Show = names.ToImmutable() };
    }

    /// <summary>How much room the table would take, or why it cannot be made; nothing is worked out.</summary>
    /// <param name="calculation">The workbook, calculated.</param>
    /// <param name="library">The library it was calculated with.</param>
    public StudyOutcome<WhatIfShape> Check(Calculation calculation, FunctionLibrary library)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(library);
        return WhatIfStudy.Check(calculation, this, library);
    }
}
