using System.Text;
using CsCheck;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Format;

public sealed class ByteStableTests
{
    private static readonly Gen<string> Ends = Pick("\n", "\n", "\n", "\r\n", " \t\n", "\r\r\n");

    private static readonly Gen<string> Lines = Gen.Frequency(
        (6, Pick(SampleTexts.Full.Split('\n'))),
        (1, Pick("", " ", "// x", "\tA5 = 3", "A1", "A1 = ", "A1 => gives", "= 3", "B3 conflict", "  vary", "sheet A", "sheet b", "widths", "what-if", "A1 a [", "A1 \"\\", "A1 \u0007", "A1 = 3 ±", "A1 = 1 within", "\uFEFF", "A1 = 1 source")),
        (1, Gen.String[Gen.Char.AlphaNumeric, 0, 20]),
        (1, Gen.String[Gen.Char["A1b =>\"\\/[]()±§μ\t%,.-+{}$#"], 0, 30]));

    [Fact]
    public void SavingWhatWasReadGivesTheSameBytes() =>
        Gen.Select(Lines.Array[0, 40], Ends.Array[41], Gen.Bool, Gen.Bool, Gen.Bool).Sample((lines, ends, mark, head, final) =>
        {
            StringBuilder text = new(mark ? "\uFEFF" : "");
            text.Append("screwsheet 1").Append(ends[40] == "\r\r\n" ? "\n" : ends[40]);
            if (!head) text.Append("sheet Own\n");
            for (int i = 0; i < lines.Length; i++) text.Append(lines[i]).Append(i < lines.Length - 1 || final ? ends[i] : "");
            Stable(Encoding.UTF8.GetBytes(text.ToString()));
        }, iter: 3000);

    [Fact]
    public void RandomBytesAreRefusedOrGivenBack() =>
        Gen.Select(Gen.Byte.Array[0, 60], Gen.Bool).Sample((bytes, started) => Stable([.. started ? "screwsheet 1\nsheet A\nA1 "u8.ToArray() : [], .. bytes]), iter: 3000);

    [Fact]
    public void AFileCutAnywhereIsRefusedOrGivenBack()
    {
        byte[] file = Encoding.UTF8.GetBytes(SampleTexts.Full);
        for (int length = 0; length <= file.Length; length++) Stable(file[..length]);
    }

    [Fact]
    public void AFileWithAnyByteChangedIsRefusedOrGivenBack()
    {
        byte[] file = Encoding.UTF8.GetBytes(SampleTexts.Full);
        Gen.Select(Gen.Int[0, file.Length - 1], Gen.Byte).Sample((at, value) =>
        {
            byte[] changed = [.. file];
            changed[at] = value;
            Stable(changed);
        }, iter: 3000);
    }

    [Theory]
    [InlineData("\r\n", true, true), InlineData("\r\n", false, false), InlineData("\n", true, false)]
    public void LineEndsMarkAndLastNewlineStay(string end, bool mark, bool final)
    {
        string text = (mark ? "\uFEFF" : "") + SampleTexts.Full.ReplaceLineEndings(end) + (final ? end : "");
        Assert.Equal(text, Text.Write(Text.Read(text)));
        Assert.Equal("peak", Text.Read(text).Sheets[0].Cells[new CellAddress(2, 2)].Name);
    }

    private static Gen<string> Pick(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(index => texts[index]);

    private static void Stable(byte[] bytes)
    {
        switch (WorkbookText.Read(bytes))
        {
            case WorkbookRead read: Assert.Equal(bytes, WorkbookText.Write(read.Workbook)); break;
            case Refusal refusal: Assert.InRange(refusal.Fault.Code, 1001, 1006); break;
        }
    }
}
