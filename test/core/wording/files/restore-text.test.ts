import { expect, test } from 'vitest'
import {
  picturesLostText,
  type RestoreToSay,
  restoreText,
} from '@/core/wording/files/backup-text.ts'

const record: RestoreToSay = {
  ...{ total: 5, cameIn: 3, already: 1, left: [], picturesLost: [], ended: 'whole' },
}

test('a restore on a full device says how much is still to come, and that photos may be when no trial is', () => {
  expect(restoreText({ ...record, ended: 'out-of-room' })).toContain('1 trial of the backup is')
  const allTrials = restoreText({ ...record, already: 2, ended: 'out-of-room' })
  expect(allTrials).toContain('no room left')
  expect(allTrials).toContain('photos may still be to come')
  expect(allTrials).not.toContain('0 trials')
})

test('photos that are damaged in a backup are told, with where they may still be', () => {
  expect(picturesLostText(record)).toBeNull()
  expect(picturesLostText({ picturesLost: ['a.jpg'] })).toMatch(/^1 photo is damaged.*older backup/)
  expect(picturesLostText({ picturesLost: ['a.jpg', 'b.jpg'] })).toMatch(/^2 photos are damaged/)
})
