import { answerSection } from '@/core/report/answer-section.ts'
import { curvesOf } from '@/core/report/curves-of.ts'
import { lettersByName } from '@/core/report/letters-of.ts'
import { resultSections } from '@/core/report/results-section.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { sectionText } from './blocks-text.ts'
import { concluded } from './concluded.ts'
import type { Found } from './found.ts'
import { wrapped } from './wrapped.ts'

/** The findings for the terminal: the answer first, then each response with its tables. */
export function findingsText(found: Found): string {
  const { scores, findings, whole } = found
  const letters = whole ? lettersByName(whole) : new Map<string, string>()
  const shown = { scores, findings, letters, curves: curvesOf(scores, findings) }
  const sections = [
    answerSection(shown, concluded(found)),
    ...(scores.rows.length === 0 ? [] : resultSections(shown)),
  ]
  return [...headOf(found), ...sections.map(sectionText)].join('\n\n\n')
}

/** The question with the file's own note under it; a table of scores has neither. */
function headOf({ whole }: Found): string[] {
  if (!whole) return []
  const { note } = whole.trial
  return [[planInForce(whole).question, ...(note ? [wrapped(note)] : [])].join('\n\n')]
}
