namespace ScrewSheet.Exports.Html;

/// <summary>How a handout looks, on a screen of any width and on paper. Nothing is told by colour alone.</summary>
internal static class Style
{
    private const string Rules = """
        :root { color-scheme: light; }
        * { box-sizing: border-box; }
        html { font: 100%/1.5 Georgia, "DejaVu Serif", "Times New Roman", serif; color: #111; background: #fff; -webkit-text-size-adjust: 100%; }
        body { max-width: 46rem; margin: 0 auto; padding: 1.5rem 1.25rem 3rem; overflow-wrap: break-word; }
        h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 .3rem; }
        h2 { font-size: 1.25rem; line-height: 1.3; margin: 2.2rem 0 .6rem; border-bottom: 1px solid #111; padding-bottom: .15rem; }
        h3 { font-size: 1rem; line-height: 1.35; margin: 0 0 .3rem; }
        p { margin: .35rem 0; }
        .by { color: #333; }
        .lead { font-weight: bold; margin-top: 1.2rem; }
        .small { font-size: .85rem; line-height: 1.4; color: #333; }
        .number { display: inline-block; min-width: 1.6em; padding: 0 .3em; margin-right: .3em; border: 1px solid #111; border-radius: .8em; text-align: center; font-size: .85rem; }
        .cell { font-weight: normal; font-size: .8rem; color: #444; margin-left: .4em; }
        .cautions { border: 2px solid #111; padding: .2rem 1rem .6rem; margin: 1.2rem 0; }
        .cautions h2 { border: 0; margin: .5rem 0 .2rem; font-size: 1.1rem; }
        .cautions ul { margin: .2rem 0; padding-left: 1.2rem; }
        .caution { border-left: 4px solid #111; padding-left: .6rem; font-size: .9rem; }
        .step { margin: 1.3rem 0; }
        .math { padding-left: 2.2rem; text-indent: -1.2rem; line-height: 2; margin: .1rem 0; }
        .math math, .with math { text-indent: 0; }
        .math, .with li { overflow-x: auto; overflow-y: hidden; }
        math { font-family: "Latin Modern Math", "DejaVu Math TeX Gyre", "DejaVu Serif", Georgia, math, serif; white-space: nowrap; }
        .words { padding-left: 1rem; }
        .blank { padding-bottom: .15em; }
        .by-call { margin: .4rem 0 .4rem 1rem; padding: .1rem 0 .1rem .8rem; border-left: 1px solid #777; }
        .by-call p { font-size: .92rem; }
        .by-call .math { font-size: 1rem; }
        .with { list-style: none; margin: .2rem 0; padding-left: 1rem; font-size: .95rem; }
        .with li { padding-left: 1rem; text-indent: -1rem; }
        .wide { overflow-x: auto; margin: .9rem 0; }
        table { border-collapse: collapse; font-variant-numeric: tabular-nums; font-size: .92rem; line-height: 1.35; }
        caption { text-align: left; font-weight: bold; padding: .2rem 0; caption-side: top; }
        th, td { border-bottom: 1px solid #999; padding: .25rem .6rem .25rem 0; text-align: left; vertical-align: top; font-weight: normal; }
        thead th { border-bottom: 2px solid #111; vertical-align: bottom; font-weight: bold; }
        thead td { border: 0; }
        .figure { white-space: nowrap; }
        .figures td, .figures th { text-align: right; padding: .2rem .7rem .2rem 0; white-space: nowrap; }
        .figures thead th[scope=colgroup] { text-align: center; }
        .figures .word { text-align: left; }
        .figures tbody th { font-weight: bold; }
        figure { margin: 1.2rem 0; }
        figcaption { font-weight: bold; font-size: .92rem; }
        .plot { display: block; width: 100%; max-width: 42rem; height: auto; font-family: inherit; }
        .sources li { margin: .3rem 0; font-size: .92rem; }
        a { color: #111; }
        footer { margin-top: 2.5rem; border-top: 1px solid #111; font-size: .85rem; color: #333; }
        @media (max-width: 30rem) {
          body { padding: 1rem .8rem 2rem; }
          .by-call { margin-left: 0; padding-left: .6rem; }
          .math { padding-left: 1.4rem; text-indent: -1rem; }
        }
        @page { size: SIZE; margin: 18mm 18mm 20mm; @bottom-right { content: counter(page) " / " counter(pages); font: 9pt Georgia, "DejaVu Serif", serif; } }
        @media print {
          html { font-size: 10.5pt; }
          body { max-width: none; padding: 0; }
          h1, h2, h3, .lead, caption { break-after: avoid; }
          .step, .by-call, figure, tr, .cautions, .math, li { break-inside: avoid; }
          thead { display: table-header-group; }
          tbody tr:first-child { break-after: avoid; }
          tbody tr:last-child { break-before: avoid; }
          .wide, .math, .with li { overflow: visible; }
          .short { break-inside: avoid; }
          p { orphans: 3; widows: 3; }
          a { text-decoration: none; }
        }

        """;

    /// <summary>The rules for A4, or for the letter size of the United States.</summary>
    public static string Of(bool isLetter) => Rules.Replace("SIZE", isLetter ? "letter" : "A4", StringComparison.Ordinal).ReplaceLineEndings("\n");
}
