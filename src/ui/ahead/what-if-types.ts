import type { AheadRequest } from '#ahead/request'
import type { AheadSession } from '#ui/ahead/ahead-types'
import type { SendForm } from '#ui/entry/send-form'

export type WhatIfSends = { readonly move: SendForm; readonly cancel: SendForm; readonly away: SendForm }

/** What would be done in the book. */
export type WhatIfDeed =
  | { readonly kind: 'move'; readonly session: AheadSession; readonly day: string }
  | { readonly kind: 'drop'; readonly sessionId: string }
  | { readonly kind: 'away'; readonly playerId: string; readonly firstDay: string; readonly lastDay: string }

export type WhatIf = {
  readonly key: string
  readonly title: string
  readonly request: AheadRequest
  readonly deed: WhatIfDeed
}
