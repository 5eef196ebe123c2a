import type { Seconds } from '#common/time'
import { placesFor } from '#lineup/places-for'
import type { LinePlaces, MatchFormat } from '#match/format/match-format'
import { placesInAll } from '#match/format/places-in-all'
import type { EpochMs } from '#pitch/pitch-event'
import type { DoneEvent } from '#pitch/standing-events'
import type { PlayerId } from '#squad/player'
import { type CalledPlayers, callOf, changeOfPlan, withinFormat } from '#touchline/change-of-plan'
import {
  bookSecondAt,
  bookStartOf,
  type PlayedPeriod,
  playingSecondAt,
  secondOfPeriod,
} from '#touchline/match-clock'
import type { MatchDeed, PlacedPlayer } from '#touchline/match-deed'
import type { MatchSetAside, MatchSetAsideReason } from '#touchline/match-set-aside'
import type { MatchTimes } from '#touchline/match-times'
import { periodFrame } from '#touchline/period-frame'
import type { PlansInForce, SettledSet } from '#touchline/plans-in-force'
import { type SpellBook, spellBook, type WalkedSpell } from '#touchline/spell-book'
import { nextUntapped, type Untapped } from '#touchline/untapped'
import type { Moment, RegisterTap, WalkedRegister } from '#touchline/walked-register'

/** A change of the plan that was made, by a tap or because nobody said otherwise. */
export type MadeChange = CalledPlayers & {
  readonly set: SettledSet
  /** Of its period, as it was made. */
  readonly second: Seconds
  readonly isTapped: boolean
}

export type WalkedMatch = {
  readonly spells: readonly WalkedSpell[]
  readonly on: readonly PlacedPlayer[]
  /** Less those whom somebody sent off leaves empty. */
  readonly places: LinePlaces
  readonly made: readonly MadeChange[]
  /** Sets of the plan that were made, called off, or passed over at a kick-off. */
  readonly handled: ReadonlySet<SettledSet>
  readonly setAside: readonly MatchSetAside[]
}

type MatchToWalk = {
  readonly standing: readonly DoneEvent<MatchDeed>[]
  readonly format: Pick<MatchFormat, 'periodSeconds'>
  readonly times: MatchTimes
  readonly plans: PlansInForce
  readonly register: WalkedRegister
  readonly places: LinePlaces
  readonly keeps: (id: PlayerId) => boolean
  readonly now: EpochMs
}

/** Goes through a match tap by tap, with the plan's changes at their times in between. The register is carried along. */
export function walkMatch(given: MatchToWalk): WalkedMatch {
  const walk = new Walk(given)
  for (const [index, event] of given.standing.entries()) {
    walk.take(event, index)
  }
  return walk.end()
}

const needsPlay: ReadonlySet<MatchDeed['kind']> = new Set([
  'changeMade',
  'changeDropped',
  'places',
  'sentOff',
])

class Walk {
  private readonly book: SpellBook = spellBook()
  private readonly made: MadeChange[] = []
  private readonly handled = new Set<SettledSet>()
  private readonly setAside: MatchSetAside[] = []
  private period: PlayedPeriod | null = null
  /** Of the running period: nothing is written down as before it. */
  private reached: Seconds = 0
  private sets: readonly SettledSet[]

  constructor(private readonly given: MatchToWalk) {
    this.sets = given.plans.after(0)
  }

  take(event: DoneEvent<MatchDeed>, index: number): void {
    this.goOnUntil(event.at)
    const why = this.play(event)
    if (why !== null) this.setAside.push({ id: event.id, why })
    this.sets = this.given.plans.after(index + 1)
    if (event.deed.kind === 'replan') this.goOnUntil(event.at)
  }

  end(): WalkedMatch {
    const { register, now } = this.given
    this.goOnUntil(now)
    // What the book has of somebody for later than the last second that was played.
    if (this.given.times.endedAt !== null)
      for (const { id, mark } of register.players())
        if (mark) register.isMarked(id, { book: mark.from, playing: playingSecondAt(this.given.times, now) })
    return {
      spells: this.book.spells(),
      on: this.book.on(),
      places: this.places(),
      made: this.made,
      handled: this.handled,
      setAside: this.setAside,
    }
  }

  private play(event: DoneEvent<MatchDeed>): MatchSetAsideReason | null {
    const { deed } = event
    if (deed.kind === 'kickOff') this.kickOff(event.at, deed)
    if (deed.kind === 'register' || deed.kind === 'guest') return this.tapRegister(event as RegisterTap)
    if (!needsPlay.has(deed.kind)) return null
    return this.period ? this.playIn(this.period, event) : 'notRunning'
  }

