using System.Diagnostics.CodeAnalysis;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Studies;

/// <summary>What became of a study: its answer, or why it cannot be done.</summary>
/// <typeparam name="T">The answer.</typeparam>
public sealed class StudyOutcome<T> where T : class
{
    private StudyOutcome(T? answer, Fault? fault) => (Answer, Fault) = (answer, fault);

    /// <summary>The answer, or null.</summary>
    public T? Answer { get; }

    /// <summary>Why there is none, or null.</summary>
    public Fault? Fault { get; }

    /// <summary>True where there is an answer.</summary>
    [MemberNotNullWhen(true, nameof(Answer))]
    [MemberNotNullWhen(false, nameof(Fault))]
    public bool IsAnswered => Answer is not null;

    /// <summary>An answer.</summary>
    public static implicit operator StudyOutcome<T>(T answer) => new(answer, null);

    /// <summary>No answer.</summary>
    public static implicit operator StudyOutcome<T>(Fault fault) => new(null, fault);
}

/// <summary>How often a caution rode along.</summary>
/// <param name="Sentence">The caution, without the value that caused it.</param>
/// <param name="Count">In how many entries or draws.</param>
public sealed record CautionCount(string Sentence, long Count);

/// <summary>How often there was a fault instead of a value.</summary>
/// <param name="Fault">The first of them.</param>
/// <param name="Count">How many.</param>
public sealed record FaultCount(Fault Fault, long Count);

/// <summary>How the scenarios of a study are worked out.</summary>
public enum StudyMethod
{
    /// <summary>By kernel where there are enough scenarios to pay for compiling one and every operation has a form in it; cell by cell otherwise.</summary>
    Automatic,

    /// <summary>By kernel wherever that is possible.</summary>
    Kernel,

    /// <summary>Cell by cell, with the code every calculation uses.</summary>
    CellByCell,
}
