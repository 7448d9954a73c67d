using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using ScrewSheet.Engine.Graph;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Binding;

/// <summary>
/// Resolves the expressions of one sheet. An expression filled down a column is the same text but for its addresses: the first is resolved in full
/// and becomes the model of the others, which need only their addresses read.
/// </summary>
/// <remarks>A text that this quick look cannot vouch for (texts, lambdas, blocks, series) is resolved in full each time. What is kept holds while names, sheets and the author's functions stay.</remarks>
internal sealed class PatternCache(SheetScope scope)
{
    private const int MaximumPatterns = 2048, MaximumLength = 1024, MaximumSlots = 32;

    /// <summary>Stands for the first address in a pattern; those after it follow. No expression has these characters.</summary>
    private const char FirstSlot = '\uE000', LastPrivate = '\uF8FF';

    private readonly Dictionary<string, Model?> models = [];
    private readonly char[] pattern = new char[MaximumLength];
    private readonly List<CellAddress> slots = [];
    private readonly List<Place> places = [];

    /// <summary>Forgets everything; for when a name comes or goes.</summary>
    public void Forget() => models.Clear();

    /// <summary>The expression, or why it has no meaning.</summary>
    public (ResolvedExpression? Expression, Fault? Fault) Resolve(string text)
    {
        int length = Scan(text);
        if (length < 0) return InFull(text);
        var byPattern = models.GetAlternateLookup<ReadOnlySpan<char>>();
        ReadOnlySpan<char> key = pattern.AsSpan(0, length);
        if (byPattern.TryGetValue(key, out Model? model)) return model is not null && Filled(model, text) is { } filled ? (filled, null) : InFull(text);
        string name = key.ToString();
        Place[] found = [.. places];
        CellAddress[] addresses = [.. slots];
        (ResolvedExpression? expression, Fault? fault) = InFull(text);
        if (models.Count >= MaximumPatterns) models.Clear();
        if (expression is not null) models.Add(name, ModelOf(expression, addresses, found));
        return (expression, fault);
    }

    private (ResolvedExpression?, Fault?) InFull(string text) => DeepStack.Run(() => CodeWriter.Resolve(text, scope));

    /// <summary>The model, when every address that was seen is a reference of its own at that place.</summary>
    private Model? ModelOf(ResolvedExpression expression, CellAddress[] addresses, Place[] found)
    {
        int[] slotOf = new int[expression.References.Length];
        Array.Fill(slotOf, -1);
        for (int i = 0; i < addresses.Length; i++)
        {
            int at = expression.References.IndexOf(new Reference.ToCell(new CellId(scope.Sheet, addresses[i])));
            if (at < 0 || expression.ReferencePlaces[at] != found[i]) return null;
            slotOf[at] = i;
        }
        return NamesOne(expression, slotOf, addresses) ? null : new Model(expression, slotOf);
    }

    /// <summary>True where one of the addressed cells is referred to by its name or with its sheet as well: one reference here, two in the next cell.</summary>
    private static bool NamesOne(ResolvedExpression expression, int[] slotOf, CellAddress[] addresses)
    {
        foreach ((int code, int length, int source, int sourceLength) in expression.Map)
        {
            if (expression.Code[code] != 'r' || !int.TryParse(expression.Code.AsSpan(code + 1, length - 1), NumberStyles.None, CultureInfo.InvariantCulture, out int slot) || slot >= slotOf.Length) continue;
            if (slotOf[slot] >= 0 && !expression.Text.AsSpan(source, sourceLength).SequenceEqual(addresses[slotOf[slot]].ToString())) return true;
        }
        return false;
    }

