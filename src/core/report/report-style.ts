/** How charts look, on paper and on any page that gives --ink, --soft, --rule, --paper and --accent. */
export const pictureStyle = `
svg.chart{color:var(--ink);display:block;width:100%;height:auto;font-size:12px}
svg.chart text{fill:var(--ink)}
svg.chart .soft{fill:var(--soft);font-size:11px}
svg.chart .tab-text{font-weight:600}
svg.chart .tab{fill:var(--paper);stroke:var(--ink);stroke-width:1}
svg.chart .foot{stroke:var(--ink);stroke-width:1.2}
svg.chart .ink{stroke:var(--ink);stroke-width:1.2}
svg.chart .rule{stroke:var(--rule)}
svg.chart .mark{fill:var(--ink)}
svg.chart .name{paint-order:stroke;stroke:var(--paper);stroke-width:4px}
svg.chart .band{fill:var(--ink);opacity:.08}
svg.chart .curve{fill:none;stroke:var(--ink);stroke-width:1.3}
svg.chart .control{stroke:var(--soft);stroke-dasharray:2 4}
svg.chart .bracket{fill:none;stroke:var(--soft)}
svg.chart .point{stroke:var(--dot-edge,var(--ink));stroke-width:.9}
svg.chart .mean{stroke:var(--ink);stroke-width:3}
svg.chart .mean-interval{stroke:var(--ink);stroke-width:1.6}
svg.chart .best{fill:none;stroke:var(--accent);stroke-width:2}
svg.chart .best-dot{fill:var(--accent);stroke:var(--ink);stroke-width:.8}
svg.chart .hollow{fill:var(--paper);stroke:var(--ink);stroke-width:1.3}
svg.chart .strokes{display:none;stroke:var(--ink);stroke-width:1.5}
svg.chart{print-color-adjust:exact;-webkit-print-color-adjust:exact}
@media print{
svg.chart .point,svg.chart .foot:not(.patterned){fill:#fff}
svg.chart .strokes{display:inline}
}
`.trim()

/** The report's own styles: paper and ink on screen, black ink on A4 and Letter. Nothing is fetched. */
export const reportStyle = `
:root{color-scheme:light;--paper:oklch(0.985 0.003 100);--ink:oklch(0.24 0.012 70);--soft:oklch(0.43 0.014 70);--rule:oklch(0.875 0.007 90);--accent:oklch(0.42 0.075 60)}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:16px/1.5 "Atkinson Hyperlegible Next","Atkinson Hyperlegible",Verdana,sans-serif;font-variant-numeric:tabular-nums slashed-zero;overflow-wrap:anywhere}
main{max-width:44rem;margin:0 auto;padding:2.5rem 1.25rem 4rem}
h1,h2{font-family:Rokkitt,Rockwell,"Roboto Slab",Cambria,Georgia,serif;line-height:1.1;word-spacing:-.12em}
h1{font-size:2.375rem;font-weight:700;margin:0 0 .25rem}
h2{font-size:1.4375rem;font-weight:650;margin:2rem 0 .75rem;padding-top:.5rem;border-top:2px solid var(--ink)}
h3{font-size:1.05rem;font-weight:600;margin:1.75rem 0 .5rem}
p{margin:.5rem 0}
.made,.note{color:var(--soft)}
.note{border-left:2px solid var(--accent);padding-left:.75rem}
.answer{font-size:1.4rem;line-height:1.3;font-weight:500;margin:1rem 0}
.answer .known{color:var(--soft)}
.strong{font-weight:600;font-size:1.1rem}
.appendix{margin-top:3rem}
.part{font:700 1.9rem/1.1 Rokkitt,Rockwell,"Roboto Slab",Cambria,Georgia,serif}
ul{margin:.5rem 0;padding-left:1.2rem}
li{margin:.25rem 0}
dl{display:grid;grid-template-columns:minmax(8rem,12rem) 1fr;gap:.35rem 1rem;margin:.5rem 0}
dt{color:var(--soft)}
dd{margin:0}
.wide{overflow-x:auto;margin:.75rem 0}
table{border-collapse:collapse;width:100%;overflow-wrap:break-word}
caption{text-align:left;color:var(--soft);padding-bottom:.35rem}
th,td{text-align:left;padding:.3rem .6rem .3rem 0;border-bottom:1px solid var(--rule);vertical-align:baseline;font-weight:400}
thead th{font-weight:600;border-bottom:2px solid var(--ink)}
.fig{text-align:right}
td.fig{white-space:nowrap}
figure{margin:1rem 0}
figcaption{color:var(--soft)}
${pictureStyle}
.beside{display:grid;gap:.25rem .75rem}
.beside p{margin:0}
.beside .of{font-weight:600}
.beside .shot{margin-bottom:.5rem}
.beside img{display:block;max-width:100%;height:auto}
.beside .elsewhere{display:grid;place-content:center;aspect-ratio:4/3;padding:.5rem;text-align:center;color:var(--soft);border:1px dashed var(--soft)}
.beside .says{display:block;color:var(--soft);font-size:.9em}
.beside .bar{border:solid var(--ink);border-width:0 1px 2px;text-align:center;font-size:.8em;white-space:nowrap}
@media screen and (max-width:44rem){
main{padding:1.5rem 1rem 3rem}
dl{grid-template-columns:minmax(0,1fr);gap:0}
dd{margin-bottom:.5rem}
svg.chart{min-width:38rem}
td{white-space:nowrap}
td.words{white-space:normal;min-width:12rem}
.line tbody th,.line thead th:first-child{white-space:nowrap;position:sticky;left:0;background:var(--paper)}
}
@media print{
:root{--paper:#fff;--ink:#000;--soft:#333;--rule:#bbb;--accent:#000}
body{font-size:8.5pt;line-height:1.28}
main{max-width:none;padding:0}
h1{font-size:20pt}
h2{font-size:11.5pt;margin:2mm 0 .9mm;padding-top:.8mm}
h3{font-size:10pt;margin:3mm 0 1mm}
p,ul,dl{margin:.8mm 0}
li{margin:.4mm 0}
dl{gap:.4mm 4mm;grid-template-columns:minmax(0,3.4cm) 1fr}
.answer{font-size:13pt;line-height:1.2;margin:1mm 0}
.strong{font-size:10pt}
.wide,figure{margin:1mm 0}
th,td{padding:.2mm 2mm .2mm 0}
caption{padding-bottom:.5mm}
figure svg.chart{width:14cm}
.beside{grid-auto-columns:1fr;gap:1mm 3mm}
.beside>div{break-inside:avoid;min-width:0}
section{break-inside:auto}
main>section{break-inside:avoid-page}
.appendix{break-before:page;margin:0}
.part{font-size:20pt}
.appendix th.fig{overflow-wrap:break-word}
tbody th,thead th:first-child{min-width:6em}
h2,h3,caption,thead{break-after:avoid}
.short{break-inside:avoid}
figure,tr,li,.answer{break-inside:avoid}
.wide{overflow:visible}
table{overflow-wrap:anywhere}
}
`.trim()
