import 'fake-indexeddb/auto'
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import { ownView } from '@/app/own/own-state.ts'
import { PaperBallot } from '@/app/tasting/seat/paper-ballot.tsx'
import { coveredTitle } from '@/core/seal/covered-title.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { refreshText } from '@/core/wording/tasting/before-first-text.ts'
import { readSlip } from '@/slip/ballot-slip.ts'
import { bytesOfLinkText } from '@/slip/link-text.ts'
import { giveOut } from '@/slip-host/give-out.ts'
import { tasterNames, tastingTrial, tellingOf } from '../../journeys/tasting-trial.ts'
import { freshName, notebookWithTrial } from '../../notebook/notebook-of.ts'

const whole = tastingTrial({
  tellApart: { test: 'triangle', levelIds: ['level-1', 'level-4'] },
  warmUpPiece: true,
  atTable: {
    ...{ again: ['level-2'], restSeconds: 45, asksUsual: true },
    ranking: { ties: true, asks: 'Crispest first, please.' },
  },
})
const [session] = whole.sessions
if (!session) throw new Error('a session')
const tasters = whole.plans[0]?.tasters.map(({ tasterId }) => tasterId) ?? []
const letters = session.dealt.letters.map(({ letter }) => letter)
const { seed } = session.dealt
/** Levels, weights, ids, the seed the deal was drawn from, and the question, which names two levels. */
const telling = [...tellingOf(whole), String(seed), '71.7', 'really better', 'hydration']

const toldBy = (text: string) => telling.filter((one) => text.includes(one))
/** A letter of a dough on its own, as a word. */
const lettersIn = (text: string) =>
  letters.filter((letter) => new RegExp(`\\b${letter}\\b`).test(text))
const ordersOf = (tasterId: string) =>
  (session.dealt.tasterOrders.find((each) => each.tasterId === tasterId)?.servingIds ?? []).map(
    (id) => session.dealt.servings.find((each) => each.id === id)?.code ?? '',
  )

describe('what a taster is given tells nothing, by every way', () => {
  test('the view that their screen is made of', () => {
    for (const tasterId of tasters) {
      const text = JSON.stringify(blindView(whole, session.id, tasterId))
      expect(toldBy(text)).toEqual([])
      expect(lettersIn(text)).toEqual([])
    }
  })

  test('what the ranking page is made of, on the device and on an own phone: rising codes and the words, no more', async () => {
    const notebook = await notebookWithTrial(freshName(), whole)
    let drawn = 40_000
    const given = { notebook, now: 1_790_000_000_000, draw: () => (drawn += 7919) }
    for (const tasterId of tasters) {
      const address = await giveOut(given, whole, session.id, tasterId)
      const read = readSlip(bytesOfLinkText(address) ?? new Uint8Array())
      if (!read.ok) throw new Error(read.reason)
      const rising = ordersOf(tasterId).toSorted((one, other) => Number(one) - Number(other))
      for (const { ranking } of [blindView(whole, session.id, tasterId), ownView(read.slip, {})])
        expect(ranking).toEqual({
          ...{ ties: true, asks: 'Crispest first, please.', done: false },
          // The hidden duplicate stands among them like any other.
          codes: rising,
        })
    }
  })

  test('the paper, page by page', () => {
    for (const [at, tasterId] of tasters.entries()) {
      const view = blindView(whole, session.id, tasterId)
      const paper = renderToStaticMarkup(
        createElement(PaperBallot, {
          name: tasterNames[at] ?? '',
          view,
          contains: 'Contains milk.',
        }),
      )
        .replace(/class="[^"]*"/g, '')
        .replace(refreshText, '')
      expect(toldBy(paper)).toEqual([])
      expect(lettersIn(paper)).toEqual([])
      expect(paper).toContain('Crispest first, please.')
      // Their own order and nobody else's.
      const codes = [...paper.matchAll(/<h2[^>]*>(\d{3})<\/h2>/g)].map(([, code]) => code)
      expect(codes).toEqual(ordersOf(tasterId))
    }
  })

  test('the slip of a phone: its bytes, what they unpack to, and its address', async () => {
    const notebook = await notebookWithTrial(freshName(), whole)
    let drawn = 40_000
    const given = { notebook, now: 1_790_000_000_000, draw: () => (drawn += 7919) }
    for (const tasterId of [...tasters, null]) {
      const address = await giveOut(given, whole, session.id, tasterId)
      const bytes = bytesOfLinkText(address) ?? new Uint8Array()
      const read = readSlip(bytes)
      if (!read.ok) throw new Error(read.reason)
      const { key: _, ...slip } = read.slip
      for (const text of [address, Buffer.from(bytes).toString('latin1'), JSON.stringify(slip)])
        expect(toldBy(text).filter((one) => one.length > 2)).toEqual([])
      expect(lettersIn(JSON.stringify(slip))).toEqual([])
      expect(slip.ranking).toEqual({ ties: true, asks: 'Crispest first, please.' })
      const codes = slip.codes
      // The slip for everybody has codes in rising order: it tells nobody's.
      expect(codes).toEqual(
        tasterId === null
          ? codes.toSorted((one, other) => one.localeCompare(other))
          : ordersOf(tasterId),
      )
    }
  })

  test('the title over every place while the tasting is sealed', () => {
    const plan = whole.plans[0]
    expect(toldBy(coveredTitle(plan?.question ?? '', plan?.levels ?? []))).toEqual([])
  })
})
