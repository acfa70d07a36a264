import { answerSection } from '@/core/report/answer-section.ts'
import { resultSections } from '@/core/report/results-section.ts'
import { sectionText } from './blocks-text.ts'
import { found } from './found.ts'
import { jsonOption, unsealOption, type Verb } from './verb.ts'

/** What the scores support: of a trial file, or of a table of scores kept elsewhere. */
export const findingsVerb: Verb = {
  summary: 'say what the scores support',
  about:
    'FILE is a trial file (.json) or a table of scores (.csv, .tsv, .txt): one row for each session, flight, level and taster; every other column of numbers is a response.',
  options: {
    as: {
      type: 'string',
      multiple: true,
      value: 'MEANING=COLUMN',
      help: 'what a column is (session, flight, batch, piece, level, taster, position, minutes, response, ignore)',
    },
    unit: {
      type: 'string',
      value: 'batch|piece',
      help: 'what got its level separately; batch unless said',
    },
    control: {
      type: 'string',
      value: 'LEVEL',
      help: 'the level that is the usual one, in a table',
    },
    margin: {
      type: 'string',
      value: 'NUMBER',
      help: 'the smallest difference to care about, in a table',
    },
    wide: {
      type: 'string',
      value: 'NAME',
      help: 'convert a table with one column a level; NAME names its response',
    },
    unseal: unsealOption,
    json: jsonOption,
  },
  answer: async (asked) => {
    const answer = found(asked)
    if (asked.flag('json')) return JSON.stringify(answer.findings, null, 2)
    const sections = [answerSection(answer, answer.conclusion), ...resultSections(answer)]
    const note = answer.whole?.trial.note
    return [...(note ? [note] : []), ...sections.map(sectionText)].join('\n\n\n')
  },
}
