using System.Collections;

namespace ScrewSheet.Statistics.Common;

/// <summary>Sentences that compare by what they say, so that a record with the same numbers and cautions is equal to another.</summary>
internal sealed class CautionList : IReadOnlyList<string>
{
    private readonly string[] sentences;

    private CautionList(string[] sentences) => this.sentences = sentences;

    /// <summary>The sentences whose condition holds.</summary>
    public static CautionList Of(params ReadOnlySpan<(bool Applies, string Sentence)> all)
    {
        List<string> kept = [];
        foreach ((bool applies, string sentence) in all)
            if (applies) kept.Add(sentence);
        return new CautionList([.. kept]);
    }

    public string this[int index] => sentences[index];

    public int Count => sentences.Length;

    public override bool Equals(object? obj) => obj is CautionList other && sentences.AsSpan().SequenceEqual(other.sentences);

    public override int GetHashCode() => sentences.Aggregate(17, (hash, sentence) => HashCode.Combine(hash, sentence));

    public IEnumerator<string> GetEnumerator() => ((IEnumerable<string>)sentences).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
