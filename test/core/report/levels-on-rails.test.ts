import fc from 'fast-check'
import { expect, test } from 'vitest'
import { nextSteps } from '@/core/findings/judged/next-steps.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { chartSvg } from '@/core/report/chart-svg.ts'
import { lettersOf } from '@/core/report/letters-of.ts'
import { onScreen } from '@/core/report/on-screen.ts'
import { reportDocument } from '@/core/report/report-document.ts'
import { reportHtml } from '@/core/report/report-html.ts'
import { pictureStyle } from '@/core/report/report-style.ts'
import { chartBlock } from '@/core/report/result-pictures.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import { sampleTrial } from '../findings/sample-trial.ts'

const focaccia = sampleTrial('focaccia-hydration')

/** The trial with these of its sessions alone, in this order. */
function withSessions(whole: WholeTrial, sessions: WholeTrial['sessions']): WholeTrial {
  const kept = new Set(sessions.map(({ id }) => id))
  const [first] = sessions
  return {
    ...whole,
    sessions: sessions.map((session) => ({
      ...session,
      plannedSessions: sessions.length,
      // The same letters each time are no reason to show them: they were dealt anew and may have differed.
      dealt: { ...session.dealt, letters: first?.dealt.letters ?? [] },
    })),
    events: whole.events.filter(({ sessionId }) => sessionId === null || kept.has(sessionId)),
    ballots: whole.ballots.filter(({ sessionId }) => kept.has(sessionId)),
  }
}

test('letters belong to a session: over several, whichever they are and whatever was dealt, there are none', () => {
  fc.assert(
    fc.property(fc.shuffledSubarray(focaccia.sessions, { minLength: 1 }), (sessions) => {
      const letters = lettersOf(withSessions(focaccia, sessions))
      expect(letters.size).toBe(sessions.length === 1 ? sessions[0]?.dealt.letters.length : 0)
    }),
    { numRuns: 40 },
  )
})

test('on a screen in the dark a level has its dark paint, in the file its light one', () => {
  const found = trialFindings(focaccia, { unsealed: true, resamples: null })
  const [main] = found.ok ? found.document.responses : []
  if (!found.ok || !main) throw new Error('the sample is findings')
  const { document: findings, scores } = found
  const block = chartBlock(
    { scores, findings, curves: [], letters: new Map(), nameOf: (id) => id },
    ...([main, 0, 'factor'] as const),
  )
  const [light] = [...block.paints.values()]
  const [dark] = [...block.darkPaints.values()]
  expect(light?.fill).not.toBe(dark?.fill)
  expect(chartSvg(onScreen(block), 'c')).toContain(`light-dark(${light?.fill}, ${dark?.fill})`)
  expect(chartSvg(block, 'c')).not.toContain('light-dark')
})

function htmlOf(whole: WholeTrial): string {
  const found = trialFindings(whole, { unsealed: true, resamples: null })
  if (!found.ok) throw new Error(found.reason)
  const report = reportDocument({
    ...{ whole, scores: found.scores, findings: found.document, version: '0', clock: civilTime },
    ...{ next: nextSteps(found.document, { toMend: 0 }), unsealed: true },
  })
  if (!report.ok) throw new Error(report.reason)
  return reportHtml(report.document)
}

/** The words on every tab of a report's rails, and the names of its pairs. */
function railWords(whole: WholeTrial): string[] {
  return [...htmlOf(whole).matchAll(/class="(?:tab-text|name)"[^>]*>([^<]*)</g)].map(
    ([, text = '']) => text,
  )
}

test('a report of one session names letter and value on its rails, one of several the value alone', () => {
  const several = railWords(focaccia)
  expect(several.length).toBeGreaterThan(0)
  for (const text of several) expect(text).toMatch(/^\d/)
  const one = railWords(withSessions(focaccia, focaccia.sessions.slice(0, 1)))
  expect(one.some((text) => /^[A-Z] \d/.test(text))).toBe(true)
  // Where a tab has no room for both, the value stands: a letter alone says nothing to who was not there.
  for (const text of one) expect(text).not.toMatch(/^[A-Z]$/)
})

test('without colour a level is told by the strokes of its foot, one for the lowest, and they come on paper alone', () => {
  const [svg = ''] = /<svg[^>]*role="img"[\s\S]*?<\/svg>/.exec(htmlOf(focaccia)) ?? []
  const drawn = [...svg.matchAll(/<path\b[^>]*>/g)].filter(([path]) => path.includes('"strokes"'))
  const counted = drawn.map(([path]) => /\bd="([^"]+)"/.exec(path)?.[1]?.match(/M/g)?.length)
  expect(counted).toEqual([1, 2, 3, 4, 5])
  const [shown = '', onPaper = ''] = pictureStyle.split('@media print{')
  expect(shown).toContain('.strokes{display:none')
  expect(onPaper).toContain('.strokes{display:inline}')
})
