import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { findServer } from '@/hub/find-server.ts'
import { readInvitation } from '@/table/invitation.ts'
import { messagesOf } from '../hub/all-that-came.ts'
import { type StartedHub, startedHub } from '../hub/started-hub.ts'
import { club, clubDay, likes, type Scripted, scriptOf } from './club-day.ts'
import { heldByPhone } from './held-by-phone.ts'
import { codeOf, comesByLink, type Guest, opensTable, realTroubles } from './open-hub-table.ts'
import { outDir } from './server.ts'
import { tellingOf } from './tasting-trial.ts'
import { trialOnDisk } from './trial-on-disk.ts'
import { openBrowser, type Visit, visit } from './visit.ts'

const found = findServer()
if (!found) console.log('The day at a table is passed over: no message server here.')

const whole = clubDay()
const { id: trialId } = whole.trial
const soon = { timeout: 60_000 }
const phone = { viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true }
let browser: Browser
let started: StartedHub

beforeAll(async () => {
  if (!found) return
  browser = await openBrowser()
  started = await startedHub({ app: outDir })
})
afterAll(async () => {
  await browser?.close()
  await started?.end()
})

const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' })

/** A press at the bench, done once it can be undone. */
async function does(page: Page, name: string, said: string): Promise<void> {
  await press(page, name).click()
  await press(page, `Undo “${said}”`).waitFor()
}

/** Brings the dough with a letter to the front. */
const front = (page: Page, letter: string) =>
  page.locator('nav[aria-label^="Doughs"] button', { hasText: letter }).first().click()

async function mixes(page: Page, letter: string): Promise<void> {
  await front(page, letter)
  await does(page, 'Begin', `${letter}: Mix begun`)
  await does(page, 'Done', `${letter}: Mix done`)
}

async function bakes(page: Page, letter: string): Promise<void> {
  await front(page, letter)
  await does(page, `Launch ${letter}`, `${letter}: Into the oven`)
  await does(page, `Pull ${letter}`, `${letter}: Out of the oven`)
}

/** A taster seals the code that stands before them. */
async function seals(page: Page, taster: number): Promise<void> {
  const code = await page.getByRole('heading', { level: 1, name: /^\d{3}$/ }).innerText()
  await press(page, new RegExp(`^Liking: ${likes(code, taster)}(,|$)`)).click()
  await press(page, /^Chew: 3/).click()
  await press(page, `Seal ${code}`).click()
  await press(page, `Seal ${code}`).waitFor({ state: 'detached' })
}

const findingsOf = (of: WholeTrial) => {
  const answer = trialFindings(of, { unsealed: false, resamples: 200 })
  if (!answer.ok) throw new Error('still sealed')
  return JSON.stringify(answer.document)
}

/** Which codes are whose letter or level, the other tasters and what they answered. */
const ofOthers = (taster: number): string[] => [
  ...['"letter"', '"levelId"', '"servingIds"', '"ballots":[', '"tasterOrders"'],
  ...club.flatMap((name, at) => (at === taster ? [] : [`"${name}"`, `club-${at + 1}`])),
]

/**
 * All that a taster’s device was ever sent, opened with its keys, and all that it keeps (databases, storages, caches, page and
 * history): their own codes, and nothing that tells.
 */
async function expectNothingTold({ page, link, frames }: Guest, taster: number): Promise<void> {
  const read = readInvitation(link.split('#/join/')[1] ?? '')
  if (!read.ok) throw new Error(read.reason)
  const came = await messagesOf(frames, read.invitation)
  const code = whole.sessions[0]?.dealt.servings[0]?.code ?? ''
  const said = `${frames.join('')}${came.map(({ opened }) => opened ?? '').join('')}`
  for (const held of [said, await heldByPhone(page)]) {
    expect(held).toContain(code)
    const telling = [...tellingOf(whole), ...ofOthers(taster)]
    expect(telling.filter((each) => held.includes(each))).toEqual([])
  }
}

const recordsOf = ({ events, ballots, sessions, plans }: WholeTrial) =>
  JSON.stringify({ events, ballots, sessions, plans })

