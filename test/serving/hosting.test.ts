import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { headersWith } from '@/serving/content-policy.ts'

/** What only opens or closes a block of some host. */
const frames = new Set(['header {', '}', '/*'])

/** One header in the form of Caddy, nginx, Apache or a file `_headers`. */
const headerLine =
  /^(?:add_header |Header always set )?([A-Z][\w-]+):? (?:"([^"]*)"|([^"]*?))(?: always)?;?$/

/** The headers that a block of the page gives; a line that is none is kept as it stands, so that it is seen. */
function headersIn(block: string): Record<string, string> {
  const lines = block.split('\n').map((line) => line.trim())
  return Object.fromEntries(
    lines
      .filter((line) => line !== '' && !frames.has(line))
      .map((line) => {
        const [, name = line, quoted, bare] = headerLine.exec(line) ?? []
        return [name, quoted ?? bare ?? 'no header']
      }),
  )
}

const page = readFileSync('docs/hosting.md', 'utf8')
const blocks = [...page.matchAll(/^(.+):\n\n```\n([\s\S]*?)```$/gm)].map(
  ([, host = '', block = '']) => ({ host, block }),
)

test('every block of docs/hosting.md is read', () => {
  expect(blocks).toHaveLength(4)
  expect(page.match(/^```/gm)).toHaveLength(8)
})

test.each(blocks)('$host says what `npm start` says', ({ block }) => {
  expect(headersIn(block)).toEqual(headersWith(''))
})

test('a header that is missing, changed or in another form is noticed', () => {
  const [{ block = '' } = {}] = blocks
  for (const changed of [
    block.replace('nosniff', 'sniff'),
    block.replace(/^.*Referrer.*$/m, ''),
    block.replace("'none'", "'self'"),
    block.replace('X-Content', 'x content'),
  ])
    expect(headersIn(changed)).not.toEqual(headersWith(''))
})
