using System.Collections.Immutable;
using ScrewSheet.Engine;
using ScrewSheet.Quantities;
using ScrewSheet.Studies.Faults;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>Values written for a cell in a study, held against what the cell is.</summary>
internal static class GivenValues
{
    /// <summary>The given a name means and what it is now; null with a fault.</summary>
    public static CellResult? Find(Calculation calculation, PlacedText name, string? sheet, out Fault? fault)
    {
        CellId? id = CellNaming.Find(calculation.Workbook, name, sheet, out fault);
        if (id is not { } found) return null;
        CellResult result = calculation.Cells[found];
        fault = result.Cell.Content switch
        {
            GivenContent => TypeOf(result) is null ? StudyFaults.NoValue(name.Text, CellNaming.PlaceOf(name)) : null,
            ResultContent => StudyFaults.VariedResult(name.Text, CellNaming.PlaceOf(name)),
            _ => StudyFaults.NoValue(name.Text, CellNaming.PlaceOf(name)),
        };
        return fault is null ? result : null;
    }

    /// <summary>The type of a cell's values, also of a given that is in fault for its size; null where it has none.</summary>
    public static CellType? TypeOf(CellResult result)
    {
        CellType? type = result.Type ?? (result.Cell.Content is GivenContent { Literal: { } literal } ? TypeOf(literal) : null);
        return type is QuantityType { Kind: null } bare && result.Cell.DeclaredType is { } name && QuantityKinds.ByName(name) is { } kind ? bare with { Kind = kind } : type;
    }

    /// <summary>The value of a literal as a value of that cell; null with a fault.</summary>
    public static CellValue? OfLiteral(Literal literal, string text, CellType type, string label, Place? place, out Fault? fault)
    {
        bool finite = literal is not NumberLiteral { Si: var si } || double.IsFinite(si);
        fault = !finite ? StudyFaults.NotFinite(label, place) : Fits(TypeOf(literal), type) ? null : StudyFaults.OtherKind(text, TypeOf(literal).Phrase, label, type.Phrase, place);
        if (fault is not null) return null;
        return literal switch
        {
            NumberLiteral number => Number(type, number.Si),
            TruthLiteral truth => new TruthValue(truth.Value),
            TextLiteral words => new TextValue(words.Value),
            _ => throw new InvalidOperationException("An unknown literal."),
        };
    }

    /// <summary>A number or quantity of a type.</summary>
    public static CellValue Number(CellType type, double si) => type is QuantityType quantity ? new QuantityValue(si, quantity) : new NumberValue(si);

    /// <summary>The values of constant expressions, worked out by the engine; those of other kinds or in fault give a fault.</summary>
    public static ImmutableArray<CellValue> OfExpressions(Workbook workbook, FunctionLibrary library, IReadOnlyList<VaryValue> values, CellType type, string label, out Fault? fault)
    {
        fault = null;
        CellAddress[] places = [.. values.Select((_, i) => new CellAddress(1, i + 1))];
        CellMap cells = CellMap.Of(places.Zip(values, (place, value) => new Cell { Address = place, Content = new GivenContent(value.Text, value.Place.Column), Place = value.Place }));
        Sheet sheet = new() { Name = "Values", Order = [.. places], Cells = cells };
        Calculation calculation = new Calculator(library).Calculate(workbook with { Sheets = [sheet], Faults = [], BrokenLines = [] });
        var made = ImmutableArray.CreateBuilder<CellValue>();
        foreach (var (place, written) in places.Zip(values))
        {
            CellResult result = calculation.Cells[new CellId(sheet.Name, place)];
            fault ??= result.Fault ?? (Fits(result.Type!, type) ? null : StudyFaults.OtherKind(written.Text, result.Type!.Phrase, label, type.Phrase, written.Place.Line > 0 ? written.Place : null));
            if (fault is not null) return [];
            made.Add(SiValue.Of(result.Value) is { } si ? Number(type, si) : result.Value!);
        }
        return made.ToImmutable();
    }

    /// <summary>True where a value of the one type can stand for one of the other: the same kind, or a product nobody named yet.</summary>
    public static bool Fits(CellType value, CellType cell) => (value, cell) switch
    {
        (QuantityType a, QuantityType b) => a.Dimension == b.Dimension && (a.Kind is null || b.Kind is null || ReferenceEquals(a.Kind, b.Kind)),
        _ => value == cell,
    };

    private static CellType TypeOf(Literal literal) => literal switch
    {
        NumberLiteral { Unit: { } unit } => unit.Kind is { } kind ? CellType.Of(kind) : CellType.Of(unit.Dimension),
        NumberLiteral => CellType.Number,
        TruthLiteral => CellType.Truth,
        _ => CellType.Text,
    };
}
