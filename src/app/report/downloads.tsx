import { Button } from '@/app/kit/press/button.tsx'
import { saveFile } from '@/app/kit/press/save-file.ts'
import { useServices } from '@/app/services/services.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { observationsCsv } from '@/core/report/observations-csv.ts'
import type { ReportDocument } from '@/core/report/report-block.ts'
import { reportHtml } from '@/core/report/report-html.ts'
import { reportMarkdown } from '@/core/report/report-markdown.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { picturesOf } from './pictures-of.ts'
import styles from './report.module.css'
import { saveArchive } from './save-archive.ts'

interface DownloadsProps {
  whole: WholeTrial
  scores: ScoreTable
  document: ReportDocument
  onPrint: (withAppendix: boolean) => void
}

/** The report on paper and as files; nothing leaves the device. */
export function Downloads({ whole, scores, document, onPrint }: DownloadsProps) {
  const { notebook } = useServices()
  const stem = fileStem(document.title)
  const saveTrial = async () => {
    const { name, text } = await notebook.exportTrial(whole.trial.id)
    saveFile(name, text, 'application/json')
  }
  const saveHtml = async () => {
    const pictures = await picturesOf(notebook, whole)
    saveFile(`${stem}.html`, reportHtml(document, pictures), 'text/html')
  }
  return (
    <div className={styles.downloads}>
      <Button kind="primary" onPress={() => onPrint(false)}>
        Print or save as PDF
      </Button>
      <Button onPress={() => onPrint(true)}>Print with the appendix</Button>
      <Button onPress={saveHtml}>Report as HTML</Button>
      <Button onPress={() => saveFile(`${stem}.md`, reportMarkdown(document), 'text/markdown')}>
        Report as Markdown
      </Button>
      <Button onPress={() => saveFile(`${stem}.csv`, observationsCsv(whole, scores), 'text/csv')}>
        Values as CSV
      </Button>
      <Button onPress={saveTrial}>Trial file</Button>
      <Button onPress={() => saveArchive(notebook, { whole, scores, document }, stem)}>
        Archive with tables and photos
      </Button>
    </div>
  )
}

/** A file name from a question: plain letters and figures with hyphens, at most 60 long, never empty. */
export function fileStem(question: string): string {
  const plain = question
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '')
  return plain === '' ? 'report' : `report-${plain}`
}
