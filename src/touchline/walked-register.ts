import type { Seconds } from '#common/time'
import type { MatchPlan } from '#lineup/match-plan'
import { type BookMark, type BookMarks, noMarks } from '#pitch/marked-in-book'
import type { RosterPlayer } from '#pitch/pitch-register'
import { type DoneEvent, eventsOf } from '#pitch/standing-events'
import type { PlayerId } from '#squad/player'
import type { RegisterState } from '#squad/register'
import { type RegisterSegment, setFrom } from '#squad/register-segments'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchSetAsideReason } from '#touchline/match-set-aside'

export type WalkedPlayer = {
  readonly id: PlayerId
  readonly name: string
  readonly isGuest: boolean
  /** How it stands; `missing`: not seen so far. */
  readonly state: RegisterState | 'gone' | 'missing'
  /** Out for today; only a second answer takes it back. */
  readonly isOut: boolean
  /** Nobody tapped it: the plan has it, or it was put on. */
  readonly isAssumed: boolean
  /** By the book's seconds. */
  readonly segments: readonly RegisterSegment[]
  /** Playing seconds so far since which it stands as it does. */
  readonly since: Seconds
  /** Sent off: until which second of playing time; null in it: for good. */
  readonly sentOff: { readonly until: Seconds | null } | null
  /** Not seen yet, and by the plan there from this second of it on; null: not expected. */
  readonly expectedFrom: Seconds | null
  /** By the plan it leaves at this second of it; null: it stays, or it has left. */
  readonly expectedUntil: Seconds | null
  /** So it is by the book's register, from a second of the book that has not come yet. */
  readonly mark: BookMark | null
}

export type Moment = { readonly book: Seconds; readonly playing: Seconds }

/** The register of a match while its taps are gone through. */
export type WalkedRegister = {
  readonly players: () => readonly WalkedPlayer[]
  readonly find: (id: PlayerId) => WalkedPlayer | undefined
  readonly isAble: (id: PlayerId) => boolean
  /** Null: it holds; else why it changes nothing. */
  readonly tap: (event: RegisterTap, at: Moment) => MatchSetAsideReason | null
  /** Put on: so it is here. False: it cannot be, out for today or sent off. */
  readonly placed: (id: PlayerId, at: Moment) => boolean
  readonly comes: (id: PlayerId, at: Moment) => void
  readonly leaves: (id: PlayerId, at: Moment) => void
  /** What the book says of it holds from here on. */
  readonly isMarked: (id: PlayerId, at: Moment) => void
  readonly sendOff: (id: PlayerId, until: Seconds | null, at: Moment) => void
}

export type RegisterTap = DoneEvent<MatchDeed> & {
  readonly deed: Extract<MatchDeed, { kind: 'register' | 'guest' }>
}

/**
 * Who is there, tap by tap. Whoever was tapped as here before the kick-off was; once anybody was, whoever was not is
 * missing until tapped or put on. Where no register was taken the plan says who is there, and when the late ones come.
 */
