import { Fragment } from 'react'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { degreeSign, shownSteps, type TemperatureUnit } from '@/app/kit/field/temperature-words.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import styles from '@/app/plan/levels/levels-section.module.css'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import type { KitchenKind, KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { ovenTimes } from '@/core/kitchen/oven-times.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import { withThingChosen } from '@/core/plan-edits/day/choose-thing.ts'
import { hasOvenTimes, withOvenTimes } from '@/core/plan-edits/day/oven-times-of-plan.ts'
import { plainMass, scaleStepText } from '@/core/units/mass-text.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { ovenTimesText } from '@/core/wording/plan/oven-times-text.ts'

const kinds: { kind: KitchenKind; title: string }[] = [
  { kind: 'scale', title: 'Scales' },
  { kind: 'thermometer', title: 'Thermometers' },
  { kind: 'oven', title: 'Ovens' },
  { kind: 'mixer', title: 'Mixers' },
  { kind: 'fridge', title: 'Fridges' },
  { kind: 'tap', title: 'Taps' },
  { kind: 'flour', title: 'Flours' },
]

/** Which of the kitchen's things this plan uses; the weigh sheet rounds to the scales ticked here. */
export function KitchenSection() {
  const kitchen = usePlanPage((page) => page.kitchen)
  const used = usePlanPage((page) => page.plan.kitchenIds)
  const trialId = usePlanPage((page) => page.plan.trialId)
  const { change } = usePlanActions()
  const unit = useTemperatureUnit()
  const things = kitchen.filter((thing) => thing.kind !== 'taster')
  const turn = (id: string) => change((plan) => withThingChosen(plan, kitchen, id))
  return (
    <PlanSection id="plan-kitchen" aside="what this plan uses">
      {things.length === 0 ? (
        <p>Tell the kitchen which scales you have, and the weights round to what they can show.</p>
      ) : null}
      {kinds.map(({ kind, title }) => {
        const ofKind = things.filter((thing) => thing.kind === kind)
        if (ofKind.length === 0) return null
        return (
          <fieldset key={kind}>
            <legend>{title}</legend>
            {ofKind.map((thing) => (
              <Fragment key={thing.id}>
                <label className={styles.control}>
                  <input
                    type="checkbox"
                    checked={used.includes(thing.id)}
                    onChange={() => turn(thing.id)}
                  />
                  {thingWords(thing, unit)}
                </label>
                {used.includes(thing.id) ? (
                  <TroubleHere at={`/kitchenIds/${used.indexOf(thing.id)}`} />
                ) : null}
              </Fragment>
            ))}
          </fieldset>
        )
      })}
      <OvenTimesOf kitchen={kitchen} />
      <TroubleHere at="/kitchenIds" />
      <div>
        <LinkButton href={`#/kitchen/${trialId}/plan`} size="small">
          Open the kitchen
        </LinkButton>
      </div>
    </PlanSection>
  )
}

/** Where the kitchen says other times of the chosen oven than the plan took: what it says, and the press that takes it. */
function OvenTimesOf({ kitchen }: { kitchen: readonly KitchenThing[] }) {
  const plan = usePlanPage((page) => page.plan)
  const { changeSaid } = usePlanActions()
  const chosen = thingsOfKind(kitchen, 'oven', plan.kitchenIds)
  if (chosen.length === 0 || hasOvenTimes(plan, kitchen, plan.kitchenIds)) return null
  const times = ovenTimes(kitchen, plan.kitchenIds)
  const says = ovenTimesText(times)
  return (
    <div>
      <p>The kitchen now says of the oven: {says}</p>
      <Button
        onPress={() => changeSaid(`The plan’s oven: ${says}`, (now) => withOvenTimes(now, kitchen))}
      >
        {Object.keys(times).length > 0 ? 'Take these times' : 'Back to usual times'}
      </Button>
    </div>
  )
}

function thingWords(thing: KitchenThing, unit: TemperatureUnit): string {
  switch (thing.kind) {
    case 'scale':
      return `${thing.name}, shows ${scaleStepText(thing.resolutionGrams)} up to ${plainMass(thing.capacityGrams)}`
    case 'thermometer':
      return `${thing.name}, ± ${plainNumber(shownSteps(thing.spreadCelsius, unit))} ${degreeSign(unit)}`
    case 'oven':
      return `${thing.name}, ${plainNumber(thing.places)} at once`
    case 'flour':
      return thing.lot ? `${thing.name}, ${thing.lot}` : thing.name
    case 'taster':
      return thing.initials
    default:
      return thing.name
  }
}
