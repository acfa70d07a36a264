import { Button } from '@/app/kit/press/button.tsx'
import { RoomFor } from '@/app/plan/field/room-for.tsx'
import formula from '@/app/plan/formula/formula-section.module.css'
import styles from '@/app/plan/method/method-section.module.css'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { useLocked } from '@/app/plan/page/use-locked.ts'
import { useServices } from '@/app/services/services.ts'
import { presetsLeft, withPreset } from '@/core/plan-edits/responses/main-response.ts'
import { ownResponse } from '@/core/plan-edits/responses/response-presets.ts'
import { ResponseRow } from './response-row.tsx'

/** What is recorded: by the baker or the tasters, on which scale, what is better, and the margin. */
export function ResponsesSection() {
  const responses = usePlanPage((page) => page.plan.responses)
  const { change } = usePlanActions()
  const locked = useLocked()
  const { newId } = useServices()
  const addOwn = () =>
    change((plan) => ({ ...plan, responses: [...plan.responses, ownResponse(newId())] }))
  const free = presetsLeft({ responses })
  return (
    <PlanSection id="plan-responses" aside="what the factor may change">
      <ol className={styles.steps}>
        {responses.map((response, index) => (
          <ResponseRow key={response.id} response={response} index={index} locked={locked} />
        ))}
      </ol>
      <TroubleHere at="/responses" />
      <fieldset className={formula.presses}>
        <legend className={formula.legend}>Add</legend>
        <RoomFor part="responses" count={responses.length}>
          {free.map((preset) => (
            <Button
              key={preset.name}
              size="small"
              onPress={() => change((plan) => withPreset(plan, preset, newId()))}
            >
              {preset.name}
            </Button>
          ))}
          <Button size="small" onPress={addOwn}>
            one of my own
          </Button>
        </RoomFor>
      </fieldset>
    </PlanSection>
  )
}
