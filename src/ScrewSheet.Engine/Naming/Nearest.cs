namespace ScrewSheet.Engine.Naming;

/// <summary>Finds the known word a mistyped one probably stands for.</summary>
internal static class Nearest
{
    /// <summary>The closest of the known words within two edits (one for short words), or null.</summary>
    public static string? To(string word, IEnumerable<string> known)
    {
        string? best = null;
        int bestDistance = word.Length <= 3 ? 2 : 3;
        foreach (string candidate in known)
        {
            if (Math.Abs(candidate.Length - word.Length) >= bestDistance) continue;
            int distance = string.Equals(candidate, word, StringComparison.OrdinalIgnoreCase) ? 0 : Distance(word, candidate);
            if (distance < bestDistance) (best, bestDistance) = (candidate, distance);
        }
        return best;
    }

    private static int Distance(string a, string b)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int replaced = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, 1 + Math.Min(row[j], row[j - 1]));
            }
        }
        return row[^1];
    }
}
