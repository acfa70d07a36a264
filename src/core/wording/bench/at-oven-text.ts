import type { FloorNow, RipeBy, RipenessQueue } from '@/core/fairness/at-oven/ripeness-queue.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'

const by: Record<RipeBy, string> = {
  rise: 'by the rise in the tubs',
  mark: 'by how long it stands ripe',
  hours: 'by its time and warmth',
  clock: 'by its age',
}

/** Which of what waits is riper than the next, and whether it may go in first; null where nothing is. Tells no level. */
export function ripenessText(
  queue: RipenessQueue | null,
  next: AgendaItem,
): { sentence: string; press: string | null } | null {
  if (!queue?.riper) return null
  const { item, percent } = queue.riper
  const riper = `${item.letter} is ${Math.round(percent)} % riper than ${next.letter}, ${by[queue.by]}.`
  if (queue.mayGoFirst)
    return {
      sentence: `${riper} It may go in first: the order in the oven is not the one in the mouth.`,
      press: `${item.letter} to the front`,
    }
  const sentence = `${riper} The order stays, as it is the one in the mouth; the findings say what was not made equal.`
  return { sentence, press: null }
}

/** The floor beside that of the launches before; `degrees` writes a temperature as it is shown now. */
export function floorText(
  { celsius, beforeCelsius }: FloorNow,
  degrees: (celsius: number) => string,
): string {
  const cooler = celsius < beforeCelsius
  const until = cooler ? 'Wait until it is as hot again' : 'Let it cool until it is the same'
  return `The floor reads ${degrees(celsius)}; before the others went in it read ${degrees(Math.round(beforeCelsius))}. ${until}, then read it once more.`
}
