namespace ScrewSheet.Terminal.Tests.Harmless;

/// <summary>Hostile text in every place of a workbook and in the names of files, through every verb and every form of output: nothing is obeyed, nothing is unseen, what the author wrote is found.</summary>
public sealed class CommandLineTests
{
    public static TheoryData<string> Kinds => [.. HostileText.Kinds.Keys];

    public static TheoryData<string> Seeable => ["steering", "unseen", "quiet", "markup"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Run_PrintsIt(string kind)
    {
        using Desk desk = new(kind);
        desk.Finds(Place.Run, desk.Text("run", desk.Book));
        desk.Finds(Place.Data, desk.Json("run", desk.Book));
        desk.Finds(Place.Data, desk.Csv("run", desk.Book));
    }

    [Theory]
    [MemberData(nameof(Seeable))]
    public void Run_InColour_OfParts_AndWithOtherGivens(string kind)
    {
        using Desk desk = new(kind) { Width = 24 };
        desk.Coloured("run", desk.Book);
        desk.Text("run", desk.Book, "--set", "given=9 kN", "--set", "text=\"" + HostileText.InQuotes(desk.Hostile) + "\"", "--cell", "joined", "--cell", "B22");
        desk.Text("check", desk.Book, desk.Book, desk.Named("missing"));
        desk.Coloured("check", desk.Book);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Studies_PrintIt(string kind)
    {
        using Desk desk = new(kind);
        desk.Finds(Place.WhatIf, desk.Text("what-if", desk.Book));
        desk.Finds(Place.WhatIf, desk.Json("what-if", desk.Book));
        desk.Csv("what-if", desk.Book);
        string book = desk.File("study.screwsheet", HostileBook.Small(desk.Hostile));
        string[] solve = ["solve", book, "--cell", "twice", "--equals", "17.2 kN", "--by", "given"], uncertainty = ["uncertainty", book, "--cell", "twice", "--samples", "1000"];
        foreach (string[] study in (string[][])[solve, uncertainty])
        {
            desk.Text(study);
            desk.Json(study);
            desk.Csv(study);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Handout_HoldsItAsWords(string kind)
    {
        using Desk desk = new(kind);
        string[] by = ["--author", desk.Hostile + "qa", "--date", desk.Hostile + "qd"];
        string html = desk.Named("out.html"), markdown = desk.Named("out.md");
        string words = HarmlessFiles.Html(desk.WrittenText(html, ["handout", desk.Book, "-o", html]));
        desk.Finds(Place.Handout, words);
        if (kind == "markup") Assert.Contains("<script>alert(1)</script></title><img src=x onerror=alert(1)>&lt;&#60;\"'`|*_~[x](javascript:x)", words, StringComparison.Ordinal);
        desk.Finds(Place.Handout, HarmlessFiles.Markdown(desk.WrittenText(markdown, ["handout", desk.Book, "-o", markdown])));
        HarmlessFiles.Html(desk.WrittenText(html, ["handout", desk.Book, "-o", html, "--blanks", "--replace", .. by]));
        HarmlessFiles.Markdown(desk.WrittenText(markdown, ["handout", desk.Book, "-o", markdown, "--blanks", "--replace", .. by]));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Export_HoldsItAsWords(string kind)
    {
        using Desk desk = new(kind);
        string xlsx = desk.Named("out.xlsx"), csv = desk.Named("out.csv");
        desk.Finds(Place.Xlsx, HarmlessFiles.Xlsx(desk.Written(xlsx, "export", desk.Book, "-o", xlsx)));
        foreach (string[] part in (string[][])[["--sheet", "Hostile"], ["--sheet", "Other"], ["--table", "Hostile.D40"], ["--table", "Hostile.D50"], ["--table", "Hostile.D60"]])
        {
            desk.Text(["export", desk.Book, "-o", csv, "--replace", .. part]);
            if (File.Exists(csv)) HarmlessFiles.Csv("export " + part[1], File.ReadAllText(csv));
        }
    }

    [Theory]
    [MemberData(nameof(Seeable))]
    public void Versions_ShowIt(string kind)
    {
        using Desk desk = new(kind);
        string later = desk.File("later.screwsheet", HostileBook.Later(desk.Hostile)), merged = desk.Named("merged.screwsheet");
        desk.Text("diff", desk.Book, later);
        desk.Coloured("diff", desk.Book, later);
        desk.Json("diff", desk.Book, later);
        HarmlessFiles.Markdown(desk.Text("diff", desk.Book, later, "--format", "md"));
        desk.Text("diff", "--git", desk.Book, desk.Book, "a", "b", later, "c", "d");
        desk.Text("diff", desk.Book, desk.Book);
        desk.Text("merge", desk.Book, desk.File("ours.screwsheet", HostileBook.Of("ours" + desk.Hostile)), later, "-o", merged);
        desk.Text("run", merged);
        desk.Text("check", merged);
        desk.Text("review", desk.Book, "--cell", "twice", "--by", "KM", "--date", "2026-11-25");
        desk.Text("keep", desk.Book);
        desk.Text("new", desk.Named("new.screwsheet"));
        desk.Text("new", desk.Named("new.screwsheet"));
    }

    [Theory]
    [MemberData(nameof(Seeable))]
    public void Import_TakesItInAsWords(string kind)
    {
        using Desk desk = new(kind);
        string field = "\"" + HostileText.InALine(desk.Hostile).Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
        string data = desk.File("data.csv", $"No.,Force [kN],{field},\"{field[1..^1]} [{field[1..^1]}]\"\n1,12.4,{field},1\n2,{field},{field},2\n3,12.6,x\n4,12.5,{field},{field}\n");
        string empty = desk.File("empty.csv", ""), book = desk.File("into.screwsheet", "screwsheet 1\nsheet A\nA1 \"x\"\n");
        desk.Text("import", data, "--into", book, "--sheet", "Tests");
        desk.Text("run", book);
        desk.Text("import", data, "--into", book, "--sheet", "S" + desk.Hostile);
        desk.Text("import", data, "--into", book, "--sheet", "Rows", "--rows", desk.Hostile);
        desk.Text("import", empty, "--into", book, "--sheet", "Empty");
        desk.Text("import", desk.File("one.csv", field + "\n"), "--into", book, "--sheet", "One");
        desk.Text("import", desk.File("open.csv", "a,b\n1,\"" + HostileText.InALine(desk.Hostile)), "--into", book, "--sheet", "Two");
        desk.Text("import", desk.Named("nothing.csv"), "--into", book, "--sheet", "Three");
    }

    public static TheoryData<string> Lines =>
    [
        "{0}", "{0} x", "run", "run {0}", "run BOOK {0}", "run BOOK --{0}", "run BOOK --format {0}", "run BOOK --sheet {0}", "run BOOK --cell {0}", "run BOOK --cell {0}.{0}", "run BOOK --set {0}", "run BOOK --set {0}=1",
        "run BOOK --set given={0}", "run BOOK --set text={0}", "check {0}", "keep {0}", "what-if BOOK --vary {0} --show twice", "what-if BOOK --vary given:{0} --show twice", "what-if BOOK --vary given:1kN,2kN --show {0}",
        "solve BOOK --cell {0} --equals 1 --by given", "solve BOOK --cell twice --equals {0} --by given", "solve BOOK --cell twice --equals 1 --by {0}", "solve BOOK --cell twice --equals 1 --by given --between {0} --and {0}",
        "uncertainty BOOK --cell {0}", "uncertainty BOOK --cell twice --samples {0}", "uncertainty BOOK --cell twice --seed {0}", "functions {0}", "functions {0} {0}", "new {0}/{0}", "new BOOK --from {0}",
        "export BOOK -o {0}", "export BOOK -o {0}/x.csv --sheet {0}", "export BOOK -o OUT/out.csv --table {0}", "export BOOK -o OUT/out.csv --table {0}.D40", "handout BOOK -o {0}", "handout BOOK -o {0}/x.html",
        "diff {0} BOOK", "diff {0} {0}", "diff --git {0} a b c {0} d e", "merge {0} {0} {0} -o {0}", "merge BOOK {0} BOOK -o OUT/x", "review BOOK --cell {0} --by KM --date 2026-11-25", "review BOOK --cell twice --by {0} --date 2026-11-25", "review BOOK --cell twice --by KM --date {0}",
        "import {0} --into BOOK --sheet X", "import BOOK --into {0} --sheet X", "import BOOK --into BOOK --sheet {0}", "import BOOK --into BOOK --sheet X --decimal {0}", "import BOOK --into BOOK --sheet X --header {0}",
    ];

    [Theory]
    [MemberData(nameof(Lines))]
    public void WhateverIsTyped_TheAnswerIsHarmless(string line)
    {
        foreach (string kind in (string[])["steering", "unseen", "quiet", "markup"])
        {
            using Desk desk = new(kind);
            string book = desk.File("small.screwsheet", "screwsheet 1\nsheet Hostile\nA1 given = 3 kN ± 1 kN\nA2 twice => 2 * given\nA3 text = \"a\"\nwhat-if D40\n  vary given: 1 kN, 2 kN\n  show twice\n");
            desk.Text([.. line.Split(' ').Select(word => word.Replace("OUT", Path.GetDirectoryName(book)!, StringComparison.Ordinal).Replace("{0}", HostileText.InALine(desk.Hostile).Replace("\0", "", StringComparison.Ordinal), StringComparison.Ordinal).Replace("BOOK", book, StringComparison.Ordinal))]);
        }
    }

    [Theory]
    [InlineData("screwsheet {R}")]
    [InlineData("screwsheet 2{R}")]
    [InlineData("{R}")]
    [InlineData("screwsheet 1\n{R} x\nsheet A")]
    [InlineData("screwsheet 1\nx{R}")]
    public void AFileThatIsRefused_IsRefusedInPlainWords(string text)
    {
        foreach (string kind in HostileText.Kinds.Keys)
        {
            using Desk desk = new(kind);
            string path = desk.File("refused.screwsheet", text.Replace("{R}", HostileText.InALine(desk.Hostile), StringComparison.Ordinal));
            foreach (string verb in (string[])["run", "check", "keep"]) desk.Text(verb, path);
        }
    }
}