/** The same trial with nothing in it but what the script says, each entry at the moment that the log tells. */
function asScripted(there: WholeTrial, script: readonly Scripted[]): WholeTrial {
  const [session] = whole.sessions
  const serving = (code: string) => session?.dealt.servings.find((each) => each.code === code)
  const written = there.events.filter(({ kind }) => kind !== 'allergens-heard')
  const told = script.map((said) => {
    const event = written.find(
      ({ kind, about }) => kind === said.kind && about.id === said.about.id,
    )
    if (!event) throw new Error(`nothing was logged of ${said.kind} ${said.about.id}`)
    return { ...event, ...said } as WholeTrial['events'][number]
  })
  const lasting = written.filter(({ kind }) => ['lock', 'unsealed'].includes(kind))
  const ballots = there.ballots.map((ballot) => {
    const code = session?.dealt.servings.find(({ id }) => id === ballot.about.id)?.code ?? ''
    const taster = Number(ballot.tasterId.slice(-1)) - 1
    const about = { kind: 'serving' as const, id: serving(code)?.id ?? '' }
    return {
      ...{ ...ballot, about },
      answers: [
        { responseId: 'liking', value: likes(code, taster) },
        { responseId: 'chew', value: 3 },
      ],
    }
  })
  expect(written).toHaveLength(told.length + lasting.length)
  const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : 1)
  return { ...there, events: [...told, ...lasting].toSorted(byId), ballots }
}

test.skipIf(!found)(
  'bench, oven, key and three tasters on one day, the hub killed twice, each device offline once, one code on two phones: one trial, and its findings byte for byte',
  async () => {
    const letters = whole.sessions[0]?.batches.map(({ letter }) => letter) ?? []
    const [one = '', other = ''] = letters
    const baker = await visit(browser, started.code.page)
    await opensTable(baker.page, started, whole)
    const links: string[] = []
    for (const name of ['of Bench', 'of Oven', 'of Key', ...club.map((each) => `for ${each}`)])
      links.push(await codeOf(baker.page, `Show code ${name}`))
    // The last link is scanned by a second phone too.
    const came = await Promise.all(
      [...links, ...links.slice(-1)].map((link) => comesByLink(browser, link, phone)),
    )
    const [bench, oven, key, ...phones] = came
    const [twin, ...tasters] = phones.toReversed()
    if (!bench || !oven || !key || !twin) throw new Error('three helpers and four phones')
    tasters.reverse()
    const toTheBench = async ({ page }: Visit) => {
      await page.getByRole('link', { name: 'To the bench' }).click()
      await page.getByRole('region', { name: 'Now' }).waitFor()
    }
    await Promise.all([bench, oven, key].map(toTheBench))
    await press(twin.page, 'I can eat this: begin').waitFor()
    await baker.page
      .getByText('2 devices use this one code: give the other a code of its own.')
      .waitFor()
    await twin.page.context().close()
    const all = [baker, bench, oven, key, ...tasters]
    const offline = async (those: readonly Visit[], off: boolean) => {
      for (const { page } of those) await page.context().setOffline(off)
    }

    await mixes(bench.page, one)
    await bakes(oven.page, one)
    await offline([bench], true)
    await started.hub.messages.kill()
    await mixes(bench.page, other)
    await offline([bench], false)
    await front(oven.page, other)
    await press(oven.page, `Launch ${other}`).waitFor()

    const begins = async ({ page }: Visit, at: number) => {
      await press(page, 'I can eat this: begin').click()
      await seals(page, at)
    }
    await Promise.all(tasters.map(begins))
    await offline([baker, oven, key, ...tasters], true)
    await started.hub.messages.kill()
    await bakes(oven.page, other)
    await Promise.all(tasters.map(({ page }, at) => seals(page, at)))
    await Promise.all(tasters.map(expectNothingTold))
    await offline(all, false)
    for (const { page } of tasters)
      await page.getByText('The baker has all your ballots.').waitFor()

    await baker.page.goto(`${started.code.page}#/trial/${trialId}/tasting`)
    await press(baker.page, 'Unseal the codes').click()
    await press(baker.page, 'Unseal for good').click()
    await baker.page.getByText('The codes are open.').waitFor()
    for (const { page } of tasters) await page.getByText('There is nothing to taste now.').waitFor()
    await Promise.all(tasters.map(expectNothingTold))
    // What a device was still sending as the codes were opened may reach the baker after them.
    const held = async (page: Page) => recordsOf(await trialOnDisk(page))
    for (const { page } of [bench, oven, key])
      await expect
        .poll(async () => (await held(page)) === (await held(baker.page)), soon)
        .toBe(true)
    const there = await trialOnDisk(baker.page)
    const findings = findingsOf(there)
    for (const { page } of [bench, key]) expect(findingsOf(await trialOnDisk(page))).toBe(findings)
    expect(there.ballots).toHaveLength(6)
    const script = letters.flatMap((letter) => Object.values(scriptOf(whole, letter)).flat())
    expect(findingsOf(asScripted(there, script))).toBe(findings)
    expect(realTroubles(all)).toEqual([])
  },
  240_000,
)
