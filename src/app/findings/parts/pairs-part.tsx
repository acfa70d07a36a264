import type { FindingsSource } from '@/app/findings/findings-source.ts'
import { LateView } from '@/app/kit/page/late-view.tsx'
import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { pairsBlock } from '@/core/report/result-pictures.ts'
import { againstControlTable, pairsTable } from '@/core/report/result-tables.ts'
import { namingOf, shownRung } from '@/core/wording/findings/answer-of-rung.ts'
import { pairsSentence } from '@/core/wording/findings/pairs-sentence.ts'
import { reasonText } from '@/core/wording/findings/reason-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import { ChartFrame } from './chart-frame.tsx'
import { ChartWaiting } from './chart-waiting.tsx'
import { pairsChart } from './lazy-charts.ts'
import { BlockTable } from './levels-table.tsx'
import { Method } from './method.tsx'
import { PartFold } from './part-fold.tsx'

interface PairsPartProps {
  source: FindingsSource
  answer: FindingsAnswer
  index: number
}

/** Which levels differ: a picture of intervals against the margin, the same as tables, and the method. */
export function PairsPart({ source, answer, index }: PairsPartProps) {
  const lit = useCurrentLevel((state) => state.levelId)
  const { scores, findings, curves } = answer
  const found = findings.responses[index]
  if (!found) return null
  const rung = shownRung(found)
  const shown = rung === null ? null : found[rung]
  if (shown === null || !isPresent(shown))
    return (
      <PartFold
        title="Which differ"
        result={reasonText(isPresent(found.factor) ? { reason: 'no-scores' } : found.factor)}
        index={index}
        name={found.name}
      >
        <Method what="pairs are" topics={['pairs', 'control']} />
      </PartFold>
    )
  const block = pairsBlock(
    { scores, findings, curves, letters: source.letters, nameOf: source.nameOf },
    found,
    index,
    shown,
  )
  return (
    <PartFold
      title="Which differ"
      result={pairsSentence(found.conclusion, namingOf(findings, scores.responses[index]))}
      index={index}
      name={found.name}
    >
      <ChartFrame
        title={`Differences in ${midSentence(found.name)}`}
        picture={
          <LateView
            part={pairsChart}
            waiting={<ChartWaiting heightPixels={block.picture.rows.length * 30 + 64} />}
            props={{ picture: block.picture, label: block.alt, lit }}
          />
        }
        table={
          <>
            <BlockTable block={pairsTable(shown, scores)} close />
            {isPresent(shown.againstControl) ? (
              <BlockTable block={againstControlTable(shown.againstControl, scores)} close />
            ) : null}
          </>
        }
      />
      <Method what="the differences were" topics={['pairs', 'control']} />
    </PartFold>
  )
}
