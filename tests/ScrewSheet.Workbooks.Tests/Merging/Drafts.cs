using System.Collections.Immutable;
using System.Globalization;
using CsCheck;

namespace ScrewSheet.Workbooks.Tests.Merging;

/// <summary>A row of a workbook made up for a test: a label, and a given or a result that reads rows by address wherever they stand.</summary>
internal sealed record DraftRow(int Id, int Value, string? Name, ImmutableArray<int> Reads, string? Remark, int Blank);

/// <summary>A workbook made up for a test. Its text is what a person would have who made these changes in a program that moves references along.</summary>
internal sealed record Draft(string Title, string Function, ImmutableArray<DraftRow> Rows)
{
    public static readonly Gen<Draft> Any = Gen.Select(Gen.Int[2, 12], Gen.Int[0, 1000], (count, seed) => new Draft("T", "f * 2",
    [
        .. Enumerable.Range(0, count).Select(i => new DraftRow(i, (seed + (i * 7)) % 50, (seed + i) % 3 == 0 ? $"n{i}_" : null,
            i < 2 || (seed + i) % 2 == 0 ? [] : [0, 1, (seed + i) % i], (seed + i) % 5 == 0 ? $"remark {i}" : null, (seed + i) % 4 == 0 ? 1 : 0)),
    ]));

    public string Text
    {
        get
        {
            int row = 1;
            Dictionary<int, int> rows = [];
            foreach (DraftRow draft in Rows)
            {
                row += 1 + draft.Blank;
                rows.Add(draft.Id, row);
            }
            string Reference(int id) => rows.TryGetValue(id, out int at) ? $"B{at.ToString(CultureInfo.InvariantCulture)}" : $"gone{id.ToString(CultureInfo.InvariantCulture)}_";
            IEnumerable<string> lines = Rows.Select(draft =>
            {
                string head = draft.Name is null ? "" : draft.Name + " ", at = rows[draft.Id].ToString(CultureInfo.InvariantCulture);
                string content = draft.Reads.IsEmpty ? string.Create(CultureInfo.InvariantCulture, $"= {draft.Value} kN") : $"=> {string.Join(" + ", draft.Reads.Select(Reference))} + {draft.Value} kN";
                return $"A{at} \"label {draft.Id}\"\nB{at} {head}{content}{(draft.Remark is null ? "" : " // " + draft.Remark)}\n";
            });
            return $"screwsheet 1\ntitle {Title}\nunits SI\n\nfunction Force F(Force f) => {Function}\n\nsheet A\nwidths A 30\n\n{string.Concat(lines)}";
        }
    }

    /// <summary>Some changes to rows whose number leaves that remainder when divided by two: to their values, remarks, by inserting a row behind them and by removing them where no row of <paramref name="origin"/> reads them.</summary>
    public Draft Changed(int seed, int? remainder, int version, Draft? origin = null)
    {
        List<DraftRow> rows = [];
        foreach (DraftRow row in Rows)
        {
            int dice = unchecked((seed * 31) + (row.Id * 17)) % 7;
            if ((remainder is { } only && row.Id % 2 != only) || dice > 3)
            {
                rows.Add(row);
                continue;
            }
            bool isRead = row.Id < 2 || (origin ?? this).Rows.Any(other => other.Reads.Contains(row.Id));
            if (dice == 0 && !isRead) continue;
            rows.Add(dice switch { 1 => row with { Value = row.Value + 100 + version }, 2 => row with { Remark = $"by {version}" }, _ => row });
            if (dice == 3) rows.Add(new DraftRow(1000 + (version * 100) + row.Id, version, null, [0], null, 0));
        }
        return this with { Rows = [.. rows] };
    }
}
