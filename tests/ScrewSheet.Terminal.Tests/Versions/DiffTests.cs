using System.Text.Json;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Tests.Versions;

/// <summary>What <c>diff</c> prints, and how it ends.</summary>
public sealed class DiffTests
{
    private const string Before = """
        screwsheet 1
        title Moments
        made with 0.0.9

        function Torque M(Force f, Length l) => f * l

        sheet Placement
        A1 "Peak"
        B1 peak [kN] = 8.5 kN ± 0.5 kN
        A2 "Exposed"
        B2 exposed [mm] = 40 mm
        B3 Torque moment [N·m, 1 decimal] => M(peak, B2) gives 339.0 N·m
        B4 strong => B3 < 350 N·m gives holds
        B5 far => B1 / 2 gives 4.24 kN
        B6 lost => B3 / B2

        """;

    private const string After = """
        screwsheet 1
        title Moments
        made with 0.1.0

        function Torque M(Force f, Length l) => f * l

        sheet Placement
        A1 "Peak"
        B1 peak [kN] = 8.5 kN ± 0.6 kN // measured | twice
        A2 "New"
        A3 "Exposed"
        B3 exposed [mm] = 45 mm
        B4 Torque moment [N·m, 1 decimal] => M(peak, B3) gives 382.5 N·m
        B5 strong => B4 < 350 N·m gives holds
        B6 far => B1 / 2 gives 4.25 kN
        B7 lost => B4 / B9

        """;

    [Theory]
    [InlineData("text"), InlineData("md"), InlineData("json")]
    public void WhatIsPrinted_IsThatPage(string format)
    {
        using Session session = Make();
        Assert.Equal(0, session.Run("diff", session.File("a.screwsheet", Before), session.File("b.screwsheet", After), "--format", format));
        Assert.Equal("", session.Error);
        string output = session.Output.Replace(session.Folder + "/", "", StringComparison.Ordinal);
        if (format == "json") Assert.Equal(JsonValueKind.Object, JsonDocument.Parse(output).RootElement.ValueKind);
        GoldenFile.Holds($"tests/ScrewSheet.Terminal.Tests/Pages/diff.{(format == "text" ? "txt" : format)}", output);
    }

    [Fact]
    public void VersionsThatSayTheSame_AreSaidTo()
    {
        using Session session = Make();
        Assert.Equal(0, session.Run("diff", session.File("a.screwsheet", Before), session.File("b.screwsheet", Before.Replace("B2 exposed", "B2  exposed"))));
        Assert.Equal("a.screwsheet → b.screwsheet\n\nThe two versions say the same.\n", session.Output);
    }

    [Fact]
    public void AResultThatOnlyTheLibraryComputedOtherwise_IsNoConsequence()
    {
        using Session session = Make();
        session.Run("diff", session.File("a.screwsheet", Before), session.File("b.screwsheet", Before.Replace("0.0.9", "0.1.0").Replace("4.24", "4.25")));
        Assert.Equal(
            """
            a.screwsheet → b.screwsheet

            What differs in the library
              made with 0.0.9 → 0.1.0
              Placement.B5 far: kept as 4.24 kN → 4.25 kN (this version computes 4.25 kN
              from either)

            1 result kept otherwise by another version of the program.

            """, session.Output);
    }

    [Fact]
    public void TextFromAFile_IsHarmless()
    {
        using Session session = Make();
        session.Run("diff", session.File("a.screwsheet", "screwsheet 1\nsheet A\nA1 \"x\"\n"), session.File("b.screwsheet", "screwsheet 1\nsheet A\nA1 \"<b>|\u202E*\\u001b[2J\"\n"), "--format", "md");
        Assert.Contains("&lt;b\\>\\|", session.Output, StringComparison.Ordinal);
        Assert.DoesNotContain(session.Output, c => c is '<' or '\u202E' or '\e');
    }

    [Fact]
    public void WhatCannotBeCompared_IsASentenceAndEndsWith2()
    {
        (string[] Args, string Sentence)[] cases =
        [
            (["a", "missing"], "There is no file missing. Check the spelling and the folder."),
            (["a", "folder"], "folder is a folder, not a workbook. Name a file inside it."),
            (["a", "other"], "other: The first line does not read screwsheet 1, so this is no workbook. Open another file, or put the line back. (line 1, column 1)"),
            (["a", "a"], "Both names mean the same file, a. Name two versions of it."),
            (["a", "b", "c"], "Name two files: screwsheet diff A B."),
            (["a", "b", "--git"], "--git is for git, which gives seven arguments; docs/versions.md says how to set it up. To compare two files, leave it out."),
        ];
        foreach ((string[] args, string sentence) in cases)
        {
            using Session session = Make();
            session.File("a", Before);
            session.File("b", After);
            session.File("other", "a,b\n1,2\n");
            Directory.CreateDirectory(session.At("folder"));
            Assert.Equal(2, session.Run(["diff", .. args.Select(arg => arg.StartsWith('-') ? arg : session.At(arg))]));
            Assert.Equal($"screwsheet: {sentence}\n", session.Error);
        }
    }

    private static Session Make() => new() { Calculator = new EngineCalculator(FunctionLibrary.Of()) };
}
