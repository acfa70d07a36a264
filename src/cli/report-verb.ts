import { writeFileSync } from 'node:fs'
import { reportDocument } from '@/core/report/report-document.ts'
import { reportHtml } from '@/core/report/report-html.ts'
import { reportMarkdown } from '@/core/report/report-markdown.ts'
import { found } from './found.ts'
import { nextOf } from './found-shape.ts'
import { notWrittenText } from './not-written.ts'
import { processClock } from './process-clock.ts'
import { stillSealed } from './read-trial.ts'
import { trialFileHash } from './trial-file-hash.ts'
import { CommandTrouble } from './trouble.ts'
import { unsealOption, type Verb } from './verb.ts'

/** The report of a trial as one self-contained HTML file, or as Markdown, by the ending of --out. */
export const reportVerb: Verb = {
  summary: 'write the report that somebody else can check',
  about: 'The ending of --out decides: .html for one self-contained page, .md for Markdown.',
  options: {
    out: { type: 'string', value: 'OUT.html|OUT.md', help: 'where to write it' },
    unseal: unsealOption,
  },
  answer: async (asked) => {
    const out = asked.text('out')
    if (out === undefined || !/\.(html|md)$/i.test(out))
      throw new CommandTrouble('report: say where to write it with --out OUT.html or --out OUT.md.')
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
    const write = /\.md$/i.test(out) ? reportMarkdown : reportHtml
    try {
      writeFileSync(out, write(made.document))
    } catch (failure) {
      throw new CommandTrouble(notWrittenText(out, failure))
    }
    return `${out}: written.`
  },
}
