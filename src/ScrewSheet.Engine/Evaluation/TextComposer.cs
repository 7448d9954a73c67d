using System.Collections.Immutable;
using System.Text;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Puts a composed text together.</summary>
internal sealed class TextComposer(ImmutableArray<TextPiece> pieces, ImmutableArray<Func<Frame, object>?> values)
{
    /// <summary>The longest text a cell may hold.</summary>
    public const int MaximumLength = 4096;

    public string Compose(Frame frame)
    {
        StringBuilder text = new();
        for (int i = 0; i < pieces.Length && text.Length <= MaximumLength; i++)
            text.Append(pieces[i].Value is { } value ? Shown(frame, value.Type, values[i]!(frame), pieces[i]) : pieces[i].Words);
        return Arithmetic.Text(text.ToString());
    }

    private static string Shown(Frame frame, CellType type, object value, TextPiece piece) =>
        ValueText.Format(Values.Wrap(type, value), piece.Format ?? OwnFormat(frame, piece), frame.Units).Joined;

    private static DisplayFormat? OwnFormat(Frame frame, TextPiece piece) => piece.Value is BoundReference reference && reference.Slot < frame.Formats.Length ? frame.Formats[reference.Slot] : null;
}
