import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import {
  changedReference,
  withoutReference,
  withReference,
} from '@/core/plan-edits/responses/reference-pieces.ts'
import type { AnswerScale } from '@/core/trial/response.ts'

type NinePoints = Extract<AnswerScale, { kind: 'nine-point' }>

interface ReferencePiecesProps {
  responseId: string
  scale: NinePoints
  path: string
  onScale: (scale: NinePoints) => void
}

const points = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((at) => ({ value: String(at), label: String(at) }))

/** Pieces to compare with, named under the question at the point where they stand; a scale has none, or some. */
export function ReferencePieces({ responseId, scale, path, onScale }: ReferencePiecesProps) {
  const { references = [] } = scale
  return (
    <>
      {references.map(({ at, text }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a reference piece is its place in the list
        <FieldRow key={index}>
          <PlanText
            field={`response/${responseId}/reference/${index}`}
            path={`${path}/references/${index}/text`}
            label={index === 0 ? 'Reference piece' : `Reference piece ${index + 1}`}
            hint="A piece to compare with, such as a plain cracker. It is eaten too: mind its allergens."
            value={text}
            maxLength={120}
            onValue={(next) => onScale(changedReference(scale, index, { text: next }))}
          />
          <SelectField
            label={index === 0 ? 'Stands at' : `Piece ${index + 1} stands at`}
            value={String(at)}
            options={points}
            onValue={(next) => onScale(changedReference(scale, index, { at: Number(next) }))}
          />
          <Button kind="quiet" onPress={() => onScale(withoutReference(scale, index))}>
            {index === 0 ? 'Take the reference out' : `Take reference ${index + 1} out`}
          </Button>
        </FieldRow>
      ))}
      {references.length < points.length ? (
        <div>
          <Button kind="quiet" onPress={() => onScale(withReference(scale))}>
            {references.length === 0 ? 'Name a reference piece' : 'One reference piece more'}
          </Button>
        </div>
      ) : null}
    </>
  )
}
