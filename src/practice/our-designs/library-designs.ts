import type { OurDesign } from '#practice/our-designs/design-parts'
import { backToBack, keepItWarm } from '#practice/our-designs/extra-player-designs'
import { doorOrWindow, farShore, lateLamp, outOfTheYard } from '#practice/our-designs/with-the-ball-designs'
import {
  closeTheNet,
  longWayRound,
  threeLoudSeconds,
  twoFerries,
} from '#practice/our-designs/without-the-ball-designs'

/** More of our own, all invented; no practice of the demo's season has used them yet. */
export const libraryDesigns: readonly OurDesign[] = [
  backToBack,
  outOfTheYard,
  keepItWarm,
  doorOrWindow,
  closeTheNet,
  threeLoudSeconds,
  lateLamp,
  longWayRound,
  farShore,
  twoFerries,
]
