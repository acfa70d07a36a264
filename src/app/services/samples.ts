export interface Sample {
  name: string
  title: string
  shows: string
  read: () => Promise<string>
}

const files = import.meta.glob<string>('/trials/*.json', { query: '?raw', import: 'default' })

const told: Record<string, { title: string; shows: string }> = {
  'focaccia-hydration': {
    title: 'How wet should our focaccia be?',
    shows: 'Five levels, three sessions, eight tasters. Finished: the best lies inside the range.',
  },
  'pan-loaf-salt': {
    title: 'How little salt does our pan loaf need?',
    shows: 'Four levels, one session, six tasters. Finished, and honestly not settled.',
  },
  'flatbread-hydration': {
    title: 'Does a wetter flatbread puff and please more?',
    shows: 'Four levels, eaten hot in three flights. Half logged: a working day at the bench.',
  },
}

/** The sample trials that come with the program; their data are invented. Each file is fetched only when it is read. */
export const samples: readonly Sample[] = Object.entries(files).map(([path, read]) => {
  const name = path.replace(/^.*\/|\.json$/g, '')
  return { name, read, ...(told[name] ?? { title: name.replaceAll('-', ' '), shows: '' }) }
})
