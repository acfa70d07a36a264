import { effectiveEvents } from '@/core/session/effective-events.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** As much of the notes as a search reads; a line of the home list stays small. */
const mostNoteLetters = 4000

/** The flours of a trial by name, each once, and by the bags they come from. */
export function floursOf(whole: WholeTrial): string[] {
  const flours = planInForce(whole).formula.ingredients.filter(({ kind }) => kind === 'flour')
  const names = flours.flatMap(({ name, flourLotId }) => {
    const bag = whole.kitchen.find(({ id }) => id === flourLotId)
    return bag?.kind === 'flour' ? [name, bag.name] : [name]
  })
  return [...new Set(names.map((name) => name.trim()).filter(Boolean))]
}

/** Everything that was written down of a trial: its own note, and the notes of the log that stand. */
export function notesOf(whole: WholeTrial): string {
  const logged = effectiveEvents(whole.events).flatMap((event) =>
    event.kind === 'note' ? [event.text] : [],
  )
  return [whole.trial.note, ...logged].filter(Boolean).join('\n').slice(0, mostNoteLetters)
}
