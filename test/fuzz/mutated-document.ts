import { type Chance, wholeBetween } from '@/core/design/chance.ts'

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json }

/** A place in a document: what holds it, and under which key or index. */
interface Place {
  holder: Json[] | Record<string, Json>
  key: string | number
}

const pick = <Item>(chance: Chance, items: readonly Item[]): Item => {
  const item = items[wholeBetween(chance, 0, items.length - 1)]
  if (item === undefined) throw new Error('nothing to pick from')
  return item
}

/** Every place of a document, in a fixed order. */
function placesOf(document: Json): Place[] {
  const places: Place[] = []
  const open: Json[] = [document]
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (next === null || typeof next !== 'object') continue
    const holder = next
    const keys = Array.isArray(holder) ? holder.keys() : Object.keys(holder)
    for (const key of keys) {
      places.push({ holder, key })
      open.push(valueAt({ holder, key }))
    }
  }
  return places
}

const valueAt = ({ holder, key }: Place): Json => Reflect.get(holder, key) as Json
const put = ({ holder, key }: Place, value: Json) => Reflect.set(holder, key, value)
const copyOf = (value: Json): Json => JSON.parse(JSON.stringify(value))

/** Values that a hand, a sensor or another program might have left behind. */
const strange: readonly Json[] = [
  ...[null, true, false, 0, -1, 0.1, 1e-9, 1e9, 1e155, 1e308, -1e308, 2 ** 53, 1.5],
  ...['', ' ', '0', 'NaN', '-', '\u0000', '😀', '<b>x</b>', '=1+1', '__proto__', '../../x'],
  ...['x'.repeat(190), 'x'.repeat(6000), 'ü'.repeat(200)],
  ...[[], {}, [null], [[]], { id: 'x' }],
]

type Change = (chance: Chance, place: Place, places: readonly Place[]) => void

const changes: readonly Change[] = [
  (chance, place) => put(place, copyOf(pick(chance, strange))),
  // A number a little or a lot off, the commonest slip of all.
  (chance, place) => {
    const value = valueAt(place)
    if (typeof value !== 'number') return
    put(place, pick(chance, [-value, value * 10, value / 10, value + 1, value - 1, value * 1e6]))
  },
  (_chance, { holder, key }) => {
    if (Array.isArray(holder)) holder.splice(Number(key), 1)
    else Reflect.deleteProperty(holder, key)
  },
  (_chance, place) => {
    const { holder, key } = place
    if (Array.isArray(holder)) holder.splice(Number(key), 0, copyOf(valueAt(place)))
  },
  (chance, place) => {
    const { holder } = place
    if (!Array.isArray(holder)) return
    const other = { holder, key: wholeBetween(chance, 0, holder.length - 1) }
    const value = valueAt(place)
    put(place, valueAt(other))
    put(other, value)
  },
  (chance, place) => {
    const { holder } = place
    if (!Array.isArray(holder) || holder.length === 0) return
    const item = holder[0] ?? null
    // A whole session a thousand times over would only try the patience of the reader of JSON.
    const most = Math.floor(2_000_000 / JSON.stringify(item).length)
    const times = Math.min(most, pick(chance, [20, 200, 2000]))
    for (let index = 0; index < times; index += 1) holder.push(copyOf(item))
  },
  (chance, place, places) => put(place, copyOf(valueAt(pick(chance, places)))),
  (chance, { holder, key }) => {
    if (Array.isArray(holder)) return
    Reflect.set(holder, `${key}${pick(chance, ['s', '_', ''])}x`, null)
  },
]

/** The text with a slip in its bytes: cut short, a character gone, doubled or foreign. */
function slippedText(chance: Chance, text: string): string {
  const at = wholeBetween(chance, 0, text.length)
  const [before, after] = [text.slice(0, at), text.slice(at)]
  return pick(chance, [before, before + after.slice(1), `${before}"${after}`, `${before},${after}`])
}

/** A document's text with one to four changes, drawn by `chance`: most fit no shape, some do and mean something strange. */
export function mutatedDocument(chance: Chance, document: Json): string {
  const own = copyOf(document)
  for (let left = wholeBetween(chance, 1, 4); left > 0; left -= 1) {
    const places = placesOf(own)
    if (places.length > 0) pick(chance, changes)(chance, pick(chance, places), places)
  }
  const text = JSON.stringify(own)
  return wholeBetween(chance, 1, 20) === 1 ? slippedText(chance, text) : text
}
