import type { Seconds } from '#common/time'
import type { Line } from '#match/match'
import type { PlayerId } from '#squad/player'
import type { PlacedPlayer } from '#touchline/match-deed'

/** Seconds from the kick-off of its period, as played; `to` null: it goes on. */
export type WalkedSpell = {
  readonly playerId: PlayerId
  readonly line: Line
  /** From 0. */
  readonly period: number
  readonly from: Seconds
  readonly to: Seconds | null
}

/** Who is on and since when, while a match is gone through, and the spells that came of it. */
export type SpellBook = {
  readonly kickOff: (period: number) => void
  /** These are on from a second of the running period on, and nobody else. */
  readonly put: (on: readonly PlacedPlayer[], second: Seconds) => void
  readonly takeOff: (id: PlayerId, second: Seconds) => void
  readonly whistle: (second: Seconds) => void
  readonly on: () => readonly PlacedPlayer[]
  readonly spells: () => readonly WalkedSpell[]
}

/** Spells without length are none; who stays in its line goes on in one spell. */
export function spellBook(): SpellBook {
  const spells: WalkedSpell[] = []
  const open = new Map<PlayerId, { readonly line: Line; readonly from: Seconds }>()
  let period = 0
  const takeOff = (playerId: PlayerId, to: Seconds) => {
    const spell = open.get(playerId)
    open.delete(playerId)
    if (spell && spell.from < to) spells.push({ playerId, line: spell.line, period, from: spell.from, to })
  }
  return {
    kickOff: (of) => {
      open.clear()
      period = of
    },
    put: (on, second) => {
      const lineOf = new Map(on.map(({ playerId, line }) => [playerId, line]))
      for (const [id, { line }] of [...open]) if (lineOf.get(id) !== line) takeOff(id, second)
      for (const [id, line] of lineOf) if (!open.has(id)) open.set(id, { line, from: second })
    },
    takeOff,
    whistle: (second) => {
      for (const id of [...open.keys()]) takeOff(id, second)
    },
    on: () => [...open].map(([playerId, { line }]) => ({ playerId, line })),
    spells: () => [
      ...spells,
      ...[...open].map(([playerId, { line, from }]) => ({ playerId, line, period, from, to: null })),
    ],
  }
}
