import { describe, expect, test } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import { nextSteps } from '@/core/findings/judged/next-steps.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { reportDocument } from '@/core/report/report-document.ts'
import { reportHtml } from '@/core/report/report-html.ts'
import { reportMarkdown } from '@/core/report/report-markdown.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { bakeClubScores } from './bake-club-scores.ts'

const scores = bakeClubScores()
const found = findings(scores, { seed: 7, resamples: null })
const nasty = '<script>alert("x")</script> & [a](b) | # end'

function made(question = 'How wet should our focaccia be?', events = wholeTrialOf().events) {
  const whole = { ...wholeTrialOf(), events }
  const plan = whole.plans[0]
  if (!plan) throw new Error('the trial has a plan')
  plan.question = question
  const report = reportDocument({
    whole,
    scores,
    findings: found,
    next: nextSteps(found, { toMend: 0 }),
    version: '0.1.0',
    clock: civilTime,
    unsealed: false,
  })
  if (!report.ok) throw new Error('the trial is unsealed')
  return report.document
}

/** Tags as a stack: every opened element is closed in its order, attributes are quoted. */
function wellFormed(html: string): boolean {
  const voids = new Set(['meta', '!doctype', 'br', 'img'])
  const stack: string[] = []
  for (const [, slash, name = '', rest = ''] of html
    .replace(/<style>[\s\S]*?<\/style>/, '')
    .matchAll(/<(\/?)([!a-zA-Z][a-zA-Z0-9]*)((?:\s+[^\s=>/]+(?:="[^"]*")?)*\s*\/?)>/g)) {
    if (voids.has(name.toLowerCase()) || rest.endsWith('/')) continue
    if (slash === '') stack.push(name)
    else if (stack.pop() !== name) return false
  }
  return stack.length === 0
}

describe('the report as one HTML file', () => {
  test('is well formed and needs nothing from outside: no link, script, picture or style address', () => {
    const html = reportHtml(made())
    expect(wellFormed(html)).toBe(true)
    expect(html).not.toMatch(/https?:|\/\/|<script|<link|<img|@import|url\((?!#)|\bsrc=|\bhref=/i)
  })

  test('escapes what a person typed, in texts, titles and pictures', () => {
    const html = reportHtml(made(nasty))
    expect(html).not.toContain('<script')
    expect(html).toContain('&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; [a](b) | # end')
    expect(wellFormed(html)).toBe(true)
  })

  test('names the photos that were taken, of what and when, and says where they are kept', () => {
    const whole = wholeTrialOf()
    const taken = whole.events.find(({ kind }) => kind === 'photo')
    if (!taken) throw new Error('the trial has a photo')
    const { appendix } = made()
    const photos = appendix.find(({ id }) => id === 'photos')
    expect(JSON.stringify(photos)).toContain('kept in the notebook')
    const table = photos?.blocks.find((block) => block.kind === 'table')
    expect(table?.kind === 'table' && table.rows).toHaveLength(
      whole.events.filter(({ kind }) => kind === 'photo').length,
    )
  })

  test('shows the pictures that are handed in by level and moment, at one scale; where none is, it says so', () => {
    const address = 'data:image/jpeg;base64,/9j/'
    const html = reportHtml(made(), new Map([['photo-1', address]]))
    expect(wellFormed(html)).toBe(true)
    expect(html).toContain(`<img src="${address}" alt="Photo of`)
    expect(html).toContain('No scale: nobody said how much these pictures show.')
    expect(reportHtml(made())).toContain('The picture is not in this file.')
    const scaled = wholeTrialOf().events.map((event) =>
      event.kind === 'photo' ? { ...event, widthMillimetres: 240 } : event,
    )
    const shown = reportHtml(made(undefined, scaled), new Map([['photo-1', address]]))
    expect(shown).toContain('All at one scale: the bar is 10 cm.')
    // 10 cm of 24 cm is 41.7 % of the column.
    expect(shown).toContain('<div class="bar" style="width:41.7%">10 cm</div>')
  })

  test('says the note that travels with the trial', () => {
    expect(reportHtml(made())).toContain('all data invented')
  })

  test('shows every mean of the factor rung as the findings have it', () => {
    const html = reportHtml(made())
    const factor = found.responses[0]?.factor
    if (!factor || !isPresent(factor)) throw new Error('three sessions answer the factor rung')
    for (const mean of factor.means) {
      const row = new RegExp(`>${mean.level} %</th><td class="fig">([0-9.]+)</td>`, 'g')
      const shown = [...html.matchAll(row)].map(([, text]) => Number(text))
      expect(
        shown.some((value) => Math.abs(value - mean.estimate) < 0.006),
        `${mean.level}`,
      ).toBe(true)
    }
    expect(html).toContain(`<td class="fig">${factor.f.toFixed(2)}</td>`)
  })

  test('gives charts and running text a width that can be read, in boxes that scroll', () => {
    const html = reportHtml(made())
    expect(html).not.toContain('<figure><svg')
    expect(html).toContain('<figure><div class="wide"><svg')
    expect(html).toMatch(/<td class="words">With more than one session/)
    expect(html).toContain('td.words{white-space:normal;min-width:12rem}')
  })

  test('names on a chart its scale, the margin and the best, and says the same in words', () => {
    const html = reportHtml(made())
    const [chart = ''] = /<svg[^>]*role="img"[\s\S]*?<\/svg>/.exec(html) ?? []
    const margin = scores.responses[0]?.margin
    if (margin == null) throw new Error('the table has a margin')
    const [, alt = ''] = /aria-label="([^"]*)"/.exec(chart) ?? []
    expect(chart).toContain(`>${scores.responses[0]?.name}, 1 to 9</text>`)
    expect(chart).toContain(`>± ${margin} margin</text>`)
    expect(alt).toContain(`Your margin, ${margin}.`)
    const [, best] = />(best [^<]*)<\/text>/.exec(chart) ?? []
    expect(best).toBeDefined()
    expect(alt.toLowerCase()).toContain(best)
  })

  test('draws every recorded value of a response as one point', () => {
    const html = reportHtml(made())
    // 5 levels × 8 tasters × 3 sessions: the main response on its page, both responses in the appendix
    const [pages = '', appendix = ''] = html.split('<div class="appendix">')
    expect(pages.match(/class="point"/g)).toHaveLength(120)
    expect(appendix.match(/class="point"/g)).toHaveLength(240)
  })
})

describe('the report as Markdown', () => {
  test('has one heading a section and tables whose rows have the cells of their head', () => {
    const text = reportMarkdown(made())
    expect(text.match(/^## /gm)).toHaveLength(made().pages.length + 1)
    expect(text.match(/^### /gm)).toHaveLength(made().appendix.length)
    for (const table of text.matchAll(/(?:^\|.*\|$\n?)+/gm)) {
      const counts = table[0]
        .trim()
        .split('\n')
        .map((row) => row.replace(/\\\|/g, '').split('|').length)
      expect(new Set(counts).size).toBe(1)
    }
  })

  test('shows the pictures that stand beside it, in a table of the levels', () => {
    const text = reportMarkdown(made(), (id) => `photos/${id}.jpg`)
    expect(text).toMatch(/\| !\[Photo of [^\]]+\]\(photos\/photo-1\.jpg\)/)
    expect(reportMarkdown(made())).not.toContain('photos/')
  })

  test('escapes what a person typed', () => {
    const text = reportMarkdown(made(nasty))
    expect(text).not.toContain('<script')
    expect(text).toContain('\\[a\\](b) \\| # end')
  })
})

test('a sealed trial gives no report', () => {
  const whole = wholeTrialOf()
  whole.events = whole.events.filter(
    (event) => event.kind !== 'unsealed' && event.kind !== 'tasting-closed',
  )
  expect(
    reportDocument({
      ...{ whole, scores, findings: found, next: [] },
      version: '1',
      clock: civilTime,
      unsealed: false,
    }),
  ).toEqual({ ok: false, reason: 'still-sealed' })
})
