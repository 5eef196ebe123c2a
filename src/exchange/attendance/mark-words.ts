import type { MarkMeaning } from '#exchange/attendance/attendance-entry'
import { tidyName } from '#exchange/table/name-form'

/** A cell as a mark: what was written, without the minutes that may stand behind it (`late 10`). */
export type WrittenMark = { readonly key: string; readonly minutes: number | null }

export function readMark(cell: string): WrittenMark {
  const text = tidyName(cell).toLowerCase()
  const timed = /^(\p{L}[\p{L} .]*?)[\s.:(+-]*(\d{1,3})\s*(?:min(?:ute)?s?\.?|m|'|′)?\)?$/u.exec(text)
  return timed ? { key: timed[1]?.trim() ?? text, minutes: Number(timed[2]) } : { key: text, minutes: null }
}

/**
 * What each mark of a file means; null: it cannot be told, a person must say. Marks are weighed together: a lone `x`
 * is here, beside a tick it is away, beside a nought here again. Common practice, no source.
 */
export function guessMarks(keys: Iterable<string>): ReadonlyMap<string, MarkMeaning | null> {
  const all = [...new Set(keys)]
  const meanings = new Map<string, MarkMeaning | null>(all.map((key) => [key, meaningOf(key)]))
  const others = new Set(meanings.values())
  const cross = others.has('here') ? (others.has('away') ? null : 'away') : 'here'
  for (const key of all) {
    if (crosses.includes(key)) meanings.set(key, all.some((k) => rings.includes(k)) ? null : cross)
  }
  return meanings
}

const crosses = ['x', '×', '✕', '✖']
/** Here in some places, away in others. */
const rings = ['o', '○', '◯']

const words: Readonly<Record<MarkMeaning, readonly string[]>> = {
  here: [
    '✓',
    '✔',
    '✔️',
    '☑',
    '✅',
    '1',
    '+',
    '●',
    'y',
    'yes',
    'p',
    'present',
    'here',
    'attended',
    'in',
    'true',
    'ok',
    'j',
    'ja',
    'oui',
    'sí',
    'tak',
    'da',
    'anwesend',
    'présent',
    'presente',
    'aanwezig',
  ],
  late: [
    'l',
    'late',
    'came late',
    'delayed',
    'verspätet',
    'zu spät',
    'en retard',
    'retard',
    'tarde',
    'te laat',
    'spóźniony',
  ],
  left: ['left', 'left early', 'early', 'gone early', 'went early'],
  notPlaying: [
    'inj',
    'inj.',
    'injured',
    'np',
    'not playing',
    'here not playing',
    'here, not playing',
    'here but not playing',
    'watched',
    'watching',
    'sat out',
    'verletzt',
    'blessé',
    'lesionado',
  ],
  out: ['out for today'],
  away: [
    '0',
    '-',
    '–',
    '—',
    '✗',
    '✘',
    '☒',
    '❌',
    'n',
    'no',
    'a',
    'abs',
    'absent',
    'away',
    'not here',
    'missing',
    'false',
    'e',
    'exc',
    'excused',
    'sick',
    'ill',
    'hol',
    'holiday',
    'nein',
    'non',
    'nie',
    'abwesend',
    'krank',
    'entschuldigt',
    'afwezig',
    'ausente',
  ],
  nothing: ['', '?', 'n/a', 'na', '.', '…'],
}

const meaningByWord = new Map(
  (Object.keys(words) as MarkMeaning[]).flatMap((meaning) =>
    words[meaning].map((word) => [word, meaning] as const),
  ),
)

function meaningOf(key: string): MarkMeaning | null {
  return meaningByWord.get(key) ?? null
}
