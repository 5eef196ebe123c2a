import type { Role, Situation } from '#exposure/column'

/**
 * Columns of seats in a practice: a role with the situation of its side. `Alone` has nobody opposite, so no situation.
 * Waiting is no seat: it is what is left of the time that a player is there.
 */
export const seatColumns = [
  'attackOutnumbering',
  'attackLevel',
  'attackOutnumbered',
  'attackAlone',
  'defendOutnumbering',
  'defendLevel',
  'defendOutnumbered',
  'defendAlone',
  'keep',
] as const
export type SeatColumn = (typeof seatColumns)[number]

/** Seconds by seat column. */
export type SeatSeconds = Readonly<Record<SeatColumn, number>>

export const noSeats: SeatSeconds = {
  attackOutnumbering: 0,
  attackLevel: 0,
  attackOutnumbered: 0,
  attackAlone: 0,
  defendOutnumbering: 0,
  defendLevel: 0,
  defendOutnumbered: 0,
  defendAlone: 0,
  keep: 0,
}

export const seatMeaning: Readonly<
  Record<SeatColumn, { readonly role: Exclude<Role, 'rest'>; readonly situation: Situation | null }>
> = {
  attackOutnumbering: { role: 'attack', situation: 'outnumbering' },
  attackLevel: { role: 'attack', situation: 'level' },
  attackOutnumbered: { role: 'attack', situation: 'outnumbered' },
  attackAlone: { role: 'attack', situation: null },
  defendOutnumbering: { role: 'defend', situation: 'outnumbering' },
  defendLevel: { role: 'defend', situation: 'level' },
  defendOutnumbered: { role: 'defend', situation: 'outnumbered' },
  defendAlone: { role: 'defend', situation: null },
  keep: { role: 'keep', situation: null },
}
