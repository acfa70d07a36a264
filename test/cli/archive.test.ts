import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { strFromU8, unzipSync } from 'fflate'
import { expect, test } from 'vitest'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { runCommand, scratch } from './run-command.ts'
import { samplePath, sampleTrial } from './sample-file.ts'

const has = (program: string, ...words: string[]) => spawnSync(program, words).status === 0
const python = has('python3', '-c', 'import csv')
const r = has('Rscript', '--version')

async function archiveOf(name: string) {
  const out = scratch(`${name}.zip`)
  const { code, err } = await runCommand('archive', samplePath(name), '--out', out)
  expect({ code, err }).toEqual({ code: 0, err: '' })
  const files = unzipSync(readFileSync(out))
  const folder = scratch(`${name}-files`)
  mkdirSync(folder, { recursive: true })
  for (const [file, bytes] of Object.entries(files)) writeFileSync(`${folder}/${file}`, bytes)
  return { files, folder, bytes: readFileSync(out) }
}

test('tables, dictionary, trial file, report and script; the same bytes again', async () => {
  const { files, bytes } = await archiveOf('focaccia-hydration')
  expect(Object.keys(files)).toEqual([
    ...['README.txt', 'levels.csv', 'formula.csv', 'method.csv', 'weights.csv', 'log.csv'],
    ...['ballots.csv', 'observations.csv', 'dictionary.csv', 'main-model.R'],
    ...['report.html', 'report.md', 'trial.json'],
  ])
  expect((await archiveOf('focaccia-hydration')).bytes.equals(bytes)).toBe(true)
  const text = (name: string) => strFromU8(files[name] ?? new Uint8Array())
  const told = text('dictionary.csv')
  for (const file of ['levels.csv', 'log.csv', 'observations.csv'])
    for (const column of (text(file).split('\r\n')[0] ?? '').split(','))
      expect(told).toMatch(new RegExp(`^${file},.*,${column},`, 'm'))
})

test.skipIf(!python)(
  'an independent reader of CSV finds 120 scores and every row as wide as its head',
  async () => {
    const { folder } = await archiveOf('focaccia-hydration')
    // Python's own csv module, strict: it raises on a stray quote.
    const script = `
import csv, glob, json, os, sys
told = {}
for path in sorted(glob.glob(sys.argv[1] + "/*.csv")):
    with open(path, newline="", encoding="utf-8") as file:
        rows = list(csv.reader(file, strict=True))
    told[os.path.basename(path)] = [len(rows) - 1, sorted({len(row) for row in rows})]
    if path.endswith("observations.csv"):
        head = rows[0]
        main = [row for row in rows[1:] if row[head.index("main")] == "1"]
        told["main"] = len([float(row[head.index("value")]) for row in main])
print(json.dumps(told))
`
    const read = spawnSync('python3', ['-c', script, folder], { encoding: 'utf8' })
    expect(read.stderr).toBe('')
    const told = JSON.parse(read.stdout)
    // 3 sessions × 8 tasters × 5 levels.
    expect(told.main).toBe(120)
    const { main: _, ...tables } = told as Record<string, [number, number[]]>
    expect(Object.keys(tables)).toHaveLength(8)
    for (const [file, [rows, widths]] of Object.entries(tables))
      expect([file, rows > 0, widths.length]).toEqual([file, true, 1])
  },
)

test.skipIf(!r)('the script in R computes the main model again', async () => {
  const { folder } = await archiveOf('focaccia-hydration')
  const run = spawnSync('Rscript', ['main-model.R'], { cwd: folder, encoding: 'utf8' })
  const answer = trialFindings(sampleTrial('focaccia-hydration'), {
    unsealed: false,
    resamples: null,
  })
  const rung = answer.ok ? answer.document.responses[0]?.factor : null
  if (!rung || !('f' in rung)) throw new Error('no rung')
  expect(run.stdout).toContain(rung.f.toPrecision(5))
})

