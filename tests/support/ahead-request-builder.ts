import type { AheadRequest, RequestedDesign, RequestedPlayer } from '#ahead/request'
import { noSeconds } from '#rotation/fair-seconds'
import { noRule, type ProgrammeRule } from '#themes/programme-rule'
import type { Theme } from '#themes/theme'

/** A theme; `under`: the id of the one above it. */
export function theme(id: string, under: string | null = null): Theme {
  return { id, name: `Theme ${id}`, parentId: under, order: 0 }
}

export function programmeRule(themeId: string, rule: Partial<ProgrammeRule> = {}): ProgrammeRule {
  return { themeId, wishedShare: 0.5, ...noRule, ...rule }
}

/** Ten turns of a minute, two against two with a goalkeeper, on 20 m by 15 m. */
export function requestedDesign(id: string, design: Partial<RequestedDesign> = {}): RequestedDesign {
  return {
    id,
    name: `Design ${id}`,
    themeIds: ['a'],
    lengthM: 20,
    widthM: 15,
    rounds: [
      { turnCount: 10, turnSeconds: 60, gapSeconds: 20, stations: [{ attack: 2, defend: 2, keep: 1 }] },
    ],
    ...design,
  }
}

export function requestedPlayer(id: string, player: Partial<RequestedPlayer> = {}): RequestedPlayer {
  return {
    id,
    keeps: true,
    came: 5,
    held: 5,
    away: [],
    gap: noSeconds,
    fair: noSeconds,
    playedSeconds: 0,
    themeSeconds: new Map(),
    ...player,
  }
}

/** Six players who always come, one design of theme `a`, practices on the days given; of a term of ten weeks from Thursday 1 January 2026. */
export function aheadRequest(days: readonly string[], request: Partial<AheadRequest> = {}): AheadRequest {
  return {
    term: { firstDay: '2026-01-01', lastDay: '2026-03-08' },
    policy: { toleranceSeconds: 300, toleranceShare: 0.1 },
    practices: days.map((day) => ({ id: day, day, lengthSeconds: null, ground: null, held: null })),
    closed: [],
    themes: [theme('a'), theme('b')],
    programme: [],
    blocks: [],
    designs: [requestedDesign('x')],
    met: [],
    players: ['p1', 'p2', 'p3', 'p4', 'p5', 'p6'].map((id) => requestedPlayer(id)),
    designRest: 0,
    gentle: { least: 0.5, most: 1.5 },
    ...request,
  }
}
