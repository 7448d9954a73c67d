using ScrewSheet.Quantities;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>A lambda asked of values one after the other; each counts as many steps as its body weighs.</summary>
internal sealed class RowTest(int parameter, Func<Frame, object> test, int weight)
{
    /// <summary>Asks it of the value at a place.</summary>
    public bool Holds(Frame frame, IRows values, int place)
    {
        Put(frame, parameter, values, place, weight);
        return (bool)test(frame);
    }

    /// <summary>Makes the value at a place the lambda's parameter.</summary>
    public static void Put(Frame frame, int parameter, IRows values, int place, int weight)
    {
        frame.Budget.Step(weight);
        if (values is TextSeries texts)
        {
            if (frame.ParameterOthers.Length <= parameter) Array.Resize(ref frame.ParameterOthers, parameter + 1);
            frame.ParameterOthers[parameter] = texts.Texts[place];
            return;
        }
        if (frame.ParameterSi.Length <= parameter) Array.Resize(ref frame.ParameterSi, parameter + 1);
        frame.ParameterSi[parameter] = ((Series)values).Si[place];
    }
}
