import { describe, expect, it } from 'vitest'
import { csvNumber } from '@/core/findings/table/csv-number.ts'
import { type CsvOptions, scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'

function scores(text: string, options: CsvOptions = {}) {
  const read = scoresOfCsv(text, options)
  if (!read.ok) throw new Error(JSON.stringify(read.troubles))
  return read.scores
}

function troubles(text: string, options: CsvOptions = {}) {
  const read = scoresOfCsv(text, options)
  return read.ok ? [] : read.troubles
}

describe('scores from a spreadsheet', () => {
  const tidy =
    'session,flight,level,taster,liking\n1,1,60,a,6.5\n1,1,70,a,7\n1,1,60,b,5\n1,1,70,b,\n'

  it('reads a tidy table and keeps a blank as missing', () => {
    const table = scores(tidy)
    expect(table.levels.map(({ name }) => name)).toEqual([60, 70])
    expect(table.responses.map(({ name }) => name)).toEqual(['liking'])
    expect(table.rows.map(({ values }) => values[0])).toEqual([6.5, 7, 5, null])
    expect(table.factor).toMatchObject({ kind: 'measured', ordered: true, splitsAt: null })
    expect(table.unit).toBe('batch')
  })

  it.each([
    ['semicolons and decimal commas', tidy.replaceAll(',', ';').replaceAll('.', ',')],
    ['tabs', tidy.replaceAll(',', '\t')],
    ['a byte order mark and CRLF', `\uFEFF${tidy.replaceAll('\n', '\r\n')}`],
    ['headings in capitals', tidy.replace('level', 'LEVEL').replace('taster', ' Taster ')],
    ['quoted cells', tidy.replace('6.5', '"6,5"')],
    ['blank lines', `\n${tidy}\n\n`],
  ])('reads the same from %s', (_, text) => {
    const plain = scores(tidy)
    const other = scores(text)
    expect(other.rows).toEqual(plain.rows)
    expect(other.levels).toEqual(plain.levels)
  })

  it('takes assigned columns and leaves ignored and wordy ones out', () => {
    const table = scores('day,water,who,liking,age,note\n1,60,a,5,3,good\n1,70,a,6,4,\n', {
      as: [
        { role: 'session', column: 'Day' },
        { role: 'level', column: 'water' },
        { role: 'taster', column: 'who' },
        { role: 'ignore', column: 'age' },
      ],
    })
    expect(table.responses.map(({ name }) => name)).toEqual(['liking'])
    expect(table.factor.name).toBe('water')
  })

  it('keeps a choice in the order of the file, and levels in that of their value', () => {
    const choice = scores('level,liking\nstone,5\nsteel,6\n')
    expect(choice.levels.map(({ name }) => name)).toEqual(['stone', 'steel'])
    expect(choice.factor).toMatchObject({ kind: 'choice', ordered: false })
    const measured = scores('level,liking\n0,5\n-5,6\n2.5,7\n10,1\n')
    expect(measured.levels.map(({ name }) => name)).toEqual([-5, 0, 2.5, 10])
  })

  it('names a batch by session and letter', () => {
    const table = scores('session,batch,level,taster,y\n1,A,60,a,1\n2,A,70,a,2\n1,A,60,b,1\n')
    const batches = table.rows.map(({ batch }) => batch)
    expect(batches[0]).toBe(batches[2])
    expect(batches[0]).not.toBe(batches[1])
  })

  it('takes the baker’s own measurements beside the scores: rows without a taster', () => {
    const text =
      'session,flight,level,piece,taster,liking,loss\n1,1,60,p,a,5,\n1,1,60,p,b,6,\n1,1,60,p,,,11.5\n1,2,60,q,,,12\n'
    const table = scores(text)
    expect(table.rows.map(({ taster, values }) => [taster, ...values])).toEqual([
      ['a', 5, null],
      ['b', 6, null],
      [null, null, 11.5],
      [null, null, 12],
    ])
    // the blank is an oversight where it fills what tasters score
    expect(troubles(`${text}1,1,70,r,,7,\n`)).toEqual([
      { reason: 'taster-missing', row: 6, column: 'taster' },
    ])
  })

  it('takes what was measured of the dough as a whole: a row without taster and flight belongs to no flight', () => {
    const text =
      'session,flight,level,taster,liking,loss\n1,1,60,a,5,\n1,1,60,,,11.5\n1,,60,,,24.8\n'
    expect(new Set(scores(text).rows.map(({ flight }) => flight)).size).toBe(2)
    expect(troubles(`${text}1,,60,b,6,\n`)).toEqual([
      { reason: 'flight-missing', row: 5, column: 'flight' },
    ])
  })

  it('a second row of one session, flight, level and taster is asked about whatever batch or piece it names', () => {
    const head = 'session,flight,batch,piece,level,taster,liking,loss\n'
    const twice = (one: string, other: string) => troubles(`${head}${one}\n${other}\n`)
    const trouble = [
      { reason: 'row-twice', row: 3, column: 'batch', first: 2, count: 1, role: 'replicate' },
    ]
    const byPiece = [{ ...trouble[0], column: 'piece' }]
    expect(twice('1,1,A,p,60,a,5,', '1,1,B,q,60,a,6,')).toEqual(trouble)
    expect(twice('1,1,A,p,60,,,11', '1,1,A,q,60,,,12')).toEqual(byPiece)
    expect(twice('1,,A,,60,,,11', '1,,A,p,60,,,12')).toEqual([
      { reason: 'row-twice', row: 3, column: null, first: 2, count: 1 },
    ])
    // the same table without tasters: one measurement of a level in each flight
    expect(troubles('flight,piece,level,loss\n1,p,60,11\n1,q,60,12\n')).toEqual([
      { reason: 'row-twice', row: 3, column: 'piece', first: 2, count: 1, role: 'replicate' },
    ])
    expect(troubles('flight,piece,level,loss\n1,p,60,11\n2,q,60,12\n')).toEqual([])
  })

  it('places every trouble by row and column, all at once', () => {
    const text =
      'session,level,taster,y\n1,60,a,five\n,60,b,1\n1,,c,1\n1,60,,1\n1,60,d,1\n1,60,d,2\n1,70\n1,80,e,2\n'
    expect(troubles(text)).toEqual([
      { reason: 'unreadable-number', row: 2, column: 'y', text: 'five' },
      { reason: 'session-missing', row: 3, column: 'session' },
      { reason: 'level-missing', row: 4, column: 'level' },
      { reason: 'taster-missing', row: 5, column: 'taster' },
      { reason: 'row-twice', row: 7, column: null, first: 6, count: 1 },
      { reason: 'field-count', row: 8, column: null, expected: 4, found: 2 },
    ])
  })

  it.each([
    ['nothing', '', 'no-text'],
    ['only blanks', ' \n \n', 'no-text'],
    ['a header alone', 'level,y\n', 'no-rows'],
    ['no level', 'taster,y\na,1\n', 'no-level-column'],
    ['no numbers', 'level,note\n60,good\n', 'no-response-column'],
    ['an open quotation mark', 'level,y\n60,"1\n', 'broken-quotes'],
    ['a heading twice', 'level,y,y\n60,1,2\n', 'column-twice'],
    ['a dough with two levels', 'batch,level,y\nA,60,1\nA,70,1\n', 'batch-two-levels'],
    ['a piece with two levels', 'piece,level,y\np,60,1\np,70,1\n', 'piece-two-levels'],
  ])('refuses %s', (_, text, reason) => {
    expect(troubles(text).map((trouble) => trouble.reason)).toContain(reason)
  })

  it('refuses an assignment to no column, a meaning given twice and a control that is no level', () => {
    const text = 'level,a,y\n60,1,1\n70,1,2\n'
    const reasons = (options: CsvOptions) => troubles(text, options).map(({ reason }) => reason)
    expect(reasons({ as: [{ role: 'taster', column: 'who' }] })).toEqual(['no-such-column'])
    const twice: CsvOptions = {
      as: [
        { role: 'level', column: 'a' },
        { role: 'level', column: 'y' },
      ],
    }
    expect(reasons(twice)).toContain('column-twice')
    expect(reasons({ control: 65 })).toEqual(['control-not-a-level'])
    expect(reasons({ control: 60 })).toEqual([])
  })

  it('offers a wide table and converts it when asked', () => {
    const wide = 'taster,session,60 %,65 %,70 %\na,1,5,6,7\nb,1,4,,6\n'
    const read = scoresOfCsv(wide)
    expect(read).toMatchObject({
      ok: false,
      wide: { columns: ['60 %', '65 %', '70 %'], levels: ['60', '65', '70'], unitOfMeasure: '%' },
    })
    const table = scores(wide, { tidyAs: 'liking' })
    expect(table.levels.map(({ name }) => name)).toEqual([60, 65, 70])
    expect(table.factor.unitOfMeasure).toBe('%')
    expect(table.rows.map(({ level, taster, values }) => [level, taster, values[0]])).toEqual([
      [0, 'a', 5],
      [1, 'a', 6],
      [2, 'a', 7],
      [0, 'b', 4],
      [2, 'b', 6],
    ])
  })

  it('offers options of a choice from a wide table under words', () => {
    expect(scoresOfCsv('taster,stone,steel\na,5,6\nb,4,5\n')).toMatchObject({
      ok: false,
      wide: { columns: ['stone', 'steel'], levels: ['stone', 'steel'] },
    })
  })

  it.each([
    ['6.5', 6.5],
    ['6,5', 6.5],
    ['-2', -2],
    ['\u22122', -2],
    ['.5', 0.5],
    ['1e3', 1000],
    ['1.234,5', null],
    ['1 234', null],
    ['', null],
    ['1e999', null],
    ['0x10', null],
    ['Infinity', null],
  ])('reads %s', (text, value) => {
    expect(csvNumber(text)).toBe(value)
  })
})
