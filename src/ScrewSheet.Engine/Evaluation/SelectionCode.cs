using System.Collections.Immutable;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Picks the values of a series by what another column holds in their rows; each row is a step.</summary>
internal sealed class SelectionCode(SelectionOperation operation, RowTest? test)
{
    /// <summary>Texts named where none of them fits.</summary>
    private const int Named = 6;

    /// <summary>The values that stay, in order.</summary>
    /// <param name="frame">The budget.</param>
    /// <param name="series">The values.</param>
    /// <param name="by">The picking column.</param>
    /// <param name="wanted">What it is compared with.</param>
    public object Pick(Frame frame, object series, object by, object[] wanted)
    {
        IRows values = (IRows)series, picking = (IRows)by;
        frame.Budget.Step(values.Count + picking.Count);
        if (wanted.Length > 0) KnowAll(picking, wanted);
        ImmutableArray<int>.Builder stay = ImmutableArray.CreateBuilder<int>();
        foreach ((int place, int other) in Pairs(values, picking))
            if (Stays(frame, picking, other, wanted)) stay.Add(place);
        return values.Take(stay.ToImmutable());
    }

    private bool Stays(Frame frame, IRows picking, int place, object[] wanted)
    {
        if (operation == SelectionOperation.Beside) return true;
        if (test is not null) return test.Holds(frame, picking, place);
        object found = picking is TextSeries texts ? texts.Texts[place] : ((Series)picking).Si[place];
        return wanted.Contains(found) == (operation == SelectionOperation.Where);
    }

    /// <summary>Places of both that stand in one row; where one of them stands in no rows, one after the other.</summary>
    private static IEnumerable<(int, int)> Pairs(IRows values, IRows picking)
    {
        if (values.Rows.IsEmpty || picking.Rows.IsEmpty)
        {
            if (values.Count != picking.Count) throw new EvaluationException(EvaluationFaults.NotBeside(values.Count, picking.Count));
            for (int i = 0; i < values.Count; i++) yield return (i, i);
            yield break;
        }
        for (int i = 0, j = 0; i < values.Count && j < picking.Count;)
        {
            int left = values.Rows[i], right = picking.Rows[j];
            if (left == right) yield return (i, j);
            if (left <= right) i++;
            if (right <= left) j++;
        }
    }

    /// <summary>A word that no row says is a slip of the pen more often than an empty group.</summary>
    private static void KnowAll(IRows picking, object[] wanted)
    {
        if (picking is not TextSeries texts) return;
        HashSet<string> known = new(texts.Texts, StringComparer.Ordinal);
        foreach (string word in wanted.Cast<string>())
            if (!known.Contains(word)) throw new EvaluationException(EvaluationFaults.NoSuchText(word, Nearest.To(word, known), [.. known.Order(StringComparer.Ordinal).Take(Named)], known.Count));
    }
}
