import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import type { House, HouseRevision } from '@/core/house/house-record.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { freshName, notebookOf, notebookWithTrial } from './notebook-of.ts'

const revision: HouseRevision = {
  at: 1_760_000_000_000,
  zone: 'Europe/Rome',
  formula: planOf().formula,
  steps: planOf().steps,
  temperature: null,
  yield: { by: 'flour', flourGrams: 500 },
  restsOn: [
    {
      ...{ trialId: 'trial-1', question: 'How wet?', level: '70 %', because: 'easiest' },
      ...{ sessions: 3, tasters: 8, said: '' },
    },
  ],
  note: '',
}
const house: House = {
  id: 'house-1',
  name: 'Club loaf',
  createdAt: revision.at,
  revisions: [revision],
}

describe('house formulas', () => {
  test('N50: kept, read again, and left alone when its trial is erased', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    await notebook.keepHouse(house)
    await notebook.bin('trial-1', true)
    await notebook.erase('trial-1')
    notebook.close()
    const again = notebookOf(name)
    expect(await again.houses()).toEqual([house])
    expect(await again.house('house-1')).toEqual(house)
  })

  test('N50: a revision more is kept, a changed or missing one is refused', async () => {
    const notebook = notebookOf()
    await notebook.keepHouse(house)
    const second = { ...revision, at: revision.at + 1, note: 'softer' }
    const revised = { ...house, revisions: [revision, second] }
    await notebook.keepHouse(revised)
    const bent = { ...house, revisions: [{ ...revision, note: 'bent' }, second] }
    await expect(notebook.keepHouse(bent)).rejects.toMatchObject({ reason: 'house-moved-on' })
    await expect(notebook.keepHouse(house)).rejects.toMatchObject({ reason: 'house-moved-on' })
    expect(await notebook.house('house-1')).toEqual(revised)
  })

  test('N50: into the bin and out of it', async () => {
    const notebook = notebookOf()
    await notebook.keepHouse(house)
    await notebook.binHouse('house-1', true)
    expect(await notebook.houses()).toEqual([])
    await notebook.binHouse('house-1', false)
    expect(await notebook.houses()).toEqual([house])
  })

  test('N51: they travel in a backup, and one that is here stays as it is', async () => {
    const first = notebookOf()
    await first.keepHouse(house)
    const made = await first.backUp()
    if (!made) throw new Error('nobody stopped it')
    const empty = notebookOf()
    expect(await empty.restore(made.zip)).toMatchObject({ ok: true })
    expect(await empty.houses()).toEqual([house])
    const other = notebookOf()
    await other.keepHouse({ ...house, name: 'My own' })
    await other.restore(made.zip)
    expect((await other.houses()).map(({ name }) => name)).toEqual(['My own'])
  })
})
