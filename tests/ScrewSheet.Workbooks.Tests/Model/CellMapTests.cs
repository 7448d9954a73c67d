using CsCheck;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Model;

/// <summary>The cells of a sheet against a dictionary that is copied at every change.</summary>
public sealed class CellMapTests
{
    private static readonly Gen<(int Column, int Row, bool Takes)> Change = Gen.Select(Gen.Int[1, 8], Gen.Int[1, 40], Gen.Int[0, 3], (column, row, what) => (column, row, what == 0));

    [Fact]
    public void AnyChanges_GiveWhatADictionaryHolds_AndLeaveWhatWasBefore() =>
        Gen.Select(Change.Array[0, 200], Change.Array[0, 400]).Sample((read, changes) =>
        {
            Cell[] first = [.. read.Select((change, i) => At(change, i)).DistinctBy(cell => cell.Address)];
            List<(CellMap Map, Dictionary<CellAddress, Cell> Held)> states = [(CellMap.Of(first), first.ToDictionary(cell => cell.Address))];
            foreach (((int Column, int Row, bool Takes) change, int i) in changes.Select((change, i) => (change, i)))
            {
                (CellMap map, Dictionary<CellAddress, Cell> held) = (states[^1].Map, new(states[^1].Held));
                Cell cell = At(change, i);
                map = change.Takes ? map.Without(cell.Address) : map.With(cell);
                if (change.Takes) held.Remove(cell.Address);
                else held[cell.Address] = cell;
                states.Add((map, held));
            }
            foreach (var (map, held) in states) AssertSame(held, map);
        }, iter: 10);

    [Fact]
    public void ManyCellsAtOnce_AreAsOneAfterTheOther() =>
        Gen.Select(Change.Array[0, 100], Change.Array[0, 100]).Sample((read, changes) =>
        {
            CellMap start = read.Select(At).Aggregate(CellMap.Empty, (map, cell) => map.With(cell));
            Cell[] cells = [.. changes.Select(At)];
            AssertSame(new(cells.Aggregate(start, (map, cell) => map.With(cell))), start.With(cells));
        }, iter: 100);

    [Fact]
    public void With_TakesTheVeryCellItIsGiven_ThoughAnEqualOneIsThere()
    {
        Cell cell = new() { Address = new CellAddress(1, 1), Content = new NoteContent("note") }, same = cell with { };
        Assert.Equal(cell, same);
        CellMap once = CellMap.Empty.With(cell);
        Assert.Same(same, once.With(same)[cell.Address]);
        Assert.Same(same, CellMap.Of([cell]).With(same)[cell.Address]);
        Assert.Same(same, once.With([same])[cell.Address]);
    }

    private static Cell At((int Column, int Row, bool Takes) change, int i) => new() { Address = new CellAddress(change.Column, change.Row), Content = new NoteContent($"note {i}") };

    private static void AssertSame(Dictionary<CellAddress, Cell> expected, CellMap map)
    {
        Assert.Equal(expected.Count, map.Count);
        Assert.Equal(expected.Count == 0, map.IsEmpty);
        Assert.Equal(expected.OrderBy(pair => pair.Key), map.OrderBy(pair => pair.Key));
        IEnumerable<CellAddress> places = Enumerable.Range(1, 8).SelectMany(column => Enumerable.Range(1, 40).Select(row => new CellAddress(column, row)));
        Assert.DoesNotContain(places, place => expected.ContainsKey(place) != map.ContainsKey(place) || !Equals(expected.GetValueOrDefault(place), map.GetValueOrDefault(place)));
    }
}
