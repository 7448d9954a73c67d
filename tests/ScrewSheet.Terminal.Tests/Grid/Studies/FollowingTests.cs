using CsCheck;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using GridSession = ScrewSheet.Terminal.Grid.State.Session;

namespace ScrewSheet.Terminal.Tests.Grid.Studies;

public sealed class FollowingTests
{
    private static readonly (string At, string Line)[] Lines =
    [
        ("A1", "peak [kN] = 6 kN"), ("A1", "peak [kN] = 8 kN ± 0.5 kN"), ("A1", "peak [kN] = 3 N"), ("A1", "force [kN] = 8 kN"), ("A2", "exposed [mm] = 30 mm within 0 mm to 50 mm"),
        ("A2", "exposed [mm] = 40 mm within 0 mm to 120 mm"), ("A2", "exposed [m] = 1 kN"), ("A3", "Torque moment [N·m, 1 decimal] => 2 * peak * exposed"), ("A3", "Torque moment [kN·m] => peak * exposed"),
        ("A3", "moment => peak + exposed"), ("A4", "strong => moment < 300 N·m"), ("A5", "share => other / (peak - 4 kN) * 1 kN"), ("A6", "other = 5"), ("A6", "other = 0"), ("E4", "= 3"), ("E4", ""), ("A5", ""), ("B7", "= 4"),
    ];

    [Fact]
    public void AfterAnyChanges_EveryTableShowsWhatItWouldShowAfresh() => Gen.Int[0, Lines.Length + 2].Array[1, 5].Sample(steps =>
    {
        using Walk walk = StudyBook.Open();
        foreach (int step in steps)
        {
            if (step < Lines.Length) Put(walk, Lines[step].At, Lines[step].Line);
            else if (step == Lines.Length) walk.Ctrl('z');
            else if (step == Lines.Length + 1) walk.Go("A3").Command('i');
            else walk.Ctrl('y');
            if (step % 2 == 0) walk.Settle();
        }
        walk.Settle();
        Agrees(walk);
    }, iter: 40, threads: 1, print: steps => string.Join("; ", steps));

    // past the grid's own refusals, as a paste or a merge would
    private static void Put(Walk walk, string at, string line)
    {
        Assert.True(CellAddress.TryParse(at, out CellAddress address));
        GridSession there = Moves.To(walk.State.Open, address);
        walk.Go(at);
        if (line.Length == 0) walk.Press(KeyName.Delete);
        else if (walk.State.Open.Cell is not null || !there.Tables.On(there).Tables.Any(table => table.Area.Contains(address))) walk.Press(KeyName.Enter).Ctrl('u').Type(line).Press(KeyName.Enter).Press(KeyName.Escape);
    }

    private static void Agrees(Walk walk)
    {
        GridSession session = walk.State.Open;
        StudyRunner runner = new(Walk.Library);
        foreach (var drawn in session.Tables.On(session).Tables)
        {
            StudyOutcome<WhatIfRequest> request = WhatIfRequest.Of(drawn.Block, session.SheetName);
            StudyOutcome<WhatIfTable> fresh = request.IsAnswered ? runner.WhatIf(session.Known!.Calculation, request.Answer) : request.Fault;
            Assert.False(drawn.IsOld);
            Assert.Equal(fresh.Fault?.Sentence, drawn.Trouble);
            if (fresh.IsAnswered) Assert.Equal(Text(session, fresh.Answer), Text(session, drawn.Table!));
        }
    }

    private static string Text(GridSession session, WhatIfTable table) => string.Join('\n', WhatIfText.Lines(table with { Anchor = null, Title = null }, session.Workbook.Head.Units, 200).Select(line => line.Text));
}
