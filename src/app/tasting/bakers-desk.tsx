import { Section } from '@/app/kit/page/section.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import { toTurn } from '@/core/tasting/to-turn.ts'
import { onShuffledPlates } from '@/core/trial/served-at-table.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { stillMissing } from '@/core/wording/bench/still-missing.ts'
import { TurnPress } from './alone/turn-press.tsx'
import { ChangedBallots } from './changed-ballots.tsx'
import { CloseEarly } from './close-early.tsx'
import { LateTaster } from './late-taster.tsx'
import { OwnPhones } from './own-phones.tsx'
import { PaperBallots } from './paper/paper-ballots.tsx'
import { PaperEntry } from './paper/paper-entry.tsx'
import { ServingCards } from './paper/serving-cards.tsx'
import { TasterList } from './taster-list.tsx'
import { useTable } from './tasting-context.ts'
import { Unseal } from './unseal.tsx'

/** What the baker sees to: who came, whose ballots are missing, paper, closing early with a reason, and the unsealing. */
export function BakersDesk() {
  const { whole, session, state } = useTable()
  const open = state.seal === 'not-begun' || state.seal === 'sealed'
  // Whoever plates for themselves scores here alone: codes on paper or phones would be on no plate.
  const plates = onShuffledPlates(planOfSession(whole, session))
  return (
    <Section title="The seal" aside={`Session ${session.number} of ${session.plannedSessions}`}>
      <p>
        {state.seal === 'not-begun'
          ? 'The first ballot or serving seals the codes; they open when the last ballot is in.'
          : stillMissing(state, whole.kitchen)}
      </p>
      <TasterList />
      {open && !plates ? <LateTaster /> : null}
      {state.seal === 'unsealed' || plates ? null : <OwnPhones />}
      {plates ? null : <PaperEntry />}
      {plates ? null : <ChangedBallots />}
      <div className={styles.actions}>
        {toTurn(whole, session.id) ? <TurnPress /> : <Unseal />}
        {(state.begun || session.dealt.tickets) && open && !state.mayUnseal.ok ? (
          <CloseEarly />
        ) : null}
        {plates ? null : (
          <>
            <PaperBallots />
            <ServingCards />
          </>
        )}
      </div>
    </Section>
  )
}
