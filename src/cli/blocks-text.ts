import type { ReportBlock, ReportSection } from '@/core/report/report-block.ts'
import { textTable } from './text-table.ts'
import { wrapped } from './wrapped.ts'

/** A section of the report for the terminal. Pictures are left out: their numbers stand in the tables beside them. */
export function sectionText(section: ReportSection): string {
  const body = section.blocks.map(blockText).filter((text) => text !== '')
  return [`${section.title}\n${'═'.repeat([...section.title].length)}`, ...body].join('\n\n')
}

function blockText(block: ReportBlock): string {
  switch (block.kind) {
    case 'text':
    case 'strong':
      return wrapped(block.text)
    case 'answer':
      return wrapped([block.shown, block.known].filter(Boolean).join(' '))
    case 'heading':
      return block.text
    case 'list':
      return block.items.map((item) => wrapped(item, '- ')).join('\n')
    case 'facts':
      return block.rows.map(({ term, text }) => wrapped(text, `${term}: `)).join('\n')
    case 'table':
      return `${wrapped(block.caption)}\n${textTable(block.head, block.rows, block.figures)}`
    default:
      return ''
  }
}
