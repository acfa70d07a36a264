import { Choice } from '@/app/kit/field/choice.tsx'
import type { Yield } from '@/core/house/house-record.ts'
import { panInForm, tinInForm } from '@/core/house/in-another-form.ts'
import { Between, Length } from './between-field.tsx'

type Pans = Extract<Yield, { by: 'pans' }>
type Tins = Extract<Yield, { by: 'tins' }>

const panForms = [
  { value: 'rectangle', label: 'with corners' },
  { value: 'circle', label: 'round' },
  { value: 'area', label: 'by its floor' },
] as const satisfies { value: Pans['pan']['is']; label: string }[]

const tinForms = [
  { value: 'box', label: 'with corners' },
  { value: 'round', label: 'round' },
  { value: 'volume', label: 'by what it holds' },
] as const satisfies { value: Tins['tin']['is']; label: string }[]

/** A flat pan: its form, its measures inside, and how much dough a square centimetre takes. */
export function PanFields({ made, onMade }: { made: Pans; onMade: (made: Pans) => void }) {
  const { pan } = made
  const set = (next: Pans['pan']) => onMade({ ...made, pan: next })
  return (
    <>
      <Choice
        label="Form of the pan"
        row
        value={pan.is}
        options={panForms}
        onValue={(is) => set(panInForm(is, pan))}
      />
      {pan.is === 'circle' ? (
        <Length
          label="Across"
          value={pan.diameter}
          onValue={(diameter) => set({ ...pan, diameter })}
        />
      ) : pan.is === 'area' ? (
        <Between
          label="Its floor"
          unit="cm²"
          ends={[1, 100_000]}
          value={pan.squareCentimetres}
          onValue={(squareCentimetres) => set({ ...pan, squareCentimetres })}
        />
      ) : (
        <>
          <Length label="Length" value={pan.length} onValue={(length) => set({ ...pan, length })} />
          <Length label="Width" value={pan.width} onValue={(width) => set({ ...pan, width })} />
        </>
      )}
      <Between
        label="Dough a cm²"
        unit="g"
        value={made.gramsPerSquareCentimetre}
        ends={[0.05, 10]}
        onValue={(gramsPerSquareCentimetre) => onMade({ ...made, gramsPerSquareCentimetre })}
      />
    </>
  )
}

/** A tin: its form, its measures inside, and how much dough a millilitre takes. */
export function TinFields({ made, onMade }: { made: Tins; onMade: (made: Tins) => void }) {
  const { tin } = made
  const set = (next: Tins['tin']) => onMade({ ...made, tin: next })
  return (
    <>
      <Choice
        label="Form of the tin"
        row
        value={tin.is}
        options={tinForms}
        onValue={(is) => set(tinInForm(is, tin))}
      />
      <TinMeasures tin={tin} onTin={set} />
      <Between
        label="Dough a ml"
        unit="g"
        value={made.gramsPerMillilitre}
        ends={[0.05, 3]}
        onValue={(gramsPerMillilitre) => onMade({ ...made, gramsPerMillilitre })}
      />
    </>
  )
}

/** What the measures of each form are called, in the order in which they are asked. */
const measures = {
  box: {
    topLength: 'Length, top',
    topWidth: 'Width, top',
    bottomLength: 'Length, bottom',
    bottomWidth: 'Width, bottom',
    height: 'Height',
  },
  round: { topDiameter: 'Across, top', bottomDiameter: 'Across, bottom', height: 'Height' },
} as const

function TinMeasures({ tin, onTin }: { tin: Tins['tin']; onTin: (tin: Tins['tin']) => void }) {
  if (tin.is === 'volume')
    return (
      <Between
        label="It holds, to the brim"
        unit="ml"
        ends={[1, 100_000]}
        value={tin.millilitres}
        onValue={(millilitres) => onTin({ ...tin, millilitres })}
      />
    )
  const asked = Object.entries(measures[tin.is]) as [keyof typeof tin, string][]
  return asked.map(([key, label]) => (
    <Length
      key={key}
      label={label}
      value={Number(tin[key])}
      onValue={(value) => onTin({ ...tin, [key]: value })}
    />
  ))
}
