using System.Reflection;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests;

public sealed class StandardsTests
{
    private static IEnumerable<Type> Each => typeof(Standards).GetNestedTypes();

    private static IEnumerable<PropertyInfo> Values => Each.SelectMany(standard => standard.GetProperties()).Where(property => property.Name is not ("Edition" or "Status"));

    private static string Refusal(Func<Force> value) => Assert.Throws<DomainException>(() => value().ToString()).Message;

    [Fact]
    public void EveryStandard_SaysItsEditionAndStatus() =>
        Assert.All(Each, standard =>
        {
            Assert.NotNull(standard.GetCustomAttribute<SheetValuesAttribute>());
            Assert.False(string.IsNullOrWhiteSpace((string?)standard.GetProperty("Edition")?.GetValue(null)));
            Assert.False(string.IsNullOrWhiteSpace((string?)standard.GetProperty("Status")?.GetValue(null)));
        });

    [Fact]
    public void EveryValue_HasAMeaningAndASource() =>
        Assert.All(Values, property =>
        {
            Assert.False(string.IsNullOrWhiteSpace(property.GetCustomAttribute<MemberAttribute>()?.Meaning));
            Assert.Single(property.GetCustomAttributes<SourceAttribute>());
        });

    [Fact]
    public void WhereSourcesDiffer_TheMemberListsThemAndSaysWhatToWrite() =>
        Assert.Equal(
            "UIAA 151, radial: 15 kN (a 2005 article and a later explainer, tests in ice with deliberate air content); 10 kN (other texts, for both marks). "
            + "Write the value of your edition as a given, with its source beside it.",
            Refusal(() => Standards.Uiaa151.Radial));

    [Fact]
    public void ValuesThatWereNotSeen_AreRefusedRatherThanGuessed()
    {
        string[] unsettled = [.. Values.Where(Throws).Select(property => $"{property.DeclaringType!.Name}.{property.Name}").Order(StringComparer.Ordinal)];
        Assert.Equal(["En12572.ProtectionPoint", "En568.Axial", "En958.PeakForceHeavy", "En958.PeakForceLight", "Uiaa151.Axial", "Uiaa151.Radial"], unsettled);
    }

    [Fact]
    public void ValuesFromMemory_SaySo()
    {
        string[] memory = [.. Values.Where(property => property.GetCustomAttribute<SourceAttribute>()!.Standing == Standing.FromMemory).Select(property => property.DeclaringType!.Name).Distinct().Order(StringComparer.Ordinal)];
        Assert.Equal(["En12270", "En12276", "En12277", "En12278", "En12572", "En358", "En565", "En569", "Uiaa126"], memory);
    }

    private static bool Throws(PropertyInfo property)
    {
        try
        {
            property.GetValue(null);
            return false;
        }
        catch (TargetInvocationException wrapped) when (wrapped.InnerException is DomainException)
        {
            return true;
        }
    }
}

internal static class StandardsChecks
{
    private const string Group = "Standards";

    [CheckTable]
    public static IEnumerable<CheckRow> Connectors =>
        new (string Class, string Major, string? Open, string? Minor)[]
        {
            ("Basic", "20", "7", "7"), ("Hms", "20", "6", "7"), ("ViaFerrata", "25", "8", "7"), ("SpecificAnchor", "20", "7", null), ("Termination", "20", "7", null), ("ScrewLink", "25", null, "10"), ("Oval", "18", "5", "7"),
        }.SelectMany(row => new (string Way, string? Value)[] { ("Major", row.Major), ("GateOpen", row.Open), ("Minor", row.Minor) }
            .Where(way => way.Value is not null)
            .Select(way => CheckRow.Printed(Group, $"En12275.{row.Class}{way.Way}", way.Value!, "kN", "EN 12275:2013", Standing.Read, () => Value(typeof(Standards.En12275), row.Class + way.Way).Kilonewtons)));

    [CheckTable]
    public static IEnumerable<CheckRow> Anchors =>
    [
        CheckRow.Printed(Group, "En568.Radial", "10", "kN", "EN 568:2015", Standing.Read, () => Standards.En568.Radial.Kilonewtons),
        CheckRow.Printed(Group, "En959.Radial", "25", "kN", "EN 959:2018", Standing.Read, () => Standards.En959.Radial.Kilonewtons),
        CheckRow.Printed(Group, "En959.Axial", "15", "kN", "EN 959:2018", Standing.Read, () => Standards.En959.Axial.Kilonewtons),
        CheckRow.Printed(Group, "Uiaa123.Axial", "20", "kN", "UIAA 123", Standing.Read, () => Standards.Uiaa123.Axial.Kilonewtons),
        CheckRow.Printed(Group, "En569.ReverseShare of SafetyAlong against SafetyReverse", "10", "kN", "EN 569", Standing.FromMemory, () => Standards.En569.SafetyAlong.Kilonewtons * Standards.En569.ReverseShare),
        CheckRow.Printed(Group, "En892.PeakForceSingle", "12", "kN", "EN 892:2004", Standing.SecondHand, () => Standards.En892.PeakForceSingle.Kilonewtons),
        CheckRow.Printed(Group, "En892.PeakForceHalf", "8", "kN", "EN 892:2004", Standing.SecondHand, () => Standards.En892.PeakForceHalf.Kilonewtons),
        CheckRow.Printed(Group, "En795.StaticTextile", "18", "kN", "EN 795:2012", Standing.Read, () => Standards.En795.StaticTextile.Kilonewtons),
        .. new (double Millimetres, Force Value)[] { (4, Standards.En564.Cord4), (5, Standards.En564.Cord5), (6, Standards.En564.Cord6), (7, Standards.En564.Cord7), (8, Standards.En564.Cord8) }
            .Select(row => CheckRow.Arithmetic(Group, $"En564, {row.Millimetres} mm, is 0.2 d²", 0.2 * row.Millimetres * row.Millimetres, "kN", () => row.Value.Kilonewtons)),
    ];

    private static Force Value(Type standard, string member) => (Force)standard.GetProperty(member)!.GetValue(null)!;
}
