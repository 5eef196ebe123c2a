import type { AheadRequest, RequestedPractice } from '#ahead/request'

export type Hold = NonNullable<RequestedPractice['held']>

/** The request with these practices held, those that are held already as they are. */
export function holdPractices(request: AheadRequest, holds: ReadonlyMap<string, Hold>): AheadRequest {
  return {
    ...request,
    practices: request.practices.map((practice) =>
      practice.held ? practice : { ...practice, held: holds.get(practice.id) ?? null },
    ),
  }
}

/** The request with one practice held by the coach, or (null) free again. */
export function holdOne(request: AheadRequest, id: string, held: Hold | null): AheadRequest {
  return {
    ...request,
    practices: request.practices.map((practice) => (practice.id === id ? { ...practice, held } : practice)),
  }
}
