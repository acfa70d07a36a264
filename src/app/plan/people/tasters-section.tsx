import { Choice } from '@/app/kit/field/choice.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { Switch } from '@/app/kit/field/switch.tsx'
import { TellApartFields } from '@/app/plan/asked/tell-apart-fields.tsx'
import { RoomFor } from '@/app/plan/field/room-for.tsx'
import styles from '@/app/plan/levels/levels-section.module.css'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { withBaker, withTaster } from '@/core/plan-edits/people/tasters.ts'
import { most } from '@/core/record/most.ts'
import { bakerAmong } from '@/core/trial/baker-tastes.ts'
import { AddTaster } from './add-taster.tsx'
import { AtTableFields } from './at-table-fields.tsx'

const answers = [
  { value: 'out', label: 'not this time' },
  { value: 'blind', label: 'tastes blind' },
  { value: 'knows', label: 'knows which is which' },
] as const

/** Who scores, from the kitchen, by initials or a code; and who knows which is which. */
export function TastersSection() {
  const kitchen = usePlanPage((page) => page.kitchen)
  const chosen = usePlanPage((page) => page.plan.tasters)
  const baker = usePlanPage((page) => bakerAmong(page.plan))
  const talk = usePlanPage((page) => page.plan.tastersTalk)
  const keptBy = usePlanPage((page) => page.plan.keyKeptBy)
  const { change } = usePlanActions()
  const tasters = kitchen
    .flatMap((thing) => (thing.kind === 'taster' && thing.erasedAt === undefined ? [thing] : []))
    .toSorted((one, other) => one.initials.localeCompare(other.initials, 'en', { numeric: true }))
  return (
    <PlanSection
      id="plan-tasters"
      aside={chosen.length === 1 ? 'one taster' : `${chosen.length} tasters`}
    >
      {tasters.length === 0 ? <p>Add the people who will score, by initials or a code.</p> : null}
      <ul className={styles.levels}>
        {tasters.map((taster) => {
          const found = chosen.find((each) => each.tasterId === taster.id)
          return (
            <li key={taster.id} className={styles.level}>
              <Choice
                label={taster.initials}
                row
                value={found ? (found.knows ? 'knows' : 'blind') : 'out'}
                options={found || chosen.length < most.tasters ? answers : answers.slice(0, 1)}
                onValue={(tastes) => change((plan) => withTaster(plan, taster.id, tastes))}
              />
            </li>
          )
        })}
      </ul>
      <RoomFor part="tasters" count={chosen.length}>
        <AddTaster />
      </RoomFor>
      <TroubleHere at="/tasters" />
      {chosen.length === 0 ? null : (
        <SelectField
          label="The baker among them"
          hint="Who bakes and tastes blind sees no code beside a letter anywhere."
          value={baker?.tasterId ?? ''}
          options={[
            { value: '', label: 'the baker does not taste' },
            ...tasters.flatMap(({ id, initials }) =>
              chosen.some(({ tasterId }) => tasterId === id)
                ? [{ value: id, label: initials }]
                : [],
            ),
          ]}
          onValue={(tasterId) =>
            change((plan) => withBaker(plan, tasterId === '' ? null : tasterId))
          }
        />
      )}
      <TellApartFields />
      <AtTableFields />
      <Switch
        label="Tasters may talk while scoring"
        on={talk}
        onSwitch={(next) => change((plan) => ({ ...plan, tastersTalk: next }))}
      />
      <Choice
        label="The key of the codes is kept by"
        row
        value={keptBy}
        options={[
          { value: 'baker', label: 'the baker' },
          { value: 'helper', label: 'a helper who does not taste' },
        ]}
        onValue={(next) => change((plan) => ({ ...plan, keyKeptBy: next }))}
      />
    </PlanSection>
  )
}
