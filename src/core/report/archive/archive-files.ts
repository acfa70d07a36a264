import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Pictures } from '@/core/report/photos-html.ts'
import type { ReportDocument } from '@/core/report/report-block.ts'
import { reportHtml } from '@/core/report/report-html.ts'
import { reportMarkdown } from '@/core/report/report-markdown.ts'
import { pictureFile } from '@/core/session/photo-record.ts'
import { plainManner, writtenAs } from '@/core/units/manner.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { archiveScript } from './archive-script.ts'
import { dictionaryOf, tableCsv } from './archive-table.ts'
import { archiveTables } from './archive-tables.ts'

interface ArchiveInput {
  whole: WholeTrial
  scores: ScoreTable
  document: ReportDocument
  /** The trial file, word for word. */
  trialFile: string
  /** The pictures as `data:` addresses by the id of their photo, which stand under `photos/` in the archive too. */
  pictures: Pictures
}

/**
 * Everything of a trial that somebody else needs, as files of text by name: tidy tables with their dictionary, the trial file, the
 * report, and a script in R that computes the main model again. Photos stand beside them.
 */
export function archiveFiles({
  whole,
  scores,
  document,
  trialFile,
  pictures,
}: ArchiveInput): Record<string, string> {
  const tables = writtenAs(plainManner, () => archiveTables(whole, scores))
  const beside = new Map(
    whole.photos
      .filter(({ id }) => pictures.has(id))
      .map((photo) => [photo.id, `photos/${pictureFile(photo)}`]),
  )
  const csv = [...tables, dictionaryOf(tables)].map((table) => [table.file, tableCsv(table)])
  return {
    'README.txt': readMe(document.title),
    ...Object.fromEntries(csv),
    'main-model.R': archiveScript,
    'report.html': reportHtml(document, pictures),
    'report.md': reportMarkdown(document, (photoId) => beside.get(photoId)),
    'trial.json': trialFile,
  }
}

const readMe = (title: string) => `${title}

trial.json       the trial itself; Evenhand opens it
report.html, .md the report
*.csv            tidy tables (RFC 4180, UTF-8, decimal point); dictionary.csv says what each column holds
main-model.R     reads observations.csv and computes the main model again (R, base packages alone)
photos/          pictures, by their keys in trial.json

A cell that a spreadsheet would run as a formula stands behind a quote sign.
`
