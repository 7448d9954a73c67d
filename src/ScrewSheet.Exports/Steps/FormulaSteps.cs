using System.Collections.Immutable;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Steps;

/// <summary>Explains calls of library functions by what they declare: the formula in the trade's symbols, the numbers of this call put in, what comes out.</summary>
internal sealed class FormulaSteps(StepTools tools)
{
    private const double StandardGravity = 9.80665;
    private const int MostFormulas = 6;

    private readonly StepTools tools = tools;
    private readonly Figures figures = new(tools);

    /// <summary>The step of a call.</summary>
    /// <param name="cell">The cell it stands in.</param>
    /// <param name="node">The call, or a member of what it gives.</param>
    /// <param name="shownAs">The cell whose value the call is, so that it is shown alike; null inside an expression.</param>
    /// <param name="symbol">How an argument is written.</param>
    /// <param name="value">The number an argument is.</param>
    public CallStep Of(CellResult cell, BoundExpression node, CellResult? shownAs, Func<BoundExpression, Notation> symbol, Func<BoundExpression, Notation?> value)
    {
        BoundCall call = node as BoundCall ?? (BoundCall)((BoundMember)node).Target;
        LibraryFunction function = call.Function;
        CallStep step = new() { Function = function.Name, Answers = function.Declaration.Answers, Sources = function.Sources, Method = function.NoFormula?.Method };
        ImmutableArray<FormulaAttribute> shown = Shown(function, (node as BoundMember)?.Member.Name);
        double[] si = [.. call.Arguments.Select(argument => SiValue.Of(tools.Evaluate(cell, argument, [])) ?? double.NaN)];
        Notation?[] values = [.. call.Arguments.Select(value)];
        ImmutableArray<string> symbols = SymbolsOf(function);
        step = step with { Parameters = [.. Parameters(call, symbols, symbol, values)] };
        if (shown.IsEmpty) return step;
        DeclaredFormula[] read = [.. shown.Select(formula => DeclaredFormula.Read(function, formula.Text, tools.Library))];
        bool coherent = read.Any(formula => !FormulaDimension.IsSound(function, formula));
        Worked worked = new(this, function, symbols, si, values, coherent);
        ImmutableArray<FormulaStep> lets = worked.Lets(read, shown.Length);
        DisplayFormatOf format = shownAs is null ? _ => null : _ => tools.FormatOf(shownAs);
        return step with { IsCoherent = coherent, Lets = lets, Formulas = [.. shown.Zip(read, (formula, tree) => worked.Formula(formula, tree, node is BoundMember || shown.Length == 1 ? node.Type : null, format))] };
    }

    private delegate Quantities.Formatting.DisplayFormat? DisplayFormatOf(CellType type);

    private static ImmutableArray<FormulaAttribute> Shown(LibraryFunction function, string? member)
    {
        ImmutableArray<FormulaAttribute> own = [.. function.Formulas.Where(formula => member is not null && formula.Member == member)];
        if (member is not null && own.IsEmpty && function.Formulas.Any(formula => formula.Member is not null)) return [];
        return own.IsEmpty ? [.. function.Formulas.Take(MostFormulas)] : own;
    }

    /// <summary>The trade's symbol of each parameter; its name where the symbol is missing, doubled or taken.</summary>
    private static ImmutableArray<string> SymbolsOf(LibraryFunction function)
    {
        string[] symbols = [.. function.Parameters.Select(parameter => parameter.Declaration.Symbol is { Length: > 0 } symbol ? symbol : parameter.Name)];
        HashSet<string> taken = [.. function.Lets.Where(let => !IsAlias(function, let)).Select(let => let.Name), "e", "π", "g_n"];
        return [.. symbols.Select((symbol, i) => symbols.Count(other => other == symbol) > 1 || taken.Contains(symbol) ? function.Parameters[i].Name : symbol)];
    }

    /// <summary>True for an intermediate that only gives a parameter the trade's symbol, which the parameter has here anyway.</summary>
    private static bool IsAlias(LibraryFunction function, LetAttribute let) => function.Parameters.Any(parameter => parameter.Name == let.Text.Trim() && parameter.Declaration.Symbol == let.Name);

    private IEnumerable<ParameterStep> Parameters(BoundCall call, ImmutableArray<string> symbols, Func<BoundExpression, Notation> symbol, Notation?[] values)
    {
        for (int i = 0; i < call.Arguments.Length; i++)
        {
            LibraryParameter parameter = call.Function.Parameters[i];
            if (call.Arguments[i] is BoundLambda) continue;
            Notation argument = symbol(call.Arguments[i]);
            Notation? value = values[i] is { } known && known != argument && call.Arguments[i] is not (BoundNumber or BoundTruth or BoundOption or BoundText) ? known : null;
            yield return new ParameterStep(new SymbolNotation(symbols[i]), argument, value, parameter.Declaration.Meaning);
        }
    }

    /// <summary>The formulas of one call while they are worked out.</summary>
    private sealed class Worked(FormulaSteps steps, LibraryFunction function, ImmutableArray<string> symbols, double[] si, Notation?[] values, bool coherent)
    {
        private readonly Dictionary<int, double> lets = [];

        private IReadOnlyList<CellValue?> Numbers => [.. Enumerable.Range(0, si.Length + function.Lets.Length).Select(i => (CellValue?)new NumberValue(i < si.Length ? si[i] : lets.GetValueOrDefault(i, double.NaN)))];

