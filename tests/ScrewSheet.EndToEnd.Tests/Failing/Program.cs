using ScrewSheet.FailingGrid;
using ScrewSheet.Terminal;
using ScrewSheet.Terminal.Grid;
using ScrewSheet.Terminal.Grid.Work;
using ScrewSheet.Workbooks.Expressions;

// the real grid over the real terminal, with one mistake put in: copying throws, here or on another thread; or a function of the library does
string place = args[0];
GridSurroundings surroundings = new()
{
    Library = FunctionLibrary.Of(typeof(Broken).Assembly),
    Shipped = Path.Combine(AppContext.BaseDirectory, "workbooks"),
    Remembered = Remembered.OfUser(),
};
return ScrewSheet.Terminal.Program.Run(args[1..], Shell.OfProcess(Console.Out, Console.Error, Composition.Calculator) with
{
    Grid = file =>
    {
        using GridProgram program = new(surroundings, file);
        program.Copied += _ =>
        {
            if (place == "here") throw new InvalidOperationException("a mistake put in on purpose");
            if (place == "elsewhere") new Thread(() => throw new InvalidOperationException("a mistake put in on purpose")).Start();
        };
        GridStart.Run(program);
    },
});
