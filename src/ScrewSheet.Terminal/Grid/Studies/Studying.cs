using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>What the reader is doing about a study. A closed family.</summary>
internal abstract record Studying : Mode;

/// <summary>Answering one question of several with a line of text.</summary>
/// <param name="Title">What is being put together.</param>
/// <param name="SoFar">What was answered before.</param>
/// <param name="Question">The question.</param>
/// <param name="Typed">The answer so far.</param>
/// <param name="Hints">What may be answered.</param>
/// <param name="Answer">What the answer to this question does; it may ask again.</param>
internal sealed record Stepping(string Title, ImmutableArray<string> SoFar, string Question, TypedText Typed, ImmutableArray<string> Hints, Func<GridState, Stepping, string, GridState> Answer) : Studying
{
    /// <summary>Why the last answer cannot be taken; null where there was none.</summary>
    public string? Trouble { get; init; }
}

/// <summary>Waiting for a study.</summary>
/// <param name="Ticket">Which.</param>
/// <param name="Share">How much of it is done, from 0 to 1; NaN where that is not known.</param>
internal sealed record Working(StudyTicket Ticket, double Share) : Studying;

/// <summary>Reading what a study found.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Lines">Its lines in a width.</param>
/// <param name="Actions">What can be done with it: letter, meaning, what it does.</param>
/// <param name="Top">Its first line on the screen, from 0.</param>
internal sealed record Finding(string Title, Func<int, IReadOnlyList<StyledLine>> Lines, ImmutableArray<(char Letter, string Meaning, Func<GridState, GridState> Do)> Actions, int Top = 0) : Studying;

/// <summary>Does something of these studies when an item of a list is chosen.</summary>
/// <param name="Do">What.</param>
internal sealed record Take(Func<GridState, GridState> Do) : Choice;
