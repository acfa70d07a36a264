import { writeFileSync } from 'node:fs'
import type { Pictures } from '@/core/report/photos-html.ts'
import type { ReportDocument } from '@/core/report/report-block.ts'
import { reportDocument } from '@/core/report/report-document.ts'
import { reportHtml } from '@/core/report/report-html.ts'
import { reportMarkdown } from '@/core/report/report-markdown.ts'
import { found } from './found.ts'
import { nextOf } from './found-shape.ts'
import { notWrittenText } from './not-written.ts'
import { asAddresses, photosOption, picturesIn } from './photos-folder.ts'
import { processClock } from './process-clock.ts'
import { stillSealed } from './read-trial.ts'
import { pagesText, wholeText } from './report-text.ts'
import { trialFileHash } from './trial-file-hash.ts'
import { CommandTrouble } from './trouble.ts'
import { unsealOption, type Verb } from './verb.ts'

/** The report of a trial in the terminal, or as a self-contained HTML file, Markdown or plain text by the ending of --out. */
export const reportVerb: Verb = {
  summary: 'write the report that somebody else can check',
  about:
    'The ending of --out decides: .html for one self-contained page, .md for Markdown, .txt for plain text, each with the appendix. With --photos its HTML holds the pictures, as that of the app does. Without --out its two pages are printed here.',
  options: {
    out: { type: 'string', value: 'OUT.html|OUT.md|OUT.txt', help: 'where to write it' },
    photos: photosOption,
    unseal: unsealOption,
  },
  answer: async (asked) => {
    const out = asked.text('out')
    if (out !== undefined && !/\.(html|md|txt)$/i.test(out))
      throw new CommandTrouble(
        'report: say where to write it with --out OUT.html, --out OUT.md or --out OUT.txt; without --out it is printed here.',
      )
    if (!/\.json$/i.test(asked.file))
      throw new CommandTrouble(`${asked.file}: a report is made of a trial file (.json).`)
    const answer = await found(asked, null)
    const { whole, scores, findings } = answer
    if (!whole) throw new Error('a trial file gives a trial')
    const made = reportDocument({
      ...{ whole, scores, findings },
      next: nextOf(answer),
      version: __APP_VERSION__,
      dataSha256: trialFileHash(whole),
      clock: processClock,
      unsealed: asked.flag('unseal'),
    })
    if (!made.ok) throw stillSealed(asked.file)
    const pictures = asAddresses(picturesIn(asked.text('photos'), whole))
    if (out === undefined) return pagesText(made.document)
    try {
      writeFileSync(out, writtenAs(out, made.document, pictures))
    } catch (failure) {
      throw new CommandTrouble(notWrittenText(out, failure))
    }
    return `${out}: written.`
  },
}

function writtenAs(out: string, document: ReportDocument, pictures: Pictures): string {
  if (/\.md$/i.test(out)) return reportMarkdown(document)
  return /\.txt$/i.test(out) ? `${wholeText(document)}\n` : reportHtml(document, pictures)
}
