import { useLiveQuery } from 'dexie-react-hooks'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { Fold } from '@/app/kit/page/fold.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { factorKindName } from '@/core/wording/plan/factor-kind-name.ts'
import type { BookOrder } from '@/notebook/book-order.ts'
import { type BookSorting, type BookState, isWhole, wholeBook } from '@/notebook/book-page.ts'
import styles from './home.module.css'

interface SortBookProps {
  sorting: BookSorting
  onSorting: (sorting: BookSorting) => void
}

const states: { value: BookState; label: string }[] = [
  { value: 'planning', label: 'In planning' },
  { value: 'under-way', label: 'Under way' },
  { value: 'between', label: 'Between two sessions' },
  { value: 'answered', label: 'Finished' },
]

const orders: { value: BookOrder; label: string }[] = [
  { value: 'worked', label: 'Newest work first' },
  { value: 'made', label: 'Newest question first' },
  { value: 'question', label: 'By question, A to Z' },
  { value: 'factor', label: 'By factor, A to Z' },
]

/** Which trials of the book are shown, and in what order: one row that says what stands, and opens. */
export function SortBook({ sorting, onSorting }: SortBookProps) {
  return (
    <Fold name="Which and in what order" level={3} result={sortingText(sorting)}>
      <SortFields sorting={sorting} onSorting={onSorting} />
    </Fold>
  )
}

/** What stands, in words: "Hydration, finished, newest work first". */
function sortingText({ factorKind, state, flour, order }: BookSorting): string {
  const label = <T extends string>(list: readonly { value: T; label: string }[], value: T | null) =>
    list.find((one) => one.value === value)?.label ?? ''
  const parts = [
    factorKind === null ? '' : factorKindName(factorKind),
    label(states, state).toLowerCase(),
    flour === null ? '' : `with ${flour}`,
  ].filter(Boolean)
  const which = parts.length === 0 ? 'All trials' : parts.join(', ')
  return `${which}; ${label(orders, order).toLowerCase().replace('a to z', 'A to Z')}`
}

function SortFields({ sorting, onSorting }: SortBookProps) {
  const { notebook } = useServices()
  const found = useLiveQuery(() => notebook.bookChoices(), [notebook])
  const all = (label: string) => ({ value: '', label })
  // What was chosen stays on offer, even after the last trial that has it went away.
  const withChosen = (names: readonly string[], chosen: string | null) =>
    chosen === null || names.includes(chosen) ? names : [...names, chosen]
  const kinds = withChosen(found?.factorKinds ?? [], sorting.factorKind)
  const flours = withChosen(found?.flours ?? [], sorting.flour)
  return (
    <div className={styles.sorting}>
      <SelectField
        label="Factor"
        value={sorting.factorKind ?? ''}
        options={[
          all('All factors'),
          ...kinds.map((value) => ({ value, label: factorKindName(value) })),
        ]}
        onValue={(value) => onSorting({ ...sorting, factorKind: value === '' ? null : value })}
      />
      <SelectField
        label="Where it stands"
        value={sorting.state ?? ''}
        options={[all('Wherever it stands'), ...states]}
        onValue={(value) =>
          onSorting({ ...sorting, state: states.find((one) => one.value === value)?.value ?? null })
        }
      />
      <SelectField
        label="Flour"
        value={sorting.flour ?? ''}
        options={[all('All flours'), ...flours.map((value) => ({ value, label: value }))]}
        onValue={(value) => onSorting({ ...sorting, flour: value === '' ? null : value })}
      />
      <SelectField
        label="Order"
        value={sorting.order}
        options={orders}
        onValue={(order) => onSorting({ ...sorting, order })}
      />
      {isWhole(sorting) ? null : (
        <Button kind="quiet" onPress={() => onSorting(wholeBook)}>
          Show all again
        </Button>
      )}
    </div>
  )
}
