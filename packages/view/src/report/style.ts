import { colourNames, type Colours, darkColours, lightColours } from '../pictures/index.js';

const values = (colours: Colours): string =>
  colourNames.map((name) => `--${name}:${colours[name]}`).join(';');

/** The look of a report: one column of words, pictures in a grid that folds to one column on a narrow screen. */
export const pageStyle: string = `
:root{color-scheme:light;${values(lightColours)}}
@media screen and (prefers-color-scheme:dark){:root{color-scheme:dark;${values(darkColours)}}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.55 Charter,"Bitstream Charter","Sitka Text",Cambria,Georgia,serif}
main,header,footer,nav{max-width:75rem;margin:0 auto;padding:0 1.25rem}
header{padding-top:2.5rem}
h1,h2,h3{line-height:1.2;text-wrap:balance;margin:0}
h1{font-size:clamp(1.7rem,4.5vw,2.7rem);font-weight:600;letter-spacing:-.01em}
h2{font-size:1.55rem;font-weight:600;padding-top:.7rem;border-top:3px solid var(--water);display:table;margin:0 0 .6rem}
h3{font-size:1.08rem;font-weight:700}
h3 .unit,.letter-title{font-weight:400;color:var(--soft)}
p{margin:.5rem 0;max-width:46rem;overflow-wrap:anywhere}
section{margin:3.2rem 0 0}
.kicker{color:var(--soft);margin:0 0 .3rem}
.question{font-size:1.2rem;font-style:italic;border-left:3px solid var(--water);padding-left:.9rem;margin:1rem 0}
.facts{color:var(--soft);padding:0;margin:.6rem 0;list-style:none;display:flex;flex-wrap:wrap;gap:.1rem 1.4rem}
nav ul{list-style:none;display:flex;flex-wrap:wrap;gap:.15rem 1.3rem;padding:.6rem 0;margin:1.2rem 0 0;border-top:1px solid var(--grid);border-bottom:1px solid var(--grid)}
a{color:var(--water)}
nav a{display:inline-block;padding:.3rem 0;text-decoration:none}
nav a:hover{text-decoration:underline}
.short{background:var(--card);padding:1rem 1.25rem;margin:1.4rem 0 0;max-width:52rem}
.short ul{margin:.4rem 0 0;padding-left:1.1rem}
.short li{margin:.35rem 0;overflow-wrap:anywhere}
.warn{color:var(--limit);font-weight:600}
.note{color:var(--soft);font-size:.93rem}section>.note:first-of-type{margin-bottom:1.2rem}section>h3,.short h3,header h3{margin-top:1.4rem}
figure{margin:0;min-width:0;break-inside:avoid}
figcaption{font-size:.92rem;color:var(--soft);line-height:1.4;margin:.1rem 0 .3rem;max-width:46rem}
svg{display:block;width:100%;height:auto;max-width:100%;overflow:visible}
svg text{white-space:pre}
.grid{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(20rem,100%),1fr));gap:2rem 1.8rem}
.grid>figure>svg,.runs>figure>svg,.pair>figure>svg{max-width:29rem}
.panels{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(15rem,100%),1fr));gap:1.2rem 1.8rem;margin:.6rem 0}
.panels>figure>svg{max-width:22rem}
.harvested{grid-template-columns:repeat(auto-fill,minmax(9.5rem,1fr));gap:.7rem 1.2rem}
.harvested>figure>svg{max-width:12rem}
.set{margin:0 0 2.2rem;break-inside:avoid}
.runs{display:grid;align-items:start;grid-template-columns:repeat(auto-fit,minmax(min(20rem,100%),1fr));gap:1rem 1.8rem;margin:.2rem 0}
.letter{display:inline-block;min-width:1.5em;padding:0 .3em;text-align:center;font-weight:700;color:var(--paper);background:var(--water);border-radius:2px;margin-right:.45em;line-height:1.5}
.narrow{display:none;margin:0 auto}
.system>svg{max-width:64rem}
.flow>svg{max-width:62rem}
details{margin:.2rem 0 0;font-size:.9rem}
section.folded{margin-top:1.1rem}
.fold{font-size:1rem}
.fold>summary{width:auto;padding:.35rem 0}
.fold>summary h2{display:inline;border:0;padding:0;margin:0;font-size:1.25rem;color:var(--ink)}
.fold[open]>summary{margin-bottom:.6rem}
#limits .grid{margin-top:1.4rem}
.trouble{color:var(--limit);font-size:.92rem;font-weight:600;line-height:1.35;margin:.15rem 0 .3rem;border-left:3px solid var(--limit);padding-left:.5rem}
summary{cursor:pointer;color:var(--water);padding:.2rem 0;width:max-content;max-width:100%}
.scroll{overflow-x:auto;max-width:100%}
.scroll:focus-visible,a:focus-visible,summary:focus-visible{outline:2px solid var(--water);outline-offset:2px}
table{border-collapse:collapse;font:.88rem/1.4 system-ui,sans-serif;font-variant-numeric:tabular-nums;margin:.4rem 0}
caption{text-align:left;font-weight:600;padding:0 0 .3rem}
th,td{padding:.26rem .8rem .26rem 0;text-align:left;vertical-align:top;border-bottom:1px solid var(--grid)}
thead th,thead td{border-bottom:1.5px solid var(--soft);font-weight:600;vertical-align:bottom}
tbody th{font-weight:400}
tr.total th,tr.total td{font-weight:700}
.number{text-align:right;white-space:nowrap}
.bars{width:100%;max-width:46rem;margin:.4rem 0 1.3rem}
.under{display:block;color:var(--soft);font-size:.93em}
.bars td.bar{width:45%;min-width:5.5rem;padding-right:0;vertical-align:middle}
.bars td.bar svg{height:.95rem;overflow:hidden}
.odds td.bar{width:25%}
.runs .bars td.bar{width:24%;min-width:3rem}
.pair{display:grid;align-items:start;grid-template-columns:repeat(auto-fit,minmax(min(24rem,100%),1fr));gap:1.2rem 2.5rem}
.sources{list-style:none;padding:0}.sources li{margin:.2rem 0;overflow-wrap:anywhere;max-width:56rem}.sources details{margin:0;font-size:.93rem}.sources summary{color:inherit;width:auto}
code{font:.86em ui-monospace,monospace;overflow-wrap:anywhere}
footer{padding-top:2rem;padding-bottom:3rem}
@media screen and (max-width:44rem){
  .wide{display:none}.narrow{display:block}
  body{font-size:1rem}
  section{margin-top:2.4rem}
  th,td{padding-right:.55rem}
  .bars td.bar{width:28%;min-width:4rem}
  .odds td.bar{width:20%;min-width:3rem}
  .stack{width:100%}
  .stack td:empty{display:none}
  .stack thead{position:absolute;clip-path:inset(50%);height:1px;overflow:hidden}
  .stack tr{display:block;border-bottom:1px solid var(--grid);padding:.5rem 0}
  .stack th,.stack td{display:block;border:0;padding:.05rem 0;text-align:left}
  .stack th{font-weight:700}
  .stack td[data-name]::before{content:attr(data-name) ": ";color:var(--soft)}
}
@page{margin:14mm 13mm}
@media print{
  html{font-size:9.5pt}
  body{font-size:1rem}
  header{padding-top:0}
  main,header,footer,nav{max-width:none;padding:0}
  nav{display:none}
  section{margin-top:1.4rem}
  h2,h3,.kicker{break-after:avoid}
  .grid,.runs{grid-template-columns:repeat(2,1fr);gap:.9rem 1.4rem}
  .grid>figure>svg,.runs>figure>svg{max-width:22rem}
  details:not([open]){display:none}
  .sources details:not([open]),.fold:not([open]){display:block}
  .fold::details-content{display:block;content-visibility:visible}
  .fold>summary{list-style:none}
  tr,li,p,.bars{break-inside:avoid}
  .bars.odds{break-inside:auto}
  caption,thead{break-after:avoid}
  tbody tr:first-child{break-before:avoid}
  .sources summary{list-style:none;padding:0}
  .note{break-after:avoid}
  table{font-size:8pt}
  .scroll{overflow:visible}
  .short,.letter{print-color-adjust:exact;-webkit-print-color-adjust:exact}
}
`
  .replace(/\n\s*/g, '\n')
  .trim();
