import type { Day } from '#common/time'

export const childFormat = 'turnbook/child@1'

/** Where and when something of a practice or match was. */
type At = {
  readonly day: Day
  readonly squad: string
  readonly kind: 'practice' | 'match'
  readonly title: string
}

/**
 * Everything that is kept about one child, with nothing of any other. Days are `YYYY-MM-DD`, instants UTC by RFC 3339,
 * times inside a practice or match whole seconds from its start. It is the schema of the file `turnbook/child@1`; `about`
 * says in it, part by part, what each means.
 */
export type ChildCopy = {
  readonly format: typeof childFormat
  readonly madeAt: string
  readonly club: { readonly name: string; readonly askWhom: string; readonly keptMonths: number | null }
  readonly about: Readonly<Record<string, string>>
  readonly child: {
    readonly id: string
    readonly name: string
    readonly mayKeepGoal: boolean
    readonly asksToKeepGoal: boolean
    readonly codeInFiles: string | null
    readonly cameAsGuestOn: Day | null
    readonly erasedAt: string | null
  }
  readonly asGuest: readonly { readonly id: string; readonly name: string; readonly since: Day | null }[]
  readonly squads: readonly { readonly squad: string; readonly firstDay: Day; readonly lastDay: Day | null }[]
  readonly guardians: readonly {
    readonly name: string
    readonly email: string | null
    readonly recordedAt: string
    readonly claimedAt: string | null
    readonly withholdsComing: boolean
  }[]
  readonly keepsGoal: readonly { readonly day: Day; readonly may: boolean; readonly recordedAt: string }[]
  readonly lines: readonly { readonly line: string; readonly said: 'likes' | 'learning' | 'notYet' }[]
  readonly away: readonly { readonly firstDay: Day; readonly lastDay: Day }[]
  readonly register: readonly (At & {
    readonly state: string
    readonly from: number
    readonly to: number
    readonly recordedAt: string
    readonly correctedAt: string | null
  })[]
  readonly turns: readonly (At & {
    readonly from: number
    readonly to: number
    readonly round: string | null
    readonly theme: string | null
    readonly area: number
    readonly role: string
    readonly situation: 'more of us' | 'even' | 'fewer of us' | null
    readonly recordedAt: string
    readonly correctedAt: string | null
  })[]
  readonly passed: readonly (At & {
    readonly role: string
    readonly lengthSeconds: number
    readonly recordedAt: string
    readonly correctedAt: string | null
  })[]
  readonly spells: readonly (At & {
    readonly line: string
    readonly from: number
    readonly to: number
    readonly recordedAt: string
    readonly correctedAt: string | null
  })[]
  readonly sums: readonly (At & {
    readonly role: string
    readonly situation: string | null
    readonly line: string | null
    readonly theme: string | null
    readonly seconds: number
    readonly turns: number
    readonly evenShareSeconds: number
    readonly evenShareTurns: number
    readonly evenShareHadItBeenThereSeconds: number
    readonly evenShareHadAllKeptGoalSeconds: number
    readonly asMember: boolean
  })[]
  readonly attendance: readonly (At & {
    readonly attendance: string
    readonly secondsOfPlay: number
    readonly turnsThereFor: number
    readonly mostTurnsWaitedInARow: number
    readonly asMember: boolean
  })[]
  readonly flags: readonly {
    readonly squad: string
    readonly season: string
    readonly rule: string
    readonly of: 'practice' | 'match'
    readonly subject: string
    readonly status: string
    readonly since: Day
    readonly differenceSeconds: number
    readonly toleranceSeconds: number
    readonly size: number
    readonly detail: unknown
    readonly answeredAt: string | null
    readonly answer: string | null
    readonly endedAt: string | null
  }[]
  readonly agreements: readonly {
    readonly kind: string
    readonly partOfEvenShare: number | null
    readonly firstDay: Day
    readonly lastDay: Day | null
  }[]
  readonly pairs: readonly {
    readonly squad: string
    readonly kind: 'apart' | 'together'
    readonly firstDay: Day
    readonly lastDay: Day | null
  }[]
  readonly plans: readonly (At & {
    readonly expected: Readonly<Record<string, unknown>> | null
    readonly heldInPlace: readonly unknown[]
    readonly places: readonly Place[]
  })[]
  readonly matchPlans: readonly (At & {
    readonly expected: Readonly<Record<string, unknown>>
    readonly heldInPlace: readonly unknown[]
    readonly times: readonly { readonly line: string; readonly from: number; readonly to: number }[]
  })[]
  readonly pitch: readonly (At & {
    readonly at: string
    readonly what: string
    readonly said: Readonly<Record<string, unknown>>
    readonly places: readonly Place[]
  })[]
  readonly familyPages: readonly {
    readonly squad: string
    readonly season: string
    readonly confirmedAt: string
    readonly showsFrom: string
    readonly page: unknown
  }[]
  readonly familyNotes: readonly {
    readonly squad: string
    readonly text: string
    readonly writtenAt: string
  }[]
  readonly requests: readonly {
    readonly kind: string
    readonly text: string
    readonly askedBy: string
    readonly receivedOn: Day
    readonly dueOn: Day
    readonly extendedTo: Day | null
    readonly extendedWhy: string
    readonly outcome: string | null
    readonly answer: string
    readonly answeredAt: string | null
  }[]
  readonly consents: readonly {
    readonly kind: string
    readonly wording: string
    readonly givenBy: string
    readonly givenOn: Day
    readonly withdrawnOn: Day | null
    readonly recordedAt: string
  }[]
  readonly links: readonly {
    readonly kind: string
    readonly madeAt: string
    readonly expiresAt: string
    readonly usedAt: string | null
    readonly takenBackAt: string | null
  }[]
  readonly mentions: readonly { readonly where: string; readonly text: string }[]
  readonly record: readonly { readonly at: string; readonly byRole: string; readonly what: string }[]
}

