using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Tables;

/// <summary>A worked what-if table.</summary>
public sealed record WhatIfTable
{
    /// <summary>The most entries a table may have.</summary>
    public const int MostEntries = 1_000_000;

    /// <summary>The words above it, or null.</summary>
    public string? Title { get; init; }

    /// <summary>Its top left cell where the file has it, or null.</summary>
    public CellAddress? Anchor { get; init; }

    /// <summary>The varied givens: the first makes rows, the second columns, more a long list in which the last changes fastest.</summary>
    public required ImmutableArray<WhatIfAxis> Axes { get; init; }

    /// <summary>The shown cells.</summary>
    public required ImmutableArray<WhatIfColumn> Columns { get; init; }

    /// <summary>What must be said about it: a shown cell that depends on nothing varied, a given varied in vain.</summary>
    public ImmutableArray<Fault> Notes { get; init; } = [];

    /// <summary>How many scenarios there are; each column has as many entries.</summary>
    public int Scenarios => Axes.Aggregate(1, (product, axis) => product * axis.Values.Length);

    /// <summary>The room the table takes as it is drawn.</summary>
    public WhatIfShape Shape => WhatIfShape.Of([.. Axes.Select(axis => axis.Values.Length)], Columns.Length);

    /// <summary>The scenario at a place of each axis, from 0.</summary>
    public int Scenario(params ReadOnlySpan<int> places)
    {
        int scenario = 0;
        for (int i = 0; i < Axes.Length; i++) scenario = (scenario * Axes[i].Values.Length) + places[i];
        return scenario;
    }

    /// <summary>The place on each axis of a scenario.</summary>
    public int[] Places(int scenario)
    {
        int[] places = new int[Axes.Length];
        for (int i = Axes.Length - 1; i >= 0; i--) (scenario, places[i]) = Math.DivRem(scenario, Axes[i].Values.Length);
        return places;
    }
}

/// <summary>One shown cell in all scenarios of a table.</summary>
public sealed class WhatIfColumn
{
    private readonly double[] numbers;
    private readonly IReadOnlyDictionary<int, CellValue> others;
    private readonly IReadOnlyDictionary<int, Fault> faults;

    internal WhatIfColumn(CellResult cell, string label, CellType? type, double[] numbers, IReadOnlyDictionary<int, CellValue> others, IReadOnlyDictionary<int, Fault> faults)
    {
        (this.numbers, this.others, this.faults) = (numbers, others, faults);
        (Cell, Label, Format, Type) = (cell.Id, label, cell.Cell.Format, type);
        IsCheck = type is TruthType && cell.Cell is { DeclaredType: null, Content: ResultContent };
    }

    /// <summary>The cell.</summary>
    public CellId Cell { get; }

    /// <summary>How it is called.</summary>
    public string Label { get; }

    /// <summary>How its values are shown, or null for the workbook's way.</summary>
    public DisplayFormat? Format { get; }

    /// <summary>The type of its values; null where no entry has one.</summary>
    public CellType? Type { get; }

    /// <summary>True for a check: it holds or fails.</summary>
    public bool IsCheck { get; }

    /// <summary>The cautions that ride with its entries, and with how many.</summary>
    public ImmutableArray<CautionCount> Cautions { get; internal init; } = [];

    /// <summary>True where its entries were worked out by a kernel.</summary>
    public bool IsCompiled { get; internal init; }

    /// <summary>How many entries are in fault.</summary>
    public int FaultCount => faults.Count;

    /// <summary>The value of an entry; null where it is in fault.</summary>
    public CellValue? Value(int scenario)
    {
        if (faults.ContainsKey(scenario)) return null;
        if (others.TryGetValue(scenario, out CellValue? other)) return other;
        return Type switch
        {
            TruthType => new TruthValue(numbers[scenario] != 0),
            QuantityType quantity => new QuantityValue(numbers[scenario], quantity),
            _ => new NumberValue(numbers[scenario]),
        };
    }

    /// <summary>Why an entry has no value; null where it has one.</summary>
    public Fault? Fault(int scenario) => faults.GetValueOrDefault(scenario);
}
