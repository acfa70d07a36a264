import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { fairnessOfTrial } from '@/core/fairness/fairness-of-trial.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { fairnessText, severityText } from '@/core/wording/fairness/fairness-text.ts'
import type { ReportBlock, ReportSection } from './report-block.ts'

/** The fairness check in the report: what was left unequal, with its size, and in one line what was found fine. */
export function fairnessSection(whole: WholeTrial): ReportSection {
  const plan = planInForce(whole)
  const items = fairnessOfTrial(whole)
  const open = items.filter(({ severity }) => severity !== 'fine')
  const fine = items.filter(({ severity }) => severity === 'fine')
  const row = (found: FairnessItem) => {
    const item = whole.sessions.length > 0 ? { ...found, when: 'after' as const } : found
    const { title, sentence, why } = fairnessText(item, plan)
    const weight = item.accepted ? 'Accepted' : severityText(item)
    return { term: title, text: `${weight}. ${sentence} ${why}` }
  }
  const blocks: ReportBlock[] = [
    open.length === 0
      ? { kind: 'text', text: 'Nothing that rides along with the factor is large enough to name.' }
      : { kind: 'facts', rows: open.map(row) },
  ]
  if (fine.length > 0) {
    const names = [...new Set(fine.map((item) => fairnessText(item, plan).title))]
    blocks.push({ kind: 'text', text: `Checked and fine: ${names.join(', ')}.` })
  }
  return { id: 'fairness', title: 'Fairness check', blocks }
}
