import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { rankingFigures, rankingSentence } from '@/core/wording/findings/ranking-sentence.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { Method } from './method.tsx'
import { PartFold } from './part-fold.tsx'

/** In what order the tasters put the samples, where they were asked. */
export function RankingPart({ findings }: { findings: FindingsDocument }) {
  const { rankings = [] } = findings
  const [first] = rankings
  if (!first) return null
  return (
    <PartFold title="Ranked" result={rankingSentence(first, findings)}>
      {rankings.map((found, at) => (
        <div key={`${found.asks ?? ''} ${found.ties}`}>
          {at === 0 ? null : <p>{boundUnits(rankingSentence(found, findings))}</p>}
          {rankingFigures(found, findings).map((figure) => (
            <p key={figure}>{boundUnits(figure)}</p>
          ))}
        </div>
      ))}
      <Method what="the order was found" topics={['ranking']} />
    </PartFold>
  )
}
