using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using ScrewSheet.Mechanics.ViscoElastic;
using ScrewSheet.Quantities.Declarations;
using static ScrewSheet.Mechanics.Falls.ImpactForces;
using static ScrewSheet.Mechanics.Tests.Rope.RopeUnits;
using static ScrewSheet.Mechanics.ViscoElastic.FallHistories;
using static ScrewSheet.Mechanics.ViscoElastic.ViscoElasticRopes;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>The closed solutions against a Runge–Kutta integration of the same equations, and their limits.</summary>
public sealed class ViscoElasticTests
{
    private static readonly Gen<(double M, double K1, double K2, double Tau, double H, double L)> Ropes =
        Gen.Select(Gen.Double[40, 120], Gen.Double[4e3, 4e4], Gen.Double[4e3, 4e4], Gen.Double[0.02, 2], Gen.Double[0, 20], Gen.Double[1, 40]);

    [Fact]
    public void StandardSolid_FollowsRungeKutta() => Ropes.Sample(r =>
    {
        var history = StandardSolidHistory(Kg(r.M), N(r.K1), N(r.K2), S(r.Tau), M(r.H), M(r.L), S(0.5), 51);
        Follows(history, r.M, r.H, r.K1 / r.L, r.K2 / r.L, r.Tau, 4000);
    }, iter: 40);

    [Fact]
    public void Maxwell_FollowsRungeKutta() => Ropes.Sample(r =>
    {
        var history = MaxwellHistory(Kg(r.M), N(r.K2), S(r.Tau), M(r.H), M(r.L), S(0.5), 51);
        Follows(history, r.M, r.H, 0, r.K2 / r.L, r.Tau, 4000);
    }, iter: 40);

    [Fact]
    public void KelvinVoigt_FollowsRungeKutta() => Ropes.Sample(r =>
    {
        double k = r.K1 / r.L, tau = r.Tau / 40, v0 = Math.Sqrt(2 * G * r.H);
        var history = KelvinVoigtHistory(Kg(r.M), N(r.K1), S(tau), M(r.H), M(r.L), S(0.5), 51);
        var steps = RungeKutta.FourthOrder(Vector<double>.Build.Dense([0.0, v0]), 0, 0.5, 4001, (_, y) => Vector<double>.Build.Dense([y[1], G - (((k * y[0]) + (k * tau * y[1])) / r.M)]));
        for (int i = 0; i < 51; i++)
        {
            var y = steps[i * 80];
            Close(y[0], history.Stretches[i].Meters, r.H + r.L);
            Close((k * y[0]) + (k * tau * y[1]), history.Forces[i].Newtons, r.M * G * (1 + r.H));
        }
    }, iter: 40);

    [Fact]
    public void StandardSolid_WhereItsThreeRatesCoincide_FollowsRungeKutta()
    {
        const double tau = 0.1, k1 = 80 / (27 * tau * tau), k2 = 8 * k1;
        var history = StandardSolidHistory(Kg(80), N(k1), N(k2), S(tau), M(4.6), M(1), S(0.5), 51);
        Follows(history, 80, 4.6, k1, k2, tau, 4000);
    }

    [Theory]
    [InlineData(8.5, 0.099)]
    [InlineData(9, 0.1)]
    [InlineData(20, 0.08)]
    [InlineData(200, 0.02)]
    [InlineData(200, 0.2)]
    public void StandardSolid_WithThreeRealRates_FollowsRungeKutta(double ratio, double tau)
    {
        const double k1 = 80 / (27 * 0.1 * 0.1);
        Follows(StandardSolidHistory(Kg(80), N(k1), N(ratio * k1), S(tau), M(4.6), M(1), S(0.5), 51), 80, 4.6, k1, ratio * k1, tau, 40000);
    }

    [Fact]
    public void Peak_IsTheGreatestOfAFineHistory_AndStretchUntilTheFirstRest() => Ropes.Sample(r =>
    {
        if (Solid(r) is not { } fall) return;
        double[] greatest = [.. new[] { 1, 1.5 }.Select(part => StandardSolidHistory(Kg(r.M), N(r.K1), N(r.K2), S(r.Tau), M(r.H), M(r.L), fall.StretchTime * part, 3001).Forces.Si.Max())];
        var loading = StandardSolidHistory(Kg(r.M), N(r.K1), N(r.K2), S(r.Tau), M(r.H), M(r.L), fall.StretchTime, 3001);
        Assert.All(greatest, force => Assert.InRange(fall.PeakForce.Newtons / force, 1 - 1e-12, 1 + 1e-4));
        Assert.InRange(fall.MaxStretch.Meters / loading.Stretches.Si.Max(), 1 - 1e-12, 1 + 1e-4);
    }, iter: 100);

