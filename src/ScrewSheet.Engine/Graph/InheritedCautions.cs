using System.Collections.Immutable;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Graph;

/// <summary>The cautions that ride on from the cells a cell reads: each once, and no more than a reader can take in, so that long chains of cautious cells do not pile them up.</summary>
internal static class InheritedCautions
{
    private const int Most = 64;

    private static readonly Caution More = new("More cautions than are listed here belong to the cells this one depends on; look at those.");

    /// <summary>Those to keep; where some are left out, the last one says so.</summary>
    public static ImmutableArray<Caution> Of(List<Caution> met)
    {
        if (met.Count == 0) return [];
        ImmutableArray<Caution> all = [.. met.Distinct().Where(caution => caution.Message != More.Message)];
        bool some = all.Length >= Most || met.Exists(caution => caution.Message == More.Message);
        return some ? [.. all.Take(Most - 1), More] : all;
    }
}
