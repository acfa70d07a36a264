import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { startedScale } from '@/core/plan-edits/responses/recorded-by.ts'
import { withAnchor } from '@/core/plan-edits/responses/started-better.ts'
import type { AnswerScale, Measure, Response } from '@/core/trial/response.ts'
import { ReferencePieces } from './reference-pieces.tsx'

interface Props {
  response: Response
  path: string
  onScale: (scale: AnswerScale) => void
}

const kinds = [
  { value: 'nine-point', label: 'a scale from 1 to 9' },
  { value: 'just-about-right', label: 'too little, just right, too much' },
  { value: 'measured', label: 'a measured number' },
] as const

const measureNames: Record<Measure, { label: string; unitOfMeasure: string }> = {
  own: { label: 'typed in', unitOfMeasure: '' },
  'bake-loss': { label: 'bake loss, from the masses', unitOfMeasure: '%' },
  'bake-time': { label: 'bake time, from the stamps', unitOfMeasure: 's' },
  rise: { label: 'rise, from the log', unitOfMeasure: '%' },
  'oven-spring': { label: 'oven spring, from the heights', unitOfMeasure: '%' },
  'specific-volume': { label: 'specific volume', unitOfMeasure: 'mL/g' },
  'dough-temperature': { label: 'dough temperature', unitOfMeasure: '°C' },
  'core-temperature': { label: 'core temperature', unitOfMeasure: '°C' },
}
const measureOptions = (Object.keys(measureNames) as Measure[]).map((measure) => ({
  value: measure,
  label: measureNames[measure].label,
}))

/** How an answer is given: an anchored scale, just about right, or a number with its unit. */
export function ResponseScale({ response, path, onScale }: Props) {
  const { id, scale } = response
  return (
    <>
      <FieldRow>
        <SelectField
          label="Answered on"
          value={scale.kind}
          options={response.by === 'taster' ? kinds.slice(0, 2) : kinds}
          onValue={(kind) => onScale(startedScale(kind))}
        />
        {scale.kind === 'nine-point'
          ? ([1, 5, 9] as const).map((at) => (
              <PlanText
                key={at}
                field={`response/${id}/anchor/${at}`}
                path={`${path}/scale/anchors`}
                label={at === 5 ? 'Words at 5 (if you like)' : `Words at ${at}`}
                value={scale.anchors.find((anchor) => anchor.at === at)?.text ?? ''}
                maxLength={200}
                onValue={(text) =>
                  onScale({ ...scale, anchors: withAnchor(scale.anchors, at, text) })
                }
              />
            ))
          : null}
        {scale.kind === 'just-about-right'
          ? (['low', 'high'] as const).map((end) => (
              <PlanText
                key={end}
                field={`response/${id}/${end}`}
                path={`${path}/scale/${end}`}
                label={end === 'low' ? 'Words at 1' : 'Words at 5'}
                value={scale[end]}
                maxLength={200}
                onValue={(text) => onScale({ ...scale, [end]: text })}
              />
            ))
          : null}
        {scale.kind === 'measured' ? (
          <>
            <SelectField
              label="Where it comes from"
              value={scale.measure}
              options={measureOptions}
              onValue={(measure) =>
                onScale({
                  ...scale,
                  measure,
                  unitOfMeasure: measureNames[measure].unitOfMeasure || scale.unitOfMeasure,
                })
              }
            />
            {scale.measure === 'own' ? (
              <PlanText
                field={`response/${id}/unit`}
                path={`${path}/scale/unitOfMeasure`}
                label="Unit"
                value={scale.unitOfMeasure}
                maxLength={40}
                onValue={(unitOfMeasure) => onScale({ ...scale, unitOfMeasure })}
              />
            ) : null}
          </>
        ) : null}
      </FieldRow>
      {scale.kind === 'nine-point' && response.by === 'taster' ? (
        <ReferencePieces responseId={id} scale={scale} path={`${path}/scale`} onScale={onScale} />
      ) : null}
    </>
  )
}
