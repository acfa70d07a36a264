import { expect, test } from 'vitest'
import { isTable, layDownTable, longestKept, tableText } from '@/app/services/scores-draft.ts'

test.each([
  ['scores.csv', '', true],
  ['SCORES.TSV', '', true],
  ['scores.txt', 'text/plain', true],
  ['scores', 'text/csv', true],
  ['focaccia.evenhand.json', 'application/json', false],
  ['backup.zip', 'application/zip', false],
])('%s (%s)', (name, type, expected) => {
  expect(isTable({ name, type })).toBe(expected)
})

test('a table is laid down with its name; of one too long to keep only the name', async () => {
  const kept: [string, Record<string, string>][] = []
  const notebook = {
    keepDraft: async (key: string, values: Record<string, string>) => {
      kept.push([key, values])
    },
  }
  await layDownTable(notebook, new File(['level,y\n1,2\n'], 'a.csv'))
  await layDownTable(notebook, new File(['x'.repeat(longestKept + 1)], 'b.csv'))
  expect(kept).toEqual([
    ['scores', { name: 'a.csv', text: 'level,y\n1,2\n' }],
    ['scores', { name: 'b.csv' }],
  ])
})

test('UTF-16 with its mark is read as spreadsheets write it', async () => {
  // FF FE, then h and ä, two bytes each, the lower first
  const bytes = Uint8Array.of(0xff, 0xfe, 0x68, 0, 0xe4, 0)
  expect(await tableText(new Blob([bytes]))).toBe('hä')
})
