import { useMemo, useState } from 'react'
import { TextArea } from '@/app/kit/field/text-area.tsx'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { Formula, IngredientKind } from '@/core/formula/formula-record.ts'
import { formulaFromText } from '@/core/formula/pasted/formula-from-text.ts'
import { addedForFactor } from '@/core/plan-edits/formula/added-for-factor.ts'
import { withFormula } from '@/core/plan-edits/formula/replace-formula.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { formulaDoubtText, halfReadText } from '@/core/wording/plan/formula-doubt-text.ts'
import { formulaLacksText } from '@/core/wording/plan/formula-lacks-text.ts'
import { pastedTooManyText } from '@/core/wording/plan/full-text.ts'
import { PastedLines } from './pasted-lines.tsx'

interface Props {
  /** The plan it is for: its factor may need what the formula lacks. */
  plan: Plan
  newId: () => string
  /** The formula, and the names of what the factor will add. */
  onTake: (formula: Formula, added: readonly string[]) => void
  onClose: () => void
}

/** A formula pasted as text: what was understood of each line stands under it, to be mended there before it is taken. */
export function PasteFormula({ plan, newId, onTake, onClose }: Props) {
  const [text, setText] = useState('')
  const [kinds, setKinds] = useState<ReadonlyMap<string, IngredientKind>>(new Map())
  const read = useMemo(() => {
    let count = 0
    return formulaFromText(text, () => `line${++count}`, kinds)
  }, [text, kinds])
  const { formula, doubts } = read
  const refused = read.items.filter(({ is }) => is === 'question').length
  const writeLine = (line: number, written: string | null) =>
    setText(
      text
        .split(/\r\n|\r|\n/u)
        .flatMap((row, at) => (at !== line - 1 ? [row] : written === null ? [] : [written]))
        .join('\n'),
    )
  const added = useMemo(() => (formula ? addedForFactor(plan, formula) : null), [plan, formula])
  // As the plan would have it, with what its factor adds.
  const tooMany = useMemo(
    () => (formula ? pastedTooManyText(withFormula(plan, formula, newId).formula) : null),
    [plan, formula, newId],
  )
  const take = () => {
    if (!formula || refused > 0 || tooMany !== null) return
    onTake(formula, added?.names ?? [])
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
          <Button
            kind="primary"
            onPress={take}
            disabled={!formula || refused > 0 || tooMany !== null}
          >
            {doubts.length > 0 ? 'Use it as weighed' : 'Use this formula'}
          </Button>
        </>
      }
    >
      <TextArea
        label="The formula as you have it"
        hint="A list, a table or several in a line, by weight or percent, in English, German, French or Italian. Preferments under a heading, or with their hydration. Cups and spoons are asked about."
        rows={7}
        value={text}
        onValue={setText}
        problem={
          read.reason === 'no-flour'
            ? 'No flour was understood. Write a line such as “500 g flour”, or choose “flour” at its line.'
            : undefined
        }
      />
      <PastedLines
        items={read.items}
        onKind={(name, kind) => setKinds((before) => new Map(before).set(name, kind))}
        onLine={writeLine}
      />
      {formula && refused > 0 ? <Notice kind="caution">{halfReadText(refused)}</Notice> : null}
      {tooMany === null ? null : <Notice kind="caution">{tooMany}</Notice>}
      {doubts.map((doubt) => (
        <Notice key={formulaDoubtText(doubt)} kind="caution">
          {formulaDoubtText(doubt)}
        </Notice>
      ))}
      {added ? <Notice kind="caution">{formulaLacksText(added)}</Notice> : null}
    </Dialog>
  )
}
