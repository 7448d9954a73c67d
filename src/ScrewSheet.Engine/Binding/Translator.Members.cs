using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Lexing;

namespace ScrewSheet.Engine.Binding;

/// <summary>Members, switches, series, lambdas and composed texts.</summary>
internal sealed partial class Translator
{
    private const int MaximumArms = 32;

    private BoundExpression Property(IPropertyReferenceOperation property)
    {
        Place place = PlaceOf(property);
        string name = property.Property.Name;
        if (property.Instance is null) return ReadyValue(property, place);
        BoundExpression target = Visit(property.Instance);
        switch (target.Type)
        {
            case TextType when name == "Length": return new BoundTextTest(TextOperation.Length, target, null, CellType.Number, place);
            case SeriesType when name == "Count": return new BoundSeriesOperation(SeriesOperation.Count, target, null, CellType.Number, place);
            case RecordType record when Member(record, name) is { } member: return new BoundMember(target, member, MemberType(record, member), place);
            default: throw Refuse(BindingFaults.UnknownMember(name, BindingFaults.Capital(target.Type.Phrase), null, "", null, place));
        }
    }

    private LibraryMember? Member(RecordType record, string name) => library.Record(record.Clr)?.Members.FirstOrDefault(member => member.Name == name);

    private static CellType MemberType(RecordType record, LibraryMember member) => member.Type
        ?? ClrTypes.Close(member.Property.PropertyType, member.Declaration.Unit,
            record.Clr.GetGenericArguments().Zip(record.Arguments).ToDictionary(pair => pair.First.Name, pair => pair.Second));

    private BoundLibraryValue ReadyValue(IPropertyReferenceOperation property, Place place)
    {
        List<string> path = [];
        for (INamedTypeSymbol? type = property.Property.ContainingType; type is not null; type = type.ContainingType) path.Insert(0, type.Name);
        LibraryValues? values = library.Values.FirstOrDefault(candidate => candidate.Clr.Name == path[0]);
        foreach (string nested in path.Skip(1)) values = values?.Nested.FirstOrDefault(candidate => candidate.Clr.Name == nested);
        LibraryMember? member = values?.Members.FirstOrDefault(candidate => candidate.Name == property.Property.Name);
        if (member?.Type is null) throw Refuse(BindingFaults.NotInLanguage(property.Property.Name, place));
        return new BoundLibraryValue($"{string.Join('.', path)}.{member.Name}", member, member.Type, place);
    }

    private BoundOption Field(IFieldReferenceOperation field)
    {
        Type? option = library.Options.FirstOrDefault(candidate => candidate.Name == field.Field.ContainingType.Name && field.Field.ContainingType.TypeKind == TypeKind.Enum);
        if (option is null || !Enum.TryParse(option, field.Field.Name, out object? value)) throw Refuse(BindingFaults.NotInLanguage(field.Field.Name, PlaceOf(field)));
        return new BoundOption((Enum)value, PlaceOf(field));
    }

    private BoundWith With(IWithOperation with)
    {
        BoundExpression target = Visit(with.Operand);
        if (target.Type is not RecordType record) throw Refuse(BindingFaults.NotInLanguage("with", PlaceOf(with)));
        var changes = ImmutableArray.CreateBuilder<(LibraryMember, BoundExpression)>();
        foreach (IOperation initializer in with.Initializer.Initializers)
        {
            if (initializer is not ISimpleAssignmentOperation { Target: IPropertyReferenceOperation set } assignment) throw Refuse(BindingFaults.NotInLanguage("with", PlaceOf(initializer)));
            LibraryMember member = Member(record, set.Property.Name)!;
            BoundExpression value = Branch(assignment.Value);
            CellType wanted = MemberType(record, member);
            if (!TypeRules.Fits(value.Type, wanted)) throw Refuse(BindingFaults.Wanted(wanted, value.Type, $"the member {member.Name} of {record.Name}", value.Place));
            changes.Add((member, value));
        }
        return new BoundWith(target, changes.ToImmutable(), record, PlaceOf(with));
    }

    private BoundExpression Subject(IOperation operation)
    {
        BoundExpression subject = Branch(operation);
        return subject.Type is NumberType or TextType or TruthType or OptionType ? subject : throw Refuse(BindingFaults.SwitchSubject(subject.Type, subject.Place));
    }

    private BoundSwitch Switch(ISwitchExpressionOperation choice)
    {
        BoundExpression subject = Subject(choice.Value);
        if (choice.Arms.Length > MaximumArms) throw Refuse(BindingFaults.TooManyArms(MaximumArms, PlaceOf(choice)));
        var arms = ImmutableArray.CreateBuilder<BoundArm>();
        CellType? type = null;
        foreach (ISwitchExpressionArmOperation arm in choice.Arms)
        {
            BoundExpression value = Branch(arm.Value);
            type = type is null ? value.Type : TypeRules.Common(type, value.Type) ?? throw Refuse(BindingFaults.Branches(type, value.Type, value.Place));
            arms.Add(new BoundArm(Pattern(arm.Pattern, subject), arm.Guard is null ? null : Visit(arm.Guard), value));
        }
        return type is null ? throw Refuse(BindingFaults.NoValue(PlaceOf(choice))) : new BoundSwitch(subject, arms.ToImmutable(), type, PlaceOf(choice));
    }

