import type { Deed } from '#pitch/pitch-event'

/** Says that something happened; what comes first in the list was tapped first. */
export type OnDeeds = (deeds: readonly Deed[]) => void
