import type { Day } from '#common/time'
import type { Written } from '#squad/written'
import type { SquadKey } from './club'
import type { DesignKey } from './designs'
import { fields } from './fields'

/** A practice or match of the season's calendar, before anything is said of who came. */
export type CalendarEntry = {
  /** Names it in the stories and makes its id, e.g. `underTen/practice/2025-09-09`. */
  readonly key: string
  readonly squad: SquadKey
  readonly kind: 'practice' | 'match'
  readonly day: Day
  readonly written: Written
  readonly isCancelled: boolean
  readonly design: DesignKey | null
  readonly title: string
  readonly place: string
}

const ways: Readonly<Record<string, Written>> = {
  T: 'tapped',
  R: 'roundByRound',
  P: 'asPlanned',
  L: 'typedLater',
  '-': 'notWritten',
  x: 'notWritten',
}

/** A day and, behind it, a letter for how it was written: x was called off, ? is still to come. */
const underTenTuesdays = `
  2025-09-09L 2025-09-16R 2025-09-23R 2025-09-30T 2025-10-07- 2025-10-14R 2025-10-21T
  2025-11-04P 2025-11-11R 2025-11-18T 2025-11-25- 2025-12-02R 2025-12-09T 2025-12-16R
  2026-01-06T 2026-01-13R 2026-01-20T 2026-01-27P 2026-02-03R 2026-02-10T 2026-02-24x 2026-03-03L 2026-03-10R
  2026-03-17T 2026-03-24- 2026-04-14T 2026-04-21R 2026-04-28T 2026-05-05L 2026-05-12T 2026-05-19T 2026-06-02R
  2026-06-09? 2026-06-16? 2026-06-23? 2026-06-30?`

/** On the day at which the demo's calendar stands still, so that a practice can be run in it. */
const underTenExtra = `
  2026-06-08?`

/** In June there is a second practice a week, in a smaller place. */
const underTenThursdays = `
  2026-06-11? 2026-06-18? 2026-06-25?`

/** The autumn was hardly written down under the coach of then; the spring was, under the next. */
const underTwelveWednesdays = `
  2025-09-10P 2025-09-17- 2025-09-24L 2025-10-01- 2025-10-08P 2025-10-15L 2025-10-22-
  2025-11-05- 2025-11-12P 2025-11-19L 2025-11-26- 2025-12-03P 2025-12-10- 2025-12-17L
  2026-01-07R 2026-01-14T 2026-01-21T 2026-01-28R 2026-02-04T 2026-02-11R 2026-02-25T 2026-03-04- 2026-03-11T
  2026-03-18R 2026-03-25P 2026-04-15T 2026-04-22R 2026-04-29T 2026-05-06T 2026-05-13R 2026-05-20T 2026-06-03T
  2026-06-10? 2026-06-17? 2026-06-24?`

const underTenSaturdays = `
  2025-09-20T 2025-10-11L 2025-11-08T 2025-11-29L 2026-01-17T 2026-02-07T 2026-03-07- 2026-04-25L 2026-05-16T
  2026-06-13?`

const underTwelveSaturdays = `
  2025-09-27L 2025-10-18- 2025-11-15L 2025-12-06P 2026-01-24T 2026-02-28T 2026-03-21T 2026-05-02L 2026-05-23T
  2026-06-20?`

const designOrder: readonly DesignKey[] = ['lanes', 'doors', 'quickFinish', 'bridge', 'overTheLine']

/** Clubs that nobody has. */
const opponents = [
  'Marrowby Herons',
  'Upper Tansy Foxes',
  'Copperlea Swifts',
  'Thistleford Hares',
  'Lower Pebble Rooks',
]

function entries(
  list: string,
  squad: SquadKey,
  kind: 'practice' | 'match',
  place: string = fields.main,
): readonly CalendarEntry[] {
  return list
    .trim()
    .split(/\s+/)
    .map((word, index) => {
      const day = word.slice(0, 10)
      const design = kind === 'practice' ? (designOrder[index % designOrder.length] ?? null) : null
      return {
        key: `${squad}/${kind}/${day}`,
        squad,
        kind,
        day,
        written: ways[word.slice(10)] ?? 'notWritten',
        isCancelled: word.endsWith('x'),
        design,
        place,
        title: kind === 'match' ? `Against ${opponents[index % opponents.length]}` : '',
      }
    })
}

/** Every practice and match of the season, those to come as well, in order of days. */
export const demoCalendar: readonly CalendarEntry[] = [
  ...entries(underTenTuesdays, 'underTen', 'practice'),
  ...entries(underTenExtra, 'underTen', 'practice'),
  ...entries(underTenThursdays, 'underTen', 'practice', fields.small),
  ...entries(underTwelveWednesdays, 'underTwelve', 'practice'),
  ...entries(underTenSaturdays, 'underTen', 'match'),
  ...entries(underTwelveSaturdays, 'underTwelve', 'match'),
].toSorted((one, other) => (one.key === other.key ? 0 : one.day < other.day ? -1 : 1))
