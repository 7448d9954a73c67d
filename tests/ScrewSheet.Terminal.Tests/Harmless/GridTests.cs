using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Tests.Grid;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Tests.Harmless;

/// <summary>A workbook of hostile text at the grid: every page, every list, every question and every answer shows it harmlessly.</summary>
public sealed class GridTests
{
    private static readonly string[] Places = ["A1", "A2", .. Enumerable.Range(2, 38).Select(row => $"B{row}"), "D40", "D41", "E42", "D50", "D51", "E52", "D60", "D70", "H1", "H2", "I1", "I2"];

    public static TheoryData<string> Kinds => ["steering", "unseen", "quiet"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void EveryCell_ItsDetail_AndItsEntry(string kind)
    {
        using Walk walk = Open(kind, out string hostile);
        HashSet<string> found = [];
        foreach (string place in Places)
        {
            walk.Go(place);
            Look(walk, place, found);
            walk.Press(KeyName.Tab);
            Look(walk, place + ", reading", found);
            walk.Press(KeyName.PageDown);
            Look(walk, place + ", scrolled", found);
            walk.Press(KeyName.Escape, KeyName.Enter);
            Look(walk, place + ", entry", found);
            if (place is "A1" or "B4" or "B22")
            {
                walk.Press(KeyName.End).Type(" ");
                walk.Settle();
                Look(walk, place + ", typing", found);
            }
            walk.Press(KeyName.Escape, KeyName.Escape, KeyName.Escape);
        }
        walk.Type(">");
        Look(walk, "the other sheet", found);
        Assert.Empty(HostileBook.Marks(Place.Grid, hostile).Except(found));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void ListsAndPages(string kind)
    {
        using Walk walk = Open(kind, out string hostile);
        foreach (char command in "alf")
        {
            walk.Ctrl(command);
            if (command == 'f') walk.Type("q").Press(KeyName.Enter);
            for (int i = 0; i < (command == 'l' ? 3 : 70); i++)
            {
                Look(walk, $"list {command}");
                walk.Press(KeyName.Down);
            }
            Paste(walk, hostile);
            Look(walk, $"list {command}, narrowed");
            walk.Press(KeyName.Escape, KeyName.Escape);
        }
        walk.Type("?");
        Look(walk, "help");
        walk.Press(KeyName.Escape).Type(" ");
        Look(walk, "commands");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void QuestionsAndAnswers(string kind)
    {
        using Walk walk = Open(kind, out string hostile);
        // saving under another name is tried by NamesOfFiles, in the walk's own folder
        foreach (char command in "gfhmunt23")
        {
            foreach (string place in (string[])(command is 'm' or 'u' ? ["B3", "B33", "H1"] : ["B3"]))
            {
                walk.Go(place).Command(command);
                Look(walk, $"question {command}");
                Paste(walk, hostile);
                Look(walk, $"question {command}, typed");
                walk.Press(KeyName.Enter);
                Look(walk, $"question {command}, answered");
                Paste(walk, hostile);
                walk.Press(KeyName.Enter);
                walk.Settle();
                Look(walk, $"question {command}, answered twice");
                walk.Press(KeyName.Escape, KeyName.Escape, KeyName.Escape);
            }
        }
        foreach (char command in "5cxv<>.zzzyyye1")
        {
            walk.Command(command);
            Look(walk, $"command {command}");
            walk.Type("y").Press(KeyName.Escape);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Studies(string kind)
    {
        using Walk walk = Open(kind, out string hostile);
        foreach ((string place, string asked) in ((string, string)[])[("B33", "tbud"), ("B34", "b"), ("B4", "t"), ("B9", "t"), ("D41", "cp"), ("D51", "c"), ("D61", "r")])
        {
            foreach (char ask in asked)
            {
                walk.Go(place).Ctrl('t');
                Look(walk, $"{place}, asked");
                walk.Type(ask.ToString());
                for (int i = 0; i < 4; i++)
                {
                    walk.Settle();
                    Look(walk, $"{place}, {ask}");
                    if (i == 2) Paste(walk, hostile);
                    walk.Press(KeyName.Enter);
                }
                walk.Settle();
                Look(walk, $"{place}, {ask}, at the end");
                walk.Press(KeyName.Escape, KeyName.Escape, KeyName.Escape, KeyName.Escape).Ctrl('z');
            }
        }
        walk.Go("D41").Command('p');
        Look(walk, "plot of a table");
        walk.Press(KeyName.Escape).Go("I2").Shift(KeyName.Down);
        walk.Command('p');
        Look(walk, "plot of columns");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void NamesOfFiles(string kind)
    {
        string name = HostileText.InAName(HostileText.Kinds[kind]);
        using Walk walk = new("screwsheet 1\nsheet A\nA1 = 1 kN\n");
        string path = walk.At("q77z" + name + ".screwsheet");
        File.Copy(walk.At("book.screwsheet"), path);
        File.Copy(walk.At("book.screwsheet"), walk.At("shipped/q78z" + name + ".screwsheet"));
        using (var opened = walk.Start(path)) Seen.Only("title line", Painter.Of(opened.State).ToString());
        File.WriteAllText(walk.At("state/lately"), HostileText.InALine(path) + "\n");
        using (var start = walk.Start(null))
        {
            string page = Painter.Of(start.State).ToString();
            Seen.Only("start page", page);
            Assert.Contains("q78z", page, StringComparison.Ordinal);
            if (!name.Any(char.IsControl)) Assert.Contains("q77z", page, StringComparison.Ordinal);
        }
        walk.Enter("2 kN").Command('w');
        walk.Program.Handle(new Paste(path));
        walk.Press(KeyName.Enter);
        Look(walk, "saving over another file");
        walk.Command('w');
        walk.Program.Handle(new Paste(walk.At(name + "/other.screwsheet")));
        walk.Press(KeyName.Enter);
        Look(walk, "saving into a folder that is not there");
        walk.Command('w');
        walk.Program.Handle(new Paste(walk.At(name + "new.screwsheet")));
        walk.Press(KeyName.Enter);
        Look(walk, "saved");
    }

    private static Walk Open(string kind, out string hostile)
    {
        hostile = HostileText.Kinds[kind];
        return new Walk(HostileBook.Of(hostile), 160, 60);
    }

    private static void Paste(Walk walk, string text) => walk.Program.Handle(new Paste(text));

    private static void Look(Walk walk, string where, HashSet<string>? found = null)
    {
        string screen = walk.Screen;
        Seen.Only(where, screen);
        found?.UnionWith(HostileBook.Found(screen));
    }
}
