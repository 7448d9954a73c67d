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
        if (state.Force.Length > Enough * pull.Length) throw new DomainException("stiffness is too large against this pull to find where the master point comes to rest; give at most about 100 million times the pull, or use ThreeLegs.", "stiffness");
        double[] tensions = [.. Enumerable.Range(0, Count).Select(leg => leg == lost ? 0 : Tension(leg, state.Point, 1))];
        return new LegSharing(tensions, state.Point, StiffnessSharing.SlackCaution([.. tensions.Where((_, leg) => leg != lost)]));
    }

    private double Tension(int leg, Vector point, double softening) => softening * springs[leg] * Math.Max(0, (point - anchors[leg]).Length - lengths[leg]);

    private State Descend(State state, Vector pull, int lost, double softening, double tolerance)
    {
        double floor = 1e-11 * softening * springs.Max();
        for (int step = 0; step < MostSteps && state.Force.Length > tolerance * pull.Length; step++)
        {
            Stiffness damped = state.Curvature;
            damped.AddAll(floor);
            Vector move = damped.Solve(state.Force, 0) ?? 1 / (floor * 1e11) * state.Force;
            if (move.Dot(state.Force) <= 0) move = 1 / (floor * 1e11) * state.Force;
            state = Along(state, move, pull, lost, softening);
        }
        return state;
    }

    /// <summary>The lowest place on the way to the end of <paramref name="move"/>: the force along it falls steadily, so halving finds where it turns.</summary>
    private State Along(State state, Vector move, Vector pull, int lost, double softening)
    {
        State end = Look(state.Point + move, pull, lost, softening);
        if (end.Force.Dot(move) >= 0) return end;
        double low = 0, high = 1;
        State best = state;
        for (int halving = 0; halving < 60; halving++)
        {
            double middle = (low + high) / 2;
            State at = Look(state.Point + (middle * move), pull, lost, softening);
            if (halving == 0 || at.Force.Length < best.Force.Length || Math.Abs(at.Force.Dot(move)) < Math.Abs(best.Force.Dot(move))) best = at;
            if (at.Force.Dot(move) >= 0) low = middle;
            else high = middle;
        }
        return best;
    }

    private State Look(Vector point, Vector pull, int lost, double softening)
    {
        State state = new() { Point = point, Force = pull };
        for (int leg = 0; leg < Count; leg++)
        {
            if (leg == lost) continue;
            double tension = Tension(leg, point, softening);
            if (tension <= 0) continue;
            Vector offset = point - anchors[leg];
            double reach = offset.Length, spring = softening * springs[leg];
            Vector unit = 1 / reach * offset;
            state.Force -= tension * unit;
            state.Curvature.Add(spring - (tension / reach), unit);
            state.Curvature.AddAll(tension / reach);
        }
        return state;
    }

    /// <summary>What drives the master point at one place, and how that changes with the place.</summary>
    private struct State
    {
        public Vector Point, Force;
        public Stiffness Curvature;
    }
}
