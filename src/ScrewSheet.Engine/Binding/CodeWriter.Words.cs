using System.Globalization;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Lexing;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Binding;

/// <summary>What each word means.</summary>
internal sealed partial class CodeWriter
{
    private static readonly HashSet<string> MathNames = ["Sqrt", "Cbrt", "Pow", "Exp", "Log", "Log10", "Abs", "Min", "Max", "Floor", "Ceiling"];
    private static readonly HashSet<string> Intrinsics = ["Sqrt", "Cbrt", "Root", "Pow", "Values", "Count", "Sum", "Map", "Where", "All", "Any"];

    /// <summary>The functions the engine itself supplies, for whoever lists or suggests names.</summary>
    internal static IReadOnlyCollection<string> OwnNames => Intrinsics;

    private int PutWord(int i)
    {
        Token word = tokens[i];
        if (Before(i, ".")) return Put(word, word.Text);
        if (word.Text is "switch" or "with" or "when" or "true" or "false") return Put(word, word.Text);
        if (IsLabel(i)) return Put(word, word.Text);
        if (After(i, "=>") && !(brackets.InSwitch && StartsArm(i))) return PutLambda(word);
        if (brackets.InSwitch && word.Text == "_") return Put(word, "_");
        if (word.Text == "Series" && After(i, "(")) return PutSeries(i);
        if (word.Text == "Math" && After(i, ".")) return PutMath(i);
        if (After(i, "(")) return PutCall(word);
        if (After(i, ".") && scope.IsSheet(word.Text) && i + 2 < tokens.Length) return PutOnSheet(i);
        return PutValue(word);
    }

    private bool Before(int i, string sign) => i > 0 && tokens[i - 1].Is(sign);

    private bool After(int i, string sign) => i + 1 < tokens.Length && tokens[i + 1].Is(sign);

    private bool StartsArm(int i) => Before(i, "{") || Before(i, ",");

    /// <summary>An argument's name before a colon, or a member's before an equals sign.</summary>
    private bool IsLabel(int i) => StartsOrParen(i) && ((brackets.InCall && After(i, ":")) || (brackets.InWith && After(i, "=")));

    private bool StartsOrParen(int i) => Before(i, "(") || StartsArm(i);

    private int PutLambda(Token word)
    {
        brackets.Declare(word.Text);
        return Put(word, "p_" + word.Text);
    }

    private int PutCall(Token word)
    {
        if (brackets.IsLambda(word.Text) || scope.Parameters.Any(parameter => parameter.Name == word.Text)) return Refuse(NameFaults.CallOfValue(word.Text, word.Place));
        if (scope.OwnFunctions.TryGetValue(word.Text, out OwnFunction? own))
        {
            if (!calls.Contains(own)) calls.Add(own);
            return Put(word, "U." + word.Text);
        }
        if (Intrinsics.Contains(word.Text) || scope.Library.Function(word.Text) is not null) return Put(word, "F." + word.Text);
        if (scope.Sheet is { } sheet && (scope.Find(sheet, word.Text) is not null || CellAddress.TryParse(word.Text, out _))) return Refuse(NameFaults.CallOfValue(word.Text, word.Place));
        return Refuse(NameFaults.UnknownFunction(word.Text, Nearest.To(word.Text, FunctionNames()), word.Place));
    }

    private IEnumerable<string> FunctionNames() => scope.Library.Functions.Select(function => function.Name).Concat(scope.OwnFunctions.Keys).Concat(Intrinsics).Append("Series");

    private int PutValue(Token word)
    {
        if (brackets.IsLambda(word.Text)) return Put(word, "p_" + word.Text);
        if (scope.Parameters.FirstOrDefault(parameter => parameter.Name == word.Text) is { } own) return Put(word, "p_" + own.Name);
        if (scope.Sheet is { } sheet && Cell(sheet, word) is { } cell) return PutReference(word.Start, word.Length, new Reference.ToCell(cell), 1);
        if (fault is not null) return 1;
        if (scope.Sheet is { } here && scope.FindColumn(here, word.Text) is { } column) return PutReference(word.Start, word.Length, Run(here, column), 1);
        if (scope.Library.IsTypeName(word.Text)) return Put(word, "Lib." + word.Text);
        return Refuse(Unknown(word));
    }

