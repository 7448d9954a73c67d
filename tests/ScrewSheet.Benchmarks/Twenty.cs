namespace ScrewSheet.Benchmarks;

/// <summary>A workbook of 20 results as a person would write it: a fall, what it leaves on a screw, and what the tube says to that.</summary>
internal static class Twenty
{
    public const string Text = """
        screwsheet 1
        title Twenty results
        units SI

        sheet Fall "What the rope gives"
        B1 climber [kg] = 80 kg
        B2 fall [m] = 4.8 m
        B3 rope [m] = 2.8 m
        B4 modulus [kN] = 20 kN
        B5 ratio = 1.5
        B6 factor => FallFactor(fall, rope)
        B7 Force peak [kN] => ImpactForce(climber, modulus, factor)
        B8 Force top [kN] => TopPieceLoad(peak, ratio)
        B9 Force belay [kN] => BelayerTension(peak, ratio)
        B10 weight [kN] => Weight(climber)
        B11 times => peak / weight
        B12 speed [m/s] => Sqrt(2 * 9.80665 m/s2 * fall)

        sheet Placement "What the fall leaves on the screw"
        B1 exposed [mm] = 40 mm
        B2 offset [mm] = 10 mm
        B3 outer [mm] = 17 mm
        B4 wall [mm] = 1.5 mm
        B5 yield [MPa] = 700 MPa
        B6 arm [mm] => exposed + offset
        B7 Torque moment [N·m] => BendingMoment(Fall.top, arm)
        B8 tube => Tube(outer, wall)
        B9 elastic [mm³] => tube.ElasticModulus
        B10 plastic [mm³] => tube.PlasticModulus
        B11 area [mm²] => tube.Area
        B12 Pressure stress [MPa] => BendingStress(moment, elastic)
        B13 used [%] => stress / yield
        B14 Torque hinge [N·m] => plastic * yield
        B15 beyond [N·m] => moment - hinge
        B16 left [%] => 1 - (hinge / moment)
        B17 first [N·m] => elastic * yield
        B19 leg [kN] => LegTension(Fall.top, 60 deg)

        """;
}
