using CsCheck;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Workbooks.Tests.Results;

/// <summary>Results behave like a dictionary of which every state that was built stays as it was.</summary>
public sealed class CellResultsTests
{
    private static readonly Gen<(bool Keep, int Row, bool Build)> Step = Gen.Select(Gen.Bool, Gen.Int[1, 700], Gen.Int[0, 9]).Select((keep, row, build) => (keep, row, build == 0));

    [Fact]
    public void LikeADictionary_WhateverIsSetAndRemoved() => Step.Array[0, 500].Sample(steps =>
    {
        Dictionary<CellId, CellResult> model = [];
        List<(Dictionary<CellId, CellResult> Expected, CellResults Built)> states = [];
        CellResults.Builder builder = new();
        foreach ((bool keep, int row, bool build) in steps)
        {
            CellResult result = Of(row);
            if (keep) builder.Set(model[result.Id] = result);
            else
            {
                builder.Remove(result.Id);
                model.Remove(result.Id);
            }
            if (build) states.Add((new(model), builder.Build()));
        }
        states.Add((model, builder.Build()));
        foreach ((Dictionary<CellId, CellResult> expected, CellResults built) in states) Same(expected, built);
    });

    [Fact]
    public void FromEarlierOnes_LeavesThemAlone()
    {
        CellResults first = CellResults.Of([Of(1), Of(2)]);
        CellResult other = Of(2), third = Of(3);
        CellResults second = first.With([other, third]);
        Assert.Equal(2, first.Count);
        Assert.Equal(3, second.Count);
        Assert.NotSame(other, first[other.Id]);
        Assert.Same(other, second[other.Id]);
        Assert.False(first.ContainsKey(third.Id));
        Assert.Throws<KeyNotFoundException>(() => first[third.Id]);
    }

    private static void Same(Dictionary<CellId, CellResult> expected, CellResults built)
    {
        Assert.Equal(expected.Count, built.Count);
        Assert.Equal(expected.Count, built.Values.Count());
        foreach ((CellId id, CellResult result) in expected) Assert.Same(result, built[id]);
        for (int row = 1; row <= 700; row++) Assert.Equal(expected.ContainsKey(Of(row).Id), built.ContainsKey(Of(row).Id));
    }

    private static CellResult Of(int row)
    {
        CellAddress address = new(1, row);
        return new CellResult { Id = new CellId("Work", address), Cell = new Cell { Address = address, Content = new NoteContent("note") } };
    }
}
