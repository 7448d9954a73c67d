using System.Globalization;
using System.Text;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Binding;

/// <summary>
/// Writes the world the compiler sees: one type for every quantity, and the library's functions, records, options and ready values
/// as bodiless signatures. Nothing else is referenced, so nothing else can be named.
/// </summary>
/// <remarks>
/// Binding against UnitsNet itself was the first idea; its hand-picked operators decide Force × Length as a torque before dimensions are known,
/// implicit conversions beside them are ambiguous, and every member of its types would have to be kept out by a list.
/// </remarks>
internal static class StubWriter
{
    private const string Fixed = """
        namespace Lib { }
        public readonly struct Quantity
        {
            public static implicit operator double(Quantity q) => 0;
            public static Quantity operator -(Quantity a) => a;
            public static Quantity operator +(Quantity a) => a;
        """;

    private const string Functions = """
        public sealed class Series<T>
        {
            public static implicit operator Series<double>(Series<T> s) => null;
            public double Count => 0;
            public Series<T> Where(Series<string> by, params string[] values) => null; public Series<T> WhereNot(Series<string> by, params string[] values) => null;
            public Series<T> Where(Series<double> by, params double[] values) => null; public Series<T> WhereNot(Series<double> by, params double[] values) => null;
            public Series<T> Where<U>(Series<U> by, System.Func<U, bool> each) => null; public Series<T> Beside<U>(Series<U> other) => null;
        }
        public static class M
        {
            public static double Sqrt(double x) => 0; public static double Cbrt(double x) => 0; public static double Pow(double x, double y) => 0;
            public static double Exp(double x) => 0; public static double Log(double x) => 0; public static double Log10(double x) => 0; public static double Abs(double x) => 0;
            public static double Min(double x, double y) => 0; public static double Max(double x, double y) => 0;
            public static double Floor(double x) => 0; public static double Ceiling(double x) => 0;
        }
        public static class F
        {
            public static double N(Quantity x) => 0; public static T N<T>(T x) => x;
            public static string T(params string[] pieces) => null; public static string H<T>(T x) => null; public static string W() => null;
            public static double Sqrt(double x) => 0; public static Quantity Sqrt(Quantity x) => x;
            public static double Cbrt(double x) => 0; public static Quantity Cbrt(Quantity x) => x;
            public static double Root(double x, double n) => 0; public static Quantity Root(Quantity x, double n) => x;
            public static double Pow(double x, double n) => 0; public static Quantity Pow(Quantity x, double n) => x;
            public static Series<T> Values<T>(params T[] values) => null; public static double Count<T>(Series<T> series) => 0; public static T Sum<T>(Series<T> series) => default;
            public static Series<R> Map<T, R>(Series<T> series, System.Func<T, R> each) => null;
            public static Series<T> Where<T>(Series<T> series, System.Func<T, bool> each) => null;
            public static bool All<T>(Series<T> series, System.Func<T, bool> each) => true; public static bool Any<T>(Series<T> series, System.Func<T, bool> each) => true;

        """;

    /// <summary>The source of the whole world of a library.</summary>
    public static string Write(FunctionLibrary library)
    {
        StringBuilder text = new(Fixed);
        foreach (string sign in (string[])["+", "-", "*", "/"]) Operators(text, sign, "Quantity");
        foreach (string sign in (string[])["<", ">", "<=", ">=", "==", "!="]) Operators(text, sign, "bool");
        text.Append("}\n").Append(Functions);
        foreach (LibraryFunction function in library.Functions) Function(text, function);
        text.Append("}\nnamespace Lib {\n");
        foreach (Type option in library.Options) text.Append("public enum ").Append(option.Name).Append(" { ").AppendJoin(", ", Enum.GetNames(option)).Append(" }\n");
        foreach (LibraryRecord record in library.Records) Record(text, record);
        foreach (LibraryValues values in library.Values) Values(text, values);
        return text.Append("}\n").ToString();
    }

    /// <summary>The author's functions as signatures of a class U.</summary>
    public static string WriteOwn(IEnumerable<OwnFunction> functions)
    {
        StringBuilder text = new("static class U {\n");
        foreach (OwnFunction function in functions)
        {
            text.Append("public static ").Append(Erased(function.ReturnType)).Append(' ').Append(function.Name).Append('(');
            text.AppendJoin(", ", function.Parameters.Select(parameter => $"{Erased(parameter.Type)} {parameter.Name}")).Append(") => default;\n");
        }
        return text.Append("}\n").ToString();
    }

