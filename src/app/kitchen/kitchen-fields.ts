import type { KitchenKind } from '@/core/kitchen/kitchen-record.ts'
import { mixingWayOptions } from '@/core/wording/weighing/mixing-way-text.ts'

export interface KitchenField {
  key: string
  label: string
  type: 'text' | 'number' | 'choice'
  /** What a choice offers; the empty value is for what nobody says. */
  options?: readonly { value: string; label: string }[]
  unit?: string
  hint?: string
  required: boolean
  least?: number
  most?: number
  whole?: boolean
  /** A temperature, a difference of two, or a weight: bounds in °C and grams, shown and typed in the person's unit. */
  measures?: 'temperature' | 'temperature-steps' | 'mass'
}

export interface KitchenChapter {
  kind: KitchenKind
  title: string
  /** One of them, with its article, for buttons: "a scale". */
  one: string
  /** What the notebook does with it, in one sentence. */
  why: string
  fields: KitchenField[]
}

const name = (hint: string): KitchenField => ({
  ...{ key: 'name', label: 'Name', type: 'text', required: true, hint },
})
const number = (
  key: string,
  label: string,
  unit: string,
  bounds: { least: number; most: number; whole?: boolean },
): KitchenField => ({ key, label, unit, type: 'number', required: true, ...bounds })
const temperature = (
  key: string,
  label: string,
  [least, most]: readonly [number, number],
): KitchenField => ({ ...number(key, label, '°C', { least, most }), measures: 'temperature' })
const mass = (
  key: string,
  label: string,
  bounds: { least: number; most: number },
): KitchenField => ({ ...number(key, label, 'g', bounds), measures: 'mass' })
const optional = (field: KitchenField, hint?: string): KitchenField => ({
  ...field,
  required: false,
  ...(hint ? { hint } : {}),
})
const grams = { least: 0, most: 1_000_000 }
/** What a kitchen's things can be at, in °C; flour's moisture in %: common practice, no source. */
const ends = {
  oven: [50, 700],
  fridge: [-5, 20],
  freezer: [-40, 0],
  tap: [0, 80],
} as const
const moisture = { least: 5, most: 25 }
const share = { least: 0, most: 100 }
const count = { least: 1, most: 1000, whole: true }

