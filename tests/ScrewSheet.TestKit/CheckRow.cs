using System.Globalization;
using ScrewSheet.Quantities.Declarations;
using Xunit;

namespace ScrewSheet.TestKit;

/// <summary>One comparison with something outside the code: a published row, a worked example, or arithmetic done elsewhere.</summary>
public sealed record CheckRow
{
    private CheckRow() { }

    /// <summary>The chapter of the list of checks.</summary>
    public required string Group { get; init; }

    /// <summary>Function and inputs in a few words; unique in its group.</summary>
    public required string What { get; init; }

    /// <summary>The value as printed in the source.</summary>
    public required string Published { get; init; }

    /// <summary>The unit of the printed value, empty for a number.</summary>
    public required string Unit { get; init; }

    /// <summary>How far ours may be from it, in the same unit.</summary>
    public required double Allowed { get; init; }

    /// <summary>Author, title, year, table.</summary>
    public required string Source { get; init; }

    /// <summary>How the value is known.</summary>
    public required Standing Standing { get; init; }

    /// <summary>Our value in the printed unit.</summary>
    public required Func<double> Ours { get; init; }

    /// <summary>True for a known misprint: ours must be further from it than <see cref="Allowed"/>.</summary>
    public bool IsMisprint { get; init; }

    /// <summary>True where the row was computed elsewhere by the same formula: it tests arithmetic, not physics.</summary>
    public bool IsArithmetic { get; init; }

    /// <summary>The printed value as a number.</summary>
    public double PublishedValue => double.Parse(Published, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>A value printed in a source; ours may differ by <paramref name="units"/> units of its last printed digit.</summary>
    public static CheckRow Printed(string group, string what, string published, string unit, string source, Standing standing, Func<double> ours, double units = 0.5) => new()
    {
        Group = group, What = what, Published = published, Unit = unit, Source = source, Standing = standing, Ours = ours,
        Allowed = (units * LastDigit(published)) + 1e-12,
    };

    /// <summary>A value a source prints wrongly: ours must not agree with it.</summary>
    public static CheckRow Misprint(string group, string what, string published, string unit, string source, Standing standing, Func<double> ours) =>
        Printed(group, what, published, unit, source, standing, ours) with { IsMisprint = true };

    /// <summary>The same formula computed elsewhere, to 1e-6 relative unless said otherwise.</summary>
    public static CheckRow Arithmetic(string group, string what, double value, string unit, Func<double> ours, double relative = 1e-6) => new()
    {
        Group = group, What = what, Published = value.ToString("R", CultureInfo.InvariantCulture), Unit = unit,
        Source = "computed apart from the program from the same formula; tests arithmetic only", Standing = Standing.Derived, Ours = ours,
        Allowed = (Math.Abs(value) * relative) + 1e-300, IsArithmetic = true,
    };

    /// <summary>Fails unless ours agrees, or for a misprint unless it differs.</summary>
    public void Hold()
    {
        double ours = Ours();
        Assert.True(double.IsFinite(ours), $"{What}: not finite");
        double off = Math.Abs(ours - PublishedValue);
        Assert.True(off <= Allowed != IsMisprint, $"{Group}: {What}: published {Published} {Unit}, ours {ours:R}, off by {off:G3}, allowed {Allowed:G3}{(IsMisprint ? " (a misprint: must differ)" : "")}. {Source}");
    }

    private static double LastDigit(string numeral)
    {
        string mantissa = numeral.Split('e', 'E')[0];
        int point = mantissa.IndexOf('.');
        int decimals = point < 0 ? 0 : mantissa.Length - point - 1;
        int exponent = numeral.Length > mantissa.Length ? int.Parse(numeral[(mantissa.Length + 1)..], CultureInfo.InvariantCulture) : 0;
        return Math.Pow(10, exponent - decimals);
    }
}

/// <summary>Marks a static property that lists <see cref="CheckRow"/>s: each becomes a test and a line in <c>docs/checks.md</c>.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class CheckTableAttribute : Attribute;