    [Fact]
    public void RopeThatHoldsAboveTheHangingPosition_SaysThatItSinksLater()
    {
        const string sentence = "The climber first rests above the hanging position and later sinks to it: the final stretch is the weight over K1, times the length.";
        var method = Declarations.Callables.Named("StandardSolidFall");
        Assert.Contains(sentence, Declarations.DeclaredCautions.Of(method.Name, RopeCall.With(method, 59, 8300, 25585, 1.0 / 6, 2.764e-5, 10).Arguments));
        Assert.Empty(Declarations.DeclaredCautions.Of(method.Name, RopeCall.With(method, 80, 10000, 14000, 0.1, 4.6, 2.6).Arguments));
    }

    [Fact]
    public void KelvinVoigtPeak_IsTheGreatestOfAFineHistory() => Ropes.Sample(r =>
    {
        ViscoElasticFall fall;
        try { fall = KelvinVoigtFall(Kg(r.M), N(r.K1), S(r.Tau / 4), M(r.H), M(r.L)); }
        catch (DomainException) { return; }
        var history = KelvinVoigtHistory(Kg(r.M), N(r.K1), S(r.Tau / 4), M(r.H), M(r.L), fall.StretchTime * 1.5, 3001);
        Assert.InRange(fall.PeakForce.Newtons / history.Forces.Si.Max(), 1 - 1e-12, 1 + 1e-4);
        Assert.InRange(fall.MaxStretch.Meters / history.Stretches.Si.Max(), 1 - 1e-12, 1 + 1e-4);
    }, iter: 100);

    [Fact]
    public void MaxwellPeak_IsTheGreatestOfAFineHistory() => Ropes.Sample(r =>
    {
        ViscoElasticFall fall;
        try { fall = MaxwellFall(Kg(r.M), N(r.K2), S(r.Tau), M(r.H), M(r.L)); }
        catch (DomainException) { return; }
        var history = MaxwellHistory(Kg(r.M), N(r.K2), S(r.Tau), M(r.H), M(r.L), fall.StretchTime, 3001);
        Assert.InRange(fall.PeakForce.Newtons / history.Forces.Si.Max(), 1 - 1e-12, 1 + 1e-4);
    }, iter: 100);

    [Fact]
    public void PeakOfAStandardSolid_LiesBetweenItsTwoElasticLimits() => Ropes.Sample(r =>
    {
        if (Solid(r) is not { } fall) return;
        Assert.True(fall.PeakForce.Newtons <= ImpactForce(Kg(r.M), N(r.K1 + r.K2), r.H / r.L).Newtons * (1 + 1e-9));
        Assert.True(fall.MaxStretch.Meters <= ImpactForce(Kg(r.M), N(r.K1), r.H / r.L).Newtons * r.L / r.K1 * (1 + 1e-9));
    });

    [Theory]
    [InlineData(0)]
    [InlineData(1e-300)]
    [InlineData(1e-12)]
    [InlineData(1e-6)]
    public void FallOfLittleOrNoHeight_StillPeaksAfterTheStart(double height) => Ropes.Sample(r =>
    {
        if (Solid(r with { H = height }) is not { } solid) return true;
        return solid.PeakTime.Seconds > 0 && solid.PeakForce.Newtons > r.M * G && solid.PeakForce.Newtons <= 2 * r.M * G * 1.1;
    });

    [Theory]
    [InlineData(1e-6)]
    [InlineData(1e-5)]
    [InlineData(1e6)]
    [InlineData(1e9)]
    public void RelaxationAtTheRimOfItsRange_TendsToAnElasticRope(double seconds) => Ropes.Sample(r =>
    {
        double elastic = ImpactForce(Kg(r.M), N(seconds < 1 ? r.K1 : r.K1 + r.K2), r.H / r.L).Newtons;
        Assert.InRange(StandardSolidFall(Kg(r.M), N(r.K1), N(r.K2), S(seconds), M(r.H), M(r.L)).PeakForce.Newtons / elastic, 0.999, 1.001);
    });

