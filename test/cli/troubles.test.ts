import { describe, expect, test } from 'vitest'
import { runCommand, scratch } from './run-command.ts'
import { sampleJson, samplePath } from './sample-file.ts'

const focaccia = samplePath('focaccia-hydration')

/** The focaccia sample with something broken in it. */
function broken(name: string, spoil: (document: ReturnType<typeof sampleJson>) => void): string {
  const document = sampleJson('focaccia-hydration')
  spoil(document)
  return scratch(name, JSON.stringify(document))
}

const sealed = () =>
  broken('sealed.json', (document) => {
    document.events = document.events.filter(({ kind }: { kind: string }) => kind !== 'unsealed')
  })

/** Every trouble: exit code 1, nothing on the answer's stream, and the words given on the other. */
async function refused(words: string[], ...said: string[]) {
  const { code, out, err } = await runCommand(...words)
  expect(code).toBe(1)
  expect(out).toBe('')
  for (const part of said) expect(err).toContain(part)
}

describe('a file that cannot be read is refused by name, place and mend', () => {
  test.each(['check', 'weigh', 'findings'])('%s: no such file, and a folder', async (verb) => {
    await refused([verb, 'no/such.json'], 'no/such.json: there is no such file', 'Check the path')
    await refused([verb, 'trials'], 'trials: this is a folder', 'Name a file in it')
  })

  test('bad JSON is placed by line and column', async () => {
    const file = scratch('torn.json', '{\n  "format": "evenhand-trial",\n  "version": }')
    await refused(['check', file], `${file}: Line 3, column 14`, 'export it again')
  })

  test('a bad shape is placed by JSON Pointer, all places at once', async () => {
    const file = broken('shape.json', (document) => {
      document.plans[0].question = 5
      document.plans[0].levels[1].value = 'wet'
    })
    await refused(['check', file], 'At /plans/0/question:', 'At /plans/0/levels/1/value:')
  })

  test('a reference to nothing is placed by JSON Pointer', async () => {
    const file = broken('reference.json', (document) => {
      document.events[3].sessionId = 'nobody'
    })
    await refused(['check', file], 'At /events/3/sessionId:', 'nobody')
  })

  test('a file of something else, and one of a newer version', async () => {
    const other = scratch('other.json', '{ "rows": [] }')
    await refused(['check', other], `${other}: This is not a trial file`)
    const newer = broken('newer.json', (document) => {
      document.version = 99
    })
    await refused(['check', newer], 'version 99', 'Update the program')
  })
})

describe('a sealed trial gives no level away', () => {
  test.each([['weigh'], ['findings'], ['report', '--out', scratch('sealed.html')]])(
    '%s answers still-sealed',
    async (verb, ...options) => {
      await refused([verb, sealed(), ...options], 'still-sealed', '--unseal')
    },
  )

  test('--unseal looks, and check answers without a level', async () => {
    const { code, out } = await runCommand('findings', sealed(), '--unseal')
    expect(code).toBe(0)
    expect(out).toContain('74 %')
    const file = sealed()
    const checked = await runCommand('check', file)
    expect(checked.code).toBe(0)
    const said = checked.out.replaceAll(file, '')
    expect(said).toContain('sealed')
    for (const level of [66, 70, 74, 78, 82]) expect(said).not.toContain(String(level))
  })
})

describe('a command that makes no sense is refused with what would', () => {
  test.each([
    [['chek', focaccia], 'The verbs are check, weigh'],
    [['check'], 'name a file'],
    [['check', focaccia, focaccia], 'one file at a time'],
    [['check', focaccia, '--loud'], 'check --help lists the options'],
    [['weigh', focaccia, '--scale', '0'], 'such as 0.1:2000'],
    [['findings', focaccia, '--margin', '1'], 'Leave it out'],
    [['findings', 'scores.csv', '--margin', 'much'], 'no such file'],
    [['report', focaccia, '--out', 'out.pdf'], '--out OUT.html'],
    [['report', focaccia, '--out', 'no/such/folder/out.html'], 'Name a folder that is there'],
  ])('%j', async (words, said) => {
    await refused(words, said)
  })

  test('options of a table that cannot be meant', async () => {
    const file = scratch('small.csv', 'level,taster,y\n60,a,1\n70,a,2\n')
    await refused(['findings', file, '--margin', 'much'], '--margin much', 'above zero')
    await refused(['findings', file, '--unit', 'dough'], 'batch or piece')
    await refused(['findings', file, '--as', 'cook=taster'], '--as cook=taster', 'one of session')
    await refused(['findings', file, '--as', 'taster=who'], 'There is no such column')
    await refused(['findings', file, '--control', '65'], 'is no level')
    await refused(['findings', file, '--main', 'x'], '--main x', 'no such response. It has y.')
    await refused(['findings', file, '--better', 'more'], 'higher, lower or neither')
  })
})

test('a shape or a reference that is wrong says what to do once, below', async () => {
  const file = broken('mend.json', (document) => {
    document.plans[0].question = 7
    document.plans[0].device = 8
  })
  const { err } = await runCommand('check', file)
  expect(err.match(/Mend each place named/g)).toHaveLength(1)
})

test('--version names the version of the program and of the data', async () => {
  expect((await runCommand('--version')).out).toBe('Evenhand 0.0.0, data version 3\n')
})

test('every verb has a page of help that names each of its options, within the page', async () => {
  const general = await runCommand('--help')
  const verbs = [...general.out.matchAll(/^ {2}(\w+) FILE/gm)].map((match) => match[1] ?? '')
  expect(verbs).toEqual(expect.arrayContaining(['check', 'weigh', 'findings', 'report']))
  for (const verb of verbs) {
    const { code, out } = await runCommand(verb, '--help')
    expect(code).toBe(0)
    expect(out).toContain(`${verb} FILE`)
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(80)
  }
})
