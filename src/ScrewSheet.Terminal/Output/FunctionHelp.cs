using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Output;

/// <summary>Everything the declaration of one library function says, for a reader who is about to use it.</summary>
internal sealed class FunctionHelp(LibraryFunction function, int width)
{
    /// <summary>The lines.</summary>
    public IEnumerable<StyledLine> Lines() => FunctionFacts.Of(function).SelectMany(Entry).Select(line => new StyledLine(line)).Prepend(new StyledLine(function.Name, Tone.Strong));

    private IEnumerable<string> Entry(FunctionFact fact) => Wrapping.Hanging("  " + fact.Word.PadRight(9), PlainText.Of(fact.Text), width);
}
