using System.Collections.Immutable;
using ScrewSheet.Engine;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Kernels;

/// <summary>
/// Tries whether a declared formula may stand for the code of its function in a kernel: at points all over its limits both give the same to 1e-12,
/// and where the code refuses the formula has no value. A formula that says the same only to fewer digits, or a function that refuses arguments that do not
/// go together, is called instead.
/// </summary>
/// <remarks>Remembers what it found; for one thread at a time.</remarks>
/// <param name="library">The library.</param>
/// <param name="points">How many points are tried.</param>
/// <param name="agreement">How closely both must agree, relative to the larger.</param>
/// <param name="withNeeds">True for a reader that keeps to the conditions a function declares between its arguments: there the formula need not fail where the code refuses.</param>
internal sealed class FunctionTrials(FunctionLibrary library, int points = FunctionTrials.Points, double agreement = FunctionTrials.Agreement, bool withNeeds = false)
{
    /// <summary>How many points are tried in a study.</summary>
    public const int Points = 160;

    private const double Agreement = 1e-12;
    private const int Again = 8;

    // a wall of a millionth of its tube is no tube; there a difference of powers and the code's products part in the last digits
    private const double FarReach = 1e-9, NearReach = 1e-5;

    private readonly TreeEvaluation trees = new(library, UnitSystem.SI);
    private readonly FormulaEvaluation formulas = new(library);
    private readonly Dictionary<(LibraryFunction, string?, string), bool> known = [];

    /// <summary>True where the formula may stand for the call, or for the member of what the call gives.</summary>
    public bool Suits(BoundCall call, BoundMember? member, FormulaAttribute formula)
    {
        if (!call.Arguments.All(argument => argument.Type is NumberType or QuantityType)) return false;
        // a function of any kind of quantity may refuse more of one kind than of another
        var key = (call.Function, formula.Member, call.Function.Method.IsGenericMethodDefinition ? string.Join(' ', call.Arguments.Select(argument => argument.Type.Name)) : "");
        if (!known.TryGetValue(key, out bool suits)) known.Add(key, suits = Try(call, member, formula));
        return suits;
    }

    private bool Try(BoundCall call, BoundMember? member, FormulaAttribute formula)
    {
        ImmutableArray<BoundExpression> slots = [.. call.Arguments.Select((argument, i) => new BoundReference(i, argument.Type, new Place(0, 1)))];
        BoundCall code = call with { Arguments = slots };
        BoundExpression tree = member is null ? code : member with { Target = code };
        ulong state = 0x9E3779B97F4A7C15;
        double[] si = new double[slots.Length];
        int answered = 0;
        // conditions between arguments leave fewer points that answer, so more are tried
        for (int point = 0; point < (call.Function.Needs.IsEmpty || !withNeeds ? points : Again * points); point++)
        {
            for (int i = 0; i < si.Length; i++) si[i] = At(call.Function.Parameters[i], Next(ref state), point % 3);
            Evaluated evaluated = trees.Run(tree, [.. si.Select((value, i) => Scenarios.GivenValues.Number(slots[i].Type, value))]);
            double? ours = Formula(call.Function, formula, si);
            double? theirs = evaluated.Value is TruthValue truth ? truth.Value ? 1 : 0 : SiValue.Of(evaluated.Value);
            if (ours is null != theirs is null) return false;
            if (ours is { } a && theirs is { } b && !(Math.Abs(a - b) <= agreement * Math.Max(Math.Abs(a), Math.Abs(b)))) return false;
            if (ours is not null) answered++;
        }
        return answered * 4 >= points;
    }

    private double? Formula(LibraryFunction function, FormulaAttribute formula, double[] si)
    {
        try
        {
            if (withNeeds && function.Needs.Any(needs => formulas.Value(function, new FormulaAttribute(needs.Condition), si) == 0)) return null;
            double value = formulas.Value(function, formula, si);
            return double.IsFinite(value) ? value : null;
        }
        catch (DomainException)
        {
            return null;
        }
    }

    /// <summary>A value inside the limits: in the usual range, evenly over the limits, or over the powers of ten between them.</summary>
    private double At(LibraryParameter parameter, double share, int way)
    {
        ParameterLimits limits = ParameterLimits.Of(parameter);
        ParameterAttribute declared = parameter.Declaration;
        Unit unit = declared.Unit.Length > 0 && UnitText.TryParse(declared.Unit, out Unit? read, out _) ? read : UnitTable.Number;
        double low = double.IsFinite(limits.Low) ? limits.Low : unit.ToSi(-1000), high = double.IsFinite(limits.High) ? limits.High : Math.Max(unit.ToSi(1000), low + Math.Abs(low) + 1);
        if (way == 0 && !double.IsNaN(declared.UsualTo)) (low, high) = (double.IsNaN(declared.UsualFrom) ? Math.Max(low, 0) : unit.ToSi(declared.UsualFrom), unit.ToSi(declared.UsualTo));
        double least = Math.Max(low, high * (withNeeds ? NearReach : FarReach));
        double value = way == 2 && low >= 0 ? Math.Exp(Math.Log(least) + (share * (Math.Log(high) - Math.Log(least)))) : low + (share * (high - low));
        if (parameter.Clr == typeof(int)) value = Math.Round(value);
        return Math.Clamp(value, limits.LowIncluded ? limits.Low : low + (1e-9 * (high - low)), limits.HighIncluded ? limits.High : high - (1e-9 * (high - low)));
    }

    // a fixed sequence, so that the same workbook is done the same way everywhere
    private static double Next(ref ulong state)
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            ulong z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
        }
    }
}
