import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { letterOfLevel } from '@/core/session/line.ts'
import { servingTurns } from '@/core/session/serving-turns.ts'
import { nextSession } from '@/core/whole-trial/next-session.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { lostSessions } from '@/core/whole-trial/told-trial.ts'
import { lostSessionText } from '@/core/wording/tasting/alone-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { useTable } from './tasting-context.ts'

/** After the unsealing: which code was which dough, and the way to what it all says. */
export function WhichWasWhich() {
  const { whole, session, state } = useTable()
  const plan = planOfSession(whole, session)
  const events = eventsOfSession(whole.events, session.id)
  const turns = servingTurns(session, plan, events, state.notServed)
  const next = nextSession(whole)
  const lost = lostSessions(whole).find(({ sessionId }) => sessionId === session.id)
  const rows = turns.flatMap(({ id, code, pieceId, flight }) => {
    const piece = session.pieces.find((each) => each.id === pieceId)
    const level = plan.levels.find((each) => each.id === piece?.levelId)
    if (!level) return []
    const letter = letterOfLevel(session, level.id) ?? undefined
    return [
      {
        key: id,
        head: code,
        quiet: flight === null,
        cells: [
          <LevelTab key="tab" levels={plan.levels} levelId={level.id} letter={letter} />,
          levelText(level, plan.factor.unitOfMeasure),
          flight === null ? 'warm-up' : String(flight),
        ],
      },
    ]
  })
  return (
    <Section title="Which was which" aside={`Session ${session.number}`}>
      {lost ? <p className={styles.lead}>{lostSessionText(lost)}</p> : null}
      {lost ? null : <p className={styles.lead}>The codes are open.</p>}
      {lost ? null : (
        <LedgerTable
          caption="What each code stood for"
          hideCaption
          rowHead="Code"
          columns={[
            { key: 'dough', head: 'Dough', align: 'text' },
            { key: 'level', head: plan.factor.name, align: 'text' },
            { key: 'flight', head: 'Flight', align: 'text' },
          ]}
          rows={rows}
        />
      )}
      {next === null ? null : (
        <>
          <p>
            Session {next} of {session.plannedSessions} is still to be made. It begins on the Plan
            page, with new letters and codes.
          </p>
          <LinkButton href={`#/trial/${whole.trial.id}/plan`} kind="primary">
            To the plan
          </LinkButton>
        </>
      )}
      <LinkButton
        href={`#/trial/${whole.trial.id}/findings`}
        kind={next === null ? 'primary' : 'plain'}
      >
        To the findings
      </LinkButton>
    </Section>
  )
}