/** Everything a kitchen may hold, and what is asked of each. Bounds lie within those of the records' shapes: what a kitchen can be. */
export const kitchenChapters: readonly KitchenChapter[] = [
  {
    ...{ kind: 'scale', title: 'Scales', one: 'a scale' },
    why: 'Weights are rounded to what a scale can show, and levels it cannot keep apart are called out.',
    fields: [
      name('Such as “big scale” or “pocket scale”.'),
      mass('resolutionGrams', 'Smallest step it shows', { least: 0.0001, most: 1000 }),
      mass('capacityGrams', 'Most it can weigh', { least: 0.001, most: 1_000_000 }),
      optional(
        mass('errorGrams', 'May be off by, either way', { least: 0, most: 1000 }),
        'Beyond its step, as the maker states it or a known weight shows.',
      ),
      optional(
        number('errorPercent', 'and by a share of the weight', '%', { least: 0, most: 20 }),
        'All batches share it where one scale weighs them.',
      ),
    ],
  },
  {
    ...{ kind: 'taster', title: 'Tasters', one: 'a taster' },
    why: 'Kept by initials or a code, in this one place, so that a taster can be erased.',
    fields: [
      {
        ...{ key: 'initials', label: 'Initials or code', type: 'text', required: true },
        hint: 'Up to 12 characters; better not a full name.',
      },
    ],
  },
  {
    ...{ kind: 'thermometer', title: 'Thermometers', one: 'a thermometer' },
    why: 'A difference of dough temperatures that it cannot tell is said to be one.',
    fields: [
      name('Such as “probe”.'),
      {
        ...number('spreadCelsius', 'May be off by, either way', '°C', { least: 0, most: 20 }),
        measures: 'temperature-steps',
      },
    ],
  },
  {
    ...{ kind: 'oven', title: 'Ovens', one: 'an oven' },
    why: 'How many pieces stand in it together decides the loads and the waiting.',
    fields: [
      name('Such as “home oven with steel”.'),
      number('places', 'Pieces at once', '', count),
      optional(temperature('maxCelsius', 'Hottest', ends.oven)),
      optional(
        number('recoverySeconds', 'Hot again after a load in', 's', { least: 0, most: 7200 }),
      ),
      optional(number('heatSecondsPerKelvin', '1 °C hotter takes', 's', { least: 0, most: 600 })),
      optional(number('coolSecondsPerKelvin', '1 °C cooler takes', 's', { least: 0, most: 600 })),
    ],
  },
  {
    ...{ kind: 'mixer', title: 'Mixers', one: 'a mixer' },
    why: 'Its least and most dough bound the batch; its work, way and bowl go into the water’s temperature.',
    fields: [
      name('Hands are a mixer too.'),
      mass('leastDoughGrams', 'Least dough it mixes well', grams),
      mass('mostDoughGrams', 'Most dough it mixes well', grams),
      {
        ...{ key: 'way', label: 'How it mixes', type: 'choice', required: false },
        options: [{ value: '', label: 'not said' }, ...mixingWayOptions],
        hint: 'What the first dough’s warmth is reckoned with, until a dough was read.',
      },
      optional(
        number('workKilojoulesPerKilogram', 'Mixing work', 'kJ per kg', { least: -30, most: 100 }),
        'Leave empty if you do not know it; it can be learned from dough temperatures.',
      ),
      optional(mass('bowlGrams', 'Bowl', grams)),
      optional(
        number('bowlHeat', 'Specific heat of the bowl', 'kJ per kg and °C', {
          least: 0.01,
          most: 5,
        }),
        'About 0.5 for steel, 0.8 for glass.',
      ),
    ],
  },
  {
    ...{ kind: 'fridge', title: 'Fridges', one: 'a fridge' },
    why: 'For cold proofs, cold water and ice.',
    fields: [
      name('Such as “cellar fridge”.'),
      temperature('celsius', 'Temperature', ends.fridge),
      optional(number('places', 'Tubs it holds', '', count)),
      optional(temperature('freezerCelsius', 'Its freezer', ends.freezer)),
    ],
  },
  {
    ...{ kind: 'tap', title: 'Taps', one: 'a tap' },
    why: 'The coldest and warmest water there is without ice or a kettle.',
    fields: [
      name('Such as “kitchen tap”.'),
      temperature('coldestCelsius', 'Coldest', ends.tap),
      temperature('warmestCelsius', 'Warmest', ends.tap),
    ],
  },
  {
    ...{ kind: 'flour', title: 'Flours', one: 'a flour' },
    why: 'One entry for each bag: the same name from another bag or lot is another flour.',
    fields: [
      name('As on the bag.'),
      { key: 'lot', label: 'Bag or lot', type: 'text', required: false },
      optional(
        number('moisturePercent', 'Moisture', '%', moisture),
        '13.5 is reckoned with where nothing is known. Where it is entered, the weigh sheet tells the water at 14 % too: one point is about 1.9 points of water and 0.3 to 0.5 °C of dough.',
      ),
      optional(number('proteinPercent', 'Protein', '%', share)),
      optional(
        number('absorptionPercent', 'Water it takes', '% of flour', share),
        'To one feel, by your own trying or the mill’s sheet: both flours of a trial by the same way. Shares of flour then start each at its own water.',
      ),
    ],
  },
]

/** What stands under one heading: kinds that are used together. */
export const kitchenRooms: readonly { title: string; kinds: readonly KitchenKind[] }[] = [
  { title: 'Scales', kinds: ['scale'] },
  { title: 'Warmth', kinds: ['thermometer', 'tap', 'fridge'] },
  { title: 'Oven and mixing', kinds: ['oven', 'mixer'] },
  { title: 'Flours', kinds: ['flour'] },
  { title: 'Tasters', kinds: ['taster'] },
]
