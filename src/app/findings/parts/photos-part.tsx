import { SideBySide } from '@/app/kit/rail/side-by-side.tsx'
import { KeptPicture } from '@/app/services/kept-picture.tsx'
import { photoBlocks } from '@/core/report/photo-blocks.ts'
import { toldTrial } from '@/core/whole-trial/told-trial.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { PartFold } from './part-fold.tsx'

interface PhotosPartProps {
  whole: WholeTrial
  letters: ReadonlyMap<string, string>
}

const blocksOf = (whole: WholeTrial) => photoBlocks(toldTrial(whole), civilTime)

/** The photos of the bench side by side, as one line that opens. */
export function PhotosPart({ whole, letters }: PhotosPartProps) {
  const blocks = blocksOf(whole)
  if (blocks.length === 0) return null
  const count = blocks
    .flatMap(({ columns }) => columns)
    .reduce((sum, { photos }) => sum + photos.length, 0)
  return (
    <PartFold
      title="Side by side"
      result={`${asSentenceStart(countText(count, 'photo'))} of ${countText(blocks.length, 'moment')}.`}
    >
      <PhotosByMoment whole={whole} letters={letters} />
    </PartFold>
  )
}

/** Whether there is a photo to show. */
export function hasPhotos(whole: WholeTrial): boolean {
  return blocksOf(whole).length > 0
}

/** A row a moment, in it a column a level in the order of the rail. */
export function PhotosByMoment({ whole, letters }: PhotosPartProps) {
  return (
    <section aria-label="Photos by level and moment">
      {blocksOf(whole).map((block) => (
        <SideBySide key={block.title} block={block} Picture={KeptPicture} letters={letters} />
      ))}
    </section>
  )
}
