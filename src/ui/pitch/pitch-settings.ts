/** How this phone shows a practice; kept on the phone. */
export type PitchSettings = {
  /** False: one round on the screen, one tap a round. */
  readonly isBallByBall: boolean
  readonly countsPoints: boolean
}

export const firstSettings: PitchSettings = { isBallByBall: false, countsPoints: true }
