import type { Problem } from '#common/problem'
import { mostPlayersFor } from '#match/format/least-possible'
import type { MatchFormat } from '#match/format/match-format'
import { placesInAll } from '#match/format/places-in-all'

/** What makes no sense in a format, each at the field of its form. Form and server ask the same. */
export function formatFaults(format: MatchFormat): readonly Problem[] {
  return [
    ...faultsOfAges(format),
    ...faultsOfShapes(format),
    ...faultsOfNumbers(format),
    ...faultsOfKeeping(format),
    ...faultsOfLeastTime(format),
    ...faultsOfLate(format),
  ]
}

function faultsOfAges({ ages }: MatchFormat): readonly Problem[] {
  if (!ages || ages[0] <= ages[1]) return []
  return [{ path: 'agesTo', message: `is below ${ages[0]}, where the ages begin; the older age goes here` }]
}

function faultsOfShapes({ shapes, aSide, hasKeeper }: MatchFormat): readonly Problem[] {
  const out = hasKeeper ? aSide - 1 : aSide
  const keeping = hasKeeper ? ', the keeper not counted' : ''
  const wrong = shapes.find(({ places }) => placesInAll(places) !== aSide)
  if (wrong) {
    const { keeper } = wrong.places
    const has = placesInAll(wrong.places) - keeper
    return [
      {
        path: 'shapes',
        message: `${wrong.name} has ${has} players out of goal; with ${aSide} a side its numbers come to ${out}${keeping}`,
      },
    ]
  }
  if (shapes.some(({ places }) => places.keeper !== (hasKeeper ? 1 : 0)))
    return [
      {
        path: 'shapes',
        message: hasKeeper ? 'one of them has no keeper' : 'one of them has a keeper, where nobody keeps',
      },
    ]
  const names = shapes.map(({ name }) => name)
  const twice = names.find((name, index) => names.indexOf(name) !== index)
  return twice === undefined
    ? []
    : [{ path: 'shapes', message: `${twice} stands there twice; once is right` }]
}

function faultsOfNumbers({ aSide, mostPlayers, fewestPlayers }: MatchFormat): readonly Problem[] {
  const most =
    mostPlayers !== null && mostPlayers < aSide
      ? [
          {
            path: 'mostPlayers',
            message: `is below ${aSide}, who play at once; write ${aSide} or more, or leave it empty`,
          },
        ]
      : []
  const fewest =
    fewestPlayers !== null && (fewestPlayers > aSide || fewestPlayers < 1)
      ? [
          {
            path: 'fewestPlayers',
            message: `a match that needs ${fewestPlayers} cannot be with ${aSide} a side; write 1 to ${aSide}, or leave it empty`,
          },
        ]
      : []
  return [...most, ...fewest]
}

function faultsOfKeeping({ hasKeeper, mostKeeperPeriods, periodSeconds }: MatchFormat): readonly Problem[] {
  if (mostKeeperPeriods === null) return []
  const path = 'mostKeeperPeriods'
  if (!hasKeeper) return [{ path, message: 'nobody keeps goal in this format; leave it empty' }]
  const count = periodSeconds.length
  return mostKeeperPeriods > count
    ? [{ path, message: `the match has ${inPeriods(count)}; write 1 to ${count}, or leave it empty` }]
    : []
}

function faultsOfLeastTime(format: MatchFormat): readonly Problem[] {
  const { leastTime, periodSeconds, mostPlayers, mostSecondsADay, aSide } = format
  const count = periodSeconds.length
  if (leastTime.periods !== null && leastTime.periods > count)
    return [
      {
        path: 'leastPeriods',
        message: `the match has ${inPeriods(count)}; write 1 to ${count}, or leave it empty`,
      },
    ]
  const path = leastTime.periods === null ? 'leastShare' : 'leastPeriods'
  const whole = periodSeconds.reduce((sum, seconds) => sum + seconds, 0)
  const promised = Math.max(
    (leastTime.share ?? 0) * whole,
    (leastTime.periods ?? 0) * Math.max(...periodSeconds),
  )
  if (mostSecondsADay !== null && promised > mostSecondsADay)
    return [
      {
        path,
        message: `is more than a player may play in a day (${Math.floor(mostSecondsADay / 60)} minutes); lower it, or allow more a day`,
      },
    ]
  const most = mostPlayersFor(leastTime, { aSide, periodSeconds, policyShare: null })
  return most !== null && mostPlayers !== null && mostPlayers > most && !leastTime.wherePossible
    ? [
        {
          path,
          message: `cannot be kept for all of the ${mostPlayers} players that may come: it is possible for ${most} at most. Lower it, or tick that it holds where it is possible`,
        },
      ]
    : []
}

function faultsOfLate({ leastTime, periodSeconds }: MatchFormat): readonly Problem[] {
  const count = periodSeconds.length
  return leastTime.late.flatMap(({ arrivesIn, periods }) => {
    const left = count - arrivesIn
    if (left < 1)
      return [
        {
          path: `late-${arrivesIn}`,
          message: `no period is left after it, for the match has ${inPeriods(count)}; leave it empty`,
        },
      ]
    return periods > left
      ? [{ path: `late-${arrivesIn}`, message: `only ${left} are left after it; write 0 to ${left}` }]
      : []
  })
}

function inPeriods(count: number): string {
  return count === 1 ? 'one period' : `${count} periods`
}
