using System.Text;
using CsCheck;
using ScrewSheet.Terminal.Grid.Keys;
using ScrewSheet.Terminal.Grid.Recovery;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Tests.Files;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Terminal.Tests.Grid.Recovery;

/// <summary>Random keys, then a kill: what is offered is the workbook as it stood, to the byte.</summary>
public sealed class KilledAfterEdits : IDisposable
{
    private const string Save = "save", Settle = "settle";

    // what a reader may do, each as keys; "⏎" is Enter, "⌫" Delete, "^" Ctrl, "⇧" Shift with the arrow down
    private static readonly string[] Deeds =
    [
        "5 kN⏎", "6.5 kN ± 0.5 kN⏎", "load [kN] = 8 kN⏎", "=> A1 * 2⏎", "=> load * 2⏎", "words⏎", "⏎ // remark⏎", "⌫", "→", "↓", "←", "↑", "⇧⇧", "⇧⇧ d", "⇧ i", " o", " j", " k", "^z", "^z^z", "^y", "⇧^c", "⇧^x", "^v", " nNew⏎", "^gB2⏎",
        " mpull⏎", " ukN, 2 decimals⏎", " 1", " +", " t⏎", ">", "<", " h5⏎7⏎", " 4↓⏎", Save, Settle, Settle,
    ];

    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-random-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData(0)]
    [InlineData(Journals.SmallText)]
    public void KilledAfterAnyEdits_WhatIsOfferedIsTheWorkbookAsItStood(int small)
    {
        int offered = 0, number = 0;
        Gen.OneOf([.. Deeds.Select(Gen.Const)]).Array[1, 40].Sample(deeds =>
        {
            string place = Path.Combine(folder, $"{++number}");
            GridState state = new GridState { Lexicon = new Lexicon(() => Walk.Library), Mode = new Browsing() }.With(Open(Book.Text));
            Input? trouble = null;
            using (JournalKeeper keeper = new(new Journals(place, CutDisk.Whole(), small), said => trouble = said))
            {
                foreach (string deed in deeds) state = Do(state, deed, keeper);
                Assert.True(keeper.Settle(TimeSpan.FromSeconds(30)));
            }
            Assert.Null(trouble);
            Journals journals = new(place);
            FoundJournal? found = journals.Found().SingleOrDefault();
            Assert.Equal(state.Open.IsUnsaved, found is not null);
            if (found is null) return;
            offered++;
            using LeftWork left = journals.Claim(found.Id)!;
            Assert.False(left.IsDamaged);
            Assert.Equal(Encoding.UTF8.GetString(WorkbookText.Write(state.Open.Workbook)), Encoding.UTF8.GetString(WorkbookText.Write(left.Workbook!)));
        }, iter: 150, threads: 1);
        Assert.True(offered > 75, $"{offered}");
    }

    private static ScrewSheet.Terminal.Grid.State.Session Open(string text) => ScrewSheet.Terminal.Grid.State.Session.Open(Example.Read(text), "/nowhere/book", Encoding.UTF8.GetBytes(text));

    private static GridState Do(GridState state, string deed, JournalKeeper keeper)
    {
        if (deed == Settle)
        {
            Assert.True(keeper.Settle(TimeSpan.FromSeconds(30)));
            return state;
        }
        if (deed == Save) return Noted(state with { Session = state.Open with { Saved = state.Open.Workbook, Bytes = WorkbookText.Write(state.Open.Workbook) } }, keeper);
        bool ctrl = false;
        foreach (Rune rune in deed.EnumerateRunes())
        {
            string key = rune.ToString();
            if (key == "^")
            {
                ctrl = true;
                continue;
            }
            state = Noted(Dispatch.Next(state, Of(key, ctrl)), keeper);
            ctrl = false;
        }
        // whatever was begun and not ended is left
        for (int i = 0; i < 3 && state.Mode is not Browsing; i++) state = Noted(Dispatch.Next(state, new Press(KeyName.Escape)), keeper);
        return state;
    }

    private static Press Of(string key, bool ctrl) => key switch
    {
        "⏎" => new Press(KeyName.Enter),
        "⌫" => new Press(KeyName.Delete),
        "→" => new Press(KeyName.Right),
        "←" => new Press(KeyName.Left),
        "↑" => new Press(KeyName.Up),
        "↓" => new Press(KeyName.Down),
        "⇧" => new Press(KeyName.Down, Shift: true),
        _ => new Press(KeyName.Text, key, Ctrl: ctrl),
    };

    private static GridState Noted(GridState state, JournalKeeper keeper)
    {
        keeper.Note(state.Open);
        return state;
    }
}
