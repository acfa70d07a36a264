import { useMemo, useState } from 'react'
import { Button } from '@/app/kit/button.tsx'
import { Dialog } from '@/app/kit/dialog.tsx'
import { TextArea } from '@/app/kit/text-area.tsx'
import { useServices } from '@/app/services/services.ts'
import { formulaFromText } from '@/core/formula/formula-from-text.ts'
import type { IngredientKind } from '@/core/formula/formula-record.ts'
import { PastedLines } from './pasted-lines.tsx'
import { usePlanStore } from './plan-page-context.ts'
import { withFormula } from './replace-formula.ts'

/** A formula pasted as text: what was understood of each line stands under it, to be mended there before it is taken. */
export function PasteFormula({ onClose }: { onClose: () => void }) {
  const store = usePlanStore()
  const { newId } = useServices()
  const [text, setText] = useState('')
  const [kinds, setKinds] = useState<Record<string, IngredientKind>>({})
  const read = useMemo(() => {
    let count = 0
    return formulaFromText(text, () => `line${++count}`)
  }, [text])
  const formula = read.formula && {
    ...read.formula,
    ingredients: read.formula.ingredients.map((one) => ({
      ...one,
      kind: kinds[one.name] ?? one.kind,
    })),
  }
  const take = () => {
    if (!formula) return
    store
      .getState()
      .changeSaid('Formula replaced', (plan) => withFormula(plan, formula, newId), 'ingredient/')
    onClose()
  }
  return (
    <Dialog
      title="Paste a formula"
      open
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Leave it</Button>
          <Button kind="primary" onPress={take} disabled={!formula}>
            Use this formula
          </Button>
        </>
      }
    >
      <TextArea
        label="One ingredient a line, by weight or percent"
        hint="In g, kg, oz, lb, ml or %. Cups and spoons weigh differently in every kitchen and are not taken."
        rows={7}
        value={text}
        onValue={setText}
        problem={
          read.reason === 'no-flour'
            ? 'No flour was understood. Write a line such as “500 g flour”.'
            : undefined
        }
      />
      <PastedLines
        lines={read.lines}
        ingredients={formula?.ingredients ?? []}
        onKind={(name, kind) => setKinds((before) => ({ ...before, [name]: kind }))}
      />
    </Dialog>
  )
}
