import { answerSection } from '@/core/report/answer-section.ts'
import { resultSections } from '@/core/report/results-section.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { sectionText } from './blocks-text.ts'
import { tableOptions } from './csv-options.ts'
import { type Found, found } from './found.ts'
import { jsonOption, unsealOption, type Verb } from './verb.ts'
import { wrapped } from './wrapped.ts'

/** What the scores support: of a trial file, or of a table of scores kept elsewhere. */
export const findingsVerb: Verb = {
  summary: 'say what the scores support',
  about:
    'FILE is a trial file (.json) or a table of scores (.csv, .tsv, .txt): one row for each session, flight, level and taster; every other column of numbers is a response.',
  options: { ...tableOptions, unseal: unsealOption, json: jsonOption },
  answer: async (asked) => {
    const answer = found(asked)
    if (asked.flag('json')) return JSON.stringify(answer.findings, null, 2)
    const sections = [
      answerSection(answer, answer.conclusion),
      ...(answer.scores.rows.length === 0 ? [] : resultSections(answer)),
    ]
    return [...headOf(answer), ...sections.map(sectionText)].join('\n\n\n')
  },
}

/** The question with the file's own note under it; a table of scores has neither. */
function headOf({ whole }: Found): string[] {
  if (!whole) return []
  const { note } = whole.trial
  return [[planInForce(whole).question, ...(note ? [wrapped(note)] : [])].join('\n\n')]
}
