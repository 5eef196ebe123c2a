import { exportKeys } from '#exchange/export-keys'
import { type SeasonLogJson, seasonLogFormat } from '#exchange/season-log-shape'
import type { SeasonLog } from '#fairness/season-log'
import type { Match } from '#match/match'
import type { Practice } from '#practice/practice'
import type { Turn } from '#practice/turn'
import type { PresenceLine } from '#squad/presence'

type Keyed = { readonly id: string; readonly code: string | null }

/** A squad's sessions as they were written, with ids of the book. */
export type LogSource = {
  readonly policy: SeasonLog['policy']
  readonly players: readonly (Keyed & { readonly name: string; readonly keeps: boolean })[]
  /** Parents before or after, all of them. */
  readonly themes: readonly (Keyed & { readonly name: string; readonly parentId: string | null })[]
  readonly practices: readonly (Practice & { readonly code: string | null; readonly title: string })[]
  readonly matches: readonly (Match & { readonly code: string | null })[]
}

/**
 * A season log of what was written. A player or theme that nothing mentions may be among them. A length that a turn goes
 * beyond is left out: it cannot have been the length.
 */
export function writeSeasonLog(source: LogSource): SeasonLogJson {
  const players = exportKeys(source.players)
  const themes = exportKeys(source.themes)
  const sessions = exportKeys([...source.practices, ...source.matches])
  const keys: Keys = {
    player: (id) => players.get(id) ?? id,
    theme: (id) => themes.get(id) ?? id,
    session: (id) => sessions.get(id) ?? id,
  }
  const { toleranceSeconds, toleranceShare, middleAttackShare } = source.policy
  return {
    format: seasonLogFormat,
    policy: { toleranceSeconds, toleranceShare, middleAttackShare },
    players: source.players.map(({ id, keeps, name }) => ({ id: keys.player(id), keeps, name })),
    themes: source.themes.map(({ id, name, parentId }) => ({
      id: keys.theme(id),
      name,
      parent: parentId === null ? null : keys.theme(parentId),
    })),
    practices: source.practices.map((practice) => practiceJson(practice, keys)),
    matches: source.matches.map(({ id, day, periods, register, spells }) => ({
      id: keys.session(id),
      date: day,
      periods: periods.map(({ start, end }) => ({ start, end })),
      register: registerJson(register, keys),
      spells: spells.map(({ playerId, line, start, end }) => ({
        player: keys.player(playerId),
        line,
        start,
        end,
      })),
    })),
  }
}

type Keys = Readonly<Record<'player' | 'theme' | 'session', (id: string) => string>>

function practiceJson(
  { id, day, title, lengthSeconds, register, turns }: LogSource['practices'][number],
  keys: Keys,
) {
  const lastEnd = turns.at(-1)?.end ?? 0
  return {
    id: keys.session(id),
    date: day,
    ...(title !== '' && { title }),
    ...(lengthSeconds !== null && lastEnd <= lengthSeconds && { lengthSeconds }),
    register: registerJson(register, keys),
    turns: turns.map((turn) => turnJson(turn, keys)),
  }
}

function turnJson({ start, end, themeId, stations }: Turn, keys: Keys) {
  return {
    start,
    end,
    ...(themeId !== null && { theme: keys.theme(themeId) }),
    stations: stations.map(({ attack, defend, keep }) => ({
      attack: attack.map(keys.player),
      defend: defend.map(keys.player),
      keep: keep.map(keys.player),
    })),
  }
}

function registerJson(register: readonly PresenceLine[], keys: Keys) {
  return register.map(({ playerId, from, to }) => ({ player: keys.player(playerId), from, to }))
}
