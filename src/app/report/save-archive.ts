import { saveFile } from '@/app/kit/press/save-file.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { ReportDocument } from '@/core/report/report-block.ts'
import { pictureFile } from '@/core/session/photo-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Notebook } from '@/notebook/notebook.ts'
import { picturesOf } from './pictures-of.ts'

/** Tables, dictionary, trial file, report, script and photos as one zip; the photos by their keys in the trial file. */
export async function saveArchive(
  notebook: Pick<Notebook, 'exportTrial' | 'picture'>,
  { whole, scores, document }: { whole: WholeTrial; scores: ScoreTable; document: ReportDocument },
  stem: string,
): Promise<void> {
  const [{ archiveFiles }, { strToU8, zipSync }] = await Promise.all([
    import('@/core/report/archive/archive-files.ts'),
    import('fflate'),
  ])
  const { text: trialFile } = await notebook.exportTrial(whole.trial.id)
  const files: Record<string, Uint8Array> = {}
  const pictures = await picturesOf(notebook, whole)
  const made = archiveFiles({ whole, scores, document, trialFile, pictures })
  for (const [name, text] of Object.entries(made)) files[name] = strToU8(text)
  for (const photo of whole.photos) {
    const picture = await notebook.picture(photo.id)
    if (picture) files[`photos/${pictureFile(photo)}`] = new Uint8Array(await picture.arrayBuffer())
  }
  saveFile(`${stem}.zip`, new Blob([new Uint8Array(zipSync(files))]), 'application/zip')
}
