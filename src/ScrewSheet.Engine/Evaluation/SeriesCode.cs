using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Runs an operation over a series; each value is a step.</summary>
internal sealed class SeriesCode(SeriesOperation operation, int parameter, Func<Frame, double>? map, Func<Frame, object>? test, CellType type)
{
    /// <summary>Counts a series that a library function will read.</summary>
    public static void Count(Frame frame, object series) => frame.Budget.Step(((Series)series).Count);

    /// <summary>Count and Sum.</summary>
    public double Number(Frame frame, object series)
    {
        Series values = (Series)series;
        if (operation == SeriesOperation.Count) return values.Count;
        frame.Budget.Step(values.Count);
        double sum = 0;
        foreach (double value in values.Si) sum += value;
        return Arithmetic.Finite(sum);
    }

    /// <summary>Map, Where, All and Any.</summary>
    public object Other(Frame frame, object series)
    {
        Series values = (Series)series;
        return operation switch
        {
            SeriesOperation.Map => SeriesFactory.Make(((SeriesType)type).Element, Each(frame, values)),
            SeriesOperation.Where => SeriesFactory.Make(((SeriesType)type).Element, [.. values.Si.Where(value => Holds(frame, value))]),
            SeriesOperation.All => values.Si.All(value => Holds(frame, value)),
            _ => (object)values.Si.Any(value => Holds(frame, value)),
        };
    }

    private double[] Each(Frame frame, Series values)
    {
        double[] made = new double[values.Count];
        for (int i = 0; i < made.Length; i++)
        {
            Put(frame, values.Si[i]);
            made[i] = map!(frame);
        }
        return made;
    }

    private bool Holds(Frame frame, double value)
    {
        Put(frame, value);
        return (bool)test!(frame);
    }

    private void Put(Frame frame, double value)
    {
        frame.Budget.Step();
        if (frame.ParameterSi.Length <= parameter) Array.Resize(ref frame.ParameterSi, parameter + 1);
        frame.ParameterSi[parameter] = value;
    }
}
