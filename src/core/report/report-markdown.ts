import { escapeMarkdown } from './escape.ts'
import type { ReportBlock, ReportDocument, ReportSection, TableBlock } from './report-block.ts'

/** The report as Markdown with pipe tables; charts become tables of their means and intervals, everything typed is escaped. */
export function reportMarkdown(document: ReportDocument): string {
  const head = [`# ${escapeMarkdown(document.title)}`]
  if (document.note !== '') head.push(`> ${escapeMarkdown(document.note)}`)
  const pages = document.pages.map((section) => sectionMarkdown(section, '##'))
  const appendix = document.appendix.map((section) => sectionMarkdown(section, '###'))
  const made = escapeMarkdown(document.madeBy)
  return `${[...head, ...pages, '## Appendix', ...appendix, made].join('\n\n')}\n`
}

function sectionMarkdown(section: ReportSection, sign: '##' | '###'): string {
  return [
    `${sign} ${escapeMarkdown(section.title)}`,
    ...section.blocks.map((block) =>
      block.kind === 'heading' ? `${sign}# ${escapeMarkdown(block.text)}` : blockMarkdown(block),
    ),
  ]
    .filter((text) => text !== '')
    .join('\n\n')
}

function blockMarkdown(block: Exclude<ReportBlock, { kind: 'heading' }>): string {
  switch (block.kind) {
    case 'text':
      return escapeMarkdown(block.text)
    case 'answer':
      return [`**${escapeMarkdown(block.shown)}**`, escapeMarkdown(block.known)].join(' ').trim()
    case 'strong':
      return `**${escapeMarkdown(block.text)}**`
    case 'list':
      return block.items.map((item) => `- ${escapeMarkdown(item)}`).join('\n')
    case 'facts':
      return block.rows
        .map(({ term, text }) => `- ${escapeMarkdown(term)}: ${escapeMarkdown(text)}`)
        .join('\n')
    case 'table':
      return tableMarkdown(block)
    case 'chart':
      return escapeMarkdown(block.alt)
    case 'pairs':
      return escapeMarkdown(block.alt)
  }
}

function tableMarkdown({ caption, head, rows, figures }: TableBlock): string {
  const written = (cells: readonly string[]) =>
    `| ${cells.map((cell) => escapeMarkdown(cell) || ' ').join(' | ')} |`
  const rule = `| ${figures.map((figure) => (figure ? '---:' : '---')).join(' | ')} |`
  return [`*${escapeMarkdown(caption)}*`, '', written(head), rule, ...rows.map(written)].join('\n')
}
