using ScrewSheet.Terminal;
using ScrewSheet.Studies;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Exports.Tests.Xlsx;

/// <summary>Which declared formulas stand for their functions in an export: nearly all do, and the few that do not are named here.</summary>
public sealed class FunctionFormulaTests
{
    // refuse arguments for reasons no condition says, take whole numbers only, or lose digits in the formula
    private static readonly string[] Known =
    [
        "BenardRank", "FiniteBodyDeflection", "FiniteBodyMoment", "FiniteBodyShear", "FiniteBodySlope", "HillAverage", "MinMaxConfidence", "ReussAverage",
        "SuccessRunReliability", "SuccessRunReliabilityBayes", "ThickWallPoint", "VoigtAverage",
    ];

    [Fact]
    public void OnlyTheNamedOnes_DoNotStand()
    {
        FunctionLibrary library = Composition.Library();
        StudyRunner studies = new(library);
        string[] refused = [.. library.Functions.Where(function => !function.Formulas.IsEmpty && function.Parameters.All(parameter => parameter.Type is NumberType or QuantityType) && !Stands(studies, library, function)).Select(function => function.Name)];
        Assert.Equal(Known, refused.Order(StringComparer.Ordinal));
    }

    private static bool Stands(StudyRunner studies, FunctionLibrary library, LibraryFunction function)
    {
        BoundCall call = new(function, [.. function.Parameters.Select((parameter, i) => (BoundExpression)new BoundReference(i, parameter.Type!, default))], [], function.ReturnType!, default);
        return function.Formulas.All(formula => studies.FormulaStands(call, formula.Member is { } member ? Member(library, call, member) : null, formula));
    }

    private static BoundMember Member(FunctionLibrary library, BoundCall call, string name)
    {
        LibraryMember member = library.Record(((RecordType)call.Type).Clr)!.Members.First(candidate => candidate.Name == name);
        return new BoundMember(call, member, member.Type!, default);
    }
}
