import type { z } from 'zod'
import type { Problem } from '#common/problem'
import { accept, type Result } from '#common/result'
import type { JsonPath } from '#exchange/json-path'
import { matchProblems, toMatch } from '#exchange/match-problems'
import { practiceProblems, toPractice } from '#exchange/practice-problems'
import type { KnownPlayers } from '#exchange/register-problems'
import {
  type MatchJson,
  matchShape,
  type PlayerJson,
  type PracticeJson,
  playerShape,
  policyShape,
  practiceShape,
  seasonLogShape,
  type ThemeJson,
  themeShape,
} from '#exchange/season-log-shape'
import { readShape } from '#exchange/shape-problems'
import {
  doubledIdProblems,
  secondsProblems,
  shareProblems,
  unknownIdProblems,
} from '#exchange/value-problems'
import type { LoggedPlayer, LoggedTheme, SeasonLog } from '#fairness/season-log'
import { defaultPolicy } from '#squad/policy'

/**
 * Reads a season log (`turnbook/season-log@1`) from parsed JSON. Refused with every problem found, in the order of the
 * file's sections; an entry of the wrong shape is not looked into further, the others are.
 */
export function readSeasonLog(json: unknown): Result<SeasonLog, Problem> {
  const top = readShape(seasonLogShape, json, [])
  const raw = listsOf(json)
  const knownPlayers = idsIn(raw.players)
  const policy = readPolicy(fieldOf(json, 'policy'))
  const players = readEntries(playerShape, raw.players, 'players')
  const themes = readEntries(themeShape, raw.themes, 'themes')
  const practices = readEntries(practiceShape, raw.practices, 'practices')
  const matches = readEntries(matchShape, raw.matches, 'matches')
  const problems = [
    ...top.problems,
    ...policy.problems,
    ...players.problems,
    ...doubledIdProblems(idPlaces(raw.players, 'players'), 'player'),
    ...themes.problems,
    ...themeProblems(themes.entries, raw.themes),
    ...sessionProblems(practices, practiceProblems, knownPlayers),
    ...sessionProblems(matches, matchProblems, knownPlayers),
    ...doubledIdProblems(
      [...idPlaces(raw.practices, 'practices'), ...idPlaces(raw.matches, 'matches')],
      'practice and match',
    ),
  ]
  if (problems.length > 0) return { ok: false, reasons: problems }
  return accept({
    policy: policy.value,
    players: players.entries.map(({ value }) => toPlayer(value)),
    themes: themes.entries.map(({ value }) => toTheme(value)),
    practices: practices.entries.map(({ value }) => toPractice(value)),
    matches: matches.entries.map(({ value }) => toMatch(value)),
  })
}

type Entry<Value> = { readonly value: Value; readonly at: JsonPath }
type Entries<Value> = { readonly entries: readonly Entry<Value>[]; readonly problems: readonly Problem[] }

function readEntries<Shape extends z.ZodType>(
  shape: Shape,
  list: readonly unknown[] | null,
  key: string,
): Entries<z.output<Shape>> {
  const read = (list ?? []).map((value, index) => ({
    ...readShape(shape, value, [key, index]),
    at: [key, index],
  }))
  return {
    entries: read.flatMap(({ value, at }) => (value === null ? [] : [{ value, at }])),
    problems: read.flatMap(({ problems }) => problems),
  }
}

function readPolicy(value: unknown): { value: SeasonLog['policy']; problems: readonly Problem[] } {
  const { toleranceSeconds, toleranceShare, middleAttackShare } = defaultPolicy
  const defaults = { toleranceSeconds, toleranceShare, middleAttackShare }
  if (value === undefined) return { value: defaults, problems: [] }
  const read = readShape(policyShape, value, ['policy'])
  if (read.value === null) return { value: defaults, problems: read.problems }
  return {
    value: { ...defaults, ...read.value },
    problems: [
      ...secondsProblems(read.value.toleranceSeconds, ['policy', 'toleranceSeconds']),
      ...shareProblems(read.value.toleranceShare, ['policy', 'toleranceShare']),
      ...shareProblems(read.value.middleAttackShare, ['policy', 'middleAttackShare']),
    ],
  }
}

function sessionProblems<Json extends PracticeJson | MatchJson>(
  read: Entries<Json>,
  problemsOf: (json: Json, at: JsonPath, known: KnownPlayers) => readonly Problem[],
  known: KnownPlayers,
): readonly Problem[] {
  return [...read.problems, ...read.entries.flatMap(({ value, at }) => problemsOf(value, at, known))]
}

function themeProblems(
  themes: readonly Entry<ThemeJson>[],
  raw: readonly unknown[] | null,
): readonly Problem[] {
  const ids = idsIn(raw)
  return [
    ...doubledIdProblems(idPlaces(raw, 'themes'), 'theme'),
    ...themes.flatMap(({ value, at }) =>
      value.parent === null
        ? []
        : unknownIdProblems(value.parent, [...at, 'parent'], { ids, list: 'themes' }),
    ),
  ]
}

function toPlayer(json: PlayerJson): LoggedPlayer {
  return { id: json.id, keeps: json.keeps ?? true, name: json.name ?? null }
}

function toTheme(json: ThemeJson): LoggedTheme {
  return { id: json.id, name: json.name ?? null, parentId: json.parent }
}

function listsOf(json: unknown) {
  const list = (key: string) => {
    const value = fieldOf(json, key)
    return Array.isArray(value) ? (value as readonly unknown[]) : null
  }
  return {
    players: list('players'),
    themes: list('themes'),
    practices: list('practices'),
    matches: list('matches'),
  }
}

function fieldOf(json: unknown, key: string): unknown {
  if (typeof json !== 'object' || json === null || !Object.hasOwn(json, key)) return undefined
  return (json as Readonly<Record<string, unknown>>)[key]
}

/** Every text that stands as an id in a list, also in entries that are wrong elsewhere. */
function idPlaces(list: readonly unknown[] | null, key: string): readonly { id: string; at: JsonPath }[] {
  return (list ?? []).flatMap((entry, index) => {
    const id = fieldOf(entry, 'id')
    return typeof id === 'string' ? [{ id, at: [key, index, 'id'] }] : []
  })
}

function idsIn(list: readonly unknown[] | null): ReadonlySet<string> | null {
  return list === null ? null : new Set(idPlaces(list, '').map(({ id }) => id))
}
