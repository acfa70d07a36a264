import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PNG } from 'pngjs'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { comparePictures, pictureFaultsText } from './compare-pictures.ts'

let folder = ''
const at = (name: string) => join(folder, name)
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'evenhand-pictures-'))
  for (const name of ['taken', 'accepted']) mkdirSync(at(name))
})
afterEach(() => rmSync(folder, { recursive: true }))

/** A picture of one colour, 40 by 30, with so many pixels of another. */
function plant(where: 'taken' | 'accepted', name: string, odd = 0, oddBy = 200): void {
  const picture = new PNG({ width: 40, height: 30 })
  picture.data.fill(255)
  for (let pixel = 0; pixel < odd; pixel += 1) picture.data[pixel * 4] = 255 - oddBy
  writeFileSync(join(at(where), name), PNG.sync.write(picture))
}

const compare = () => comparePictures(at('taken'), at('accepted'), at('beside'))

test('the same pictures are passed, and so is what no eye sees', () => {
  for (const where of ['taken', 'accepted'] as const) plant(where, 'plan.png')
  plant('accepted', 'bench.png')
  plant('taken', 'bench.png', 600, 10)
  expect(compare()).toEqual([])
})

test('a changed one fails with its share, and is laid beside the old', () => {
  plant('accepted', 'plan.png')
  plant('taken', 'plan.png', 120)
  const faults = compare()
  // 120 of 40 x 30 pixels.
  expect(faults).toEqual([{ name: 'plan.png', is: 'changed', share: 0.1 }])
  const both = PNG.sync.read(readFileSync(join(at('beside'), 'plan.png')))
  expect([both.width, both.height]).toEqual([80, 30])
  expect([both.data[0], both.data[40 * 4]]).toEqual([255, 55])
  expect(pictureFaultsText(faults, 'beside')).toContain('plan.png has changed in 10.00 %')
})

test('a missing one fails, a new one too, and one of another size', () => {
  plant('accepted', 'gone.png')
  plant('taken', 'come.png')
  plant('accepted', 'grown.png')
  writeFileSync(join(at('taken'), 'grown.png'), PNG.sync.write(new PNG({ width: 40, height: 31 })))
  expect(compare()).toEqual([
    { name: 'come.png', is: 'new', share: 1 },
    { name: 'gone.png', is: 'missing', share: 1 },
    { name: 'grown.png', is: 'changed', share: 1 },
  ])
})
