using ScrewSheet.Terminal;

namespace ScrewSheet.Exports.Tests.Support;

/// <summary>Runs <c>export</c> as a person would, in a folder of its own.</summary>
internal sealed class ExportSession : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-").FullName;
    private readonly StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };

    public ExportSession(string workbook) => File.WriteAllText(At("book.screwsheet"), workbook);

    public string Output => output.ToString().Replace(folder + "/", "", StringComparison.Ordinal);

    public string Error => error.ToString().Replace(folder + "/", "", StringComparison.Ordinal);

    public string At(string name) => Path.Combine(folder, name);

    public string Text(string name) => File.ReadAllText(At(name));

    /// <summary>The status of <c>export book.screwsheet -o OUT …</c>.</summary>
    public int Export(string name, params string[] more) =>
        Program.Run(["export", At("book.screwsheet"), "-o", At(name), .. more], new Shell { Output = output, Error = error, Calculator = Composition.Calculator });

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
