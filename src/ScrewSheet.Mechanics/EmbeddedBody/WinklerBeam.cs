using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics;

/// <summary>
/// Beams on a Winkler bed under an end load and an end moment, in SI doubles. Depth x from the loaded end;
/// slope is −dy/dx, moment EI·y″, shear EI·y‴, so that all are positive at the loaded end.
/// </summary>
internal static class WinklerBeam
{
    /// <summary>β = (k/(4EI))^(1/4), in 1/m.</summary>
    public static double Beta(double stiffness, double rigidity) => Math.Pow(stiffness / (4 * rigidity), 0.25);

    /// <summary>The deflection, slope, moment and shear at one depth.</summary>
    public readonly record struct State(double Deflection, double Slope, double Moment, double Shear);

    /// <summary>A body so long that its tip does not matter.</summary>
    public static State Long(double load, double moment, double stiffness, double beta, double x)
    {
        double u = beta * x, fade = Math.Exp(-u), c = Math.Cos(u), s = Math.Sin(u);
        return new State(
            2 * beta / stiffness * fade * ((load * c) + (beta * moment * (c - s))),
            2 * beta * beta / stiffness * fade * ((load * (c + s)) + (2 * beta * moment * c)),
            fade * ((moment * (c + s)) + (load / beta * s)),
            fade * ((load * (c - s)) - (2 * beta * moment * s)));
    }

    /// <summary>A body of length L with a free tip. Exact for β·L up to 300; beyond that the tip does not matter to a double.</summary>
    public static State Finite(double load, double moment, double stiffness, double beta, double length, double x)
    {
        double end = beta * length;
        if (end > 300) return Long(load, moment, stiffness, beta, x);
        if (end < 1e-3) throw new DomainException("The body is rigid against its ice (shorter than a thousandth of the characteristic length): use RigidBody.", "embeddedLength");
        double u = beta * x, v = end - u, sinhL = Math.Sinh(end), sinL = Math.Sin(end), q = (sinhL - sinL) * (sinhL + sinL);
        double near = sinhL / q, far = sinL / q;
        double cu = Math.Cos(u), su = Math.Sin(u), chu = Math.Cosh(u), shu = Math.Sinh(u);
        double cv = Math.Cos(v), sv = Math.Sin(v), chv = Math.Cosh(v), shv = Math.Sinh(v);
        return new State(
            2 * beta / stiffness * ((load * ((near * cu * chv) - (far * chu * cv))) + (beta * moment * ((near * ((shv * cu) - (chv * su))) + (far * ((chu * sv) - (shu * cv)))))),
            2 * beta * beta / stiffness * ((load * ((near * ((su * chv) + (cu * shv))) + (far * ((shu * cv) + (chu * sv))))) + (2 * beta * moment * ((near * cu * chv) + (far * chu * cv)))),
            (load / beta * ((near * su * shv) - (far * shu * sv))) + (moment * ((near * ((su * chv) + (cu * shv))) - (far * ((shu * cv) + (chu * sv))))),
            (load * ((near * ((cu * shv) - (su * chv))) - (far * ((chu * sv) - (shu * cv))))) - (2 * beta * moment * ((near * su * shv) + (far * shu * sv))));
    }

    /// <summary>The first depth where the shear of a finite body vanishes: there its moment is greatest.</summary>
    public static double DepthOfMaxMoment(double load, double moment, double stiffness, double beta, double length) =>
        FirstZero(x => Finite(load, moment, stiffness, beta, length, x).Shear, Math.Min(length, 4 / beta));

    /// <summary>The first depth where the deflection of a finite body vanishes.</summary>
    public static double PivotDepth(double load, double moment, double stiffness, double beta, double length) =>
        FirstZero(x => Finite(load, moment, stiffness, beta, length, x).Deflection, Math.Min(length, 4 / beta));

    // Steps down to the first change of sign, then halves the step down to the last bit.
    private static double FirstZero(Func<double, double> of, double reach)
    {
        const int steps = 256;
        int sign = Math.Sign(of(0));
        double low = 0, high = reach / steps;
        while (high < reach && Math.Sign(of(high)) == sign) (low, high) = (high, high + (reach / steps));
        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high) break;
            if (Math.Sign(of(middle)) == sign) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }
}
