using ScrewSheet.Studies.Tables;
using ScrewSheet.Studies.Tests.Support;

namespace ScrewSheet.Studies.Tests.Tables;

/// <summary>Every entry of a table is what opening the workbook with those givens gives, by kernel and cell by cell.</summary>
public sealed class EntryTests
{
    public static TheoryData<string, string, string[]> Books => new()
    {
        {
            """
            A1 peak [kN] = 8.5 kN ± 0.5 kN
            A2 exposed [mm] = 40 mm within 0 mm to 55 mm
            A3 offset = 10 mm
            A4 Torque moment => peak * (exposed + offset)
            A5 strong => moment < 400 N·m
            A6 stress => moment / (260 mm³ + 0 mm³)
            """, "moment, strong, stress", ["exposed: 0 mm to 60 mm step 5 mm", "peak: 4 kN, 6 kN, 8 kN"]
        },
        {
            """
            A1 mass = 80 kg
            A2 modulus = 20 kN
            A3 fall = 4 m
            A4 rope = 10 m
            A5 factor => FallFactor(fall, rope)
            A6 peak => ImpactForce(mass, modulus, factor)
            A7 top => TopPieceLoad(peak, 1.5)
            A8 inG => LoadInG(peak, mass)
            A9 hard => peak >= 6 kN || inG > 9
            """, "factor, peak, top, inG, hard", ["fall: 0 m to 30 m over 37 steps", "mass: 0 kg to 200 kg step 25 kg", "rope: 0 m, 5 m, 12 m"]
        },
        {
            """
            A1 outer = 17 mm
            A2 wall = 1.5 mm
            A3 load = 4 kN
            A4 arm = 50 mm
            A5 section => Tube(outer, wall)
            A6 stress => BendingStress(load * arm, Tube(outer, wall).ElasticModulus)
            A7 area => section.Area
            """, "stress, area", ["outer: 2 mm to 20 mm step 1 mm", "wall: 0.5 mm to 12 mm over 23 steps", "load: 1 kN, 3 kN"]
        },
        {
            """
            A1 x = 0.5
            A2 y = 2
            A3 a => x / y
            A4 b => y > 1 ? 1 / (x - 1) : Sqrt(x)
            A5 c => x switch { < 0 => 0, < 1 when y > 1 => a * 2, < 2 => Pow(x, y), _ => Math.Min(a, x) }
            A6 d => Math.Log(x) + Math.Exp(x * 300)
            A7 e => x > 0 && a > 0.3 || !(y < 3)
            A8 f => -x + Cbrt(y) - Root(8, 3) + Pow(y, 3)
            A9 g => 1 / (1e200 * x * 1e200) + Math.Exp(-1e300 * y * 1e300)
            B1 h => a
            B2 i => h
            B3 j => -(i)
            B4 k => x > 0 ? i : h
            B5 l => k
            """, "a, b, c, d, e, f, g, h, i, j, k, l", ["x: -1 to 3 step 0.25", "y: -2 to 4 step 0.5"]
        },
        {
            """
            A1 x = 3 kN
            A2 y = 2 kN
            A3 z => x + y
            A4 mean => Mean(Series(A1, A3))
            A5 words => $"a load of {z:kN, 1 decimal}"
            A6 many => Mean(Values(1 kN, x, z))
            """, "mean, words, many, z", ["x: 1 kN to 9 kN step 1 kN"]
        },
        {
            """
            screwsheet 1
            function Torque Arm(Force f, Length a) => f * a
            function double Ratio(Torque m, Torque limit) => m / limit

            sheet One
            A1 f = 2 kN
            sheet Two "more"
            A1 arm = 30 mm
            A2 Torque m => Arm(One.f, arm + 5 mm)
            A3 ratio => Ratio(m, Arm(3 kN, arm + 5 mm))
            A4 ok => Ratio(m, 50 N·m) < 1
            A5 flag = true
            A6 chosen => flag ? m : -m
            """, "m, ratio, ok, chosen", ["f: 0 kN to 4 kN step 0.5 kN", "flag: true, false", "arm: -10 mm to 20 mm over 3 steps"]
        },
        {
            """
            A1 tube = Materials.Steel4130Normalised
            A2 arm = 10 mm
            A3 m => PlasticMoment(361 mm³, tube.YieldStrength)
            A4 f => m / arm
            """, "m, f", ["tube: Materials.Steel4130Normalised, Materials.SteelS235, Materials.Stainless304", "arm: 10 mm to 60 mm over 5 steps"]
        },
        {
            // as it stands a and b are in fault, so what reads them has no type
            """
            A1 x = 0
            A2 y = 2
            A3 a => 1 / x
            A4 b => Sqrt(y - 3) * 2 kN
            A5 c => a * 3 mm
            A6 d => c * b
            A7 e => a > 2
            A8 f => $"{a:2 decimals}"
            A9 g => c / 1 mm
            """, "a, b, c, d, e, f, g", ["x: -1 to 1 step 0.125", "y: 2 to 4 step 0.25"]
        },
    };

    [Theory]
    [MemberData(nameof(Books))]
    public void EveryEntry_IsWhatOpeningTheWorkbookGives(string book, string show, string[] vary)
    {
        StudyBook sheet = StudyBook.Of(book);
        foreach (StudyMethod method in Enum.GetValues<StudyMethod>())
        {
            WhatIfTable table = sheet.Made(show, method, vary);
            Assert.All(table.Columns, column => Assert.True(column.FaultCount < table.Scenarios, $"{column.Label}: {column.Fault(0)?.Sentence}"));
            sheet.IsWhatOpeningGives(table);
        }
    }

    [Theory]
    [InlineData("1 / never * b", "2 * seldom", "arm: 0 mm to 80 mm step 1 mm", 2)]
    [InlineData("1 / never * b", "2 * seldom", "arm: 0 mm to 80 mm step 0.1 mm", 11)]
    [InlineData("1 / never", "seldom * tube.YieldStrength", "tube: Materials.SteelS235, Materials.Stainless304|arm: 0 mm to 80 mm step 1 mm", 4)]
    public void WhatHasAValueInFewScenarios_IsNotLostForWhatHasItInNone(string nowhere, string here, string vary, int values)
    {
        StudyBook sheet = StudyBook.Of("A1 arm = 10 mm", "A2 tube = Materials.Steel4130Normalised", "A3 seldom => Sqrt((arm - 50 mm) * (51 mm - arm))", $"A4 b => {here}", "A5 never => Sqrt(-1 mm² - seldom * seldom)", $"A6 other => {nowhere}");
        foreach (StudyMethod method in Enum.GetValues<StudyMethod>())
        {
            WhatIfTable table = sheet.Made("seldom, b, never, other", method, vary.Split('|'));
            Assert.Equal([table.Scenarios - values, table.Scenarios - values, table.Scenarios, table.Scenarios], table.Columns.Select(column => column.FaultCount));
            sheet.IsWhatOpeningGives(table, step: Math.Max(1, table.Scenarios / 100));
        }
    }

    [Theory]
    [MemberData(nameof(Books))]
    public void Cautions_AreCountedAlike(string book, string show, string[] vary)
    {
        StudyBook sheet = StudyBook.Of(book);
        WhatIfTable kernel = sheet.Made(show, StudyMethod.Kernel, vary), cells = sheet.Made(show, StudyMethod.CellByCell, vary);
        foreach (var (one, other) in kernel.Columns.Zip(cells.Columns))
        {
            Assert.Equal(other.Cautions.AsEnumerable(), one.Cautions.AsEnumerable());
            Assert.Equal(other.FaultCount, one.FaultCount);
        }
    }
}
