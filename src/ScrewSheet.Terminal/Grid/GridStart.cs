using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.Toolkit;
using ScrewSheet.Terminal.Grid.Work;

namespace ScrewSheet.Terminal.Grid;

/// <summary>Opens the grid.</summary>
internal static class GridStart
{
    /// <summary>With a file, or on the start page.</summary>
    /// <exception cref="UserMistake">There is no terminal.</exception>
    public static void Open(WorkbookFile? file)
    {
        GridSurroundings surroundings = new() { Library = Composition.Library(), Shipped = Path.Combine(AppContext.BaseDirectory, "workbooks"), Remembered = Remembered.OfUser() };
        using GridProgram program = new(surroundings, file);
        Host.Run(program);
    }
}
