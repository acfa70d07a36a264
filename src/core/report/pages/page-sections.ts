import type { NextStep } from '@/core/findings/judged/next-steps.ts'
import type { FoundScores } from '@/core/report/found-scores.ts'
import type { ReportSection } from '@/core/report/report-block.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { dataText } from '@/core/wording/findings/origin-text.ts'
import { cautionsInShort } from '@/core/wording/tasting/cautions.ts'
import type { CivilClock } from '@/core/wording/words/civil-time.ts'
import { answerPageSection, reachSections } from './answer-page-section.ts'
import { daySection, departedSection } from './day-section.ts'
import { doughsSection } from './doughs-section.ts'
import { foundSection } from './found-section.ts'
import { besideSection, ridersSection, tastingSection } from './tasting-section.ts'

interface Made {
  next: readonly NextStep[]
  clock: CivilClock
  version: string
  dataSha256: string | undefined
}

/**
 * What hangs on a wall or goes to a friend, two pages as a rule: answer, chart, doughs, day, tasting, departures, what stays
 * open, the next step, cautions. Long lists are cut to what matters and say how much more the appendix has.
 */
export function pageSections(
  whole: WholeTrial,
  found: FoundScores,
  { next, clock, version, dataSha256 }: Made,
): ReportSection[] {
  return [
    answerPageSection(found),
    ...foundSection(found),
    ...besideSection(found),
    ...reachSections(found, next),
    doughsSection(whole),
    daySection(whole, clock),
    tastingSection(whole, found),
    departedSection(whole),
    ...ridersSection(whole, found),
    {
      id: 'page-cautions',
      title: 'Cautions',
      blocks: [
        { kind: 'text', text: cautionsInShort },
        ...(dataSha256 === undefined
          ? []
          : [{ kind: 'text' as const, text: dataText(dataSha256, version) }]),
      ],
    },
  ]
}