/** Its own place in one turn of a plan, counted from 1. */
export type Place = { readonly turn: number; readonly area: number; readonly role: string }

export const aboutParts: Readonly<Record<Exclude<keyof ChildCopy, 'format' | 'madeAt' | 'about'>, string>> = {
  club: 'The club that keeps this, whom it names for questions, and for how many months after a child leaves it keeps names (null: not decided).',
  child: 'The child as the book knows it. No birth date, address, sex or medical detail is kept.',
  asGuest: 'Entries made when the child came as a guest, before it was known who it was.',
  squads: 'From when to when the child belonged to which squad.',
  guardians:
    'Parents and carers whom the club has written down. In a copy for one of them, the others are left out.',
  keepsGoal: 'From which day on the child may be put in goal or asks not to be.',
  lines:
    'What was said of lines in matches: that the child likes one, is learning it, or is not to be put there yet.',
  away: 'Days on which it is known to be away, so that plans do not count on it. No reason is kept.',
  register: 'Who was there: from and to in seconds from the start. A line that was corrected says when.',
  turns: 'Every ball or short game the child had a place in, with its own place only.',
  passed: 'Turns it was offered and passed.',
  spells: 'Its times in matches, by line.',
  sums: 'What was added up from the above for each practice and match: seconds and turns it had, and what an even sharing would have given it.',
  attendance: 'What was added up of its attendance.',
  flags: 'What the book pointed out to the coach about this child’s share, and what the coach answered.',
  agreements:
    'What was agreed with the family. No reason is kept. If a first partner was named, that child is left out.',
  pairs:
    'That the child was to be kept apart from, or together with, another. The other child is left out; no reason is kept.',
  plans: 'How practices were planned for this child: its own places only.',
  matchPlans:
    'How matches were planned for this child: what was due to it from earlier ones, and its own times only, in seconds of play.',
  pitch: 'What was tapped at the pitch about this child.',
  familyPages: 'The pages that were confirmed for the family, as they were shown.',
  familyNotes: 'The coach’s note for the family.',
  requests:
    'What was asked about what is kept, and the answers. In a copy for one guardian, only that guardian’s own.',
  consents: 'What a guardian agreed to, in the words that were used.',
  links: 'Links that were made for the family. The secret part of a link is not kept.',
  mentions: 'Other texts in the book that hold the child’s name. Names of other children are left out.',
  record: 'Who changed or looked at something of this child, and when: by role, without a name.',
}
