using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>The page the program begins with when no file is named.</summary>
internal static class StartPage
{
    /// <summary>Its items: a new workbook, files opened lately, workbooks that come with the program.</summary>
    public static ImmutableArray<Item> Items(IEnumerable<string> recent, IEnumerable<string> shipped) =>
    [
        new Item("new", "An empty workbook", "It gets its file when it is saved first.", new BeginNew()),
        .. recent.Select(path => new Item("lately", PlainText.Of(path), "A file opened lately.", new Begin(new OpenFile(path)))),
        .. shipped.Select(name => new Item("example", PlainText.Of(name), "Opens a copy without a file; put your own givens in before you read its results.", new Begin(new OpenShipped(name)))),
    ];

    /// <summary>The page.</summary>
    public static GridState Show(GridState state) => state with { Mode = new Listing("Open a workbook", state.StartItems, IsStart: true) };

    /// <summary>With an empty workbook.</summary>
    public static GridState New(GridState state) => Open(state, Session.Open(NewWorkbook.Empty(""), null, ReadOnlyMemory<byte>.Empty));

    /// <summary>With an opened one.</summary>
    public static GridState Open(GridState state, Session session)
    {
        Mode mode = state.Mode is Reading { Page: PageName.Cautions } reading ? reading with { After = new Browsing() } : new Browsing();
        return (state with { Session = null, Mode = mode }).With(session);
    }
}
