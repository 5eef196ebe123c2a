import { type ExpectedAttendance, expectedAttendance } from '#ahead/attendance/expected-attendance'
import type { ComingPractice } from '#ahead/missing/coming-practice'
import type { RequestedPlayer } from '#ahead/request'
import { hasDay } from '#common/dated'
import type { Seconds } from '#common/time'
import type { SessionAccount } from '#fairness/account'
import { themedPractices, themeParts } from '#fairness/theme-parts'
import type { PlayerId } from '#squad/player'
import type { ProgrammeEntry, Theme, ThemeId } from '#themes/theme'
import { themeMeetings } from '#themes/theme-meetings'
import { themeAndAbove } from '#themes/theme-tree'

/** A player and a theme of the programme in a term. */
export type PlayerMissing = {
  readonly playerId: PlayerId
  readonly themeId: ThemeId
  readonly seconds: Seconds
  /** Its even share of what was played of the theme while it was there. */
  readonly evenSeconds: Seconds
  /** Practices with the theme while it belonged to the squad, and those of them it was there for. */
  readonly offered: number
  readonly attended: number
  /** At the end of the term, in expectation: time in the theme, and the wished part of all its playing time. */
  readonly endSeconds: Seconds
  readonly endWishedSeconds: Seconds
}

export type MissingOfPlayers = {
  readonly method: ExpectedAttendance['method']
  /** By player, in the order given, then by theme, in the order of the programme. */
  readonly rows: readonly PlayerMissing[]
}

type Player = Pick<RequestedPlayer, 'id' | 'came' | 'held' | 'away' | 'playedSeconds' | 'themeSeconds'>

/**
 * What every player has had of every theme of the programme, and how the term is likely to end for it. A practice with
 * a planned theme is taken as played in it; one without, as played like those so far. Nothing written: nothing expected.
 */
export function missingOfPlayers({
  themes,
  programme,
  players,
  accounts,
  coming,
}: {
  readonly themes: readonly Theme[]
  readonly programme: readonly ProgrammeEntry[]
  readonly players: readonly Player[]
  /** Of the term's practices. */
  readonly accounts: readonly SessionAccount[]
  readonly coming: readonly ComingPractice[]
}): MissingOfPlayers {
  const wished = programme.filter(({ wishedShare }) => wishedShare > 0)
  const meetings = new Map(
    themeMeetings(themeParts(accounts), themes).map((own) => [keyOf(own.playerId, own.themeId), own]),
  )
  const even = evenSecondsOf(accounts, themes)
  const { chances, method } = expectedAttendance(players)
  const usual = usualPractice(accounts, themes)
  const partOf = (themeId: ThemeId, planned: ThemeId | null): number => {
    if (planned === null) return usual.parts.get(themeId) ?? 0
    return themeAndAbove(themes, planned).includes(themeId) ? 1 : 0
  }
  const rows = players.flatMap((player, at) => {
    const chance = chances[at] ?? 0
    const there = coming.filter(({ day }) => !player.away.some((span) => hasDay(span, day)))
    const endPlayed = player.playedSeconds + there.length * chance * usual.playedSeconds
    return wished.map(({ themeId, wishedShare }): PlayerMissing => {
      const key = keyOf(player.id, themeId)
      const parts = there.reduce((sum, own) => sum + partOf(themeId, own.themeId), 0)
      const seconds = player.themeSeconds.get(themeId) ?? 0
      return {
        playerId: player.id,
        themeId,
        seconds,
        evenSeconds: even.get(key) ?? 0,
        offered: meetings.get(key)?.practices ?? 0,
        attended: meetings.get(key)?.practicesThere ?? 0,
        endSeconds: seconds + parts * chance * usual.playedSeconds,
        endWishedSeconds: wishedShare * endPlayed,
      }
    })
  })
  return { method, rows }
}

/** What a practice so far gave whoever came: time played, and the part of it in each theme, those above included. */
function usualPractice(accounts: readonly SessionAccount[], themes: readonly Theme[]) {
  const came = accounts.flatMap(({ presences }) =>
    presences.filter(({ turnsPresent }) => turnsPresent > 0),
  ).length
  const played = accounts
    .flatMap(({ lines }) => lines.filter(({ role }) => role !== 'rest'))
    .reduce((sum, { seconds }) => sum + seconds, 0)
  const parts = new Map<ThemeId, number>()
  for (const { themes: met } of themedPractices(accounts))
    for (const { themeId, seconds } of met)
      for (const above of themeAndAbove(themes, themeId))
        parts.set(above, (parts.get(above) ?? 0) + seconds / played)
  return { playedSeconds: came > 0 ? played / came : 0, parts }
}

function evenSecondsOf(
  accounts: readonly SessionAccount[],
  themes: readonly Theme[],
): ReadonlyMap<string, Seconds> {
  const even = new Map<string, Seconds>()
  for (const { lines } of accounts)
    for (const { playerId, themeId, role, fairSeconds } of lines) {
      if (themeId === null || role === 'rest') continue
      for (const above of themeAndAbove(themes, themeId)) {
        const key = keyOf(playerId, above)
        even.set(key, (even.get(key) ?? 0) + fairSeconds)
      }
    }
  return even
}

const keyOf = (playerId: PlayerId, themeId: ThemeId) => `${playerId} ${themeId}`
