import type { FairnessCode } from '@/core/fairness/fairness-data.ts'
import type { FairnessItem, ItemOf, Severity } from '@/core/fairness/fairness-item.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { designSentences } from './fairness-design-text.ts'
import { logSentences } from './fairness-log-text.ts'
import { riderSentences } from './fairness-rider-text.ts'
import type { Sentences } from './fairness-sentence.ts'
import { fairnessTitles } from './fairness-titles.ts'
import { fairnessWhy } from './fairness-why.ts'

const sentences: Sentences<FairnessCode> = {
  ...riderSentences,
  ...designSentences,
  ...logSentences,
}

/** An item of the fairness check in a baker's words: its name, what and how much, and why it matters. */
export function fairnessText(
  item: FairnessItem,
  plan: Plan,
): { title: string; sentence: string; why: string } {
  return {
    title: fairnessTitles[item.code],
    sentence: said(item, plan),
    why: fairnessWhy[item.code],
  }
}

function said<Code extends FairnessCode>(item: ItemOf<Code>, plan: Plan): string {
  const sentence: Sentences<FairnessCode>[Code] = sentences[item.code]
  return sentence(item, plan)
}

const severities: Readonly<Record<FairnessItem['when'], Readonly<Record<Severity, string>>>> = {
  before: { fix: 'Fix before you start', know: 'Know about it', fine: 'Fine' },
  after: { fix: 'Mend next time', know: 'Know about it', fine: 'Fine' },
}

/** The heading an item stands under. */
export function severityText({ severity, when }: Pick<FairnessItem, 'severity' | 'when'>): string {
  return severities[when][severity]
}

/** How the fairness check came out, as three counts: "1 to fix, 8 to know, 13 fine". */
export function fairnessCountText(items: readonly Pick<FairnessItem, 'severity'>[]): string {
  const count = (severity: FairnessItem['severity']) =>
    items.filter((item) => item.severity === severity).length
  return `${count('fix')} to fix, ${count('know')} to know, ${count('fine')} fine`
}
