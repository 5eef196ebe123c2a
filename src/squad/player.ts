export type PlayerId = string

/** A child of the club as coaches see it. No birth date, no sex, no rating: the book needs none. */
export type Player = {
  readonly id: PlayerId
  readonly name: string
  /** May be put in goal, as it stands today; on other days see `keepsOn`. False: asked not to keep. */
  readonly keeps: boolean
  /** Asked to keep: being short of goal is then worth a flag. */
  readonly wantsToKeep: boolean
}
