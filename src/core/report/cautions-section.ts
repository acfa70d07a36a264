import { cautions, cautionsDefer } from '@/core/wording/tasting/cautions.ts'
import type { ReportSection } from './report-block.ts'

/** What anyone who repeats the trial should know before mixing, baking and tasting. */
export function cautionsSection(): ReportSection {
  return {
    id: 'cautions',
    title: 'Cautions in full',
    blocks: [
      { kind: 'facts', rows: cautions.map(({ title, text }) => ({ term: title, text })) },
      { kind: 'text', text: cautionsDefer },
    ],
  }
}
