import type { LevelPaint } from '@/core/figure/level-ramp.ts'
import type { PairPicture } from '@/core/figure/pair-picture.ts'
import type { ResponseChart } from '@/core/figure/response-chart.ts'
import type { Level } from '@/core/trial/level.ts'

export interface TableBlock {
  kind: 'table'
  caption: string
  head: string[]
  rows: string[][]
  /** Columns of figures are set flush right. */
  figures: boolean[]
  /** The levels that each row speaks of, by id; left out where rows are no levels. */
  rowLevels?: readonly (readonly string[])[]
}

/** A chart to be drawn under its own rail; `alt` says in words what it shows. */
export interface ChartBlock {
  kind: 'chart'
  chart: ResponseChart
  paints: ReadonlyMap<string, LevelPaint>
  /** The same in the dark, for a screen; paper and files are light. */
  darkPaints: ReadonlyMap<string, LevelPaint>
  letters: ReadonlyMap<string, string>
  title: string
  xTitle: string
  yTitle: string
  bestText: string | null
  alt: string
}

export interface PairsBlock {
  kind: 'pairs'
  picture: PairPicture
  title: string
  unit: string
  alt: string
}

/** Photos of one moment side by side, a column a level in the order of the rail. The pictures are handed in by whoever draws it. */
export interface PhotosBlock {
  kind: 'photos'
  title: string
  /** Whether they are at one scale, in words. */
  scale: string
  /** The bar that shows the scale, as a share of a column's width; null where no scale is known. */
  bar: { share: number; text: string } | null
  levels: readonly Level[]
  columns: {
    levelId: string | null
    name: string
    photos: {
      photoId: string
      /** Its width as a share of the column's, at the row's scale; null where it has none. */
      share: number | null
      text: string
      alt: string
    }[]
  }[]
}

/** One piece of the report, whatever face shows it. Texts are plain: every face escapes them in its own way. */
export type ReportBlock =
  | { kind: 'text'; text: string }
  /** A sentence that stands out, such as what to bake. */
  | { kind: 'strong'; text: string }
  | { kind: 'answer'; shown: string; known: string }
  | { kind: 'heading'; text: string }
  | { kind: 'list'; items: string[] }
  | { kind: 'facts'; rows: { term: string; text: string }[] }
  | TableBlock
  | ChartBlock
  | PairsBlock
  | PhotosBlock

export interface ReportSection {
  id: string
  title: string
  blocks: ReportBlock[]
}

/** The report as a document model: the same for screen, paper, HTML, Markdown and the terminal. */
export interface ReportDocument {
  title: string
  /** The note that travels with the trial, such as that its data are invented. */
  note: string
  /** What hangs on a wall: two pages as a rule. */
  pages: ReportSection[]
  /** Everything else that somebody needs to check it. */
  appendix: ReportSection[]
  /** Who made it: the name and version of the program. */
  madeBy: string
}
