import completing from 'prism-code-editor/autocomplete.css?inline';
import editing from 'prism-code-editor/layout.css?inline';
import { pageStyle } from '@leat/view/report';

/** The look of the page: that of a report, with what is pressed and typed. Sizes are logical, so that it turns for right-to-left. */
export const style = `${pageStyle}${editing}${completing}
body{font-family:system-ui,sans-serif}
header{padding-block-start:1.2rem;max-inline-size:100rem}
label.button{margin-block-start:.6rem}
header h1{font-size:clamp(1.3rem,3vw,1.9rem)}
main{display:grid;gap:1.5rem;grid-template-columns:minmax(0,1fr);max-inline-size:100rem}
main section{margin-block:1.2rem 0}
main .sections section{margin-block-start:2rem}
@media (min-width:70rem){main{grid-template-columns:minmax(0,5fr) minmax(0,7fr)}}
button,select,input:not([type=checkbox]):not([type=range]),.button,summary{min-block-size:44px;font:inherit;color:inherit}
button,.button{background:var(--card);border:1px solid var(--soft);border-radius:6px;padding:.5rem .9rem;cursor:pointer;display:inline-flex;align-items:center}
button.main{background:var(--water);color:var(--paper);border-color:var(--water);font-weight:600;min-inline-size:9rem;justify-content:center}
button:disabled{opacity:1;color:var(--soft);background:var(--paper);border-style:dashed;cursor:default}
button.quiet{border:0;background:none;text-align:start;padding:.4rem;text-decoration:underline;overflow-wrap:anywhere}
.button input{position:absolute;inline-size:1px;min-block-size:1px!important;block-size:1px;opacity:0}
.button:focus-within,button:focus-visible,select:focus-visible,input:focus-visible,summary:focus-visible{outline:3px solid var(--water);outline-offset:2px}
select,input:not([type=checkbox]):not([type=range]){background:var(--paper);border:1px solid var(--soft);border-radius:6px;padding:.4rem .6rem;max-inline-size:100%}
label select{display:block;inline-size:100%}
input[type=checkbox]{inline-size:1.4rem;block-size:1.4rem;margin-inline-end:.5rem;flex:none}
input[type=range]{min-block-size:44px;flex:1 1 14rem}
label.check{display:inline-grid;grid-template-columns:auto minmax(0,1fr);align-items:center;min-block-size:44px;margin-inline-end:1rem}
label.check small{grid-column:2}
small{color:var(--soft)}
.row{display:flex;flex-wrap:wrap;gap:.7rem;align-items:end;margin-block:.7rem}
.row label:not(.check){display:flex;flex-direction:column;flex:0 1 auto;min-inline-size:0}
.row.slider{align-items:center}
.amount{display:inline-flex;gap:.4rem;align-items:center}
.amount input,.months input{inline-size:7.5rem}
.file{font-family:ui-monospace,monospace;color:var(--soft);margin-block:0}
.editor{border:1px solid var(--soft);border-radius:6px;overflow:hidden;font-size:.9rem}
.editor:focus-within{outline:3px solid var(--water);outline-offset:2px}
.prism-code-editor{--pce-bg:var(--paper);--pce-cursor:var(--ink);--pce-line-number:var(--soft);--pce-selection:color-mix(in srgb,var(--water) 30%,transparent);--pce-bg-highlight:var(--card);--pce-widget-border:var(--soft);--pce-widget-bg:var(--card);--pce-widget-color-active:var(--ink);--pce-ac-match:var(--water);color:var(--ink);max-block-size:34rem;font-family:ui-monospace,monospace}
.prism-code-editor .key{color:var(--water)}
.prism-code-editor .comment{color:var(--soft);font-style:italic}
.pce-line.fault{background:color-mix(in srgb,var(--limit) 14%,transparent);text-decoration:underline wavy var(--limit)}
.pce-line.fault:before{background:var(--limit);color:var(--paper)!important;font-weight:700;text-decoration:none}
.pce-ac-tooltip ul{margin:0}
.pce-ac-row button{min-block-size:0}
.pce-ac-row[aria-selected]{background:var(--water);color:var(--paper)}
.pce-ac-row[aria-selected] .pce-ac-label span{color:inherit;font-weight:700}
.pce-ac-docs{padding:.5rem .7rem;font-family:system-ui,sans-serif}
.pce-hover-tooltip{background:var(--card);color:var(--ink);border:1px solid var(--soft);border-radius:4px;overflow:auto;white-space:normal;font-family:system-ui,sans-serif;pointer-events:auto;user-select:text}
.meaning{padding:.5rem .7rem}
.faults ul{padding-inline-start:0;list-style:none;margin:0}
.faults button{color:var(--limit)}
.files ul{list-style:none;padding:0}
.files li{display:flex;flex-wrap:wrap;align-items:center;gap:.3rem}
.bar{position:sticky;inset-block-end:0;background:var(--paper);padding-block:.6rem;display:flex;flex-wrap:wrap;gap:.7rem;align-items:center;border-block-start:1px solid var(--grid);z-index:5}
.bar .trouble-box{flex-basis:100%;max-block-size:12rem;overflow:auto}
.bar .trouble-box:has(:not(p)){display:block}
.bar p{white-space:pre-wrap;margin:0}
progress{accent-color:var(--water)}
.questions fieldset{border:1px solid var(--grid);border-radius:6px;margin-block:.8rem;min-inline-size:0}
.questions legend{font-weight:700;padding-inline:.4rem}
.question-row{margin-block:.7rem;display:flex;flex-direction:column;gap:.25rem;min-inline-size:0}
.question-row select{max-inline-size:24rem}
.several,.months{display:flex;flex-wrap:wrap;gap:.2rem .6rem;align-items:center}
.title{font-size:1.2rem;font-weight:600}
.answer{font-size:1.1rem;font-weight:600}
.card{background:var(--card);padding:.5rem 1rem;border-radius:6px}
.card h3{margin:0}
.asked{padding-block:.6rem}
.asked pre{overflow:auto;background:var(--card);padding:.6rem}
.pair-chart svg{max-inline-size:26rem;block-size:auto;inline-size:100%}
figure.system{margin-inline:0}
.printed{display:none}
.dropping{outline:4px dashed var(--water);outline-offset:-8px}
@media print{.bar,.row button,.row input[type=range],header .row,.editor,#form,#files,.button,.files,section[aria-labelledby=sliders],section[aria-labelledby=ask],section[aria-labelledby=begin]{display:none!important}.printed{display:block;white-space:pre-wrap;font-size:.75rem}main{display:flex;flex-direction:column}.own{order:1}}
`;
