using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace ScrewSheet.Engine.Binding;

/// <summary>
/// Tells from the operations alone that an expression has no error, which spares the compiler's whole second pass for diagnostics. Only for the plain parts of the
/// language, in which every error shows in the tree: a call, conversion or operator that does not exist, or a type that is none. Everything else (switch, with, lambdas)
/// is left to the diagnostics.
/// </summary>
internal static class SoundOperations
{
    /// <summary>True when there is surely no error; false says nothing.</summary>
    public static bool Are(IOperation operation)
    {
        if (!IsSound(operation)) return false;
        foreach (IOperation child in operation.ChildOperations)
            if (!Are(child)) return false;
        return true;
    }

    private static bool IsSound(IOperation operation) => operation switch
    {
        IArgumentOperation argument => argument.Parameter is not null && argument.InConversion.Exists,
        ILiteralOperation or IParameterReferenceOperation or IFieldReferenceOperation or IPropertyReferenceOperation => HasType(operation),
        IConversionOperation conversion => conversion.Conversion.Exists && HasType(operation),
        IUnaryOperation unary => unary.OperatorKind != UnaryOperatorKind.None && HasType(operation),
        IBinaryOperation binary => binary.OperatorKind != BinaryOperatorKind.None && HasType(operation),
        IConditionalOperation => HasType(operation),
        IInvocationOperation call => call.TargetMethod.Kind == SymbolKind.Method && HasType(operation) && call.TargetMethod.TypeArguments.All(IsType),
        IArrayCreationOperation or IArrayInitializerOperation => operation.IsImplicit, // the values of a params parameter
        _ => false,
    };

    private static bool HasType(IOperation operation) => operation.Type is { } type && IsType(type);

    private static bool IsType(ITypeSymbol type) => type.TypeKind != TypeKind.Error && type.SpecialType != SpecialType.System_Void && !type.IsStatic;
}
