import type { PitchPack } from '#pitch/pitch-pack'
import type { PitchState } from '#pitch/pitch-state'
import { shortNames } from '#planning/short-names'
import type { PlayerId } from '#squad/player'
import type { RegisterState } from '#squad/register'
import { words } from '#ui/words'

/** A player in the list of who is here. `missing`: nobody has tapped anything yet. */
export type ListedPlayer = {
  readonly id: PlayerId
  readonly name: string
  readonly state: RegisterState | 'gone' | 'missing'
  /** Came after the beginning. */
  readonly isLate: boolean
  readonly isGuest: boolean
  /** The plan counts on it; where there is no plan, everyone is. */
  readonly isExpected: boolean
}

const marks: Readonly<Record<ListedPlayer['state'], string>> = {
  missing: '?',
  here: '✓',
  notPlaying: '◦',
  gone: '–',
  out: '✕',
}

export function registerMark({ state }: ListedPlayer): string {
  return marks[state]
}

export function registerWord({ state, isLate, isGuest, isExpected }: ListedPlayer, isBegun: boolean): string {
  if (state === 'missing' && !isExpected) return 'not expected'
  const guest = isGuest ? ', new face' : ''
  if (state === 'missing') return `not here yet${guest}`
  if (state === 'gone') return `${isBegun ? 'gone' : 'not here'}${guest}`
  if (state === 'here') return `${isLate ? 'came late' : words.register.here}${guest}`
  return `${words.register[state]}${guest}`
}

/** "11 here, 2 not playing": how many there are of each, those who play first. */
export function registerCount(players: readonly ListedPlayer[]): string {
  const count = (...states: readonly ListedPlayer['state'][]) =>
    players.filter(({ state }) => states.includes(state)).length
  const parts = [`${count('here')} here`]
  const missing = count('missing', 'gone')
  if (count('notPlaying', 'out') > 0) parts.push(`${count('notPlaying', 'out')} not playing`)
  if (missing > 0) parts.push(`${missing} not here`)
  return parts.join(', ')
}

/** The players in the register's order, those whom the plan does not count on last. */
export function listedPlayers(
  state: Pick<PitchState, 'players' | 'plan'>,
  { players: known }: Pick<PitchPack, 'players'>,
): readonly ListedPlayer[] {
  const members = new Set(known.filter(({ isMember }) => isMember).map(({ id }) => id))
  const names = shortNames(state.players.map(({ playerId, name }) => ({ id: playerId, name })))
  const expected = state.plan && new Set(state.plan.players.map(({ playerId }) => playerId))
  const listed = state.players.map((player) => ({
    id: player.playerId,
    name: names.get(player.playerId) || 'Guest',
    state: player.isOut ? 'out' : player.state,
    isLate: player.isLate,
    isGuest: !members.has(player.playerId),
    isExpected: expected?.has(player.playerId) ?? true,
  }))
  return [...listed.filter(({ isExpected }) => isExpected), ...listed.filter(({ isExpected }) => !isExpected)]
}
