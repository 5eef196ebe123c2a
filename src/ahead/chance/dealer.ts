import type { PracticeToDeal } from '#ahead/chance/practice-to-deal'
import type { Standing } from '#ahead/chance/standing'

/** Who came: the first `count` places of `here` name players. */
export type Came = { readonly here: Int32Array; readonly count: number }

/** Plays a practice: adds to a standing what those who came got in it. */
export type Dealer = (practice: PracticeToDeal, came: Came, standing: Standing) => void
