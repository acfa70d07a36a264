import { useState } from 'react'
import { expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-react'
import { NumberField } from '@/app/kit/field/number-field.tsx'

function Water({ onValue }: { onValue?: (value: number | null) => void }) {
  const [value, setValue] = useState<number | null>(350)
  return (
    <NumberField
      label="Water"
      unit="g"
      value={value}
      required
      check={(grams) => (grams > 1000 ? 'Not above 1000 g.' : undefined)}
      onValue={(next) => {
        setValue(next)
        onValue?.(next)
      }}
    />
  )
}

test('a decimal comma is kept as typed and passed on as a number', async () => {
  const onValue = vi.fn()
  const screen = await render(<Water onValue={onValue} />)
  const field = screen.getByLabelText('Water')
  await field.fill('362,5')
  expect(onValue).toHaveBeenLastCalledWith(362.5)
  await expect.element(field).toHaveValue('362,5')
})

test('a number that cannot stand is not passed on, and the message at the field names the mend', async () => {
  const onValue = vi.fn()
  const screen = await render(<Water onValue={onValue} />)
  const field = screen.getByLabelText('Water')
  await field.fill('1500')
  field.element().blur()
  expect(onValue).not.toHaveBeenCalledWith(1500)
  await expect.element(field).toHaveAttribute('aria-invalid', 'true')
  await expect.element(field).toHaveAccessibleDescription('g Not above 1000 g.')
  await expect.element(field).toHaveValue('1500')
})

test('an emptied field that is needed says so and gives null', async () => {
  const onValue = vi.fn()
  const screen = await render(<Water onValue={onValue} />)
  const field = screen.getByLabelText('Water')
  await field.fill('')
  field.element().blur()
  expect(onValue).toHaveBeenLastCalledWith(null)
  await expect.element(screen.getByRole('alert')).toHaveTextContent('Fill in a number: water.')
})

test('a value that changes from outside, as by undo, replaces what was typed once the field is left', async () => {
  const one = <NumberField label="Salt" value={10} onValue={() => undefined} />
  const screen = await render(one)
  await expect.element(screen.getByLabelText('Salt')).toHaveValue('10')
  await screen.rerender(<NumberField label="Salt" value={12} onValue={() => undefined} />)
  await expect.element(screen.getByLabelText('Salt')).toHaveValue('12')
})
