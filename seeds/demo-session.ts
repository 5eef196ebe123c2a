import type { Day } from '#common/time'
import type { Period, Spell } from '#match/match'
import type { PracticeEvent } from '#practice/event'
import type { RegisterLine } from '#squad/register'
import type { Written } from '#squad/written'
import type { CalendarEntry } from './calendar'
import { demoSquads, leaderOn } from './club'
import { demoDesigns, designId } from './designs'
import { formats } from './formats'
import { demoId } from './ids'

/** A session of the demo club and all that was written of it. */
export type DemoSession = {
  readonly id: string
  readonly key: string
  readonly squadId: string
  readonly kind: 'practice' | 'match'
  readonly day: string
  readonly title: string
  readonly place: string
  readonly startsAt: string
  readonly lengthSeconds: number | null
  readonly periods: readonly Period[]
  readonly designId: string | null
  /** What a practice to come is planned to be about. */
  readonly themeId: string | null
  readonly written: Written
  readonly writtenById: string | null
  /** An instant, ISO 8601. */
  readonly writtenAt: string | null
  readonly ledById: string
  readonly cancelledAt: string | null
  readonly register: readonly RegisterLine[]
  readonly events: readonly PracticeEvent[]
  readonly spells: readonly Spell[]
}

/** Seconds from the register to the last ball and home. */
export const practiceLength = { underTen: 3600, underTwelve: 4200 } as const
const startOf = {
  practice: { underTen: '17:00', underTwelve: '18:00' },
  match: { underTen: '10:00', underTwelve: '11:30' },
} as const

/** A session as it stands in the calendar, before anyone came; from `today` on it is to come. */
export function sessionOf(entry: CalendarEntry, { today }: { readonly today: Day }): DemoSession {
  const isToCome = entry.day >= today
  const written = isToCome ? 'notWritten' : entry.written
  const isWritten = written !== 'notWritten'
  const ledById = leaderOn(entry.squad, entry.day)
  const design = demoDesigns.find(({ id }) => entry.design !== null && id === designId(entry.design))
  return {
    id: demoId(entry.key),
    key: entry.key,
    squadId: demoSquads[entry.squad].id,
    kind: entry.kind,
    day: entry.day,
    title: entry.title,
    place: entry.place,
    startsAt: startOf[entry.kind][entry.squad],
    lengthSeconds: entry.kind === 'practice' ? practiceLength[entry.squad] : null,
    periods: entry.kind === 'match' ? formats[entry.squad].periods : [],
    designId: design?.id ?? null,
    themeId: (isToCome && design?.themeId) || null,
    written,
    writtenById: isWritten ? ledById : null,
    writtenAt: isWritten ? `${dayWritten(entry)}T20:10:00.000Z` : null,
    ledById,
    cancelledAt: entry.isCancelled && !isToCome ? `${entry.day}T09:30:00.000Z` : null,
    register: [],
    events: [],
    spells: [],
  }
}

/** What was typed in later was typed in two days later. */
function dayWritten(entry: CalendarEntry): string {
  if (entry.written !== 'typedLater') return entry.day
  return new Date(Date.parse(`${entry.day}T00:00:00Z`) + 2 * 86_400_000).toISOString().slice(0, 10)
}
