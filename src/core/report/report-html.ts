import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { chartSvg } from './chart-svg.ts'
import { type ColumnLook, columnLooks, headsOnOneLine } from './column-look.ts'
import { escapeHtml } from './escape.ts'
import { pairsSvg } from './pairs-svg.ts'
import { type Pictures, photosHtml } from './photos-html.ts'
import type { ReportBlock, ReportDocument, ReportSection, TableBlock } from './report-block.ts'
import { reportStyle } from './report-style.ts'
import { runningHead } from './running-head.ts'

/**
 * The report as one file that needs nothing else: inline pictures and styles, no script, no link outside, nothing
 * fetched (a policy in its head forbids it), everything typed by a person escaped. Prints on A4 and Letter. Photos stand in it as
 * far as their pictures are handed in.
 */
export function reportHtml(document: ReportDocument, pictures: Pictures = new Map()): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
<title>${escapeHtml(document.title)}</title>
<style>${reportStyle}
${runningHead(document.title)}</style>
</head>
<body>
<main>
${reportBody(document, pictures)}
</main>
</body>
</html>
`
}

/** The body alone, for a face that shows it inside a page of its own. */
function reportBody(document: ReportDocument, pictures: Pictures): string {
  const note = document.note === '' ? '' : `<p class="note">${escapeHtml(document.note)}</p>\n`
  const html = (section: ReportSection) => sectionHtml(section, pictures)
  return `<h1>${escapeHtml(document.title)}</h1>
${note}${document.pages.map(html).join('\n')}
<div class="appendix">
<p class="part">Appendix</p>
${document.appendix.map(html).join('\n')}
</div>
<p class="made">${escapeHtml(document.madeBy)}</p>`
}

function sectionHtml(section: ReportSection, pictures: Pictures): string {
  const id = escapeHtml(section.id)
  const blocks = section.blocks.map((block, index) => blockHtml(block, `${id}-${index}`, pictures))
  return `<section aria-labelledby="${id}">
<h2 id="${id}">${escapeHtml(section.title)}</h2>
${blocks.join('\n')}
</section>`
}

function blockHtml(block: ReportBlock, id: string, pictures: Pictures): string {
  switch (block.kind) {
    case 'text':
      return `<p>${wordsHtml(block.text)}</p>`
    case 'strong':
      return `<p class="strong">${wordsHtml(block.text)}</p>`
    case 'answer':
      return `<p class="answer">${wordsHtml(block.shown)} <span class="known">${wordsHtml(block.known)}</span></p>`
    case 'heading':
      return `<h3>${escapeHtml(block.text)}</h3>`
    case 'list':
      return `<ul>${block.items.map((item) => `<li>${wordsHtml(item)}</li>`).join('')}</ul>`
    case 'facts':
      return `<dl>${block.rows.map(({ term, text }) => `<dt>${escapeHtml(term)}</dt><dd>${wordsHtml(text)}</dd>`).join('')}</dl>`
    case 'table':
      return tableHtml(block)
    case 'chart':
      return `<figure><div class="wide">${chartSvg(block, id)}</div><figcaption>${escapeHtml(block.title)}</figcaption></figure>`
    case 'photos':
      return photosHtml(block, pictures)
    case 'pairs':
      return `<figure><div class="wide">${pairsSvg(block)}</div><figcaption>${escapeHtml(block.title)}</figcaption></figure>`
  }
}

/** Words that the page breaks into lines. */
const wordsHtml = (text: string) => escapeHtml(boundUnits(text))

function tableHtml(block: TableBlock): string {
  const { caption, head, rows } = block
  const looks = columnLooks(block)
  const side = (index: number) => sides[looks[index] ?? 'few']
  const heads = head.map((text, index) => `<th scope="col"${side(index)}>${escapeHtml(text)}</th>`)
  const body = rows.map((row) => {
    const cells = row.map((text, index) =>
      index === 0
        ? `<th scope="row"${side(index)}>${escapeHtml(text)}</th>`
        : `<td${side(index)}>${looks[index] === 'words' ? wordsHtml(text) : escapeHtml(text)}</td>`,
    )
    return `<tr>${cells.join('')}</tr>`
  })
  const look = `wide${rows.length <= 14 ? ' short' : ''}${headsOnOneLine(block) ? ' line' : ''}`
  return `<div class="${look}"><table><caption>${escapeHtml(caption)}</caption><thead><tr>${heads.join('')}</tr></thead><tbody>${body.join('')}</tbody></table></div>`
}

const sides: Record<ColumnLook, string> = {
  figure: ' class="fig"',
  few: '',
  words: ' class="words"',
}
