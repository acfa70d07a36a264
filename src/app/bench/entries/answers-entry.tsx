import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { ScalePad } from '@/app/kit/field/scale-pad.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { Response } from '@/core/trial/response.ts'
import { amountCheck } from './amount-checks.ts'
import type { EntryProps } from './entry-props.ts'
import { NumberEntry } from './number-entry.tsx'

/**
 * The baker's own answers about a dough or piece: handling scores on their anchored scale, one press each, and measures
 * the baker types in. Not blind, and said so.
 */
export function AnswersEntry({ unit, onKept }: EntryProps) {
  const { plan } = useBench()
  const asked = plan.responses.filter(
    (response) => response.by === 'baker' && response.about === unit.kind && isTyped(response),
  )
  if (asked.length === 0)
    return (
      <div className={styles.entry}>
        <p>
          The plan asks the baker nothing about a {unit.kind}. Add a response answered by the baker
          on the Plan page, such as stickiness.
        </p>
        <Button size="bench" onPress={onKept}>
          Back to the bench
        </Button>
      </div>
    )
  return (
    <div className={styles.entry}>
      <p className={styles.quiet}>You know which dough this is, so these scores are not blind.</p>
      {asked.map((response) => (
        <OneAnswer key={response.id} response={response} unit={unit} />
      ))}
      <Button size="bench" onPress={onKept}>
        Back to the bench
      </Button>
    </div>
  )
}

/** Whether the baker types an answer in; what the notebook works out from the log is not asked. */
export const isTyped = ({ scale }: Response) => scale.kind !== 'measured' || scale.measure === 'own'

function OneAnswer({ response, unit }: { response: Response; unit: EntryProps['unit'] }) {
  const { log, events } = useBench()
  const latest = events.findLast(
    (event) =>
      event.kind === 'measured' &&
      event.responseId === response.id &&
      event.about.kind === unit.kind &&
      event.about.id === unit.id,
  )
  const given = latest?.kind === 'measured' ? latest : null
  const keep = (value: number) =>
    log({
      kind: 'measured',
      about: unit,
      responseId: response.id,
      value,
      ...(given ? { corrects: given.id } : {}),
    })
  if (response.scale.kind === 'measured') {
    return (
      <NumberEntry
        label={given ? `${response.name} (logged: ${given.value})` : response.name}
        unit={response.scale.unitOfMeasure}
        check={amountCheck.any}
        draftName={`answer/${unit.id}/${response.id}`}
        onKeep={keep}
      />
    )
  }
  return (
    <ScalePad
      name={response.name}
      scale={response.scale}
      value={given?.value ?? null}
      onPick={keep}
    />
  )
}