    [Fact]
    public void EnergyIn_IsStoredAndDissipated() => Ropes.Sample(r =>
    {
        if (Solid(r) is not { } fall) return;
        double branch = fall.ForceAtMaxStretch.Newtons - (r.K1 / r.L * fall.MaxStretch.Meters);
        Assert.True(branch >= -1e-6, "the dashpot branch still pulls at rest");
        Assert.InRange(fall.DissipatedFraction, 0, 1);
        Assert.Equal(r.M * G * (r.H + fall.MaxStretch.Meters), fall.FallEnergy.Joules, 1e-6);
    });

    [Fact]
    public void RopeWithoutDamping_IsElasticAtAnyLength() => Ropes.Sample(r =>
    {
        var fall = KelvinVoigtFall(Kg(r.M), N(r.K1), S(0), M(r.H), M(r.L));
        double elastic = ImpactForce(Kg(r.M), N(r.K1), r.H / r.L).Newtons;
        Assert.InRange(fall.PeakForce.Newtons / elastic, 1 - 1e-9, 1 + 1e-9);
        Assert.InRange(fall.DissipatedFraction, 0, 1e-9);
    });

    [Fact]
    public void StandardSolid_AtEqualFallFactor_DependsOnLength() =>
        Assert.True(StandardSolidFall(Kg(80), KN(10), KN(14), S(0.1), M(46), M(26)).PeakForce < StandardSolidFall(Kg(80), KN(10), KN(14), S(0.1), M(4.6), M(2.6)).PeakForce);

    [Fact]
    public void RopeThatOnlyCreeps_IsRefusedInASentence()
    {
        const string sentence = "The climber is not brought to rest: with this relaxationTime the rope is damped so strongly that it only creeps.";
        Assert.Equal(sentence, Assert.Throws<DomainException>(() => MaxwellFall(Kg(80), KN(20), S(0.01), M(4.6), M(2.6))).Message);
        Assert.Equal(sentence, Assert.Throws<DomainException>(() => KelvinVoigtFall(Kg(80), KN(20), S(5), M(0), M(2.6))).Message);
    }

    [Fact]
    public void HistoryThatRunsIntoSlackRope_SaysSo()
    {
        var history = KelvinVoigtHistory(Kg(80), KN(20), S(0), M(4.6), M(2.6), S(1), 101);
        Assert.Equal("The rope goes slack at about 0.35 s; a rope cannot push, so the values from there on mean nothing.", Assert.Single(history.Cautions));
        Assert.Empty(KelvinVoigtHistory(Kg(80), KN(20), S(0), M(4.6), M(2.6), S(0.3), 101).Cautions);
    }

    [Fact]
    public void HistoryOfHalfASample_IsRefused() =>
        Assert.Equal("samples must be a whole number.", Assert.Throws<DomainException>(() => MaxwellHistory(Kg(80), KN(20), S(1), M(4.6), M(2.6), S(1), 10.5)).Message);

    [Fact]
    public void ViscosityInAnotherUnit_IsRefused() =>
        Assert.Equal("viscosity must be a force times a time, in N·s.", Assert.Throws<DomainException>(() => RelaxationTime(Quantities.Quantity.FromSi(1, Quantities.Dimension.Of(0, 1, -1)), KN(20))).Message);

    /// <summary>The fall, or null for one of the few ropes that only creep.</summary>
    private static ViscoElasticFall? Solid((double M, double K1, double K2, double Tau, double H, double L) r)
    {
        try { return StandardSolidFall(Kg(r.M), N(r.K1), N(r.K2), S(r.Tau), M(r.H), M(r.L)); }
        catch (DomainException) { return null; }
    }

    private static void Follows(FallHistory history, double m, double h, double k1, double k2, double tau, int steps)
    {
        var path = RungeKutta.FourthOrder(Vector<double>.Build.Dense([0.0, Math.Sqrt(2 * G * h), 0.0]), 0, 0.5, steps + 1,
            (_, y) => Vector<double>.Build.Dense([y[1], G - (((k1 * y[0]) + y[2]) / m), (k2 * y[1]) - (y[2] / tau)]));
        for (int i = 0; i < history.Times.Count; i++)
        {
            var y = path[i * steps / 50];
            Close(y[0], history.Stretches[i].Meters, 1 + h);
            Close((k1 * y[0]) + y[2], history.Forces[i].Newtons, m * G * (1 + h));
        }
    }

    private static void Close(double expected, double actual, double scale) =>
        Assert.True(Math.Abs(expected - actual) <= 1e-6 * scale, $"{expected:R} against {actual:R}");
}
