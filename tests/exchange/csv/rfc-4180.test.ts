import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fromSafeCell, toSafeCell } from '#exchange/csv/formula'
import { parseRecords } from '#exchange/csv/parse-records'
import { readRows } from '#exchange/csv/read-rows'
import { guessSeparator } from '#exchange/csv/separator'
import { writeCsv } from '#exchange/csv/write-csv'

const cells = (text: string, separator = ',') =>
  parseRecords(text, separator).records.map((record) => record.cells)

// Source: RFC 4180 (October 2005), section 2, rules 1 to 7 with their own examples.
describe('RFC 4180, section 2', () => {
  it.each([
    [
      '1: each record on a line',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '2: the last line break may be missing',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['4: spaces are part of a field', 'aaa, bbb ,ccc', [['aaa', ' bbb ', 'ccc']]],
    [
      '5: fields may stand in quotes',
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '6: line breaks in quotes',
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['7: a quote in quotes is doubled', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('rule %s', (_rule, text, expected) => {
    expect(cells(text)).toEqual(expected)
  })

  it('is kept by what is written: CRLF after each record, quotes where they must be and doubled', () => {
    const rows = [
      ['name', 'note'],
      ['b"bb', 'b\r\nbb'],
      ['a,b', ' c '],
    ]
    expect(writeCsv(rows)).toBe('\uFEFFname,note\r\n"b""bb","b\r\nbb"\r\n"a,b"," c "\r\n')
  })

  it('gives back any cells that were written', () => {
    const text = fc.string({ unit: 'binary', maxLength: 12 }).filter((s) => !s.startsWith('\uFEFF'))
    const table = fc.array(fc.array(text, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 })
    fc.assert(
      fc.property(table, (rows) => {
        const read = cells(writeCsv(rows))
        expect(read.map((row) => row.map(fromSafeCell))).toEqual(rows)
      }),
    )
  }, 30_000)
})

describe('rows of a text', () => {
  it.each(['\r', '\n', '\r\n'])(
    'are told apart by any line break (%j), with the line each begins on',
    (br) => {
      const text = ['name;day', `"O'Brien-${br}Łukasz";1`, '', ';;', 'Ann;2', ''].join(br)
      const read = readRows(text, null)
      expect(read.ok && read.value.rows).toEqual([
        { line: 1, cells: ['name', 'day'] },
        { line: 2, cells: ["O'Brien- Łukasz", '1'] },
        { line: 6, cells: ['Ann', '2'] },
      ])
    },
  )

  it('may have quotes inside a cell without quotes', () => {
    expect(cells('Tom "TJ" Jones,7')).toEqual([['Tom "TJ" Jones', '7']])
  })

  it('are refused with the line when a quote is never closed', () => {
    const read = readRows('a,b\nc,"d\ne,f\n', null)
    expect(read.ok ? null : read.reasons).toEqual([expect.objectContaining({ path: 'line 2' })])
  })

  it('are refused with the line when a cell holds a whole file', () => {
    const rows = readRows(`Name,Code\nAnn,1\n${'x'.repeat(5000)},2`, null)
    expect(rows).toMatchObject({ ok: false, reasons: [{ path: 'line 3' }] })
  })

  it('are refused when there are more than can be read at once', () => {
    expect(readRows('a,b\n'.repeat(20_001), ',').ok).toBe(false)
  })
})

describe('the separator', () => {
  it.each([
    ['name,shirt\nAnn,1\nBo,2', ','],
    ['name;shirt\nAnn;1\nBo;2', ';'],
    ['name\tshirt\nAnn\t1\nBo\t2', '\t'],
    ['"Ash, Ann";1\n"Birch, Bo";2', ';'],
    ['Ash, Ann;1\nBirch, Bo;2', ';'],
    ['Ash, Ann\tx\nBirch, Bo\tx', '\t'],
    ['Ash, Ann\nBirch, Bo\n', ';'],
    ['Our squad\n\nname,shirt,from\nAnn,1,2026-09-01', ','],
    ['sep=;\nname;shirt\nAnn;1', ';'],
    ['"a;b";c;d\n"e;f;g";h;i', ';'],
    ['1,5;2\n2,5;3\n', ';'],
  ])('of %j is %j', (text, expected) => {
    expect(guessSeparator(text)).toBe(expected)
  })

  it('written in a first line of its own is obeyed, and that line is no row', () => {
    const read = readRows('sep=;\r\nname;shirt\r\nAnn;1', null)
    expect(read.ok && read.value.rows.map((row) => row.cells)).toEqual([
      ['name', 'shirt'],
      ['Ann', '1'],
    ])
  })
})

// Source: OWASP ASVS 5.0.0, requirement 1.2.10 (= + - @ tab and NUL at the beginning of a field, escaped by a single
// quote); the fullwidth forms and CR, LF are from the OWASP page on CSV injection, from memory.
describe('formula characters', () => {
  it.each(['=1+1', '+1', '-Ann', '@sum', '\tx', '\rx', '\0x', '＝1', '＋1', '－1', '＠x'])(
    '%j gets an apostrophe, and loses it again',
    (text) => {
      expect(toSafeCell(text)).toBe(`'${text}`)
      expect(fromSafeCell(toSafeCell(text))).toBe(text)
      expect(writeCsv([[text, 'x']])).toMatch(/^\uFEFF"?'/)
    },
  )

  it.each(["'t Hooft", "O'Brien-Łukasz", 'Ann-Marie', "''", ''])('%j stays as it is both ways', (text) => {
    expect(toSafeCell(text)).toBe(text)
    expect(fromSafeCell(text)).toBe(text)
  })

  it('come back whatever apostrophes stood before them', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom("'", '=', '-', 'a', '＠', '\t') }), (text) => {
        expect(fromSafeCell(toSafeCell(text))).toBe(text)
        expect(toSafeCell(text)).not.toMatch(/^[=+\-@\t\r＝＋－＠]/)
      }),
    )
  })

  it('are no matter in numbers: a minus sign of ours stays', () => {
    expect(writeCsv([[-120.5, 3]])).toBe('\uFEFF-120.5,3\r\n')
  })
})
