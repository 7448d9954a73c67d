using System.Text.Json;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Terminal.Tests.Commands;

public sealed class JsonTests
{
    [Fact]
    public void TheWholeDocument()
    {
        using Session session = new() { Calculator = Example.Faulty };
        Assert.Equal(1, session.Run("run", session.File("a.screwsheet", Example.Text), "--format", "json"));
        GoldenFile.Holds("tests/ScrewSheet.Terminal.Tests/Pages/run-faulty.json", session.Output);
    }

    [Fact]
    public void EveryCellHasTheSameWordsInTheSameOrder()
    {
        using Session session = new() { Calculator = Example.Worse };
        session.Run("run", session.File("a.screwsheet", Example.Text), "--format", "json");
        using JsonDocument document = JsonDocument.Parse(session.Output);
        Assert.Equal(["title", "units", "sheets"], Words(document.RootElement));
        JsonElement sheet = document.RootElement.GetProperty("sheets")[0];
        Assert.Equal(["name", "cells"], Words(sheet));
        Assert.All(sheet.GetProperty("cells").EnumerateArray(), cell => Assert.Equal(["cell", "name", "kind", "type", "value", "unit", "si", "tolerance", "text", "fault", "cautions"], Words(cell)));
        JsonElement check = sheet.GetProperty("cells")[5];
        Assert.Equal(JsonValueKind.False, check.GetProperty("value").ValueKind);
        Assert.Equal("FAILS", check.GetProperty("text").GetString());
        Assert.Equal("Fall.B7: Friction helps here; set 0 for design.", sheet.GetProperty("cells")[4].GetProperty("cautions")[1].GetString());
    }

    [Fact]
    public void ValuesAreWholeAndInTheirUnit()
    {
        using Session session = new() { Calculator = new FakeCalculator().Gives("a", FakeCalculator.Quantity(1.0 / 3, "kN", "Force")).Gives("b", FakeCalculator.Number(1.0 / 3)).Gives("c", FakeCalculator.Text("so")) };
        session.Run("run", session.File("a.screwsheet", "screwsheet 1\nunits US\n\nsheet S\nA1 x [kN, 1 decimal] => a\nA2 y => b\nA3 z => c\nA4 w [lbf] = 200 lbf ± 10 %\n"), "--format", "json");
        using JsonDocument document = JsonDocument.Parse(session.Output);
        JsonElement.ArrayEnumerator cells = document.RootElement.GetProperty("sheets")[0].GetProperty("cells").EnumerateArray();
        JsonElement[] all = [.. cells];
        Assert.Equal("US", document.RootElement.GetProperty("units").GetString());
        Assert.Equal((1.0 / 3, "kN", "0.3 kN"), (all[0].GetProperty("value").GetDouble(), all[0].GetProperty("unit").GetString(), all[0].GetProperty("text").GetString()));
        Assert.Equal((1.0 / 3, null, "0.3333"), (all[1].GetProperty("value").GetDouble(), all[1].GetProperty("unit").GetString(), all[1].GetProperty("text").GetString()));
        Assert.Equal(("so", "so"), (all[2].GetProperty("value").GetString(), all[2].GetProperty("text").GetString()));
        Assert.Equal((200, 20), (all[3].GetProperty("value").GetDouble(), Math.Round(all[3].GetProperty("tolerance").GetDouble(), 9)));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void EveryKindOfFaultHasItsWord(FaultKind kind, string word)
    {
        using Session session = new() { Calculator = new FakeCalculator().Gives("a", FakeCalculator.Fault(kind, "Why.", "What to do.", "S.B9")) };
        session.Run("run", session.File("a.screwsheet", "screwsheet 1\nunits SI\n\nsheet S\nA1 => a\n"), "--format", "json");
        using JsonDocument document = JsonDocument.Parse(session.Output);
        JsonElement fault = document.RootElement.GetProperty("sheets")[0].GetProperty("cells")[0].GetProperty("fault");
        Assert.Equal(["kind", "message", "cause"], Words(fault));
        Assert.Equal((word, "Why. What to do.", "S.B9"), (fault.GetProperty("kind").GetString(), fault.GetProperty("message").GetString(), fault.GetProperty("cause").GetString()));
    }

    public static TheoryData<FaultKind, string> Kinds => new()
    {
        { FaultKind.Format, "format" }, { FaultKind.Name, "name" }, { FaultKind.Circle, "circle" }, { FaultKind.Unit, "unit" }, { FaultKind.Language, "language" },
        { FaultKind.Value, "value" }, { FaultKind.Domain, "domain" }, { FaultKind.Budget, "budget" }, { FaultKind.Waiting, "waiting" },
    };

    private static string[] Words(JsonElement element) => [.. element.EnumerateObject().Select(property => property.Name)];
}
