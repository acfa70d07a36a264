import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import { axisLevels } from '@/core/figure/chart-of-response.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { decimalText } from '@/core/units/number-text.ts'
import type { Naming } from '@/core/wording/findings/answer-of-rung.ts'
import { asGoodFigures } from '@/core/wording/findings/as-good-figures.ts'
import { endingSentence } from '@/core/wording/findings/ending-sentence.ts'
import { spokenOf } from '@/core/wording/findings/headline.ts'
import { levelInWords } from '@/core/wording/findings/named-in-findings.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { Method } from './method.tsx'
import { unbroken } from './unbroken.ts'

interface EasiestProps {
  main: ResponseFindings
  naming: Naming
  scores: ScoreTable
  letters: ReadonlyMap<string, string>
}

/** The default ending: the easiest level that is as good as the best, with failures, time and handling beside every level. */
export function Easiest({ main, naming, scores, letters }: EasiestProps) {
  const { asGood, ending } = main.conclusion
  const { level: levelId } = ending
  const levels = axisLevels(scores.levels)
  const judged = new Map(isPresent(asGood) ? asGood.levels.map((each) => [each.level, each]) : [])
  const asGoodWord = (levelId: string) => {
    const one = judged.get(levelId)
    if (!one || !isPresent(asGood)) return '–'
    if (one.passes) return 'yes'
    if (asGood.named !== null && asGood.named !== levelId) return 'not asked'
    return 'not shown'
  }
  return (
    <Section title="The easiest that is as good">
      <p>
        {levelId === null ? null : (
          <>
            <LevelTab
              levels={levels}
              levelId={levelId}
              letter={letters.get(levelId)}
              size="small"
            />{' '}
          </>
        )}
        {boundUnits(endingSentence(spokenOf(main, naming), scores))}
      </p>
      {scores.ease ? (
        <LedgerTable
          caption="What each level costs"
          close
          rowHead="Level"
          columns={[
            { key: 'good', head: 'As good', align: 'text' },
            { key: 'failures', head: 'Failed' },
            { key: 'hands', head: 'Hands on' },
            { key: 'handling', head: 'Handling' },
          ]}
          rows={scores.ease.map((ease) => ({
            key: ease.level,
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
        topics={['equivalence', 'easiest', 'handling']}
        figures={asGoodFigures(asGood, naming)}
      />
    </Section>
  )
}
