using System.Collections.Immutable;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>What the reader is doing. A closed family.</summary>
internal abstract record Mode;

/// <summary>Moving through the grid.</summary>
internal sealed record Browsing : Mode;

/// <summary>Typing into a cell.</summary>
/// <param name="Entry">The line.</param>
internal sealed record Entering(Entry Entry) : Mode;

/// <summary>Reading the detail: choosing one of the cells it speaks of, scrolling.</summary>
/// <param name="Chosen">Which, from 0.</param>
/// <param name="Top">The first line shown, from 0; null where that follows the chosen cell.</param>
internal sealed record Linking(int Chosen, int? Top = null) : Mode;

/// <summary>Moving the selected rows and columns with the arrows.</summary>
internal sealed record Shifting : Mode;

/// <summary>Choosing a command by its letter.</summary>
internal sealed record Commanding : Mode;

/// <summary>Choosing from a list that typing narrows.</summary>
/// <param name="Title">What it lists.</param>
/// <param name="Items">All of it.</param>
/// <param name="Chosen">Which of those shown, from 0.</param>
/// <param name="Filter">What was typed.</param>
/// <param name="IsStart">True for the page the program begins with, which cannot be left for a grid.</param>
internal sealed record Listing(string Title, ImmutableArray<Item> Items, int Chosen = 0, string Filter = "", bool IsStart = false) : Mode
{
    /// <summary>Those that hold what was typed.</summary>
    public ImmutableArray<Item> Shown => Filter.Length == 0 ? Items : [.. Items.Where(item => item.Has(Filter))];
}

/// <summary>An item of a list.</summary>
/// <param name="Word">What sort it is, in a word; may be empty.</param>
/// <param name="Text">What it says.</param>
/// <param name="More">What is said about it when it is chosen.</param>
/// <param name="Choice">What Enter does.</param>
/// <param name="IsBad">True where it tells of something wrong.</param>
internal sealed record Item(string Word, string Text, string More, Choice Choice, bool IsBad = false)
{
    /// <summary>True where it holds the word.</summary>
    public bool Has(string word) => Text.Contains(word, StringComparison.OrdinalIgnoreCase) || Word.Contains(word, StringComparison.OrdinalIgnoreCase) || More.Contains(word, StringComparison.OrdinalIgnoreCase);
}

/// <summary>What choosing an item does. A closed family.</summary>
internal abstract record Choice;

/// <summary>Goes to a cell.</summary>
/// <param name="Id">The cell.</param>
internal sealed record GoTo(CellId Id) : Choice;

/// <summary>Puts a function into the cell under the cursor.</summary>
/// <param name="Call">The call as it is put in.</param>
internal sealed record PutIn(string Call) : Choice;

/// <summary>Begins something outside.</summary>
/// <param name="Effect">What.</param>
internal sealed record Begin(Effect Effect) : Choice;

/// <summary>Begins a new workbook.</summary>
internal sealed record BeginNew : Choice;

/// <summary>Says something that leads nowhere.</summary>
internal sealed record Nothing : Choice;

/// <summary>Answering a question with a line of text.</summary>
/// <param name="Question">The question.</param>
/// <param name="Typed">The answer so far.</param>
/// <param name="Hint">What may be answered.</param>
/// <param name="Answer">What the answer does.</param>
internal sealed record Asking(string Question, TypedText Typed, string Hint, Func<GridState, string, GridState> Answer) : Mode;

/// <summary>Answering a question with one key.</summary>
/// <param name="Question">The question.</param>
/// <param name="Answers">Letter, what it means, what it does.</param>
internal sealed record Confirming(string Question, ImmutableArray<(char Letter, string Meaning, Func<GridState, GridState> Do)> Answers) : Mode;

/// <summary>Looking at a plot.</summary>
/// <param name="Plot">What is drawn.</param>
internal sealed record Plotting(Plot Plot) : Mode;

/// <summary>Reading a page.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Page">Which.</param>
/// <param name="Top">Its first line on the screen, from 0.</param>
/// <param name="After">What the reader was doing before.</param>
internal sealed record Reading(string Title, PageName Page, int Top, Mode After) : Mode;

/// <summary>Pages to read.</summary>
internal enum PageName
{
    /// <summary>Keys, marks, cautions.</summary>
    Help,

    /// <summary>What the reader must know before anything else.</summary>
    Cautions,
}
