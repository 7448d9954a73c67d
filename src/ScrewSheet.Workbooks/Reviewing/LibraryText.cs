using System.Globalization;
using System.Reflection;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>What the library declares, as texts that are the same on every machine.</summary>
internal sealed class LibraryText
{
    private readonly Dictionary<string, string> known = new(StringComparer.Ordinal);

    /// <summary>A function: its parameters and limits and its formula; where it has none, the library's version, since its code cannot be looked into.</summary>
    public string Of(LibraryFunction function)
    {
        if (known.TryGetValue(function.Name, out string? text)) return text;
        IEnumerable<string> parameters = function.Parameters.Select(parameter => $"{parameter.Name} {Limits(parameter.Declaration)}");
        IEnumerable<string> lets = function.Lets.Select(let => $"{let.Name} = {let.Text} [{let.Unit}]");
        IEnumerable<string> formulas = function.Formulas.Select(formula => $"{formula.Member} = {formula.Text}");
        string code = function.Formulas.IsEmpty ? $"{function.NoFormula?.Method} {VersionOf(function.Method.Module.Assembly)}" : "";
        return known[function.Name] = $"function {function.Name}({string.Join("; ", parameters)}) {string.Join("; ", lets)} => {string.Join("; ", formulas)} {code}";
    }

    /// <summary>A ready value, with all it holds.</summary>
    public string Of(BoundLibraryValue value)
    {
        if (known.TryGetValue(value.Path, out string? text)) return text;
        return known[value.Path] = $"value {value.Path} = {ValueOf(value.Member.Property, null)}";
    }

    private static string Limits(ParameterAttribute limits) =>
        string.Create(CultureInfo.InvariantCulture, $"[{limits.Unit}] {limits.Above:R} {limits.AtLeast:R} {limits.Below:R} {limits.AtMost:R}");

    private static string VersionOf(Assembly assembly) => assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "";

    private static string ValueOf(PropertyInfo property, object? of)
    {
        try
        {
            return Text(property.GetValue(of));
        }
        catch (TargetInvocationException refusing) when (refusing.InnerException is DomainException)
        {
            return "none";
        }
    }

    private static string Text(object? value) => value switch
    {
        null => "none",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        string text => CellText.Quote(text),
        Enum option => option.ToString(),
        Series series => string.Join(' ', series.Si.Select(si => si.ToString("R", CultureInfo.InvariantCulture))),
        UnitsNet.IQuantity quantity => $"{((double)quantity.Value).ToString("R", CultureInfo.InvariantCulture)} {quantity.Unit}",
        _ when ClrTypes.IsRecord(value.GetType()) => Members(value),
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    private static string Members(object record) => "{" + string.Join("; ",
        from property in record.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).OrderBy(property => property.Name, StringComparer.Ordinal)
        where property.IsDefined(typeof(MemberAttribute))
        select $"{property.Name} = {ValueOf(property, record)}") + "}";
}
