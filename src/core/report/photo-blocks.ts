import {
  type PhotoCell,
  type PhotoRow,
  photoRows,
  type RowPhoto,
  scaleBarMillimetres,
  shareOfCell,
} from '@/core/figure/photo-rows.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { CivilClock } from '@/core/wording/words/civil-time.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'
import { asSentenceStart } from '@/core/wording/words/list-text.ts'
import { levelNamed } from '@/core/wording/words/named-in-plan.ts'
import type { PhotosBlock } from './report-block.ts'

/** The photos of a trial side by side: a block for each moment, in it the levels in the order of the rail, at one scale where it is known. */
export function photoBlocks(whole: WholeTrial, clock: CivilClock): PhotosBlock[] {
  return photoRows(whole).map((row) => ({
    kind: 'photos',
    title: `Session ${row.session.number}, ${momentText(row)}`,
    ...scaleOf(row),
    levels: row.plan.levels,
    columns: row.cells.map((cell) => ({
      levelId: cell.levelId,
      name: asSentenceStart(levelNamed(row.plan, cell.levelId)),
      photos: cell.photos.map((photo) => pictureOf(photo, cell, row, clock)),
    })),
  }))
}

/** The moment of a row in running text: "Fold, the 2nd time" is written "Fold 2", as on the bench. */
export function momentText({ step, repeat, plan }: PhotoRow): string {
  if (step === null) return 'before the first step'
  const times = plan.steps.find(({ id }) => id === step.id)?.repeats ?? 1
  return times > 1 || repeat > 1 ? `${step.name} ${repeat}` : step.name
}

/** How wide a view is, in centimetres as people measure it. */
export const viewText = (millimetres: number): string => `${plainNumber(millimetres / 10)} cm`

function scaleOf(row: PhotoRow): Pick<PhotosBlock, 'scale' | 'bar'> {
  const photos = row.cells.flatMap((cell) => cell.photos)
  const without = photos.filter(({ widthMillimetres }) => widthMillimetres === null).length
  if (row.widestMillimetres === null)
    return { scale: 'No scale: nobody said how much these pictures show.', bar: null }
  const barMillimetres = scaleBarMillimetres(row.widestMillimetres)
  const bar = { share: barMillimetres / row.widestMillimetres, text: viewText(barMillimetres) }
  const rest = without === 0 ? 'All at one scale' : 'At one scale but those that say “no scale”'
  return { scale: `${rest}: the bar is ${bar.text}.`, bar }
}

function pictureOf(
  photo: RowPhoto,
  cell: PhotoCell,
  row: PhotoRow,
  clock: CivilClock,
): PhotosBlock['columns'][number]['photos'][number] {
  const at = clockTime(photo.at, row.session.zone, clock)
  const shows =
    photo.widthMillimetres === null ? 'no scale' : `${viewText(photo.widthMillimetres)} wide`
  const level = levelNamed(row.plan, cell.levelId)
  return {
    photoId: photo.photoId,
    share: shareOfCell(photo, row),
    text: [photo.caption, at, shows].filter((part) => part !== '').join(', '),
    alt: `Photo of ${level}, session ${row.session.number}, ${momentText(row)}${photo.caption === '' ? '' : `: ${photo.caption}`}`,
  }
}
