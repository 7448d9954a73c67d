using System.Text;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Gathers the lines of a conflict as they are read.</summary>
internal sealed class ConflictLines(FileLine first, int number)
{
    private readonly StringBuilder text = new(first.Text);
    private LineEnd end = first.End;

    /// <summary>The number of the first line.</summary>
    public int Number => number;

    /// <summary>Everything so far as one line with line ends in it, which is written back as it stands.</summary>
    public FileLine Whole => new(text.ToString(), end);

    /// <summary>Takes an indented line.</summary>
    public void Add(FileLine line)
    {
        text.Append(end == LineEnd.CrLf ? "\r\n" : "\n").Append(line.Text);
        end = line.End;
    }
}
