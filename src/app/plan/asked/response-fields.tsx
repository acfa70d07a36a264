import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { between, moreThanNothing, visibleName } from '@/app/plan/field/field-checks.ts'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import styles from '@/app/plan/method/method-section.module.css'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { inResponse } from '@/core/plan-edits/parts/in-part.ts'
import { recordedBy } from '@/core/plan-edits/responses/recorded-by.ts'
import { startedBetter } from '@/core/plan-edits/responses/started-better.ts'
import type { Response } from '@/core/trial/response.ts'
import { responseUnit } from '@/core/wording/words/unit-name.ts'
import { ResponseScale } from './response-scale.tsx'

const namesResponse = visibleName("the response's name")
const marginCheck = moreThanNothing(1000)
const targetCheck = between(-100_000, 100_000)

interface Props {
  response: Response
  index: number
  /** What is better in it stands since the first mix. */
  locked: boolean
}

/** The fields of one response. */
export function ResponseFields({ response, index, locked }: Props) {
  const { change } = usePlanActions()
  const main = usePlanPage((page) => page.plan.mainResponseId === response.id)
  const { id, better } = response
  const path = `/responses/${index}`
  const edit = (next: Partial<Response>) =>
    change((plan) => inResponse(plan, id, (each) => ({ ...each, ...next })))
  return (
    <div className={styles.fields}>
      <FieldRow>
        <PlanText
          field={`response/${id}/name`}
          path={`${path}/name`}
          label="Name"
          value={response.name}
          check={namesResponse}
          onValue={(name) => edit({ name })}
        />
        <SelectField
          label="Recorded"
          value={response.by}
          options={[
            { value: 'taster', label: 'by each taster, blind' },
            { value: 'baker', label: 'by the baker' },
          ]}
          onValue={(by) => edit(recordedBy(response, by))}
        />
        <SelectField
          label="Of each"
          value={response.about}
          options={
            response.by === 'taster'
              ? [{ value: 'serving', label: 'serving' }]
              : [
                  { value: 'batch', label: 'batch' },
                  { value: 'piece', label: 'piece' },
                ]
          }
          onValue={(about) => edit({ about })}
        />
      </FieldRow>
      {response.by === 'taster' ? (
        <PlanText
          field={`response/${id}/definition`}
          path={`${path}/definition`}
          label="What the word means"
          hint="Stands under the question, so that all tasters judge the same; may stay empty."
          value={response.definition ?? ''}
          maxLength={200}
          onValue={(text) =>
            change((plan) =>
              inResponse(plan, id, ({ definition: _, ...each }) =>
                text.trim() === '' ? each : { ...each, definition: text },
              ),
            )
          }
          wide
        />
      ) : null}
      <ResponseScale response={response} path={path} onScale={(scale) => edit({ scale })} />
      <FieldRow>
        <SelectField
          label="Better is"
          value={better.is}
          options={[
            { value: 'higher', label: 'higher' },
            { value: 'lower', label: 'lower' },
            { value: 'target', label: 'near a target' },
            { value: 'neither', label: 'neither' },
          ]}
          onValue={(is) => edit({ better: startedBetter(is, response) })}
          disabled={locked}
        />
        {better.is === 'target' ? (
          <PlanNumber
            field={`response/${id}/target`}
            path={`${path}/better/at`}
            label="Target"
            unit={responseUnit(response)}
            value={better.at}
            check={targetCheck}
            onValue={(at) => edit({ better: { is: 'target', at } })}
            disabled={locked}
          />
        ) : null}
        {main ? null : (
          <PlanNumber
            field={`response/${id}/margin`}
            path={`${path}/margin`}
            label="Margin"
            hint="The smallest difference you would care about."
            unit={responseUnit(response)}
            value={response.margin}
            check={marginCheck}
            onValue={(margin) => edit({ margin })}
            may="be-empty"
          />
        )}
      </FieldRow>
    </div>
  )
}
