import { writeFileSync } from 'node:fs'
import { strToU8, zipSync } from 'fflate'
import { archiveFiles } from '@/core/report/archive/archive-files.ts'
import { reportDocument } from '@/core/report/report-document.ts'
import { pictureFile } from '@/core/session/photo-record.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { found } from './found.ts'
import { nextOf } from './found-shape.ts'
import { notWrittenText } from './not-written.ts'
import { asAddresses, photosOption, picturesIn } from './photos-folder.ts'
import { processClock } from './process-clock.ts'
import { stillSealed } from './read-trial.ts'
import { trialFileHash } from './trial-file-hash.ts'
import { CommandTrouble } from './trouble.ts'
import { unsealOption, type Verb } from './verb.ts'

/** So that the same trial gives the same bytes: the first day a zip can name. */
const zipDay = new Date(1980, 0, 1)

/** Tables, dictionary, trial file, report and a script in R as one zip. */
export const archiveVerb: Verb = {
  summary: 'write everything of a trial as one zip of tidy tables',
  about:
    'Tables (RFC 4180) with a dictionary, the trial file, the report as HTML and Markdown, and a short script in R that computes the main model again. A trial file has no photos: --photos names the folder with them.',
  options: {
    out: { type: 'string', value: 'OUT.zip', help: 'where to write it' },
    photos: photosOption,
    unseal: unsealOption,
  },
  answer: async (asked) => {
    const out = asked.text('out')
    if (out === undefined || !/\.zip$/i.test(out))
      throw new CommandTrouble('archive: say where to write it with --out OUT.zip.')
    const answer = await found(asked, null)
    const { whole, scores, findings } = answer
    if (!whole)
      throw new CommandTrouble(`${asked.file}: an archive is made of a trial file (.json).`)
    const made = reportDocument({
      ...{ whole, scores, findings },
      next: nextOf(answer),
      version: __APP_VERSION__,
      dataSha256: trialFileHash(whole),
      clock: processClock,
      unsealed: asked.flag('unseal'),
    })
    if (!made.ok) throw stillSealed(asked.file)
    const { document } = made
    const kept = picturesIn(asked.text('photos'), whole)
    const files = archiveFiles({
      ...{ whole, scores, document, trialFile: writeTrialFile(whole) },
      pictures: asAddresses(kept),
    })
    const packed = Object.fromEntries([
      ...Object.entries(files).map(([name, text]) => [name, strToU8(text)] as const),
      ...[...kept.values()].map(
        ({ photo, bytes }) => [`photos/${pictureFile(photo)}`, bytes] as const,
      ),
    ])
    try {
      writeFileSync(out, zipSync(packed, { mtime: zipDay }))
    } catch (failure) {
      throw new CommandTrouble(notWrittenText(out, failure))
    }
    return `${out}: written.`
  },
}
