namespace ScrewSheet.Engine.Naming;

/// <summary>Finds the known word a mistyped one probably stands for.</summary>
internal static class Nearest
{
    /// <summary>Longer words are hardly slips of the pen, and in a long list the first are looked at: a file with thousands of unknown words must not keep the program.</summary>
    private const int LongestWord = 40, MostKnown = 1000;

    /// <summary>The closest of the known words within two edits (one for short words), or null.</summary>
    public static string? To(string word, IEnumerable<string> known)
    {
        string? best = null;
        int bestDistance = word.Length <= 3 ? 2 : 3;
        if (word.Length > LongestWord) return null;
        foreach (string candidate in known.Take(MostKnown))
        {
            if (Math.Abs(candidate.Length - word.Length) >= bestDistance) continue;
            int distance = string.Equals(candidate, word, StringComparison.OrdinalIgnoreCase) ? 0 : Distance(word, candidate, bestDistance);
            if (distance < bestDistance) (best, bestDistance) = (candidate, distance);
        }
        return best;
    }

    /// <summary>How many letters must change; anything from <paramref name="enough"/> on where it is at least that.</summary>
    private static int Distance(string a, string b, int enough)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0], least = i;
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int replaced = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, 1 + Math.Min(row[j], row[j - 1]));
                least = Math.Min(least, row[j]);
            }
            if (least >= enough) return least;
        }
        return row[^1];
    }
}
