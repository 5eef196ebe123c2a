import type { Day } from '#common/time'
import type { PlayerId } from '#squad/player'

/** What a guardian agreed to, in which words. */
export type Consent = {
  readonly id: string
  readonly playerId: PlayerId
  readonly kind: string
  readonly wording: string
  readonly givenById: string | null
  readonly givenOn: Day
  /** From that day on it holds no more. */
  readonly withdrawnOn: Day | null
}

export function holdsOn(
  { givenOn, withdrawnOn }: Pick<Consent, 'givenOn' | 'withdrawnOn'>,
  day: Day,
): boolean {
  return givenOn <= day && (withdrawnOn === null || day < withdrawnOn)
}

/** Why a guardian's consent cannot be written down: the same stands already. */
export function standsAlready(
  consents: readonly Consent[],
  { kind, givenById, givenOn }: Pick<Consent, 'kind' | 'givenById' | 'givenOn'>,
): boolean {
  return consents.some((one) => one.kind === kind && one.givenById === givenById && holdsOn(one, givenOn))
}
