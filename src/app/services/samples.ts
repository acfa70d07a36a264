interface Told {
  title: string
  shows: string
  /** Where it stands: sessions and people. */
  stands: string
  /** Its levels and the usual one, so that the shelf pictures them without reading the file. */
  levels: readonly number[]
  usual: number
  factorName: string
  unitOfMeasure: string
}

export interface Sample extends Told {
  name: string
  read: () => Promise<string>
}

const files = import.meta.glob<string>('/trials/*.json', { query: '?raw', import: 'default' })

const told: Record<string, Told> = {
  'focaccia-hydration': {
    title: 'How wet should our focaccia be?',
    shows: 'Liked best in between; the usual one is the easiest that is as good.',
    stands: 'Finished: 3 sessions, 8 people',
    levels: [66, 70, 74, 78, 82],
    usual: 74,
    factorName: 'hydration',
    unitOfMeasure: '% of flour',
  },
  'pan-loaf-salt': {
    title: 'How little salt does our pan loaf need?',
    shows: 'Not settled. One session cannot speak of salt itself.',
    stands: 'Finished: 1 session, 6 people',
    levels: [1.4, 1.8, 2.2, 2.6],
    usual: 1.8,
    factorName: 'salt',
    unitOfMeasure: '% of flour',
  },
  'flatbread-hydration': {
    title: 'Does a wetter flatbread puff and please more?',
    shows: 'A working day, half logged: one dough is being mixed.',
    stands: 'At the bench: session 1 of 2',
    levels: [57, 62, 67, 72],
    usual: 62,
    factorName: 'hydration',
    unitOfMeasure: '% of flour',
  },
}

/** The sample trials that come with the program; their data are invented. Each file is fetched only when it is read. */
export const samples: readonly Sample[] = Object.entries(files).map(([path, read]) => {
  const name = path.replace(/^.*\/|\.json$/g, '')
  const words = told[name]
  if (!words) throw new Error(`nothing is told of the sample ${name}`)
  return { name, read, ...words }
})
