using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>Tied legs that stretch by Hooke's law and go slack; the energy of legs and load is convex, so its lowest point is the only one.</summary>
/// <param name="anchors">From the unloaded master point to each anchor; the distance is the leg's natural length.</param>
/// <param name="springs">EA/L of each leg.</param>
internal sealed class ElasticLegs(Vector[] anchors, double[] springs)
{
    private const int MostSteps = 500;
    private const double Exact = 1e-10, Enough = 1e-6;
    private readonly double[] lengths = [.. anchors.Select(anchor => anchor.Length)];

    /// <summary>How many legs.</summary>
    public int Count => anchors.Length;

    /// <summary>Tensions and movement under <paramref name="pull"/>, with leg number <paramref name="lost"/> (from 0; negative for none) gone.</summary>
    /// <remarks>Starts soft and stiffens: stiff legs that must swing far make steep curved valleys, which Newton's steps follow slowly.</remarks>
    public LegSharing Settle(Vector pull, int lost)
    {
        double stiffest = Enumerable.Range(0, Count).Where(leg => leg != lost).Max(leg => springs[leg] * lengths[leg]);
        State state = Look(default, pull, lost, 1);
        for (double softness = stiffest / pull.Length; softness > 1; softness /= 10)
        {
            state = Descend(Look(state.Point, pull, lost, 1 / softness), pull, lost, 1 / softness, 1e-3);
        }
        state = Descend(Look(state.Point, pull, lost, 1), pull, lost, 1, Exact);
        if (state.Force.Length > Enough * pull.Length) throw new DomainException("The master point comes to no rest in these legs; check that their lengths and stiffnesses are of one order.");
        double[] tensions = [.. Enumerable.Range(0, Count).Select(leg => leg == lost ? 0 : Tension(leg, state.Point, 1))];
        return new LegSharing(tensions, state.Point, StiffnessSharing.SlackCaution([.. tensions.Where((_, leg) => leg != lost)]));
    }

    private double Tension(int leg, Vector point, double softening) => softening * springs[leg] * Math.Max(0, (point - anchors[leg]).Length - lengths[leg]);

    private State Descend(State state, Vector pull, int lost, double softening, double tolerance)
    {
        double most = softening * springs.Max(), damping = 1e-3 * most;
        for (int step = 0; step < MostSteps && state.Force.Length > tolerance * pull.Length && damping < 1e9 * most; step++)
        {
            Stiffness damped = state.Curvature;
            damped.AddAll(damping);
            if (damped.Solve(state.Force) is { } move && Look(state.Point + move, pull, lost, softening) is var next && next.Improves(state))
            {
                state = next;
                damping /= 10;
            }
            else
            {
                damping = Math.Max(damping * 10, 1e-9 * most);
            }
        }
        return state;
    }

    private State Look(Vector point, Vector pull, int lost, double softening)
    {
        State state = new() { Point = point, Energy = -pull.Dot(point), Force = pull };
        for (int leg = 0; leg < Count; leg++)
        {
            if (leg == lost) continue;
            double tension = Tension(leg, point, softening);
            if (tension <= 0) continue;
            Vector offset = point - anchors[leg];
            double reach = offset.Length, spring = softening * springs[leg];
            Vector unit = 1 / reach * offset;
            state.Energy += tension * tension / (2 * spring);
            state.Force -= tension * unit;
            state.Curvature.Add(spring - (tension / reach), unit);
            state.Curvature.AddAll(tension / reach);
        }
        return state;
    }

    /// <summary>What one place of the master point costs and which way it is driven.</summary>
    private struct State
    {
        public Vector Point, Force;
        public double Energy;
        public Stiffness Curvature;

        public readonly bool Improves(in State before) => Energy < before.Energy || Force.Length < before.Force.Length / 2;
    }
}
