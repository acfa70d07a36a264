import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import { axisLevels } from '@/core/figure/chart-of-response.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { LevelName } from '@/core/findings/rungs/rung-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { asGoodFigures } from '@/core/wording/findings/as-good-figures.ts'
import { easiestSentence } from '@/core/wording/findings/easiest-sentence.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { levelNameText } from '@/core/wording/words/level-text.ts'
import { Method } from './method.tsx'
import { unbroken } from './unbroken.ts'

interface EasiestProps {
  main: ResponseFindings
  scores: ScoreTable
  letters: ReadonlyMap<string, string>
}

/** The default ending: the easiest level that is as good as the best, with failures, time and handling beside every level. */
export function Easiest({ main, scores, letters }: EasiestProps) {
  const { easiest, equivalence } = main
  const levels = axisLevels(scores.levels)
  const levelId = isPresent(easiest) ? String(easiest.level) : null
  const passes = new Map(
    isPresent(equivalence) ? equivalence.map((each) => [each.level, each.passes]) : [],
  )
  const against = isPresent(easiest) ? easiest.against : null
  const asGood = (name: LevelName) => {
    if (name === against) return 'best liked'
    if (!passes.has(name)) return '–'
    return passes.get(name) ? 'yes' : 'not shown'
  }
  const said = easiestSentence(easiest, scores)
  const subject = isPresent(easiest)
    ? levelNameText(easiest.level, scores.factor.unitOfMeasure)
    : ''
  const withoutSubject = said.startsWith(subject) ? said.slice(subject.length).trimStart() : said
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
        {boundUnits(levelId === null ? said : withoutSubject)}
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
            key: String(ease.level),
            head: unbroken(levelNameText(ease.level, scores.factor.unitOfMeasure)),
            cells: [
              unbroken(asGood(ease.level)),
              `${ease.failures} of ${ease.pieces}`,
              ease.handsSeconds === null ? '–' : durationText(ease.handsSeconds),
              ease.handling === null ? '–' : decimalText(ease.handling, 1),
            ],
          }))}
        />
      ) : null}
      <Method
        topics={['equivalence', 'easiest', 'handling']}
        figures={asGoodFigures(equivalence, scores.factor.unitOfMeasure)}
      />
    </Section>
  )
}
