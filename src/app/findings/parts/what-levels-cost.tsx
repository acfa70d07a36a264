import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { decimalText } from '@/core/units/number-text.ts'
import type { Naming } from '@/core/wording/findings/answer-of-rung.ts'
import { asGoodFigures } from '@/core/wording/findings/as-good-figures.ts'
import { costSentence, handlingHead } from '@/core/wording/findings/cost-sentence.ts'
import { levelInWords } from '@/core/wording/findings/named-in-findings.ts'
import { unbroken } from '@/core/wording/words/bound-units.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { Method } from './method.tsx'
import { PartFold } from './part-fold.tsx'

interface WhatLevelsCostProps {
  main: ResponseFindings
  naming: Naming
  scores: ScoreTable
}

/** Whether each level is as good as the best, with its failures, time of hands and handling beside it. */
export function WhatLevelsCost({ main, naming, scores }: WhatLevelsCostProps) {
  const { asGood } = main.conclusion
  const judged = new Map(isPresent(asGood) ? asGood.levels.map((each) => [each.level, each]) : [])
  const asGoodWord = (levelId: string) => {
    const one = judged.get(levelId)
    if (!one || !isPresent(asGood)) return '–'
    if (one.passes) return 'yes'
    if (asGood.named !== null && asGood.named !== levelId) return 'not asked'
    return 'not shown'
  }
  return (
    <PartFold
      title="As good, and what it costs"
      result={costSentence(main.conclusion, naming, scores)}
    >
      {scores.ease ? (
        <LedgerTable
          caption="What each level costs"
          close
          rowHead="Level"
          columns={[
            { key: 'good', head: 'As good', align: 'text' },
            { key: 'failures', head: 'Failed' },
            { key: 'hands', head: 'Hands on' },
            { key: 'handling', head: handlingHead },
          ]}
          rows={scores.ease.map((ease) => ({
            key: ease.level,
            levelIds: [ease.level],
            head: unbroken(levelInWords(ease.level, naming)),
            cells: [
              unbroken(asGoodWord(ease.level)),
              `${ease.failures} of ${ease.pieces}`,
              ease.handsSeconds === null ? '–' : durationText(ease.handsSeconds),
              ease.handling === null ? '–' : decimalText(ease.handling, 1),
            ],
          }))}
        />
      ) : null}
      <Method
        what="as good as the best was"
        topics={['equivalence', 'easiest', 'handling']}
        figures={asGoodFigures(asGood, naming)}
      />
    </PartFold>
  )
}