    /// <summary>How the compiler sees values of a cell type.</summary>
    public static string Erased(CellType type) => type switch
    {
        NumberType => "double",
        TruthType => "bool",
        TextType => "string",
        QuantityType => "Quantity",
        SeriesType series => $"Series<{Erased(series.Element)}>",
        RecordType { Arguments.Count: > 0 } record => $"Lib.{record.Name}<{string.Join(", ", record.Arguments.Select(Erased))}>",
        RecordType record => $"Lib.{record.Name}",
        OptionType option => $"Lib.{option.Clr.Name}",
        _ => throw new ArgumentOutOfRangeException(nameof(type), type, "It cannot be referred to."),
    };

    private static void Operators(StringBuilder text, string sign, string result)
    {
        foreach ((string left, string right) in ((string, string)[])[("Quantity", "Quantity"), ("Quantity", "double"), ("double", "Quantity")])
            text.Append("public static ").Append(result).Append(" operator ").Append(sign).Append('(').Append(left).Append(" a, ").Append(right).Append(" b) => default;\n");
    }

    private static void Function(StringBuilder text, LibraryFunction function)
    {
        string generic = function.Method.IsGenericMethodDefinition ? "<" + string.Join(", ", function.Method.GetGenericArguments().Select(argument => argument.Name)) + ">" : "";
        text.Append("public static ").Append(Erased(function.Method.ReturnType)).Append(' ').Append(function.Name).Append(generic).Append('(');
        text.AppendJoin(", ", function.Method.GetParameters().Select(parameter => $"{Erased(parameter.ParameterType)} {parameter.Name}{(parameter.HasDefaultValue ? " = default" : "")}")).Append(") => default;\n");
    }

    /// <summary>Only what <c>with</c> can change is a record, which costs the compiler many members nobody asks for.</summary>
    private static void Record(StringBuilder text, LibraryRecord record)
    {
        string generic = record.Clr.IsGenericTypeDefinition ? "<" + string.Join(", ", record.Clr.GetGenericArguments().Select(argument => argument.Name)) + ">" : "";
        string name = record.Clr.Name.Split('`')[0];
        bool changes = record.Members.Any(member => LibraryRecords.CanSet(record.Clr, member));
        text.Append(changes ? "public sealed record " : "public sealed class ").Append(name).Append(generic).Append(" { private ").Append(name).Append("() {}\n");
        if (!changes)
            foreach (string sign in (string[])["==", "!="]) text.Append($"public static bool operator {sign}({name}{generic} a, {name}{generic} b) => true;\n");
        foreach (LibraryMember member in record.Members)
            text.Append("public ").Append(Erased(member.Property.PropertyType)).Append(' ').Append(member.Name).Append(LibraryRecords.CanSet(record.Clr, member) ? " { get; init; }\n" : " => default;\n");
        text.Append("}\n");
    }

    private static void Values(StringBuilder text, LibraryValues values)
    {
        text.Append("public static class ").Append(values.Clr.Name).Append(" {\n");
        foreach (LibraryMember member in values.Members) text.Append("public static ").Append(Erased(member.Property.PropertyType)).Append(' ').Append(member.Name).Append(" => default;\n");
        foreach (LibraryValues nested in values.Nested) Values(text, nested);
        text.Append("}\n");
    }

    private static string Erased(Type clr)
    {
        if (clr.IsGenericParameter) return clr.Name;
        if (clr == typeof(double) || clr == typeof(int)) return "double";
        if (clr == typeof(bool)) return "bool";
        if (clr == typeof(string)) return "string";
        if (clr == typeof(Quantity) || QuantityKinds.ByType(clr) is not null) return "Quantity";
        string name = clr.Name.Split('`')[0];
        string arguments = clr.IsGenericType ? "<" + string.Join(", ", clr.GetGenericArguments().Select(Erased)) + ">" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{(ClrTypes.IsSeries(clr) ? "" : "Lib.")}{name}{arguments}");
    }
}
