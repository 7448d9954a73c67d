using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;
using static ScrewSheet.Mechanics.Falls.ImpactForces;
using static ScrewSheet.Mechanics.Friction.CarabinerFriction;
using static ScrewSheet.Mechanics.Friction.RopeDrags;
using static ScrewSheet.Mechanics.Friction.TopPieces;
using static ScrewSheet.Mechanics.Tests.Rope.RopeUnits;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>Capstan law, top piece, rope drag.</summary>
internal static class FrictionChecks
{
    private const string Capstan = "Capstan ratio";
    private const string Piece = "Top piece";
    private const string Drag = "Rope drag";
    private const string Statics = "open statics course note";
    private const string Blog = "blog article quoting a climber-engineer";
    private static readonly double Mu = Math.Log(1.5) / Math.PI;

    [CheckTable]
    public static IEnumerable<CheckRow> CapstanRows =>
    [
        CheckRow.Printed(Capstan, "0.6, five turns", "153552935", "", "encyclopedia article \"Capstan equation\" (turns and friction inferred; e^(6 pi))", Standing.SecondHand, () => FrictionRatio(0.6, Deg(1800))),
        CheckRow.Printed(Capstan, "0.3, one turn", "6.6", "", Statics, Standing.Read, () => FrictionRatio(0.3, Deg(360))),
        CheckRow.Printed(Capstan, "0.3, two turns (about)", "43", "", Statics, Standing.Read, () => FrictionRatio(0.3, Deg(720))),
        CheckRow.Printed(Capstan, "0.7, half turn: exponent", "2.2", "", Blog, Standing.Read, () => Math.Log(FrictionRatio(0.7, Deg(180)))),
        CheckRow.Printed(Capstan, "0.7, half turn (close to)", "9", "", Blog, Standing.Read, () => FrictionRatio(0.7, Deg(180))),
        CheckRow.Printed(Capstan, "0.7, one turn (just over)", "81", "", Blog, Standing.Read, () => FrictionRatio(0.7, Deg(360))),
        CheckRow.Misprint(Capstan, "0.7, two turns (over 7000)", "7000", "", Blog, Standing.Read, () => FrictionRatio(0.7, Deg(720))),
        CheckRow.Arithmetic(Capstan, "0.6, five turns, to nine digits", 153552935.395, "", () => FrictionRatio(0.6, Deg(1800)), 1e-9),
        CheckRow.Arithmetic(Capstan, "0.3, one turn, to nine digits", 6.58606196, "", () => FrictionRatio(0.3, Deg(360))),
        CheckRow.Arithmetic(Capstan, "0.3, two turns, to nine digits", 43.3762122, "", () => FrictionRatio(0.3, Deg(720))),
        CheckRow.Arithmetic(Capstan, "0.7, half turn, to nine digits", 9.01702861, "", () => FrictionRatio(0.7, Deg(180))),
        CheckRow.Arithmetic(Capstan, "0.7, one turn, to nine digits", 81.3068050, "", () => FrictionRatio(0.7, Deg(360))),
        CheckRow.Arithmetic(Capstan, "0.7, two turns, to nine digits", 6610.79654, "", () => FrictionRatio(0.7, Deg(720))),
        CheckRow.Arithmetic(Capstan, "0.2, half turn (set-up of R. Delaney, Physics for Roping Technicians, 2022)", 1.87445609, "", () => FrictionRatio(0.2, Deg(180))),
        CheckRow.Arithmetic(Capstan, "0.2, half turn: hold 100 kg", 53.3488091, "kgf", () => HoldingForce(Force.FromKilogramsForce(100), 0.2, Deg(180)).KilogramsForce),
        CheckRow.Arithmetic(Capstan, "0.2, half turn: raise 100 kg", 187.445609, "kgf", () => RaisingForce(Force.FromKilogramsForce(100), 0.2, Deg(180)).KilogramsForce),
        CheckRow.Arithmetic(Capstan, "friction of the ratio 2/3", 0.129063552, "", () => FrictionFromRatio(1.5, Deg(180))),
        CheckRow.Arithmetic(Capstan, "friction of the ratio 0.66", 0.132262674, "", () => FrictionFromRatio(1 / 0.66, Deg(180))),
        CheckRow.Arithmetic(Capstan, "friction of the ratio 0.60", 0.162600846, "", () => FrictionFromRatio(1 / 0.60, Deg(180))),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> PieceRows =>
    [
        CheckRow.Arithmetic(Piece, "5/3 of 6 kN (R. Goldstone, cited in a 2009 revision of \"Fall factor\")", 5.0 / 3 * 6000, "N", () => TopPieceLoad(N(6000), 1.5).Newtons, 1e-12),
        CheckRow.Arithmetic(Piece, "belayer's 2/3 of 6 kN", 4000, "N", () => BelayerTension(N(6000), 1.5).Newtons, 1e-12),
        CheckRow.Printed(Piece, "zero-factor fall over the weight, no friction (about)", "4", "", "encyclopedia article \"Fall factor\": top piece about 4 m g", Standing.SecondHand, () => TopPieceLoad(ImpactForce(Kg(80), KN(20), 0), 1).Newtons / (80 * G)),
        CheckRow.Arithmetic(Piece, "6 kN, ratio 1", 12000, "N", () => TopPieceLoad(N(6000), 1).Newtons),
        CheckRow.Arithmetic(Piece, "6 kN, ratio 2/3", 10000, "N", () => TopPieceLoad(N(6000), 1.5).Newtons),
        CheckRow.Arithmetic(Piece, "6 kN, ratio 0.66", 9960, "N", () => TopPieceLoad(N(6000), 1 / 0.66).Newtons),
        CheckRow.Arithmetic(Piece, "6 kN, ratio 0.60", 9600, "N", () => TopPieceLoad(N(6000), 1 / 0.60).Newtons),
        CheckRow.Arithmetic(Piece, "6 and 4 kN at 0 deg", 10000, "N", () => TopPieceResultant(N(6000), N(4000), Deg(0)).Newtons),
        CheckRow.Arithmetic(Piece, "6 and 4 kN at 30 deg", 9673.11839, "N", () => TopPieceResultant(N(6000), N(4000), Deg(30)).Newtons),
        CheckRow.Arithmetic(Piece, "6 and 4 kN at 60 deg", 8717.79789, "N", () => TopPieceResultant(N(6000), N(4000), Deg(60)).Newtons),
        CheckRow.Arithmetic(Piece, "6 and 4 kN at 90 deg", 7211.10255, "N", () => TopPieceResultant(N(6000), N(4000), Deg(90)).Newtons),
        CheckRow.Arithmetic(Piece, "wrap shrinks with the open angle, 60 deg", 9189.07357, "N", () => TopPieceLoadOpen(N(6000), Mu, Deg(60)).Newtons),
        CheckRow.Arithmetic(Piece, "belay side, wrap shrunk by 60 deg", 4578.85697, "N", () => BelayerTension(N(6000), FrictionRatio(Mu, WrapOfOpenAngle(Deg(60)))).Newtons),
        CheckRow.Arithmetic(Piece, "zero-factor fall of 80 kg", 1569.064, "N", () => ImpactForce(Kg(80), KN(20), 0).Newtons),
        CheckRow.Arithmetic(Piece, "zero-factor fall of 80 kg, top piece without friction", 3138.128, "N", () => TopPieceLoad(ImpactForce(Kg(80), KN(20), 0), 1).Newtons),
        CheckRow.Arithmetic(Piece, "zero-factor fall of 80 kg, top piece 5/3", 2615.10667, "N", () => TopPieceLoad(ImpactForce(Kg(80), KN(20), 0), 1.5).Newtons),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> DragRows =>
    [
        CheckRow.Arithmetic(Drag, "5 and 15 m over one piece: effective length", 15, "m", () => One.EffectiveLength.Meters),
        CheckRow.Arithmetic(Drag, "5 and 15 m over one piece by its own function", 15, "m", () => EffectiveLengthOnePiece(M(5), M(15), Mu, Deg(180)).Meters),
        CheckRow.Arithmetic(Drag, "5 and 15 m: fall factor", 0.5, "", () => One.FallFactor),
        CheckRow.Arithmetic(Drag, "5 and 15 m: effective fall factor", 0.666666667, "", () => One.EffectiveFallFactor),
        CheckRow.Arithmetic(Drag, "5 and 15 m: climber", 5425.25864, "N", () => One.ClimberForce.Newtons),
        CheckRow.Arithmetic(Drag, "5 and 15 m: belayer", 3616.83910, "N", () => One.BelayerForce.Newtons),
        CheckRow.Arithmetic(Drag, "5 and 15 m: top piece", 9042.09774, "N", () => One.TopPieceForce.Newtons),
        CheckRow.Arithmetic(Drag, "5 and 15 m: climber without friction", 4822.61700, "N", () => Slippery.ClimberForce.Newtons),
        CheckRow.Arithmetic(Drag, "5 and 15 m: belayer without friction", 4822.61700, "N", () => Slippery.BelayerForce.Newtons),
        CheckRow.Arithmetic(Drag, "5 and 15 m: top piece without friction", 9645.23400, "N", () => Slippery.TopPieceForce.Newtons),
        CheckRow.Arithmetic(Drag, "5 and 15 m: energy of the fall", 11037.5368, "J", () => One.FallEnergy.Joules),
        CheckRow.Arithmetic(Drag, "5 and 15 m: energy in the rope", 8584.75081, "J", () => One.RopeEnergy.Joules),
        CheckRow.Arithmetic(Drag, "5 and 15 m: energy at the carabiner", 2452.78595, "J", () => One.FrictionEnergy.Joules),
        CheckRow.Arithmetic(Drag, "3, 6, 6, 5 m over three pieces: effective length", 13.5175400, "m", () => EffectiveLength(Strands(3, 6, 6, 5), Bends(180, 30, 45), 0.13).Meters),
        CheckRow.Arithmetic(Drag, "3, 6, 6, 5 m: total ratio", 1.78349808, "", () => TotalFrictionRatio(Bends(180, 30, 45), 0.13)),
        CheckRow.Arithmetic(Drag, "3, 6, 6, 5 m: fall factor", 0.3, "", () => Three.FallFactor),
        CheckRow.Arithmetic(Drag, "3, 6, 6, 5 m: effective fall factor", 0.443867745, "", () => EffectiveFallFactor(M(6), Three.EffectiveLength)),
        CheckRow.Arithmetic(Drag, "3, 6, 6, 5 m: climber", 4598.27405, "N", () => Three.ClimberForce.Newtons),
        CheckRow.Arithmetic(Drag, "3, 6, 6, 5 m: climber without friction", 3951.52970, "N", () => FallWithRopeDrag(Kg(80), KN(20), M(6), Strands(3, 6, 6, 5), Bends(180, 30, 45), 0).ClimberForce.Newtons),
        CheckRow.Arithmetic(Drag, "3, 6, 6, 5 m: belayer", 2578.23326, "N", () => Three.BelayerForce.Newtons),
    ];

    private static Friction.DraggedFall One => FallWithRopeDrag(Kg(80), KN(20), M(10), Strands(5, 15), Bends(180), Mu);

    private static Friction.DraggedFall Slippery => FallWithRopeDrag(Kg(80), KN(20), M(10), Strands(5, 15), Bends(180), 0);

    private static Friction.DraggedFall Three => FallWithRopeDrag(Kg(80), KN(20), M(6), Strands(3, 6, 6, 5), Bends(180, 30, 45), 0.13);
}
