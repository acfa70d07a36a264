import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { lateChangesJoin, partWords, planPlaceWords } from '@/core/wording/table/table-text.ts'
import { handPlan, planHolder, takePlanBack } from '@/exchange/hand-plan.ts'
import type { HeardSeat, OwnTable } from '@/exchange/table-store.ts'
import type { TableSeat } from './seats-of-table.ts'
import styles from './table.module.css'
import { tableServices } from './table-services.ts'

interface PlanHandProps {
  own: OwnTable
  helpers: readonly TableSeat[]
  heard: readonly HeardSeat[]
}

/** Parts that hold levels, and so can change the plan. */
const planParts: ReadonlySet<string> = new Set(['bench', 'key'])

/** Where the plan is changed: on this device, or on one at bench or key that it is handed to by a press, and taken back from. */
export function PlanHand({ own, helpers, heard }: PlanHandProps) {
  const given = tableServices(useServices())
  const holder = planHolder(own)
  const part = own.invited.find(({ login }) => login.name === holder?.login)?.part ?? null
  // Of two devices with one code it could not be said which is meant.
  const can = helpers.flatMap((each) => {
    const seats = heard.filter(({ login }) => login === each.invited?.login.name)
    const newest = seats.toSorted((a, b) => b.lastHeardAt - a.lastHeardAt)[0]
    const alone = planParts.has(each.part) && each.devices === 1 && each.presence.state === 'here'
    return alone && newest ? [{ name: partWords[each.part].name, to: newest }] : []
  })
  return (
    <Section title="The plan">
      <p>{planPlaceWords(part)}</p>
      {part === null ? (
        can.length === 0 ? (
          <p className={styles.soft}>As soon as such a device is here, a press hands it over.</p>
        ) : (
          <div className={styles.actions}>
            {can.map(({ name, to: { login, seat } }) => (
              <Button key={seat} onPress={() => handPlan(given, own.trialId, { login, seat })}>
                Hand it to {name}
              </Button>
            ))}
          </div>
        )
      ) : (
        <>
          <p className={styles.soft}>{lateChangesJoin}</p>
          <div className={styles.actions}>
            <Button onPress={() => takePlanBack(given, own.trialId)}>Take the plan back</Button>
          </div>
        </>
      )}
    </Section>
  )
}
