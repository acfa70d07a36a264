import * as Comlink from 'comlink'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { computeReport, type ReportQuestion, type WrittenReport } from './compute-report.ts'

const service = {
  /** The report of a trial whose codes are not kept, with the hash of its file. */
  async report(question: ReportQuestion): Promise<WrittenReport> {
    return computeReport(question, await hashOfFile(question.whole))
  },
}

/** SHA-256 of a trial's file, in hex; null where the browser offers none (an address without https). */
async function hashOfFile(whole: WholeTrial): Promise<string | null> {
  const { subtle } = globalThis.crypto
  if (!subtle) return null
  const text = new TextEncoder().encode(writeTrialFile(whole))
  const bytes = new Uint8Array(await subtle.digest('SHA-256', text))
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}

export type ReportService = typeof service

Comlink.expose(service)