export function walkedRegister(given: {
  readonly roster: readonly RosterPlayer[]
  readonly plan: Pick<MatchPlan, 'players'> | null
  readonly standing: readonly DoneEvent<MatchDeed>[]
  /** The first kick-off; infinite: not yet. */
  readonly beganAt: number
  readonly marks?: BookMarks
}): WalkedRegister {
  const { roster, plan, standing, beganAt, marks = noMarks } = given
  const taps = eventsOf<'register', MatchDeed>(standing, 'register')
  const isTaken = taps.some(({ deed, at }) => deed.state === 'here' && at <= beganAt)
  const plannedOf = new Map((plan?.players ?? []).map((player) => [player.playerId, player]))
  const players = new Map<PlayerId, WalkedPlayer>(
    roster.map(({ id, name }) => {
      const first = taps.find(({ deed }) => deed.playerId === id)
      const comesLater = first?.deed.state === 'here'
      const from = isTaken || comesLater ? undefined : plannedOf.get(id)?.from
      const player: WalkedPlayer = {
        ...unseen(id, name),
        expectedFrom: from === undefined || from === 0 ? null : from,
        expectedUntil: plannedOf.get(id)?.to ?? null,
      }
      const there = from === 0 ? { ...set(player, 'here', { book: 0, playing: 0 }), isAssumed: true } : player
      const mark = marks.get(id)
      if (!mark) return [id, there]
      const marked = { ...there, mark }
      return [id, mark.from === 0 ? asMarked(marked, { book: 0, playing: 0 }) : marked]
    }),
  )
  const change = (id: PlayerId, next: (player: WalkedPlayer) => WalkedPlayer) => {
    const player = players.get(id)
    if (player) players.set(id, next(player))
  }
  const isServing = (id: PlayerId) => players.get(id)?.sentOff !== null
  return {
    players: () => [...players.values()],
    find: (id) => players.get(id),
    isAble: (id) => players.get(id)?.state === 'here' && !isServing(id),
    tap: ({ deed }, at) => {
      if (deed.kind === 'guest') {
        if (players.has(deed.playerId)) return 'knownPlayer'
        const guest = { ...unseen(deed.playerId, deed.name), isGuest: true }
        players.set(deed.playerId, set(guest, 'here', at))
        return null
      }
      const player = players.get(deed.playerId)
      if (!player) return 'unknownPlayer'
      const isTakenBack = deed.state === 'here' && deed.secondAnswer === true
      if (player.isOut && !isTakenBack && deed.state !== 'gone' && deed.state !== 'out') return 'isOut'
      const isOut = deed.state === 'out' || (player.isOut && !isTakenBack)
      change(player.id, (own) => ({
        ...(own.sentOff && deed.state === 'here' ? own : set(own, deed.state, at)),
        isOut,
        isAssumed: false,
        expectedFrom: null,
        mark: isTakenBack ? null : own.mark,
      }))
      return null
    },
    placed: (id, at) => {
      const player = players.get(id)
      if (!player || player.isOut || player.sentOff) return false
      if (player.state !== 'here')
        change(id, (own) => ({ ...set(own, 'here', at), isAssumed: true, expectedFrom: null }))
      return true
    },
    comes: (id, at) =>
      change(id, (own) => {
        // Sent off, and hurt or gone meanwhile: it does not come back for that.
        if (own.sentOff && own.state !== 'notPlaying') return { ...own, sentOff: null }
        const isAssumed = own.isAssumed || own.expectedFrom !== null
        return { ...set(own, 'here', at), sentOff: null, isAssumed, expectedFrom: null }
      }),
    leaves: (id, at) =>
      change(id, (own) => ({ ...(own.state === 'here' ? set(own, 'gone', at) : own), expectedUntil: null })),
    isMarked: (id, at) => change(id, (own) => asMarked(own, at)),
    sendOff: (id, until, at) => change(id, (own) => ({ ...set(own, 'notPlaying', at), sentOff: { until } })),
  }
}

function unseen(id: PlayerId, name: string): WalkedPlayer {
  return {
    ...{ id, name, isGuest: false, state: 'missing', isOut: false, isAssumed: false },
    ...{ segments: [], since: 0, sentOff: null, expectedFrom: null, expectedUntil: null, mark: null },
  }
}

function asMarked(player: WalkedPlayer, at: Moment): WalkedPlayer {
  const { mark } = player
  if (!mark) return player
  const isOut = player.isOut || mark.state === 'out'
  return { ...set(player, mark.state, at), isOut, isAssumed: false, expectedFrom: null, mark: null }
}

function set(player: WalkedPlayer, state: WalkedPlayer['state'], { book, playing }: Moment): WalkedPlayer {
  if (state === 'missing') return player
  const segments = setFrom(player.segments, book, state === 'gone' ? 'away' : state)
  return { ...player, segments, since: player.state === state ? player.since : playing, state }
}
