using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>A list over the whole screen: title, filter, items, what is said about the chosen one.</summary>
internal static class ListPicture
{
    private const int FirstItem = 2;
    private const int MoreRows = 4;

    /// <summary>All lines but the last, which shows the keys.</summary>
    public static IEnumerable<ScreenLine> Lines(GridState state, Listing listing)
    {
        int width = state.Width, rows = Rows(state), chosen = Math.Clamp(listing.Chosen, 0, Math.Max(0, listing.Shown.Length - 1)), first = First(state, listing);
        ImmutableArray<Item> shown = listing.Shown;
        yield return new LineBuilder(width).Add($" {listing.Title}", Ink.FrameHere).Add($"  {(shown.Length == listing.Items.Length ? $"{shown.Length}" : $"{shown.Length} of {listing.Items.Length}")}", Ink.Frame).Line(Ink.Frame);
        yield return new LineBuilder(width).Add(listing.Filter.Length == 0 ? " type to narrow the list" : $" only with: {PlainText.Of(listing.Filter)}", listing.Filter.Length == 0 ? Ink.Faint : Ink.Strong).Line();
        int wide = Math.Min(width / 3, shown.IsEmpty ? 0 : shown.Max(item => DisplayWidth.Of(item.Word)));
        for (int i = first; i < first + rows; i++)
        {
            if (i >= shown.Length)
            {
                yield return new LineBuilder(width).Line();
                continue;
            }
            bool here = i == chosen;
            Ink word = shown[i].IsBad ? Ink.Bad : Ink.Faint;
            yield return new LineBuilder(width).Add(here ? " ▸ " : "   ", Ink.Key).Add(Fit.Left(shown[i].Word, wide), here ? Ink.Here : word).Add("  ", here ? Ink.Here : Ink.Plain).Add(shown[i].Text, here ? Ink.Here : Ink.Plain).Line();
        }
        yield return ScreenLine.Of(new string('─', width), Ink.Frame);
        IReadOnlyList<string> more = shown.IsEmpty ? ["Nothing fits."] : More(shown[chosen], width);
        for (int i = 0; i < MoreRows; i++) yield return new LineBuilder(width).Add(" " + (i < more.Count ? more[i] : "")).Line();
    }

    /// <summary>The item on a line of the screen, or -1.</summary>
    public static int ItemAt(GridState state, Listing listing, int line)
    {
        int at = First(state, listing) + line - FirstItem;
        return line >= FirstItem && line < FirstItem + Rows(state) && at < listing.Shown.Length ? at : -1;
    }

    private static int Rows(GridState state) => Math.Max(1, state.Height - FirstItem - MoreRows - 2);

    private static int First(GridState state, Listing listing) => Math.Clamp(listing.Chosen - Rows(state) + 1, 0, Math.Max(0, listing.Shown.Length - Rows(state)));

    /// <summary>The whole item where its line has no room for it, then what is said about it.</summary>
    private static IReadOnlyList<string> More(Item item, int width)
    {
        bool cut = DisplayWidth.Of(item.Word) + DisplayWidth.Of(item.Text) + 5 > width;
        return Wrapping.Lines(cut ? $"{item.Text} {item.More}".Trim() : item.More, Math.Max(8, width - 2));
    }
}
