using ScrewSheet.Studies.Tests.Support;
using ScrewSheet.Studies.Uncertainty;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Tests.Uncertainty;

public sealed class UncertaintyTests
{
    private const string Book = """
        screwsheet 1
        seed 7

        sheet S
        A1 peak [kN] = 8.5 kN ± 0.5 kN
        A2 exposed [mm] = 40 mm ± 10 mm rectangular within 0 mm to 120 mm
        A3 Torque moment => peak * exposed
        A4 strong => moment < 420 N·m
        A5 root => Sqrt(exposed - 35 mm)
        A6 sure = 3
        A7 none => 2 * sure
        """;

    private static UncertaintyReport Of(string cell, string book = Book, int threads = 2, StudyMethod method = StudyMethod.Automatic, long? samples = null, ulong? seed = null)
    {
        Calculation calculation = StudyBook.Of(book).Calculation;
        StudyOutcome<UncertaintyReport> report = new StudyRunner(StudyBook.Library, threads).Uncertainty(calculation, new UncertaintyRequest { Cell = StudyBook.At(cell), Method = method, Samples = samples, Seed = seed });
        Assert.True(report.IsAnswered, report.Fault?.Sentence);
        return report.Answer;
    }

    [Fact]
    public void TheSameDigits_OnOneThreadOrTwo_ByKernelOrCellByCell()
    {
        UncertaintyReport one = Of("moment", threads: 1, samples: 50_000), two = Of("moment", threads: 2, samples: 50_000), cells = Of("moment", method: StudyMethod.CellByCell, samples: 50_000);
        Assert.Equal(one.MonteCarlo, two.MonteCarlo);
        Assert.Equal(one.Givens.AsEnumerable(), two.Givens.AsEnumerable());
        Assert.Equal(one.Checks.AsEnumerable(), two.Checks.AsEnumerable());
        Assert.Equal(one.MonteCarlo!.Mean, cells.MonteCarlo!.Mean, 1e-12);
        Assert.Equal(one.Checks.AsEnumerable(), cells.Checks.AsEnumerable());
        Assert.True(one.IsCompiled && !cells.IsCompiled);
    }

    [Fact]
    public void TheSeedOfTheHead_IsUsed_AndAnotherGivesOtherDraws()
    {
        UncertaintyReport head = Of("moment", samples: 20_000), same = Of("moment", samples: 20_000, seed: 7), other = Of("moment", samples: 20_000, seed: 8);
        Assert.Equal(7UL, head.Seed);
        Assert.Equal(head.MonteCarlo, same.MonteCarlo);
        Assert.NotEqual(head.MonteCarlo, other.MonteCarlo);
    }

    [Fact]
    public void MoreUncertainGivensThanAStudyTakes_AreRefused()
    {
        StudyBook sheet = StudyBook.Of(["column A a", .. Enumerable.Range(1, 501).Select(i => $"A{i} = 1 ± 1"), "B1 total => Sum(a)"]);
        Assert.Equal(6402, sheet.Runner.Uncertainty(sheet.Calculation, new UncertaintyRequest { Cell = StudyBook.At("total") }).Fault?.Code);
    }

    [Fact]
    public void AProduct_HasTheSpreadItsFactorsGive()
    {
        UncertaintyReport report = Of("moment");
        double expected = Math.Sqrt(Math.Pow(0.04 * 250, 2) + Math.Pow(8500 * 0.01 / Math.Sqrt(3), 2));
        Assert.Equal(expected, report.FirstOrder!.StandardUncertainty, 1e-9 * expected);
        Assert.Equal(expected, report.MonteCarlo!.StandardUncertainty, 0.005 * expected);
        Assert.Equal(["exposed", "peak"], report.Givens.Select(given => given.Given.Label));
        Assert.Equal(1, report.Givens.Sum(given => given.Share), 1e-12);
        Assert.Equal(report.Givens[0].Share, report.Givens[0].Sobol, 0.02);
        Assert.Equal((8500 * 0.03, 8500 * 0.05), (report.Givens[0].AtLow, report.Givens[0].AtHigh));
        CheckOdds odds = Assert.Single(report.Checks);
        Assert.Equal("strong", odds.Label);
        Assert.InRange(odds.Probability, odds.Low, odds.High);
    }

