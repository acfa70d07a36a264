import type { ReactNode } from 'react'
import { Notice } from '@/app/kit/page/notice.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import { bakes } from '@/core/session/bakes.ts'
import { dayClosed, dayMissing } from '@/core/session/day-missing.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { blindBaker } from '@/core/tasting/baker-blind.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { unbakedCodesText } from '@/core/wording/bench/day-missing-text.ts'
import { useTable } from './tasting-context.ts'
import { useTableLog } from './use-table-log.ts'

/**
 * Before the first ballot: pieces that the log never had in the oven are said, by their codes, and the seats open after a word about
 * them. Where no bake was logged at all the bench was not used: then it is said and nothing asked.
 */
export function NeverBaked({ children }: { children: ReactNode }) {
  const { whole, session, state } = useTable()
  const log = useTableLog()
  const plan = planOfSession(whole, session)
  const events = eventsOfSession(whole.events, session.id)
  const { neverBaked } = dayMissing(session, plan, events)
  const codes = session.dealt.servings.flatMap(({ pieceId, code }) =>
    neverBaked.includes(pieceId) ? [code] : [],
  )
  const used = bakes(session, events).some(({ inAt }) => inAt !== null)
  if (state.seal !== 'not-begun' || codes.length === 0 || !used || dayClosed(events))
    return children
  return (
    <section className={styles.stack}>
      <PageHeading>Tasting</PageHeading>
      <Notice kind="caution" title="Before the first taster sits down">
        <p>{unbakedCodesText(codes, blindBaker(plan, events) !== null)}</p>
        <div className={styles.actions}>
          <LinkButton href={`#/trial/${whole.trial.id}/bench`}>To the bench</LinkButton>
          <Button
            onPress={() => log({ kind: 'day-closed', about: { kind: 'session', id: session.id } })}
          >
            Taste all the same
          </Button>
        </div>
      </Notice>
    </section>
  )
}
