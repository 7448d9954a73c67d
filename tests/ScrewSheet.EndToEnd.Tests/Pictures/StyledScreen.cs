using System.Globalization;
using System.Text;

namespace ScrewSheet.EndToEnd.Tests.Pictures;

/// <summary>How a piece of the screen looks.</summary>
internal readonly record struct Look(string? Colour, bool IsBold, bool IsFaint, bool IsReversed, bool IsUnderlined)
{
    private static readonly string[] Sixteen = ["#222222", "#b02a2a", "#2f7d32", "#8a6d00", "#2a56b0", "#8a2f8a", "#00777a", "#666666", "#777777", "#d03838", "#3c9a40", "#a88500", "#3a6ad0", "#a83aa8", "#009498", "#999999"];

    /// <summary>With what one code of styles asks for.</summary>
    public Look With(string code)
    {
        int[] numbers = [.. code.Split(';').Select(piece => piece.Length == 0 ? 0 : int.Parse(piece, CultureInfo.InvariantCulture))];
        Look look = this;
        for (int i = 0; i < numbers.Length; i++)
        {
            if (numbers[i] is 38 or 48)
            {
                int length = numbers[i + 1] == 2 ? 5 : 3;
                if (numbers[i] == 38) look = look with { Colour = length == 5 ? $"#{numbers[i + 2]:x2}{numbers[i + 3]:x2}{numbers[i + 4]:x2}" : Sixteen[numbers[i + 2] % 16] };
                i += length - 1;
            }
            else look = look.With(numbers[i]);
        }
        return look;
    }

    private Look With(int number) => number switch
    {
        0 => default,
        1 => this with { IsBold = true },
        2 => this with { IsFaint = true },
        4 => this with { IsUnderlined = true },
        7 => this with { IsReversed = true },
        22 => this with { IsBold = false, IsFaint = false },
        24 => this with { IsUnderlined = false },
        27 => this with { IsReversed = false },
        39 => this with { Colour = null },
        >= 30 and <= 37 => this with { Colour = Sixteen[number - 30] },
        >= 90 and <= 97 => this with { Colour = Sixteen[number - 82] },
        _ => this,
    };
}

/// <summary>The screen as tmux hands it out, in pieces of one look.</summary>
internal static class StyledScreen
{
    /// <summary>The pieces of each line.</summary>
    public static IReadOnlyList<IReadOnlyList<(string Text, Look Look)>> Read(string captured)
    {
        List<IReadOnlyList<(string, Look)>> lines = [];
        Look look = default;
        foreach (string line in captured.TrimEnd('\n').Split('\n')) lines.Add(Line(line, ref look));
        return lines;
    }

    private static List<(string, Look)> Line(string line, ref Look look)
    {
        List<(string, Look)> pieces = [];
        StringBuilder text = new();
        for (int i = 0; i < line.Length; i++)
        {
            if (line[i] != '\e')
            {
                // shifted to another set of characters and back
                if (line[i] is not ('\x0e' or '\x0f')) text.Append(line[i]);
                continue;
            }
            int end = line.IndexOf('m', i);
            if (text.Length > 0) pieces.Add((text.ToString(), look));
            text.Clear();
            look = look.With(line[(i + 2)..end]);
            i = end;
        }
        if (text.Length > 0) pieces.Add((text.ToString(), look));
        return pieces;
    }
}