    [Fact]
    public void DrawsInFault_AreCountedAndShown()
    {
        UncertaintyReport report = Of("root", samples: 40_000);
        Assert.Equal(0.25, report.Faulted / 40_000.0, 0.01);
        Assert.Equal(40_000, report.Faulted + report.MonteCarlo!.Draws);
        Assert.Equal("This is the root of a negative value.", Assert.Single(report.Faults).Fault.Message);
        Assert.Contains(report.Notes, note => note.Code == 4333);
    }

    [Fact]
    public void WhereFirstOrderSeesNothing_ItIsSaid()
    {
        UncertaintyReport report = Of("y", "A1 a = 0 ± 0.01\nA2 b = 0 ± 0.01\nA3 y => a * a + b * b", samples: 100_000);
        Assert.Contains(report.Notes, note => note.Code == 4331);
        Assert.Contains(Of("y", "A1 a = 1 ± 1.5\nA2 y => Math.Exp(a)", samples: 100_000).Notes, note => note.Code == 4330);
        Assert.DoesNotContain(Of("moment").Notes, note => note.Code == 4331);
    }

    [Fact]
    public void Limits_BoundTheDraws()
    {
        UncertaintyReport report = Of("y", "A1 a = 1 mm ± 2 mm within 0 mm to 2.5 mm\nA2 y => 2 * a", samples: 50_000);
        Assert.InRange(report.MonteCarlo!.Least, 0, 0.001);
        Assert.InRange(report.MonteCarlo.Most, 0.0049, 0.005);
        Assert.Contains(report.Notes, note => note.Code == 4332);
        Assert.Equal(0, report.Faulted);
    }

    [Fact]
    public void FewDegreesOfFreedom_WidenBothIntervals()
    {
        UncertaintyReport report = Of("y", "A1 a = 10 ± 1 k=1 dof 4\nA2 y => 2 * a", samples: 400_000);
        Assert.Equal((4, 2.7764451), (report.FirstOrder!.Freedom, Math.Round(report.FirstOrder.Coverage, 7)));
        Assert.Equal(2 * 2.7764451, (report.MonteCarlo!.High - report.MonteCarlo.Low) / 2, 0.05);
    }

    [Theory]
    [InlineData("none", null, 4320, "No given that none depends on has a tolerance. Write ± and a half-width after one.")]
    [InlineData("moment", 10L, 4325, "The number of samples is from 1,000 to 100,000,000.")]
    [InlineData("moment", 1_000_000_000L, 4325, "The number of samples is from 1,000 to 100,000,000.")]
    [InlineData("nothing", null, 2301, "No cell is called nothing. Write the name or address of a cell, with its sheet and a dot where it stands on another.")]
    public void WhatCannotBeStudied_IsRefusedInOneSentence(string cell, long? samples, int code, string sentence)
    {
        StudyOutcome<UncertaintyReport> report = new StudyRunner(StudyBook.Library).Uncertainty(StudyBook.Of(Book).Calculation, new UncertaintyRequest { Cell = StudyBook.At(cell), Samples = samples });
        Assert.Equal((code, sentence), (report.Fault?.Code ?? 0, report.Fault?.Sentence ?? "done"));
    }

    [Theory]
    [InlineData("correlate a, sure 0.5", 4321, "sure has no tolerance, so nothing can go together with it. Write ± and a half-width after it, or remove the correlate line.")]
    [InlineData("correlate a, b 0.9\ncorrelate b, c 0.9\ncorrelate a, c -0.9", 4322, "The correlations contradict each other: no givens can go together like that. Check the signs of the correlate lines.")]
    [InlineData("correlate a, b 0.9\ncorrelate b, a 0.9", 4323, "b and a are correlated twice. Keep one line.")]
    [InlineData("correlate a, a 0.9", 4323, "a is correlated with itself. Keep one line.")]
    [InlineData("correlate a, d 0.9", 2301, "No cell is called d. Write the name or address of a cell, with its sheet and a dot where it stands on another.")]
    public void CorrelationsThatCannotBe_AreRefusedInOneSentence(string head, int code, string sentence)
    {
        StudyBook book = StudyBook.Of($"screwsheet 1\n{head}\n\nsheet S\nA1 a = 1 ± 0.1\nA2 b = 2 ± 0.1\nA3 c = 3 ± 0.1\nA4 sure = 4\nA5 y => a + b + c + sure");
        StudyOutcome<UncertaintyReport> report = book.Runner.Uncertainty(book.Calculation, new UncertaintyRequest { Cell = StudyBook.At("y") });
        Assert.Equal((code, sentence), (report.Fault?.Code ?? 0, report.Fault?.Sentence ?? "done"));
    }
}