        /// <summary>The intermediates that the formulas use, in their order.</summary>
        public ImmutableArray<FormulaStep> Lets(DeclaredFormula[] read, int formulas)
        {
            var written = ImmutableArray.CreateBuilder<FormulaStep>();
            if (formulas == 0) return [];
            HashSet<int> used = Used(read);
            for (int i = 0; i < function.Lets.Length; i++)
            {
                int index = si.Length + i;
                BoundExpression tree = read[0].Lets[i].Value;
                double? value = Value(tree);
                if (value is { } number) lets[index] = number;
                if (!used.Contains(index) || IsAlias(function, function.Lets[i])) continue;
                Dimension dimension = FormulaDimension.OfUnit(function.Lets[i].Unit) ?? Dimension.None;
                Notation? result = value is not { } known ? null : coherent ? steps.figures.Coherent(known, dimension) : Shown(known, function.Lets[i].Unit);
                written.Add(Step(new SymbolNotation(function.Lets[i].Name), tree, result));
            }
            return written.ToImmutable();
        }

        /// <summary>One formula.</summary>
        public FormulaStep Formula(FormulaAttribute formula, DeclaredFormula read, CellType? type, DisplayFormatOf format)
        {
            string name = formula.Symbol ?? formula.Member ?? function.Name;
            double? value = Value(read.Value);
            CellType of = read.Value.Type is TruthType ? CellType.Truth : type ?? MemberType(formula.Member) ?? CellType.Number;
            Notation? result = value is not { } number ? null : steps.figures.Of(Typed(of, number), format(of));
            return Step(name == function.Name ? new WordNotation(name) : new SymbolNotation(name), read.Value, result);
        }

        private FormulaStep Step(Notation symbol, BoundExpression tree, Notation? result)
        {
            Notation formula = new NotationBuilder((node, _) => Symbol(node)).Of(tree);
            Notation? numbers = result is null ? null : new NotationBuilder(Number).Of(tree);
            return new FormulaStep(symbol, formula, numbers, result);
        }

        private Notation? Symbol(BoundExpression node) => node switch
        {
            BoundParameter parameter => new SymbolNotation(parameter.Index < symbols.Length ? symbols[parameter.Index] : parameter.Name),
            BoundNumber { Value: StandardGravity } => new SymbolNotation("g_n"),
            _ => null,
        };

        private Notation? Number(BoundExpression node, NotationBuilder builder) => node switch
        {
            BoundParameter parameter => Argument(parameter.Index, builder),
            BoundNumber { Value: StandardGravity } => new FigureNotation("9.80665", "m/s²"),
            BoundCall call when Value(call) is { } value && !Elementary.Is(call.Function.Name) => steps.figures.Of(Typed(call.Function.ReturnType ?? CellType.Number, value), null),
            _ => null,
        };

        // an angle is in degrees inside a sine and the number of its radians elsewhere
        private Notation? Argument(int index, NotationBuilder builder)
        {
            bool isParameter = index < si.Length;
            double value = isParameter ? si[index] : lets.GetValueOrDefault(index, double.NaN);
            if (!double.IsFinite(value)) return isParameter ? values[index] : null;
            string unit = isParameter ? function.Parameters[index].Declaration.Unit : function.Lets[index - si.Length].Unit;
            bool isAngle = isParameter ? function.Parameters[index].Type is QuantityType { Kind.Name: "Angle" } : unit is "rad" or "°";
            if (isAngle) return builder.InTrigonometry ? isParameter ? values[index] : Shown(value, unit) : steps.figures.Radians(value);
            if (coherent) return steps.figures.Coherent(value, FormulaDimension.OfUnit(unit) ?? Dimension.None);
            return isParameter ? values[index] : Shown(value, unit);
        }

        private Notation? Shown(double value, string unit) => steps.figures.Of(Typed(unit is "rad" or "°" ? CellType.Of(QuantityKinds.Angle) : CellType.Of(FormulaDimension.OfUnit(unit) ?? Dimension.None), value), null);

        private double? Value(BoundExpression tree) => steps.tools.Evaluate(null, tree, Numbers) switch
        {
            NumberValue { Value: var number } when double.IsFinite(number) => number,
            QuantityValue quantity => quantity.Si,
            TruthValue truth => truth.Value ? 1 : 0,
            _ => null,
        };

        private CellType? MemberType(string? member) => member is null || function.ReturnType is not RecordType record ? function.ReturnType as QuantityType
            : steps.tools.Library.Record(record.Clr)?.Members.FirstOrDefault(each => each.Name == member)?.Type;

        private HashSet<int> Used(DeclaredFormula[] read)
        {
            HashSet<int> used = [];
            Queue<BoundExpression> trees = new(read.Select(formula => formula.Value));
            while (trees.TryDequeue(out BoundExpression? tree))
                foreach (BoundParameter parameter in BoundChildren.All(tree).OfType<BoundParameter>())
                    if (parameter.Index >= si.Length && used.Add(parameter.Index)) trees.Enqueue(read[0].Lets[parameter.Index - si.Length].Value);
            return used;
        }

        private static CellValue Typed(CellType type, double si) => type switch
        {
            QuantityType quantity => new QuantityValue(si, quantity),
            TruthType => new TruthValue(si != 0),
            _ => new NumberValue(si),
        };
    }
}
