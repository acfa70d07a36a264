import { useDeferredValue, useMemo, useState } from 'react'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { LevelRail } from '@/app/kit/rail/level-rail.tsx'
import { useServices } from '@/app/services/services.ts'
import { usuallyHoped } from '@/core/design/proposal/hoped-to-show.ts'
import type { HowMuch } from '@/core/design/proposal/how-much.ts'
import { propose, type Way } from '@/core/design/proposal/propose.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { factsOfKind } from '@/core/plan-edits/factor/factor-kinds.ts'
import { proposedPlan } from '@/core/plan-edits/start/proposed-plan.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import {
  chanceOfWay,
  otherWayText,
  proposalSentence,
  yieldsOfOneDay,
} from '@/core/wording/plan/proposal-text.ts'
import styles from './start-place.module.css'

interface ProposedPlanProps {
  plan: Plan
  kind: FactorKind
  howMuch: HowMuch
  onTake: (plan: Plan) => Promise<void>
}

/** The plan that most likely answers within what one can do: its rail, one sentence, its chance, and up to two other ways. */
export function ProposedPlan(props: ProposedPlanProps) {
  const { onTake } = props
  const { plan, kind, howMuch } = useDeferredValue(props)
  const { newId } = useServices()
  const changed = useMemo(
    () =>
      factsOfKind(plan.factor.acts.on).kind === kind ? plan : withFactorKind(plan, kind, newId),
    [plan, kind, newId],
  )
  const proposal = useMemo(
    () =>
      propose({
        ...{ howMuch, hoped: usuallyHoped(kind), actsLate: changed.factor.splitsAt !== 'mix' },
        ...(kind === 'choice' ? { levels: Math.max(2, changed.levels.length) } : {}),
      }),
    [changed, kind, howMuch],
  )
  const [picked, setPicked] = useState<{ of: typeof proposal; way: Way } | null>(null)
  const way = picked?.of === proposal ? picked.way : proposal.way
  const made = useMemo(() => proposedPlan(changed, way, newId), [changed, way, newId])
  const chance = chanceOfWay(way)
  const yields = way.sessions < 2 ? yieldsOfOneDay(made.factor.name) : null
  return (
    <Section title="The plan that most likely answers">
      <LevelRail
        levels={made.levels}
        factorName={made.factor.name}
        unitOfMeasure={made.factor.unitOfMeasure}
      />
      <p className={styles.sentence}>{proposalSentence(made, way)}</p>
      <Button kind="primary" onPress={() => onTake(made)}>
        Take this plan
      </Button>
      <p className={styles.chance}>
        <b className={styles.figure}>{chance.inHundred}</b>
        <span>{chance.words}</span>
      </p>
      {yields ? (
        <ul className={styles.yields}>
          {yields.does.map((each) => (
            <li key={each}>{each}</li>
          ))}
          <li className={styles.not}>{yields.doesNot}</li>
        </ul>
      ) : null}
      <ul className={styles.others} aria-label="Other ways">
        {proposal.others.map((other) => {
          const { what, chance: words } = otherWayText(other, proposal)
          return (
            <li key={what}>
              <span>
                <b>{what}</b>
                <br />
                <span className={styles.soft}>{words}</span>
              </span>
              {other.kind === 'more-days' || other.kind === 'fewer-benches' ? (
                <Button
                  pressed={way === other}
                  label={`${what}: take it`}
                  onPress={() => setPicked(way === other ? null : { of: proposal, way: other })}
                >
                  {way === other ? 'Taken' : 'Take it'}
                </Button>
              ) : null}
            </li>
          )
        })}
      </ul>
    </Section>
  )
}