    private BoundExpression? Pattern(IPatternOperation pattern, BoundExpression subject)
    {
        Place place = PlaceOf(pattern);
        return pattern switch
        {
            IDiscardPatternOperation => null,
            IConstantPatternOperation constant => new BoundBinary(BinaryOperation.Equal, subject, Visit(constant.Value), CellType.Truth, place),
            IRelationalPatternOperation relation when Operation(relation.OperatorKind) is { } operation => new BoundBinary(operation, subject, Visit(relation.Value), CellType.Truth, place),
            _ => throw Refuse(BindingFaults.NotInLanguage(pattern.Kind.ToString(), place)),
        };
    }

    /// <summary>A series written out value by value.</summary>
    private BoundSeries Written(IInvocationOperation call)
    {
        Place place = PlaceOf(call);
        IEnumerable<IOperation> given = call.Arguments[0].Value is IArrayCreationOperation { Initializer: { } list } ? list.ElementValues : [];
        ImmutableArray<BoundExpression> values = [.. given.Select(Branch)];
        if (values.IsEmpty) throw Refuse(BindingFaults.NoValue(place));
        CellType element = values[0].Type;
        foreach (BoundExpression value in values) element = TypeRules.Common(element, value.Type) ?? throw Refuse(BindingFaults.OneKind("Values", element, value.Type, value.Place));
        return element is NumberType or QuantityType ? new BoundSeries(values, new SeriesType(element), place) : throw Refuse(BindingFaults.NotANumber(element, place));
    }

    private BoundSeriesOperation SeriesCall(IInvocationOperation call, SeriesOperation operation)
    {
        IOperation?[] given = InOrder(call);
        Place place = PlaceOf(call);
        BoundExpression series = Visit(given[0]!);
        if (series.Type is not SeriesType run) throw Refuse(BindingFaults.Kinds(null, place));
        if (operation == SeriesOperation.Count) return new BoundSeriesOperation(operation, series, null, CellType.Number, place);
        if (operation == SeriesOperation.Sum)
            return run.Element is TextType ? throw Refuse(BindingFaults.NotANumber(run.Element, series.Place)) : run.Element is QuantityType { Kind: { } kind } && kind == Quantities.QuantityKinds.Temperature
                ? throw Refuse(BindingFaults.Temperature(place)) : new BoundSeriesOperation(operation, series, null, run.Element, place);
        BoundLambda lambda = Lambda(given[1]!, run.Element);
        CellType type = operation switch { SeriesOperation.Map => new SeriesType(lambda.Body.Type), SeriesOperation.Where => series.Type, _ => CellType.Truth };
        if (operation == SeriesOperation.Map && lambda.Body.Type is not (NumberType or QuantityType)) throw Refuse(BindingFaults.NotANumber(lambda.Body.Type, lambda.Body.Place));
        return new BoundSeriesOperation(operation, series, lambda, type, place);
    }

    private BoundLambda Lambda(IOperation operation, CellType element)
    {
        IAnonymousFunctionOperation? lambda = (operation as IDelegateCreationOperation)?.Target as IAnonymousFunctionOperation;
        if (lambda?.Symbol.Parameters.Length != 1 || lambda.Body.Operations is not [IReturnOperation { ReturnedValue: { } body }]) throw Refuse(BindingFaults.LambdaDepth(PlaceOf(operation)));
        string name = lambda.Symbol.Parameters[0].Name;
        BoundParameter parameter = new(name[2..], expression.Parameters.Length + lambdas.Count, element, PlaceOf(lambda));
        BoundParameter? hidden = lambdas.GetValueOrDefault(name);
        lambdas[name] = parameter;
        BoundExpression value = Branch(body);
        if (hidden is null) lambdas.Remove(name);
        else lambdas[name] = hidden;
        return new BoundLambda([parameter], value, new LambdaType(value.Type), PlaceOf(lambda));
    }

    private BoundComposedText Composed(IInvocationOperation call)
    {
        var texts = ImmutableArray.CreateBuilder<TextPiece>();
        IEnumerable<IOperation> given = call.Arguments[0].Value is IArrayCreationOperation { Initializer: { } list } ? list.ElementValues : [];
        foreach (IInvocationOperation piece in given.OfType<IInvocationOperation>())
        {
            ComposedPiece source = expression.Pieces[nextPiece++];
            texts.Add(source.Hole.IsEmpty ? new TextPiece(source.Words, null, null) : Hole(Branch(piece.Arguments[0].Value), source));
        }
        return new BoundComposedText(texts.ToImmutable(), PlaceOf(call));
    }

    private static TextPiece Hole(BoundExpression value, ComposedPiece source)
    {
        if (value.Type is RecordType or SeriesType) throw Refuse(BindingFaults.ValueInText(value.Type, value.Place));
        if (source.Format?.Unit is { } unit && TypeRules.DimensionOf(value.Type) != unit.Dimension)
            throw Refuse(BindingFaults.Wanted(unit.Kind is { } kind ? CellType.Of(kind) : CellType.Of(unit.Dimension), value.Type, "the value shown in " + unit.Symbol, value.Place));
        return new TextPiece("", value, source.Format);
    }
}
