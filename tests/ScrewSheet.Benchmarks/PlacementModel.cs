using System.Runtime.CompilerServices;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using UnitsNet;

namespace ScrewSheet.Benchmarks;

/// <summary>What a fall leaves on a screw that stands out: some forty operations with five library calls, as a workbook, over doubles, and over UnitsNet types.</summary>
internal static class PlacementModel
{
    public const string Text = """
        screwsheet 1
        title What the fall leaves on the screw
        seed 7

        sheet Fall
        B1 mass = 85 kg ± 5 kg
        B2 modulus = 24 kN ± 2 kN
        B3 fall = 4 m ± 0.5 m
        B4 rope = 12 m
        B5 friction = 1.5
        B6 exposed [mm] = 40 mm ± 10 mm rectangular
        B7 offset = 10 mm
        B8 outer = 17 mm
        B9 wall = 1.5 mm
        B10 yield = 517 MPa
        B11 stiffness = 205 GPa
        B12 tilt = 0.2
        C1 factor => FallFactor(fall, rope)
        C2 impact => ImpactForce(mass, modulus, factor)
        C3 top => TopPieceLoad(impact, friction)
        C4 arm => exposed + offset
        C5 Torque moment => top * arm
        C6 bore => outer - 2 * wall
        C7 area => Math.PI / 4 * (outer * outer - bore * bore)
        C8 second => Math.PI / 64 * (Pow(outer, 4) - Pow(bore, 4))
        C9 elastic => second / (outer / 2)
        C10 stress => BendingStress(moment, elastic)
        C11 plastic => (Pow(outer, 3) - Pow(bore, 3)) / 6
        C12 folding => PlasticMoment(plastic, yield)
        C13 use => moment / folding
        C14 along => stress + top * tilt / area
        C15 deflection => top * Pow(arm, 3) / (3 * stiffness * second)
        C16 index => use + along / yield + deflection / 10 mm
        C17 holds => index < 4
        """;

    /// <summary>The workbook.</summary>
    public static Workbook Read() => ((WorkbookRead)WorkbookText.Read(Text + "\n")).Workbook;

    /// <summary>As a programmer writes it who has nothing but doubles in SI and checks nothing.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static double Plain(double mass, double modulus, double fall, double rope, double friction, double exposed, double offset, double outer, double wall, double yield, double stiffness, double tilt)
    {
        double factor = fall / rope, w = mass * 9.80665;
        double impact = w * (1 + Math.Sqrt(1 + (2 * modulus * factor / w)));
        double top = impact * (1 + (1 / friction)), arm = exposed + offset, moment = top * arm;
        double bore = outer - (2 * wall), area = Math.PI / 4 * ((outer * outer) - (bore * bore));
        double second = Math.PI / 64 * (Math.Pow(outer, 4) - Math.Pow(bore, 4)), elastic = second / (outer / 2);
        double stress = moment / elastic, plastic = (Math.Pow(outer, 3) - Math.Pow(bore, 3)) / 6, folding = plastic * yield;
        double use = moment / folding, along = stress + (top * tilt / area);
        double deflection = top * Math.Pow(arm, 3) / (3 * stiffness * second);
        return use + (along / yield) + (deflection / 0.01);
    }

    /// <summary>The same with every power written as products, as one who knows what <see cref="Math.Pow"/> costs writes it.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static double Careful(double mass, double modulus, double fall, double rope, double friction, double exposed, double offset, double outer, double wall, double yield, double stiffness, double tilt)
    {
        double factor = fall / rope, w = mass * 9.80665;
        double impact = w * (1 + Math.Sqrt(1 + (2 * modulus * factor / w)));
        double top = impact * (1 + (1 / friction)), arm = exposed + offset, moment = top * arm;
        double bore = outer - (2 * wall), outer2 = outer * outer, bore2 = bore * bore, area = Math.PI / 4 * (outer2 - bore2);
        double second = Math.PI / 64 * ((outer2 * outer2) - (bore2 * bore2)), elastic = second / (outer / 2);
        double stress = moment / elastic, plastic = ((outer2 * outer) - (bore2 * bore)) / 6, folding = plastic * yield;
        double use = moment / folding, along = stress + (top * tilt / area);
        double deflection = top * arm * arm * arm / (3 * stiffness * second);
        return use + (along / yield) + (deflection / 0.01);
    }

    /// <summary>The same over UnitsNet types, which check the units and nothing else; where they have no operator, by their values.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static double OverUnitsNet(Mass mass, Force modulus, Length fall, Length rope, double friction, Length exposed, Length offset, Length outer, Length wall, Pressure yield, Pressure stiffness, double tilt)
    {
        double factor = HandWritten.FallFactor(fall, rope);
        Force impact = HandWritten.ImpactForce(mass, modulus, factor), top = HandWritten.TopPieceLoad(impact, friction);
        Length arm = exposed + offset, bore = outer - (2 * wall);
        Torque moment = top * arm;
        Area area = ((outer * outer) - (bore * bore)) * (Math.PI / 4);
        AreaMomentOfInertia second = HandWritten.SecondMoment(outer, wall);
        Volume elastic = Volume.FromCubicMeters(second.MetersToTheFourth / (outer / 2).Meters);
        Pressure stress = HandWritten.BendingStress(moment, elastic);
        Torque folding = Torque.FromNewtonMeters(HandWritten.PlasticModulus(outer, wall).CubicMeters * yield.Pascals);
        double use = moment / folding;
        Pressure along = stress + (top * tilt / area);
        Length deflection = Length.FromMeters((top * (arm * arm * arm).CubicMeters).Newtons / (3 * stiffness.Pascals * second.MetersToTheFourth));
        return use + (along / yield) + (deflection / Length.FromMillimeters(10));
    }
}
