import type { Interval } from '#common/time'
import type { PlayerId } from '#squad/player'

/** `here` may be given a turn; `notPlaying` is there but not playing; `out` is out for today (any knock to the head): no turn again today. */
export type RegisterState = 'here' | 'notPlaying' | 'out'

export type RegisterLine = Interval & { readonly playerId: PlayerId; readonly state: RegisterState }