test('the report names the hash of the data, and comes again byte for byte', async () => {
  const { files } = await archiveOf('focaccia-hydration')
  // By Node's own hash of the file that stands in the archive.
  const hash = createHash('sha256')
    .update(files['trial.json'] ?? '')
    .digest('hex')
  const outs = ['one.html', 'two.html'].map((name) => scratch(name))
  for (const out of outs) await runCommand('report', samplePath('focaccia-hydration'), '--out', out)
  const [one, two] = outs.map((out) => readFileSync(out, 'utf8'))
  expect(one).toContain(`SHA-256 ${hash}`)
  expect(two).toBe(one)
})

test('with the folder of pictures the report holds them by level and moment, and comes again from what the archive holds', async () => {
  const whole = sampleTrial('focaccia-hydration')
  const [session] = whole.sessions
  const doughs = session?.batches.slice(0, 2) ?? []
  const last = whole.events.filter(({ sessionId }) => sessionId === session?.id).at(-1)
  if (!last || doughs.length < 2) throw new Error('the sample has a session with two doughs')
  const photos = doughs.map((_, index) => ({
    ...{ id: `picture-${index}`, trialId: whole.trial.id, at: last.at, mediaType: 'image/png' },
    ...{ widthPixels: 1, heightPixels: 1 },
  }))
  const events = doughs.map(({ id }, index) => ({
    ...{ id: `shot-${index}`, trialId: whole.trial.id, sessionId: last.sessionId, zone: last.zone },
    ...{ device: last.device, count: 100_000 + index, at: last.at, kind: 'photo' },
    ...{ about: { kind: 'batch', id }, photoId: `picture-${index}`, widthMillimetres: 120 },
  }))
  const file = scratch('with-photos.json')
  const text = JSON.parse(readFileSync(samplePath('focaccia-hydration'), 'utf8'))
  const sorted = <Each extends { id: string }>(list: Each[]) =>
    list.toSorted((one, other) => (one.id < other.id ? -1 : 1))
  writeFileSync(
    file,
    JSON.stringify({ ...text, photos, events: sorted([...text.events, ...events]) }),
  )
  const folder = scratch('pictures')
  mkdirSync(folder, { recursive: true })
  const bytes = [Buffer.from([137, 80, 1]), Buffer.from([137, 80, 2])]
  for (const [index, each] of bytes.entries()) writeFileSync(`${folder}/picture-${index}.png`, each)
  const zip = scratch('with-photos.zip')
  const made = await runCommand('archive', file, '--photos', folder, '--out', zip)
  expect(made).toMatchObject({ code: 0, err: '' })
  const files = unzipSync(readFileSync(zip))
  const html = strFromU8(files['report.html'] ?? new Uint8Array())
  for (const [index, each] of bytes.entries()) {
    expect(files[`photos/picture-${index}.png`]).toEqual(new Uint8Array(each))
    expect(html).toContain(`src="data:image/png;base64,${each.toString('base64')}"`)
    expect(strFromU8(files['report.md'] ?? new Uint8Array())).toContain(
      `(photos/picture-${index}.png)`,
    )
  }
  expect(html).toContain('All at one scale: the bar is 5 cm.')
  const [trialFile, out] = [scratch('again.json'), scratch('again.html')]
  writeFileSync(trialFile, files['trial.json'] ?? '')
  await runCommand('report', trialFile, '--photos', folder, '--out', out)
  expect(readFileSync(out, 'utf8')).toBe(html)
  const lost = await runCommand('report', trialFile, '--photos', `${folder}/none`, '--out', out)
  expect(lost.err).toContain('there is no such folder')
})

test('where it cannot be written it says why', async () => {
  const { err } = await runCommand(
    'archive',
    samplePath('focaccia-hydration'),
    '--out',
    '/no-such-folder/x.zip',
  )
  expect(err).toContain('there is no such folder')
  expect((await runCommand('archive', samplePath('focaccia-hydration'))).err).toContain(
    '--out OUT.zip',
  )
})
