using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using static ScrewSheet.Mechanics.Falls.FallFactors;
using static ScrewSheet.Mechanics.Tests.Rope.RopeUnits;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>Published fall factors.</summary>
internal static class FallFactorChecks
{
    private const string Group = "Fall factor";
    private const string Article = "encyclopedia article \"Fall factor\"";
    private const string Handbook = "mountaineering handbook, chapter on forces in a fall";
    private const string Glossary = "via-ferrata fall glossary in a mountaineering magazine";

    [CheckTable]
    public static IEnumerable<CheckRow> Rows =>
    [
        CheckRow.Printed(Group, "20 ft on 10 ft", "2", "", Article, Standing.SecondHand, () => FallFactor(Ft(20), Ft(10))),
        CheckRow.Printed(Group, "20 ft on 100 ft", "0.2", "", Article + "; also " + Handbook, Standing.Read, () => FallFactor(Ft(20), Ft(100))),
        CheckRow.Printed(Group, "2 ft on 10 ft", "0.2", "", Handbook, Standing.Read, () => FallFactor(Ft(2), Ft(10))),
        CheckRow.Printed(Group, "5 m on 20 m", "0.25", "", Glossary, Standing.Read, () => FallFactor(M(5), M(20))),
        CheckRow.Printed(Group, "5 m on a 1 m lanyard", "5", "", Glossary, Standing.Read, () => FallFactor(M(5), M(1))),
        CheckRow.Printed(Group, "3 m of cable and 1 m of cord on 1 m of cord", "4", "", "guide's article on ferrata sets (well above 2)", Standing.Read, () => FallFactor(M(4), M(1))),
        CheckRow.Printed(Group, "standard drop, 4.6 m on 2.6 m", "1.77", "", Article + ", UIAA test geometry", Standing.SecondHand, () => FallFactor(M(4.6), M(2.6))),
        CheckRow.Printed(Group, "standard drop, 4.8 m on 2.8 m", "1.71", "", "German description of the standard drop, 2.30 m above and 0.30 m to the fixed end", Standing.SecondHand, () => FallFactor(M(4.8), M(2.8))),
        CheckRow.Printed(Group, "2 m on 10 m", "0.2", "", "climbing primer", Standing.Read, () => FallFactor(M(2), M(10))),
        CheckRow.Arithmetic(Group, "4.6 / 2.6", 1.76923077, "", () => FallFactor(M(4.6), M(2.6))),
        CheckRow.Arithmetic(Group, "4.8 / 2.8", 1.71428571, "", () => FallFactor(M(4.8), M(2.8))),
        CheckRow.Arithmetic(Group, "5.0 / 2.8", 1.78571429, "", () => FallFactor(M(5.0), M(2.8))),
        CheckRow.Arithmetic(Group, "lead fall 2.3 m above the edge on 2.6 m", 1.76923077, "", () => LeadFallFactor(M(2.3), M(2.6), M(0))),
    ];
}
