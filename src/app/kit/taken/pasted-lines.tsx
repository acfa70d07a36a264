import { SelectField } from '@/app/kit/field/select-field.tsx'
import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { IngredientKind } from '@/core/formula/formula-record.ts'
import type { ReadFormulaItem } from '@/core/formula/pasted/formula-from-text.ts'
import { plainMass } from '@/core/units/mass-text.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { asideText, lineRefusal } from '@/core/wording/plan/refusals.ts'
import { ingredientKindNames } from '@/core/wording/words/ingredient-kind-names.ts'
import styles from './taken.module.css'

interface Props {
  items: readonly ReadFormulaItem[]
  onKind: (name: string, kind: IngredientKind) => void
  /** Puts another text in place of a line; nothing takes it out. */
  onLine: (line: number, text: string | null) => void
}

const kindOptions = (Object.keys(ingredientKindNames) as IngredientKind[]).map((kind) => ({
  value: kind,
  label: ingredientKindNames[kind],
}))

/** Each pasted line as it was understood, its kind to be corrected, set aside with why, or asked about with what may mend it. */
export function PastedLines({ items, onKind, onLine }: Props) {
  return (
    <ol className={styles.read} aria-label="What was understood">
      {items.map((item, at) => (
        <li
          // biome-ignore lint/suspicious/noArrayIndexKey: a line may name one thing twice
          key={`${item.line} ${at}`}
          {...(item.is === 'question' ? { className: styles.refused } : {})}
        >
          <Said item={item} />
          {item.is === 'question' ? <Answers item={item} onKind={onKind} onLine={onLine} /> : null}
          {item.kind ? (
            <SelectField
              label={`Kind of ${item.name}`}
              hideLabel
              value={item.kind}
              options={kindOptions}
              onValue={(kind) => onKind(item.name, kind)}
            />
          ) : null}
        </li>
      ))}
    </ol>
  )
}

function Said({ item }: { item: ReadFormulaItem }) {
  if (item.is === 'question')
    return (
      <>
        <span>
          <WarningMark /> {item.text}
        </span>
        <span>{lineRefusal(item.why)}</span>
      </>
    )
  if (item.is === 'aside')
    return (
      <span className={styles.aside}>
        {item.text} <i>set aside: {asideText(item.why)}</i>
      </span>
    )
  if (item.is === 'preferment')
    return (
      <span>
        <b>{item.name}</b>{' '}
        {item.parts.length === 0
          ? 'as built above'
          : item.parts.map((part) => `${part.name} ${amount(part)}`).join(' and ')}
      </span>
    )
  return (
    <span>
      <b>{item.name}</b> {amount(item)}
      {item.of ? `, in the ${item.of}` : ''}
      {item.fromVolume ? ', taken as 1 g a ml' : ''}
    </span>
  )
}

function Answers({
  item,
  onKind,
  onLine,
}: Pick<Props, 'onKind' | 'onLine'> & { item: Extract<ReadFormulaItem, { is: 'question' }> }) {
  return (
    <span className={styles.answers}>
      {item.mends.map((mend) => (
        <Button
          key={mend}
          size="small"
          label={`Write instead: ${mend}`}
          onPress={() => onLine(item.line, mend)}
        >
          {mend}
        </Button>
      ))}
      {item.why === 'unknown-kind' ? (
        <Button
          size="small"
          label={`${item.name} counts as none of these`}
          onPress={() => onKind(item.name, 'other')}
        >
          None of these: other
        </Button>
      ) : null}
      <Button
        size="small"
        kind="quiet"
        label={`Leave out: ${item.text}`}
        onPress={() => onLine(item.line, null)}
      >
        Leave it out
      </Button>
    </span>
  )
}

function amount({ grams, percent }: { grams: number | null; percent: number }): string {
  const weight = grams === null ? '' : `${plainMass(round(grams))}, `
  return `${weight}${plainNumber(round(percent))} %`
}

const round = (value: number) => Math.round(value * 100) / 100
