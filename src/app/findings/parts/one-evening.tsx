import type { FindingsSource } from '@/app/findings/findings-source.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { tableFindings } from '@/core/findings/at-table/table-findings.ts'
import { failureKinds } from '@/core/session/failure-kinds.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { whatWasSeen } from '@/core/wording/findings/what-was-seen.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './one-evening.module.css'
import { hasPhotos, PhotosByMoment } from './photos-part.tsx'
import { ResponsePart } from './response-part.tsx'

interface OneEveningPartsProps {
  source: FindingsSource
  whole: WholeTrial
  answer: FindingsAnswer
}

/** What one evening alone yields beside its order of liking: the chart of dots and means, what was seen, pictures side by side. */
export function OneEveningParts({ source, whole, answer }: OneEveningPartsProps) {
  return (
    <div className={styles.evening}>
      <div className={styles.chart}>
        <ResponsePart source={source} answer={answer} index={0} />
      </div>
      <WhatYouSaw source={source} whole={whole} answer={answer} />
      {hasPhotos(whole) ? (
        <section className={styles.photos}>
          <h2>Side by side</h2>
          <PhotosByMoment whole={whole} letters={source.letters} />
        </section>
      ) : null}
    </div>
  )
}

function WhatYouSaw({ source, whole, answer }: OneEveningPartsProps) {
  const table = tableFindings(whole, { unsealed: true })
  const seen = whatWasSeen(
    {
      ease: answer.scores.ease,
      kinds: failureKinds(whole),
      riders: source
        .fairness()
        .filter(
          ({ severity, when }) => severity === 'fix' || (severity === 'know' && when === 'after'),
        ),
      blinding: table.ok ? table.blinding : null,
    },
    answer.findings,
    planInForce(whole),
  )
  if (seen.length === 0) return null
  return (
    <section className={styles.seen}>
      <h2>What you saw</h2>
      <dl className={styles.lines}>
        {seen.map(({ title, text }) => (
          <div key={title} className={styles.line}>
            <dt>{title}</dt>
            <dd>{boundUnits(text)}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
