using System.Collections.Immutable;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Studies.Kernels;
using ScrewSheet.Studies.Tests.Support;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Studies.Tests.Kernels;

/// <summary>Which declared formulas stand for their function in a kernel.</summary>
public sealed class FunctionTrialTests
{
    private static readonly Lazy<(string Name, BoundCall Call, BoundMember? Member, FormulaAttribute Formula)[]> All = new(() => [.. Formulas()]);

    [Fact]
    public void WhatAFewPointsLetThrough_ManyPointsLetThrough()
    {
        FunctionTrials few = new(StudyBook.Library), many = new(StudyBook.Library, 1500);
        Assert.Empty(All.Value.Where(one => few.Suits(one.Call, one.Member, one.Formula) && !many.Suits(one.Call, one.Member, one.Formula)).Select(one => one.Name));
    }

    [Fact]
    public void MostFormulasStandForTheirFunction()
    {
        FunctionTrials few = new(StudyBook.Library);
        string[] suited = [.. All.Value.Where(one => few.Suits(one.Call, one.Member, one.Formula)).Select(one => one.Name)];
        Assert.True(suited.Length > All.Value.Length / 2, $"{suited.Length} of {All.Value.Length}: without {string.Join(", ", All.Value.Select(one => one.Name).Except(suited))}");
        Assert.Contains("ImpactForce", suited);
        Assert.Contains("BendingStress", suited);
        Assert.Contains("FallFactor", suited);
    }

    private static IEnumerable<(string, BoundCall, BoundMember?, FormulaAttribute)> Formulas()
    {
        Place here = new(0, 1);
        foreach (LibraryFunction function in StudyBook.Library.Functions.Where(function => !function.Formulas.IsEmpty))
        {
            ImmutableArray<CellType> types = [.. function.Method.IsGenericMethodDefinition ? function.Method.GetGenericArguments().Select(_ => CellType.Number) : []];
            ImmutableArray<BoundExpression> arguments = [.. function.Parameters.Select((parameter, i) => new BoundReference(i, parameter.Type ?? CellType.Number, here))];
            BoundCall call = new(function, arguments, types, function.ReturnType ?? CellType.Number, here);
            foreach (FormulaAttribute formula in function.Formulas)
            {
                if (formula.Member is null) yield return (function.Name, call, null, formula);
                else if (StudyBook.Library.Record(((RecordType)call.Type).Clr)!.Members.Single(one => one.Name == formula.Member) is { Type: { } type } member)
                    yield return ($"{function.Name}.{member.Name}", call, new BoundMember(call, member, type, here), formula);
            }
        }
    }
}
