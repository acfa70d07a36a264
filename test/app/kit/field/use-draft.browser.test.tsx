import { expect, test } from 'vitest'
import { render } from 'vitest-browser-react'
import { useDraft } from '@/app/kit/field/use-draft.ts'

type Values = Record<string, string>

/** A keeper of one draft in memory, as a notebook would keep it. */
function keeper(start?: Values) {
  let kept = start
  return {
    now: () => kept,
    load: async () => kept,
    save: async (values: Values) => {
      kept = values
    },
    drop: async () => {
      kept = undefined
    },
  }
}

function Form({ keeping }: { keeping: ReturnType<typeof keeper> }) {
  const draft = useDraft(keeping)
  const { name = '' } = draft.values
  if (!draft.ready) return null
  return (
    <>
      <input
        aria-label="Name"
        value={name}
        onChange={(change) => draft.set('name', change.target.value)}
      />
      <button type="button" onClick={() => draft.clear()}>
        Leave it
      </button>
    </>
  )
}

test('what was typed is kept, and stands there again in a new form', async () => {
  const keeping = keeper()
  const first = await render(<Form keeping={keeping} />)
  await first.getByLabelText('Name').fill('Pocket sc')
  await expect.poll(keeping.now).toEqual({ name: 'Pocket sc' })
  await first.unmount()
  const second = await render(<Form keeping={keeping} />)
  await expect.element(second.getByLabelText('Name')).toHaveValue('Pocket sc')
})

test('leaving the page keeps the last key at once', async () => {
  const keeping = keeper()
  const screen = await render(<Form keeping={keeping} />)
  await screen.getByLabelText('Name').fill('Pocket scale')
  await screen.unmount()
  expect(keeping.now()).toEqual({ name: 'Pocket scale' })
})

test('a draft that is left is gone', async () => {
  const keeping = keeper({ name: 'Old' })
  const screen = await render(<Form keeping={keeping} />)
  await screen.getByRole('button', { name: 'Leave it' }).click()
  await expect.poll(keeping.now).toBeUndefined()
})
