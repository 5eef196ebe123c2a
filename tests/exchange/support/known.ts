import type { AttendancePlanning, KnownSession } from '#exchange/attendance/attendance-plan'
import type { KnownPlayer } from '#exchange/players/match-player'
import { season } from './read-text'

export function aKnownPlayer(change: Partial<KnownPlayer> & { id: string }): KnownPlayer {
  const memberships = [{ playerId: change.id, firstDay: '2026-08-01', lastDay: null }]
  return {
    name: change.id,
    code: null,
    keeps: true,
    wantsToKeep: false,
    isOfSquad: true,
    memberships,
    ...change,
  }
}

export function aKnownSession(change: Partial<KnownSession> & { id: string }): KnownSession {
  return {
    code: null,
    day: '2026-09-01',
    kind: 'practice',
    title: '',
    lengthSeconds: 3600,
    isCancelled: false,
    register: [],
    ...change,
  }
}

export function aPlanning(change: Partial<AttendancePlanning> = {}): AttendancePlanning {
  return {
    known: [],
    sessions: [],
    seasons: [season],
    today: '2027-06-30',
    answers: new Map(),
    leftOutSessions: new Set(),
    newPlayers: 'add',
    lengthSeconds: 3600,
    lateSeconds: 600,
    ...change,
  }
}
