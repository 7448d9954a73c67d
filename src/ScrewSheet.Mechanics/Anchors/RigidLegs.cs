namespace ScrewSheet.Mechanics.Anchors;

/// <summary>
/// Where the master point of up to three legs of fixed length ends up, and the tensions there. The master point goes as far with the pull
/// as the legs allow; that is a convex problem, so the first arrangement of taut legs that all pull, with the others long enough, is the answer.
/// </summary>
internal static class RigidLegs
{
    private const double Rounding = 1e-9;

    /// <summary>Anchors as seen from the present master point, where all legs are just taut.</summary>
    public static (double[] Tensions, Vector Moved)? Settle(Vector[] anchors, Vector pull)
    {
        double[] lengths = [.. anchors.Select(anchor => anchor.Length)];
        return Candidates(anchors, lengths, pull)
            .Cast<(double[] Tensions, Vector Moved)?>()
            .FirstOrDefault(candidate => candidate!.Value.Tensions.All(tension => tension >= -Rounding * pull.Length) && Reaches(anchors, lengths, candidate.Value.Moved));
    }

    private static bool Reaches(Vector[] anchors, double[] lengths, Vector point)
    {
        for (int leg = 0; leg < anchors.Length; leg++)
        {
            if ((point - anchors[leg]).Length > lengths[leg] * (1 + Rounding)) return false;
        }
        return true;
    }

    private static IEnumerable<(double[] Tensions, Vector Moved)> Candidates(Vector[] anchors, double[] lengths, Vector pull)
    {
        if (anchors.Length == 3)
        {
            foreach (Vector point in new[] { default, Mirror(anchors) })
            {
                if (pull.In(Unit(anchors[0], point), Unit(anchors[1], point), Unit(anchors[2], point)) is { } t) yield return ([t.X, t.Y, t.Z], point);
            }
        }
        for (int first = 0; first < anchors.Length; first++)
        {
            for (int second = first + 1; second < anchors.Length; second++)
            {
                if (Pair(anchors, lengths, pull, first, second) is { } pair) yield return pair;
            }
        }
        for (int leg = 0; leg < anchors.Length; leg++)
        {
            double[] tensions = new double[anchors.Length];
            tensions[leg] = pull.Length;
            yield return (tensions, anchors[leg] + (lengths[leg] / pull.Length * pull));
        }
    }

    private static Vector Unit(Vector anchor, Vector point) => 1 / (point - anchor).Length * (point - anchor);

    /// <summary>The other point at the same distances from three anchors: the present one seen in the plane through them.</summary>
    private static Vector Mirror(Vector[] anchors)
    {
        Vector normal = (anchors[1] - anchors[0]).Cross(anchors[2] - anchors[0]);
        double square = normal.Dot(normal);
        return square > 0 ? 2 * anchors[0].Dot(normal) / square * normal : default;
    }

    /// <summary>Two taut legs swing about the line through their anchors into the plane of the pull.</summary>
    private static (double[] Tensions, Vector Moved)? Pair(Vector[] anchors, double[] lengths, Vector pull, int first, int second)
    {
        Vector between = anchors[second] - anchors[first];
        double distance = between.Length;
        if (distance <= 0) return null;
        Vector along = 1 / distance * between;
        Vector across = pull - (pull.Dot(along) * along);
        double reach = ((distance * distance) + (lengths[first] * lengths[first]) - (lengths[second] * lengths[second])) / (2 * distance);
        double depthSquare = (lengths[first] * lengths[first]) - (reach * reach);
        if (across.Length <= Rounding * pull.Length || depthSquare <= 0) return null;
        double depth = Math.Sqrt(depthSquare), axial = pull.Dot(along);
        double[] tensions = new double[anchors.Length];
        tensions[first] = lengths[first] * ((across.Length * (distance - reach) / depth) + axial) / distance;
        tensions[second] = lengths[second] * ((across.Length * reach / depth) - axial) / distance;
        return (tensions, anchors[first] + (reach * along) + (depth / across.Length * across));
    }
}
