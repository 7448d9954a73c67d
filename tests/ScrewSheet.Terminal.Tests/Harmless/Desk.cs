using System.Text;
using ScrewSheet.Terminal.Tests.Grid;

namespace ScrewSheet.Terminal.Tests.Harmless;

/// <summary>A folder whose files hold hostile text and have hostile names, and a command line in it; whatever is printed is looked at.</summary>
internal sealed class Desk : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-hostile-").FullName;

    public Desk(string kind)
    {
        Hostile = HostileText.Kinds[kind];
        Book = File("book.screwsheet", HostileBook.Of(Hostile));
    }

    /// <summary>The text.</summary>
    public string Hostile { get; }

    /// <summary>A workbook full of it.</summary>
    public string Book { get; }

    /// <summary>The columns of the terminal.</summary>
    public int Width { get; init; } = 80;

    /// <summary>Puts a file there, under a name that holds the text too.</summary>
    public string File(string ending, string text)
    {
        string path = Named(ending);
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    /// <summary>A name that holds the text.</summary>
    public string Named(string ending) => Path.Combine(folder, HostileText.InAName(Hostile) + ending);

    /// <summary>Runs a command line; gives what stands on both streams.</summary>
    public string Text(params string[] arguments)
    {
        string what = arguments[0] + " " + string.Join(' ', arguments.Skip(1).Where(argument => !argument.StartsWith('/')));
        (string output, string error) = Run(arguments);
        Seen.Only(what, output);
        Seen.Only(what + ", messages", error);
        return output + error;
    }

    /// <summary>The same with the program's own colours.</summary>
    public void Coloured(params string[] arguments)
    {
        (string output, string error) = Run(arguments, colour: true);
        Seen.Only(arguments[0] + " in colour", output, coloured: true);
        Seen.Only(arguments[0] + " in colour, messages", error);
    }

    /// <summary>Runs a command line that prints JSON; gives its words.</summary>
    public string Json(params string[] arguments)
    {
        (string output, string error) = Run([.. arguments, "--format", "json"]);
        Seen.Only(arguments[0] + ", messages", error);
        return HarmlessFiles.Json(arguments[0], output);
    }

    /// <summary>Runs a command line that prints CSV; gives it.</summary>
    public string Csv(params string[] arguments)
    {
        (string output, string error) = Run([.. arguments, "--format", "csv"]);
        Seen.Only(arguments[0] + ", messages", error);
        return HarmlessFiles.Csv(arguments[0], output);
    }

    /// <summary>Runs a command line that writes a file; gives the file.</summary>
    public byte[] Written(string path, params string[] arguments)
    {
        Text(arguments);
        return System.IO.File.ReadAllBytes(path);
    }

    /// <summary>The same, as text.</summary>
    public string WrittenText(string path, params string[] arguments) => new UTF8Encoding(false, true).GetString(Written(path, arguments));

    /// <summary>Fails where words that a reader must find there are not.</summary>
    public void Finds(Place place, string words) => Assert.Empty(HostileBook.Marks(place, Hostile).Except(HostileBook.Found(words)));

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private (string Output, string Error) Run(string[] arguments, bool colour = false)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        int status = Program.Run(arguments, new Shell { Output = output, Error = error, Width = Width, Colour = colour, Calculator = () => Calculators.OfThread, Shipped = folder });
        Assert.InRange(status, 0, 2);
        return (output.ToString(), error.ToString());
    }
}
