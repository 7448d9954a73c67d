using System.Collections.Immutable;
using ScrewSheet.Exports.Drawing;
using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Pages;

/// <summary>A part of a handout, neither markup nor text yet. A closed family.</summary>
internal abstract record Block
{
    private protected Block() { }
}

/// <summary>A note of the author's, or a remark: prose.</summary>
internal sealed record ProseBlock(string Text, bool IsLead) : Block;

/// <summary>Givens under each other.</summary>
internal sealed record GivensBlock(ImmutableArray<GivenRow> Rows) : Block;

/// <summary>One given.</summary>
internal sealed record GivenRow(string Label, Notation Name, Notation Value, string Tolerance, string Range, string Source);

/// <summary>A result worked out.</summary>
internal sealed record StepBlock(int Number, string Label, string Address, WorkedStep Step) : Block
{
    /// <summary>A result that is words, or too long to stand beside mathematics; null for any other.</summary>
    public string? Words { get; init; }

    public ImmutableArray<(string Name, string Value, string Meaning)> Members { get; init; } = [];

    public ImmutableArray<string> Remarks { get; init; } = [];

    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>Why there is no result, or null.</summary>
    public string? Fault { get; init; }

    /// <summary>The numbers of its sources in the list at the end.</summary>
    public ImmutableArray<int> Sources { get; init; } = [];

    /// <summary>The sources of the functions it calls, by function.</summary>
    public ImmutableDictionary<string, ImmutableArray<int>> CallSources { get; init; } = ImmutableDictionary<string, ImmutableArray<int>>.Empty;
}

/// <summary>A table: heads over columns, heads before rows, entries.</summary>
internal sealed record TableBlock(string Caption, ImmutableArray<ImmutableArray<TableHead>> Heads, ImmutableArray<TableRow> Rows) : Block
{
    public ImmutableArray<string> Remarks { get; init; } = [];
}

/// <summary>A head over one column or several.</summary>
internal readonly record struct TableHead(string Text, int Columns = 1);

/// <summary>A row: its heads, its entries.</summary>
internal sealed record TableRow(ImmutableArray<string> Heads, ImmutableArray<string> Entries);

/// <summary>A drawing.</summary>
internal sealed record PlotBlock(string Caption, ImmutableArray<Plot> Panels, string Description) : Block;

/// <summary>A sentence about something that could not be shown.</summary>
internal sealed record MissingBlock(string Text) : Block;

/// <summary>A sheet of the workbook in a handout.</summary>
internal sealed record Section(string Name, string Title, ImmutableArray<Block> Blocks);

/// <summary>A check and what came of it.</summary>
internal sealed record CheckRow(int Step, string Label, string Expression, string Outcome, bool Fails);

/// <summary>A source and who stands on it.</summary>
internal sealed record SourceRow(int Number, string Work, string UsedBy);

/// <summary>Everything a handout says, in order.</summary>
internal sealed record Page
{
    public required string Title { get; init; }

    public string Author { get; init; } = "";

    public string Date { get; init; } = "";

    public bool Blanks { get; init; }

    public bool IsLetter { get; init; }

    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>What rides with values of this workbook: the cautions of its cells, its faults, what stands on memory.</summary>
    public ImmutableArray<string> OwnCautions { get; init; } = [];

    public ImmutableArray<string> About { get; init; } = [];

    public ImmutableArray<(Notation Head, Notation Body)> Functions { get; init; } = [];

    public ImmutableArray<Section> Sections { get; init; } = [];

    public ImmutableArray<CheckRow> Checks { get; init; } = [];

    public ImmutableArray<SourceRow> Sources { get; init; } = [];

    public string MadeWith { get; init; } = "";
}
