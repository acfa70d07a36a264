import { escapeMarkdown } from './escape.ts'
import type {
  PhotosBlock,
  ReportBlock,
  ReportDocument,
  ReportSection,
  TableBlock,
} from './report-block.ts'

/** Where a photo's picture stands, as seen from the file; undefined where it does not. */
export type PictureAt = (photoId: string) => string | undefined

/**
 * The report as Markdown with pipe tables; charts become tables of their means and intervals, everything typed is escaped. Photos
 * are shown where `pictureAt` tells the file they stand in beside it.
 */
export function reportMarkdown(
  document: ReportDocument,
  pictureAt: PictureAt = () => undefined,
): string {
  const head = [`# ${escapeMarkdown(document.title)}`]
  if (document.note !== '') head.push(`> ${escapeMarkdown(document.note)}`)
  const pages = document.pages.map((section) => sectionMarkdown(section, '##', pictureAt))
  const appendix = document.appendix.map((section) => sectionMarkdown(section, '###', pictureAt))
  const made = escapeMarkdown(document.madeBy)
  return `${[...head, ...pages, '## Appendix', ...appendix, made].join('\n\n')}\n`
}

function sectionMarkdown(section: ReportSection, sign: '##' | '###', pictureAt: PictureAt): string {
  return [
    `${sign} ${escapeMarkdown(section.title)}`,
    ...section.blocks.map((block) =>
      block.kind === 'heading'
        ? `${sign}# ${escapeMarkdown(block.text)}`
        : blockMarkdown(block, pictureAt),
    ),
  ]
    .filter((text) => text !== '')
    .join('\n\n')
}

function blockMarkdown(
  block: Exclude<ReportBlock, { kind: 'heading' }>,
  pictureAt: PictureAt,
): string {
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
    case 'photos':
      return photosMarkdown(block, pictureAt)
    case 'pairs':
      return escapeMarkdown(block.alt)
  }
}

/** A table of pictures; nothing where none stands beside the file: the table of photos follows in any case. */
function photosMarkdown({ title, scale, columns }: PhotosBlock, pictureAt: PictureAt): string {
  const cells = columns.map(({ photos }) =>
    photos.flatMap(({ photoId, alt, text }) => {
      const address = pictureAt(photoId)
      return address === undefined
        ? []
        : [`![${escapeMarkdown(alt)}](${address}) ${escapeMarkdown(text)}`]
    }),
  )
  if (cells.every((own) => own.length === 0)) return ''
  const row = (texts: string[]) => `| ${texts.map((text) => text || ' ').join(' | ')} |`
  return [
    `*${escapeMarkdown(`${title}. ${scale}`)}*`,
    '',
    row(columns.map(({ name }) => escapeMarkdown(name))),
    row(columns.map(() => '---')),
    row(cells.map((own) => own.join('<br>'))),
  ].join('\n')
}

function tableMarkdown({ caption, head, rows, figures }: TableBlock): string {
  const written = (cells: readonly string[]) =>
    `| ${cells.map((cell) => escapeMarkdown(cell) || ' ').join(' | ')} |`
  const rule = `| ${figures.map((figure) => (figure ? '---:' : '---')).join(' | ')} |`
  return [`*${escapeMarkdown(caption)}*`, '', written(head), rule, ...rows.map(written)].join('\n')
}
