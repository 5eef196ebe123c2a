import type { PlanRequest } from '#planning/practice-plan'

/** A request near to one that has no plan, for which there is one; and what it changes, in sentences. */
export type WayOut = { readonly sentences: readonly string[]; readonly request: PlanRequest }
