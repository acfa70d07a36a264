import { usualResamples } from '@/core/findings/best/usual-resamples.ts'
import { tableOptions } from './csv-options.ts'
import { found } from './found.ts'
import { jsonOption, unsealOption, type Verb } from './verb.ts'

/** What the scores support: of a trial file, or of a table of scores kept elsewhere. */
export const findingsVerb: Verb = {
  summary: 'say what the scores support',
  about:
    'FILE is a trial file (.json) or a table of scores (.csv, .tsv, .txt): one row for each session, flight, level and taster; every other column of numbers is a response.',
  options: { ...tableOptions, unseal: unsealOption, json: jsonOption },
  answer: async (asked) => {
    const inJson = asked.flag('json')
    const answer = await found(asked, inJson ? usualResamples : null)
    if (inJson) return JSON.stringify(answer.findings, null, 2)
    const { findingsText } = await import('./findings-text.ts')
    return findingsText(answer)
  },
}
