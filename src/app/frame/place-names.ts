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
