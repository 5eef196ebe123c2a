import 'server-only'
import { dayOf } from '#data/days'

/** What of a session stands beside each line of a child's copy. */
export const sessionColumns = {
  select: { day: true, kind: true, title: true, squad: { select: { name: true } } },
} as const

type SessionRow = {
  readonly day: Date
  readonly kind: 'practice' | 'match'
  readonly title: string
  readonly squad: { readonly name: string }
}

export function atSession({ day, kind, title, squad }: SessionRow) {
  return { day: dayOf(day), squad: squad.name, kind, title } as const
}

export function instant(date: Date): string {
  return date.toISOString()
}

export function instantOrNull(date: Date | null): string | null {
  return date?.toISOString() ?? null
}
