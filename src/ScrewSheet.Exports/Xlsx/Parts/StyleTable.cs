using System.Xml.Linq;
using ScrewSheet.Exports.Xlsx.Pages;
using static ScrewSheet.Exports.Xlsx.Parts.Markup;

namespace ScrewSheet.Exports.Xlsx.Parts;

/// <summary>The looks of cells: each combination of role, number format and apostrophe is one entry of the style sheet, made when it is first asked for.</summary>
internal sealed class StyleTable
{
    /// <summary>The mark of a check that fails, and of one that holds.</summary>
    public const int Fails = 0, Holds = 1;

    private const int FirstFormat = 164;
    private static readonly string[] Thin = ["left", "right", "top", "bottom"];

    private readonly Dictionary<(Role, string, bool), int> known = [];
    private readonly Dictionary<string, int> formats = [];
    private readonly List<XElement> looks = [Look(0, 0, 0, 0, Role.Note, false)];

    /// <summary>The entry for a cell.</summary>
    public int Of(PageCell cell)
    {
        bool quoted = cell is { Formula: null, Value: Content.Words { Value: var words } } && HarmlessStart.LooksLikeFormula(words);
        var key = (cell.Role, cell.NumberFormat, quoted);
        if (known.TryGetValue(key, out int index)) return index;
        looks.Add(Make(cell.Role, FormatOf(cell.NumberFormat), quoted));
        known.Add(key, looks.Count - 1);
        return looks.Count - 1;
    }

    /// <summary>The style sheet.</summary>
    public XElement Sheet() => new(S + "styleSheet",
        formats.Count == 0 ? null : Counted("numFmts", [.. formats.Select(format => new XElement(S + "numFmt", new XAttribute("numFmtId", format.Value), new XAttribute("formatCode", format.Key)))]),
        Counted("fonts", Font(11), Font(11, "b"), Font(14, "b"), Font(11, "i")),
        Counted("fills", Fill("none", null), Fill("gray125", null), Fill("solid", "FFFFF7DB"), Fill("solid", "FFE7E9EC")),
        Counted("borders", Border(null), Border("thin"), Border("dotted")),
        Counted("cellStyleXfs", new XElement(S + "xf", new XAttribute("numFmtId", 0), new XAttribute("fontId", 0), new XAttribute("fillId", 0), new XAttribute("borderId", 0))),
        Counted("cellXfs", [.. looks]),
        Counted("cellStyles", new XElement(S + "cellStyle", new XAttribute("name", "Normal"), new XAttribute("xfId", 0), new XAttribute("builtinId", 0))),
        Counted("dxfs", Mark("FF9C0006", "FFFFC7CE", true), Mark("FF0B5A1E", "FFDDF3E1", false)));

    private int FormatOf(string code)
    {
        if (code == NumberFormats.General) return 0;
        if (!formats.TryGetValue(code, out int id)) formats.Add(code, id = FirstFormat + formats.Count);
        return id;
    }

    private static XElement Make(Role role, int format, bool quoted) => role switch
    {
        Role.Title => Look(format, 2, 0, 0, role, quoted),
        Role.Heading => Look(format, 1, 0, 0, role, quoted),
        Role.Head => Look(format, 1, 3, 1, role, quoted),
        Role.Given => Look(format, 0, 2, 1, role, quoted),
        Role.Fixed => Look(format, 3, 0, 2, role, quoted),
        _ => Look(format, 0, 0, 0, role, quoted),
    };

    private static XElement Look(int format, int font, int fill, int border, Role role, bool quoted) => new(S + "xf",
        new XAttribute("numFmtId", format), new XAttribute("fontId", font), new XAttribute("fillId", fill), new XAttribute("borderId", border), new XAttribute("xfId", 0),
        quoted ? new XAttribute("quotePrefix", 1) : null,
        format == 0 ? null : new XAttribute("applyNumberFormat", 1), font == 0 ? null : new XAttribute("applyFont", 1),
        fill == 0 ? null : new XAttribute("applyFill", 1), border == 0 ? null : new XAttribute("applyBorder", 1),
        role == Role.Head ? new XAttribute("applyAlignment", 1) : null,
        role == Role.Head ? new XElement(S + "alignment", new XAttribute("vertical", "top")) : null);

    private static XElement Font(int size, string? way = null) => new(S + "font", way is null ? null : new XElement(S + way), new XElement(S + "sz", new XAttribute("val", size)), new XElement(S + "family", new XAttribute("val", 2)));

    private static XElement Fill(string pattern, string? colour) => new(S + "fill", new XElement(S + "patternFill", new XAttribute("patternType", pattern),
        colour is null ? null : new XElement(S + "fgColor", new XAttribute("rgb", colour)), colour is null ? null : new XElement(S + "bgColor", new XAttribute("indexed", 64))));

    private static XElement Border(string? line) => new(S + "border",
        Thin.Select(side => new XElement(S + side, line is null ? null : new XAttribute("style", line), line is null ? null : new XElement(S + "color", new XAttribute("auto", 1)))), new XElement(S + "diagonal"));

    private static XElement Mark(string ink, string ground, bool isStrong) => new(S + "dxf",
        new XElement(S + "font", isStrong ? new XElement(S + "b") : null, new XElement(S + "color", new XAttribute("rgb", ink))),
        new XElement(S + "fill", new XElement(S + "patternFill", new XElement(S + "bgColor", new XAttribute("rgb", ground)))));

    private static XElement Counted(string name, params XElement[] entries) => new(S + name, new XAttribute("count", entries.Length), entries);
}
