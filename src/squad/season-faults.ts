import { daysLater } from '#common/days-later'
import type { Problem } from '#common/problem'
import type { Day } from '#common/time'

type Named = { readonly name: string; readonly firstDay: Day; readonly lastDay: Day }

/** `row`: where the term stands in its form, from 0. */
type DraftTerm = Named & { readonly row: number }

/** A season as it is asked for. */
export type SeasonDraft = Named & { readonly terms: readonly DraftTerm[] }

/** No season of children's sport is longer; a year typed wrongly is. */
const longestSeasonDays = 550

/**
 * Everything that is wrong with a season, each beside its field: `terms.0.firstDay` is the first day of the first term.
 * `others`: the club's other seasons; `held`: the days it has so far, null for a new one.
 */
export function seasonFaults(
  season: SeasonDraft,
  known: { readonly others: readonly Named[]; readonly held: Omit<Named, 'name'> | null },
): readonly Problem[] {
  const own = [...nameTaken(season, known.others), ...daysOutOfOrder(season), ...tooLong(season)]
  return [
    ...own,
    ...(own.length > 0 ? [] : overOtherSeason(season, known)),
    ...noTerm(season),
    ...termNamesTwice(season),
    ...season.terms.flatMap((term) => termFaults(season, term)),
    ...termsOverlapping(season),
  ]
}

export function nameTaken({ name }: SeasonDraft, others: readonly Named[]): readonly Problem[] {
  return others.some((other) => sameName(other.name, name))
    ? [{ path: 'name', message: `There is a season called ${name} already; choose another name.` }]
    : []
}

export function daysOutOfOrder({ firstDay, lastDay }: Omit<Named, 'name'>): readonly Problem[] {
  return lastDay < firstDay
    ? [
        {
          path: 'lastDay',
          message: `${lastDay} is before the first day, ${firstDay}; choose that day or a later one.`,
        },
      ]
    : []
}

export function tooLong({ firstDay, lastDay }: Omit<Named, 'name'>): readonly Problem[] {
  const latest = daysLater(firstDay, longestSeasonDays)
  return lastDay > latest
    ? [
        {
          path: 'lastDay',
          message: `A season can last until ${latest} from its first day; look at the year.`,
        },
      ]
    : []
}

/** A season that moves must not pass another on its way either: its practices would lie in two seasons for a moment. */
export function overOtherSeason(
  { firstDay, lastDay }: Omit<Named, 'name'>,
  { others, held }: { readonly others: readonly Named[]; readonly held: Omit<Named, 'name'> | null },
): readonly Problem[] {
  const met = others.find((other) => other.firstDay <= lastDay && firstDay <= other.lastDay)
  if (met)
    return [
      {
        path: met.firstDay <= firstDay ? 'firstDay' : 'lastDay',
        message: `${met.name} lasts from ${met.firstDay} to ${met.lastDay}, and a day belongs to one season only.`,
      },
    ]
  const passed = others.find(
    (other) =>
      held &&
      ((held.lastDay < other.firstDay && other.lastDay < firstDay) ||
        (other.lastDay < held.firstDay && lastDay < other.firstDay)),
  )
  return passed
    ? [
        {
          path: 'firstDay',
          message: `A season cannot be moved past another, ${passed.name}; make a new one.`,
        },
      ]
    : []
}

export function noTerm({ terms }: SeasonDraft): readonly Problem[] {
  return terms.length === 0
    ? [{ path: 'terms.0.name', message: 'Write at least one term; it may be the whole season.' }]
    : []
}

export function termNamesTwice({ terms }: SeasonDraft): readonly Problem[] {
  return terms.flatMap(({ name, row }, index) =>
    terms.slice(0, index).some((other) => sameName(other.name, name))
      ? [
          {
            path: `terms.${row}.name`,
            message: `There is a term called ${name} above; choose another name.`,
          },
        ]
      : [],
  )
}

export function termFaults(season: Omit<Named, 'name'>, term: Omit<DraftTerm, 'name'>): readonly Problem[] {
  const within = `inside the season, ${season.firstDay} to ${season.lastDay}`
  const isInside = (day: Day) => season.firstDay <= day && day <= season.lastDay
  if (season.lastDay < season.firstDay) return []
  const outside = (['firstDay', 'lastDay'] as const)
    .filter((end) => !isInside(term[end]))
    .map((end) => ({ path: `terms.${term.row}.${end}`, message: `${term[end]} is not ${within}.` }))
  return [
    ...outside,
    ...daysOutOfOrder(term).map((one) => ({ ...one, path: `terms.${term.row}.${one.path}` })),
  ]
}

/** Each pair once, beside the one that begins later. */
export function termsOverlapping({ terms }: SeasonDraft): readonly Problem[] {
  const inTime = terms
    .filter(({ firstDay, lastDay }) => firstDay <= lastDay)
    .sort((a, b) => (a.firstDay < b.firstDay ? -1 : a.firstDay > b.firstDay ? 1 : a.row - b.row))
  return inTime.flatMap((term, at) => {
    const before = inTime.slice(0, at).find(({ lastDay }) => term.firstDay <= lastDay)
    return before
      ? [
          {
            path: `terms.${term.row}.firstDay`,
            message: `${term.firstDay} is still in ${before.name}, which lasts to ${before.lastDay}; terms do not overlap.`,
          },
        ]
      : []
  })
}

function sameName(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase()
}
