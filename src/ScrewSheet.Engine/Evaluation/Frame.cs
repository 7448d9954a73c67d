using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>
/// What an expression reads while it runs: the values of its references and parameters. Numbers and quantities are doubles in coherent SI,
/// everything else an object.
/// </summary>
internal sealed class Frame
{
    /// <summary>A call of one of the author's functions counts as so many steps at least.</summary>
    public const int StepsPerCall = 10;

    /// <summary>The deepest chain of the author's functions.</summary>
    public const int MaximumCalls = 100;

    private readonly HashSet<string> cautions;

    public Frame(Budget budget, UnitSystem units) : this(budget, units, [], 0) { }

    private Frame(Budget budget, UnitSystem units, HashSet<string> cautions, int depth)
    {
        Budget = budget;
        Units = units;
        Depth = depth;
        this.cautions = cautions;
    }

    /// <summary>References that are numbers or quantities, by slot.</summary>
    public double[] Si = [];

    /// <summary>The other references, by slot.</summary>
    public object?[] Others = [];

    /// <summary>How the cells referred to are shown, by slot: a text shows a value as its cell does.</summary>
    public DisplayFormat?[] Formats = [];

    /// <summary>Parameters that are numbers or quantities, by index.</summary>
    public double[] ParameterSi = [];

    /// <summary>The other parameters, by index.</summary>
    public object?[] ParameterOthers = [];

    public Budget Budget { get; }

    public UnitSystem Units { get; }

    public int Depth { get; }

    /// <summary>Cautions met so far, each once, in order.</summary>
    public IReadOnlyCollection<string> Cautions => cautions;

    public void Caution(string sentence) => cautions.Add(sentence);

    /// <summary>Takes over the cautions a result brings along.</summary>
    public object Cautioned(object result)
    {
        if (result is ICautioned { Cautions: { Count: > 0 } brought })
            foreach (string sentence in brought) cautions.Add(sentence);
        return result;
    }

    /// <summary>Forgets the cautions of the cell before.</summary>
    public void Begin()
    {
        cautions.Clear();
        Budget.BeginCell();
    }

    /// <summary>The frame of a function called from here.</summary>
    /// <param name="si">Its parameters that are numbers or quantities.</param>
    /// <param name="others">The others.</param>
    /// <param name="steps">What the call counts as.</param>
    public Frame Call(double[] si, object?[] others, int steps)
    {
        if (Depth >= MaximumCalls) throw new EvaluationException(EvaluationFaults.CallDepth(MaximumCalls));
        Budget.Step(steps);
        return new Frame(Budget, Units, cautions, Depth + 1) { ParameterSi = si, ParameterOthers = others };
    }
}
