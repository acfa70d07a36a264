export interface PlaceName {
  name: string
  title: string
}

/** Beside the five: a finished trial opened for a learner. */
export const lessonPlace: PlaceName = { name: 'lesson', title: 'Lesson' }

/** The five places of a trial in the order of the work, as they stand in an address and on the page. */
export const placeNames: readonly PlaceName[] = [
  { name: 'plan', title: 'Plan' },
  { name: 'bench', title: 'Bench' },
  { name: 'tasting', title: 'Tasting' },
  { name: 'findings', title: 'Findings' },
  { name: 'report', title: 'Report' },
]

/** Whether an address names a place of a trial. */
export const isPlaceName = (name: string) =>
  [...placeNames, lessonPlace].some((place) => place.name === name)

/** The way to the kitchen from an address, which keeps the trial's place one comes from, if any. */
export function wayToKitchen(location: string): string {
  if (location.startsWith('/kitchen')) return location
  const [, where, trialId, place = ''] = location.split('/')
  return where === 'trial' && isPlaceName(place) ? `/kitchen/${trialId}/${place}` : '/kitchen'
}
