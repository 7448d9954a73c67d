using System.Collections.Immutable;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Runs an operation over a series; each value counts as many steps as the lambda's body weighs, or one.</summary>
internal sealed class SeriesCode(SeriesOperation operation, int parameter, Func<Frame, double>? map, Func<Frame, object>? test, CellType type, int weight)
{
    private readonly RowTest? asked = test is null ? null : new RowTest(parameter, test, weight);

    /// <summary>Counts a series that a library function will read.</summary>
    public static void Count(Frame frame, object series) => frame.Budget.Step(((IRows)series).Count);

    /// <summary>Count and Sum.</summary>
    public double Number(Frame frame, object series)
    {
        if (operation == SeriesOperation.Count) return ((IRows)series).Count;
        Series values = (Series)series;
        frame.Budget.Step(values.Count);
        double sum = 0;
        foreach (double value in values.Si) sum += value;
        return Arithmetic.Finite(sum);
    }

    /// <summary>Map, Where, All and Any.</summary>
    public object Other(Frame frame, object series)
    {
        IRows values = (IRows)series;
        return operation switch
        {
            SeriesOperation.Map => Mapped(frame, values),
            SeriesOperation.Where => values.Take(ImmutableArray.CreateRange(Enumerable.Range(0, values.Count).Where(place => asked!.Holds(frame, values, place)))),
            SeriesOperation.All => Enumerable.Range(0, values.Count).All(place => asked!.Holds(frame, values, place)),
            _ => (object)Enumerable.Range(0, values.Count).Any(place => asked!.Holds(frame, values, place)),
        };
    }

    private object Mapped(Frame frame, IRows values)
    {
        double[] made = new double[values.Count];
        for (int i = 0; i < made.Length; i++)
        {
            RowTest.Put(frame, parameter, values, i, weight);
            made[i] = map!(frame);
        }
        Series series = SeriesFactory.Make(((SeriesType)type).Element, made);
        return values.Rows.IsEmpty ? series : series.InRows(values.Rows);
    }
}
