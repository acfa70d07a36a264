import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { answerSection } from '@/core/report/answer-section.ts'
import { curvesOf } from '@/core/report/curves-of.ts'
import { lettersOf } from '@/core/report/letters-of.ts'
import { resultSections } from '@/core/report/results-section.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { replicatedText } from '@/core/wording/files/csv-trouble-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { sectionText } from './blocks-text.ts'
import { type Found, nextOf } from './found-shape.ts'
import { wrapped } from './wrapped.ts'

/** The findings for the terminal: the answer first, then each response with its tables. */
export function findingsText(found: Found): string {
  const { scores, findings, whole } = found
  const letters = whole ? lettersOf(whole) : new Map<string, string>()
  const nameOf = (taster: string) => (whole ? tasterName(taster, whole.kitchen) : taster)
  const shown = { scores, findings, letters, nameOf, curves: curvesOf(scores, findings) }
  const sections = [
    answerSection(shown, nextOf(found)),
    ...(scores.rows.length === 0 ? [] : resultSections(shown)),
  ]
  return [...headOf(found), ...sections.map(sectionText)].join('\n\n\n')
}

/** The question with the file's own note under it; a table of scores has neither. */
function headOf({ whole, scores }: Found): string[] {
  if (!whole) return toldText(scores)
  const { note } = whole.trial
  return [[planInForce(whole).question, ...(note ? [wrapped(note)] : [])].join('\n\n')]
}

/** What a table was read as, and of which responses no direction is known. */
function toldText({ responses, replicated }: ScoreTable): string[] {
  const open = responses.filter(({ better }) => better.is === 'neither').map(({ name }) => name)
  const texts = [
    ...(replicated ? [replicatedText] : []),
    ...(open.length > 0
      ? [
          `Which way is better was not said for ${listText(open)}, so no level is called best in it. Say --better RESPONSE=higher or lower.`,
        ]
      : []),
  ]
  return texts.length > 0 ? [texts.map((text) => wrapped(text)).join('\n\n')] : []
}
