import type { ReportDocument } from '@/core/report/report-block.ts'
import { sectionText } from './blocks-text.ts'
import { wrapped } from './wrapped.ts'

/** The two pages of a report as plain text. */
export function pagesText({ title, note, pages }: ReportDocument): string {
  return [wrapped(title), ...(note === '' ? [] : [wrapped(note)]), ...pages.map(sectionText)].join(
    '\n\n',
  )
}

/** The pages and the appendix as plain text. */
export function wholeText(document: ReportDocument): string {
  const appendix = document.appendix.map(sectionText)
  return [pagesText(document), 'APPENDIX', ...appendix, document.madeBy].join('\n\n')
}