    private Fault Unknown(Token word)
    {
        if (QuantityKinds.ByName(word.Text) is not null) return NameFaults.TypeAsValue(word.Text, word.Place);
        if (scope.Library.Function(word.Text) is not null || scope.OwnFunctions.ContainsKey(word.Text) || Intrinsics.Contains(word.Text)) return NameFaults.FunctionWithoutCall(word.Text, word.Place);
        if (scope.Sheet is null) return NameFaults.CellsInFunction(word.Text, word.Place);
        return NameFaults.UnknownName(word.Text, Nearest.To(word.Text, scope.Known()), scope.SheetsWith(word.Text).FirstOrDefault(), word.Place);
    }

    /// <summary>The cell a word on a sheet means: its address or a name; null where it is neither.</summary>
    private CellId? Cell(string sheet, Token word)
    {
        if (!CellAddress.TryParse(word.Text, out CellAddress address)) return scope.Find(sheet, word.Text);
        if (address.IsValid) return new CellId(sheet, address);
        Refuse(NameFaults.BadAddress(word.Text, word.Place));
        return null;
    }

    private int PutOnSheet(int i)
    {
        if (scope.Sheet is null) return Refuse(NameFaults.CellsInFunction(tokens[i].Text, tokens[i].Place));
        Token name = tokens[i + 2];
        if (name.Kind == TokenKind.Word && scope.Find(tokens[i].Text, name.Text) is null && scope.FindColumn(tokens[i].Text, name.Text) is { } column)
            return PutReference(tokens[i].Start, name.End - tokens[i].Start, Run(tokens[i].Text, column), 3);
        if (name.Kind != TokenKind.Word || Cell(tokens[i].Text, name) is not { } cell) return Refuse(NameFaults.UnknownOnSheet(tokens[i].Text, name.Text, Nearest.To(name.Text, scope.KnownOn(tokens[i].Text)), name.Place));
        return PutReference(tokens[i].Start, name.End - tokens[i].Start, new Reference.ToCell(cell), 3);
    }

    /// <summary>A column by name, from top to bottom.</summary>
    private static Reference.ToRun Run(string sheet, SheetColumn column) =>
        new(new CellId(sheet, new CellAddress(column.Column, 1)), new CellId(sheet, new CellAddress(column.Column, CellAddress.LastRow))) { Column = column };

    private int PutReference(int start, int length, Reference reference, int taken)
    {
        if (!slots.TryGetValue(reference, out int slot))
        {
            slot = slots.Count;
            slots.Add(reference, slot);
            slotPlaces.Add(new Place(0, start + 1, length));
        }
        return Put(start, length, "r" + slot.ToString(CultureInfo.InvariantCulture), taken);
    }

    private int PutMath(int i)
    {
        if (i + 2 >= tokens.Length || tokens[i + 2].Kind != TokenKind.Word) return Refuse(NameFaults.UnknownMath("", tokens[i].Place));
        Token name = tokens[i + 2];
        int start = tokens[i].Start, length = name.End - start;
        if (name.Text is "PI" or "E") return Put(start, length, (name.Text == "PI" ? Math.PI : Math.E).ToString("R", CultureInfo.InvariantCulture) + "d", 3);
        return MathNames.Contains(name.Text) ? Put(start, length, "M." + name.Text, 3) : Refuse(NameFaults.UnknownMath(name.Text, name.Place));
    }

    private int PutSeries(int i)
    {
        int at = i + 2;
        CellId? first = SeriesEnd(ref at, ",");
        CellId? last = first is null ? null : SeriesEnd(ref at, ")");
        if (fault is not null) return 1;
        if (first is null || last is null || first.Value.Sheet != last.Value.Sheet) return Refuse(NameFaults.SeriesForm(tokens[i].Place));
        Reference.ToRun run = new(first.Value, last.Value);
        if (run.Size > Reference.ToRun.Maximum) return Refuse(NameFaults.SeriesTooLong(run.Size, tokens[i].Place));
        return PutReference(tokens[i].Start, tokens[at - 1].End - tokens[i].Start, run, at - i);
    }

    private CellId? SeriesEnd(ref int at, string sign)
    {
        if (scope.Sheet is not { } sheet || at >= tokens.Length || tokens[at].Kind != TokenKind.Word) return null;
        if (at + 2 < tokens.Length && tokens[at + 1].Is(".") && scope.IsSheet(tokens[at].Text)) (sheet, at) = (tokens[at].Text, at + 2);
        CellId? cell = tokens[at].Kind == TokenKind.Word ? Cell(sheet, tokens[at]) : null;
        if (at + 1 >= tokens.Length || !tokens[at + 1].Is(sign)) return null;
        at += 2;
        return cell;
    }
}
