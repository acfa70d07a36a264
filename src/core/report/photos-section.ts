import { photoRows } from '@/core/figure/photo-rows.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { CivilClock } from '@/core/wording/words/civil-time.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'
import { levelNamed } from '@/core/wording/words/named-in-plan.ts'
import { momentText, photoBlocks, viewText } from './photo-blocks.ts'
import type { ReportSection } from './report-block.ts'

/**
 * The photos by level and moment, side by side, and a table of them for a face that shows no pictures. The pictures themselves stay
 * in the notebook, its backup and the archive; whoever draws the report hands them in. Nothing where none was taken.
 */
export function photosSection(whole: WholeTrial, clock: CivilClock): ReportSection[] {
  const rows = photoRows(whole).flatMap((row) =>
    row.cells.flatMap(({ levelId, photos }) =>
      photos.map((photo) => [
        String(row.session.number),
        momentText(row),
        levelNamed(row.plan, levelId),
        clockTime(photo.at, row.session.zone, clock),
        photo.widthMillimetres === null ? 'not known' : viewText(photo.widthMillimetres),
        photo.caption,
      ]),
    ),
  )
  if (rows.length === 0) return []
  const kept =
    'A row is one moment: the step that had been begun last. The pictures are kept in the notebook, and travel in its backup and in the archive.'
  return [
    {
      id: 'photos',
      title: 'Photos',
      blocks: [
        { kind: 'text', text: kept },
        ...photoBlocks(whole, clock),
        {
          kind: 'table',
          caption: 'Photos taken',
          head: ['Session', 'Moment', 'Of', 'At', 'Shows', 'Caption'],
          rows,
          figures: [true, false, false, false, false, false],
        },
      ],
    },
  ]
}
