import { type SeasonLogJson, seasonLogFormat } from '#exchange/season-log-shape'
import { replayPractice } from '#practice/replay'
import type { Turn } from '#practice/turn'
import type { RegisterLine } from '#squad/register'
import type { DemoClub } from './demo-club'
import type { DemoSession } from './demo-session'
import { keyOfPlayer } from './names'
import { keyOfTheme } from './programme'

/** What was written of a squad's season as a season log, with short keys in the place of ids. */
export function seasonLogOfSquad(club: DemoClub, squadId: string): SeasonLogJson {
  const written = club.sessions.filter(
    (session) =>
      session.squadId === squadId && session.written !== 'notWritten' && session.cancelledAt === null,
  )
  const members = club.memberships.filter((line) => line.squadId === squadId).map((line) => line.playerId)
  const seen = new Set([
    ...members,
    ...written.flatMap((session) => session.register.map((line) => line.playerId)),
  ])
  return {
    format: seasonLogFormat,
    players: club.players
      .filter((player) => seen.has(player.id))
      .map(({ id, keeps, name }) => ({ id: keyOfPlayer(id), keeps, name })),
    themes: club.themes.map(({ id, name, parentId }) => ({
      id: keyOfTheme(id),
      name,
      parent: parentId && keyOfTheme(parentId),
    })),
    practices: written.filter((session) => session.kind === 'practice').map(practiceJson),
    matches: written.filter((session) => session.kind === 'match').map(matchJson),
  }
}

function practiceJson(session: DemoSession) {
  return {
    id: `practice-${session.day}`,
    date: session.day,
    lengthSeconds: session.lengthSeconds ?? undefined,
    register: registerJson(session.register),
    turns: replayPractice(session.events).turns.map(turnJson),
  }
}

function matchJson(session: DemoSession) {
  return {
    id: `match-${session.day}`,
    date: session.day,
    periods: session.periods.map(({ start, end }) => ({ start, end })),
    register: registerJson(session.register),
    spells: session.spells.map(({ playerId, line, start, end }) => ({
      player: keyOfPlayer(playerId),
      line,
      start,
      end,
    })),
  }
}

function registerJson(register: readonly RegisterLine[]) {
  return register
    .filter((line) => line.state === 'here')
    .map(({ playerId, from, to }) => ({ player: keyOfPlayer(playerId), from, to }))
}

/** What may be left out of a log is left out: no theme, and roles that an area does not have. */
function turnJson(turn: Turn) {
  return {
    start: turn.start,
    end: turn.end,
    ...(turn.themeId && { theme: keyOfTheme(turn.themeId) }),
    stations: turn.stations.map((station) => {
      const keys = (side: 'attack' | 'defend' | 'keep') => station[side].map(keyOfPlayer)
      const keep = keys('keep')
      return { attack: keys('attack'), defend: keys('defend'), ...(keep.length > 0 && { keep }) }
    }),
  }
}
