namespace ScrewSheet.Terminal.Tests;

/// <summary>Runs command lines in a folder of their own, as a person would, with what is printed kept for looking at.</summary>
internal sealed class Session : IDisposable
{
    private readonly StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };

    /// <summary>The folder the session's files are in.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("screwsheet-").FullName;

    /// <summary>What stands for the engine.</summary>
    public ICalculator Calculator { get; init; } = new FakeCalculator();

    /// <summary>The width of the terminal.</summary>
    public int Width { get; init; } = 80;

    /// <summary>Whether it shows colours.</summary>
    public bool Colour { get; init; }

    /// <summary>What was printed on the output stream, with the session's folder taken out.</summary>
    public string Output => output.ToString().Replace(Folder + "/", "", StringComparison.Ordinal);

    /// <summary>What was printed on the error stream, with the session's folder taken out.</summary>
    public string Error => error.ToString().Replace(Folder + "/", "", StringComparison.Ordinal);

    /// <summary>Puts a file into the folder and gives its path.</summary>
    public string File(string name, string text)
    {
        string path = At(name);
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    /// <summary>A path in the folder.</summary>
    public string At(string name) => Path.Combine(Folder, name);

    /// <summary>Runs one command line.</summary>
    public int Run(params string[] args) => Program.Run(args, new Shell { Output = output, Error = error, Width = Width, Colour = Colour, Calculator = () => Calculator, Shipped = At("shipped") });

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