  private kickOff(at: EpochMs, deed: Extract<MatchDeed, { kind: 'kickOff' }>): void {
    const begun = this.given.times.periods.find((own) => own.startedAt === at && own.period === deed.period)
    if (!begun || begun === this.period) return
    this.period = begun
    this.reached = 0
    this.book.kickOff(begun.period)
    const atKickOff = this.sets.filter(({ period, second }) => period === begun.period && second === 0)
    for (const set of atKickOff) this.handled.add(set)
    this.goOn(begun, 0)
    const planned = atKickOff[0]
    this.put(begun, deed.on.length === 0 && planned ? this.called(planned).after : deed.on, 0)
  }

  private tapRegister(event: RegisterTap): MatchSetAsideReason | null {
    const { times, register } = this.given
    const at = { book: bookSecondAt(times, event.at), playing: playingSecondAt(times, event.at) }
    const why = register.tap(event, at)
    const id = event.deed.playerId
    if (why === null && this.period && !register.isAble(id))
      this.book.takeOff(id, secondOfPeriod(this.period, event.at))
    return why
  }

  private playIn(own: PlayedPeriod, { deed, id, at }: DoneEvent<MatchDeed>): MatchSetAsideReason | null {
    const { register } = this.given
    const second = secondOfPeriod(own, at)
    if (deed.kind === 'places') this.put(own, deed.on, second)
    if (deed.kind === 'sentOff') {
      if (!register.find(deed.playerId)) return 'unknownPlayer'
      this.book.takeOff(deed.playerId, second)
      const until = deed.seconds === null ? null : own.start + second + deed.seconds
      register.sendOff(deed.playerId, until, this.momentOf(own, second))
    }
    if (deed.kind !== 'changeMade' && deed.kind !== 'changeDropped') return null
    const set = this.sets.find(({ period, due }) => period === own.period && due === deed.due)
    if (set && set.settledBy !== id) return 'sameChange'
    if (set) this.handled.add(set)
    if (deed.kind === 'changeDropped') return set ? null : 'unknownChange'
    const change = callOf(this.book.on(), deed.on)
    this.put(own, deed.on, second)
    if (set) this.made.push({ ...change, missing: [], set, second, isTapped: true })
    return null
  }

  /** What nobody has to tap, up to a moment; and the whistle, where the period had ended by then. */
  private goOnUntil(at: EpochMs): void {
    const own = this.period
    if (!own) return
    const isOver = own.endedAt !== null && own.endedAt <= at
    // A change at the very end of a period is none.
    this.goOn(own, isOver ? (own.length ?? 0) - 1 : secondOfPeriod(own, at))
    if (!isOver) return
    this.book.whistle(own.length ?? 0)
    this.period = null
  }

  private goOn(own: PlayedPeriod, until: Seconds): void {
    const { register, format, times } = this.given
    for (;;) {
      const set = this.sets.find(
        (one) =>
          one.period === own.period &&
          one.settledBy === null &&
          one.second <= until &&
          !this.handled.has(one),
      )
      const person = nextUntapped(
        register.players(),
        { playing: own.start, plan: periodFrame(format, own.period).start, book: bookStartOf(times, own) },
        until,
      )
      if (person && person.second <= (set?.second ?? until)) this.comesOrGoes(own, person)
      else if (set) this.change(own, set)
      else break
    }
    this.reached = Math.max(this.reached, until)
  }

  private change(own: PlayedPeriod, set: SettledSet): void {
    this.handled.add(set)
    const change = this.called(set)
    // A new plan may be heard of a little after it begins.
    const second = Math.max(set.second, this.reached)
    this.put(own, change.after, second)
    this.made.push({ ...change, set, second, isTapped: false })
  }

  private comesOrGoes(own: PlayedPeriod, { id, second, what }: Untapped): void {
    const { register } = this.given
    register[what](id, this.momentOf(own, second))
    if (!register.isAble(id)) this.book.takeOff(id, second)
  }

  private put(own: PlayedPeriod, on: readonly PlacedPlayer[], second: Seconds): void {
    const at = this.momentOf(own, second)
    this.book.put(
      withinFormat(on, this.given.places).filter(({ playerId }) => this.given.register.placed(playerId, at)),
      second,
    )
  }

  private called(set: SettledSet): CalledPlayers {
    const { register, keeps } = this.given
    return changeOfPlan(set, { on: this.book.on(), places: this.places(), isAble: register.isAble, keeps })
  }

  private places(): LinePlaces {
    const { register, places } = this.given
    const sent = register.players().filter(({ sentOff }) => sentOff !== null).length
    return sent === 0 ? places : placesFor(places, Math.max(0, placesInAll(places) - sent))
  }

  private momentOf(own: PlayedPeriod, second: Seconds): Moment {
    return { book: bookStartOf(this.given.times, own) + second, playing: own.start + second }
  }
}
