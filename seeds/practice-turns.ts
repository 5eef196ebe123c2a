import type { AreaShape, DesignRound } from '#practice/design'
import { turnsOfFreeGame } from '#practice/free-game'
import { freeGameTitle } from '#practice/our-designs/design-parts'
import { choiceTitle } from '#practice/our-designs/season-designs'
import type { Station, Turn } from '#practice/turn'
import { type JoinedPresence, joinPresence, listPresent } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import type { ThemeId } from '#themes/theme'
import { fitAreas } from './fit-areas'
import { type Random, wholeBetween } from './random'
import { callTurn } from './rotation-by-hand'
import type { InMind, Tally } from './tally'

/** A practice as it is about to be played. */
export type PracticeToPlay = {
  readonly rounds: readonly DesignRound[]
  readonly themeId: ThemeId | null
  readonly register: readonly RegisterLine[]
  /** Who may be named for goal, most willing first; one who is put there all the same stands last. */
  readonly keepers: readonly PlayerId[]
  /** Most goals with a keeper at a time. */
  readonly goals: number
  readonly able: ReadonlySet<PlayerId>
  /** Tapped ball by ball: turns are as long as they were, not as long as they were meant to be. */
  readonly isTapped: boolean
  readonly neverOutnumbering: PlayerId | null
  readonly inMind: (playerId: PlayerId) => InMind
}

const firstBallSecond = 300
const betweenRoundsSeconds = 110

/** Plays a practice round by round, every turn called from the coach's memory. */
export function playPractice(practice: PracticeToPlay, tally: Tally, random: Random): readonly Turn[] {
  const presence = joinPresence(practice.register.filter((line) => line.state === 'here'))
  const play = new Playing(practice, { tally, random, presence })
  for (const round of practice.rounds) play.round(round)
  return play.turns
}

class Playing {
  readonly turns: Turn[] = []
  #clock = firstBallSecond
  #waited = new Map<PlayerId, number>()
  #before = new Map<PlayerId, 'attack' | 'defend' | 'keep' | 'rest'>()

  constructor(
    readonly practice: PracticeToPlay,
    readonly at: { readonly tally: Tally; readonly random: Random; readonly presence: JoinedPresence },
  ) {}

  round(round: DesignRound): void {
    if (round.title === freeGameTitle) this.#freeGame(round)
    else this.#turnsOf(round)
    this.#clock += betweenRoundsSeconds
    this.#before = new Map()
  }

  #turnsOf(round: DesignRound): void {
    let named: readonly PlayerId[] = []
    for (let index = 0; index < round.turnCount; index += 1) {
      const start = this.#clock
      const end =
        start +
        round.turnSeconds +
        (this.practice.isTapped ? wholeBetween(this.at.random, { least: -6, most: 9 }) : 0)
      const present = listPresent(this.at.presence, { from: start, to: end })
      named = this.#keepersFor(round.stations, present, named)
      const areas = fitAreas(round.stations, { present: present.length, keepers: named.length })
      const stations = this.#call(areas, present, named)
      const chosenBy = round.title === choiceTitle ? (index % 2 === 0 ? 'attack' : 'defend') : null
      this.#play(
        { start, end, themeId: this.practice.themeId, stations, round: round.title, chosenBy },
        present,
      )
      this.#clock = end + round.gapSeconds
    }
  }

  /** One game over the whole area, the sides even, in two halves with the roles swapped. */
  #freeGame(round: DesignRound): void {
    const minutes = (round.turnCount * round.turnSeconds) / 60
    const whole = { from: this.#clock, to: this.#clock + minutes * 60 }
    const present = listPresent(this.at.presence, whole)
    const named = this.#keepersFor([{ attack: 0, defend: 0, keep: 1 }], present, [])
    const side = Math.floor((present.length - named.length) / 2)
    const games = this.#call([{ attack: side, defend: side, keep: named.length }], present, named)
    for (const turn of turnsOfFreeGame({
      start: whole.from,
      minutes,
      games,
      themeId: null,
      round: round.title,
    })) {
      // Whoever goes home at half-time was not there for the whole game; a late comer may still wait out the second half.
      this.#play(turn, listPresent(this.at.presence, { from: turn.start, to: turn.end }))
    }
    this.#clock = whole.to
  }

  /** Keepers stay for the round; one who has left is replaced. */
  #keepersFor(
    areas: readonly AreaShape[],
    present: readonly PlayerId[],
    named: readonly PlayerId[],
  ): readonly PlayerId[] {
    const wanted = Math.min(
      areas.reduce((sum, area) => sum + area.keep, 0),
      this.practice.goals,
    )
    const staying = named.filter((playerId) => present.includes(playerId))
    const willing = this.practice.keepers.filter((id) => present.includes(id) && !staying.includes(id))
    const able = willing.filter((id) => this.practice.able.has(id))
    const next = able.length + staying.length > 0 ? able : willing
    const owed = (playerId: PlayerId) => this.at.tally.of(playerId).keep
    return [...staying, ...next.toSorted((one, other) => owed(other) - owed(one))].slice(0, wanted)
  }

  #call(
    areas: readonly AreaShape[],
    present: readonly PlayerId[],
    keepers: readonly PlayerId[],
  ): readonly Station[] {
    const { neverOutnumbering } = this.practice
    const call = { areas, present, keepers, before: this.#before, waited: this.#waited, neverOutnumbering }
    return callTurn(call, this.at)
  }

  #play(turn: Turn, present: readonly PlayerId[]): void {
    this.turns.push(turn)
    const { able, inMind } = this.practice
    this.at.tally.record({ stations: turn.stations, present, able, seconds: turn.end - turn.start, inMind })
    const role = new Map(
      turn.stations.flatMap((station) =>
        (['attack', 'defend', 'keep'] as const).flatMap((side) =>
          station[side].map((id) => [id, side] as const),
        ),
      ),
    )
    this.#before = new Map(present.map((id) => [id, role.get(id) ?? 'rest']))
    this.#waited = new Map(present.map((id) => [id, role.has(id) ? 0 : (this.#waited.get(id) ?? 0) + 1]))
  }
}