    private ResolvedExpression? Filled(Model model, string text)
    {
        Reference[] references = new Reference[model.SlotOf.Length];
        for (int i = 0; i < references.Length; i++)
            references[i] = model.SlotOf[i] < 0 ? model.Expression.References[i] : new Reference.ToCell(new CellId(scope.Sheet, slots[model.SlotOf[i]]));
        for (int i = 0; i < references.Length; i++)
            if (model.SlotOf[i] < 0 && references.AsSpan(0, i).Contains(references[i]) | references.AsSpan(i + 1).Contains(references[i])) return null; // named and addressed in one expression
        return new ResolvedExpression(model.Expression, text, ImmutableCollectionsMarshal.AsImmutableArray(references));
    }

    /// <summary>Writes the pattern of a text and notes its addresses.</summary>
    /// <returns>The pattern's length, or -1 where the text needs a closer look.</returns>
    private int Scan(string text)
    {
        slots.Clear();
        places.Clear();
        if (text.Length > MaximumLength) return -1;
        int length = 0;
        bool afterNumber = false;
        char before = '\0';
        for (int i = 0; i < text.Length;)
        {
            char c = text[i];
            if (c is '"' or '$' or '{' or '#' or (>= FirstSlot and <= LastPrivate) || (c == '=' && i + 1 < text.Length && text[i + 1] == '>')) return -1;
            int end = i + 1;
            bool word = char.IsLetter(c) || c == '_', digit = char.IsAsciiDigit(c);
            if (digit) end = EndOfNumber(text, end);
            else if (word) end = afterNumber ? EndOfUnit(text, end) : EndOfWord(text, end);
            if (end < 0) return -1;
            if (word && !afterNumber && before != '.' && CellAddress.TryParse(text.AsSpan(i, end - i), out CellAddress address))
            {
                int slot = SlotOf(text, i, end, address);
                if (slot < 0) return -1;
                pattern[length++] = (char)(FirstSlot + slot);
            }
            else if (end == i + 1) pattern[length++] = c;
            else
            {
                text.AsSpan(i, end - i).CopyTo(pattern.AsSpan(length));
                if (word && text.AsSpan(i, end - i) is "Series") return -1;
                length += end - i;
            }
            if (c is not (' ' or '\t'))
            {
                before = c;
                afterNumber = digit;
            }
            i = end;
        }
        return length;
    }

    private int SlotOf(string text, int start, int end, CellAddress address)
    {
        int next = end;
        while (next < text.Length && text[next] is ' ' or '\t') next++;
        char after = next < text.Length ? text[next] : '\0';
        if (!address.IsValid || after == '(' || (after == '.' && scope.IsSheet(text[start..end]))) return -1;
        int slot = slots.IndexOf(address);
        if (slot >= 0) return slot;
        if (slots.Count == MaximumSlots) return -1;
        slots.Add(address);
        places.Add(new Place(0, start + 1, end - start));
        return slots.Count - 1;
    }

    /// <summary>A number with whatever touches it.</summary>
    private static int EndOfNumber(string text, int at)
    {
        while (at < text.Length && (char.IsAsciiLetterOrDigit(text[at]) || text[at] is '.' or '_')) at++;
        return at;
    }

    /// <summary>What follows a number, up to a blank or a sign that no unit has.</summary>
    private static int EndOfUnit(string text, int at)
    {
        while (at < text.Length && !(text[at] is ' ' or '\t' or (>= FirstSlot and <= LastPrivate)) && !"()+-*,<>=?:&|!;{}\"$#".Contains(text[at])) at++;
        return at;
    }

    /// <summary>The end of a word, or -1 where it has combining marks.</summary>
    private static int EndOfWord(string text, int at)
    {
        while (at < text.Length && (char.IsLetterOrDigit(text[at]) || text[at] == '_')) at++;
        bool mark = at < text.Length && text[at] >= '\u0300' && CharUnicodeInfo.GetUnicodeCategory(text[at]) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark;
        return mark ? -1 : at;
    }

    /// <summary>An expression resolved in full.</summary>
    /// <param name="Expression">The expression.</param>
    /// <param name="SlotOf">For each of its references the address it is in the pattern; -1 for one that is the same in all.</param>
    private sealed record Model(ResolvedExpression Expression, int[] SlotOf);
}
