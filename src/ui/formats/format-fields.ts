import type { MatchFormat } from '#match/format/match-format'
import { textOfShape } from '#match/format/shape-text'

type OneField = { readonly name: string; readonly label: string; readonly hint?: string }

/** What is typed, as it stands in a format. */
export type TextField = OneField & {
  readonly value: (format: MatchFormat) => string
  readonly isNumber?: boolean
  readonly isNeeded?: boolean
}

/** What is ticked. */
export type TickField = OneField & { readonly isTicked: (format: MatchFormat) => boolean }

/** Fields of the form of a format that belong together, in their order. */
export type FieldGroup = {
  readonly title: string
  readonly note?: string
  readonly fields: readonly (TextField | TickField)[]
}

const minutes = (seconds: number | null) => (seconds === null ? '' : String(Math.round(seconds / 6) / 10))
const number = (value: number | null | undefined) => String(value ?? '')

export const fieldGroups: readonly FieldGroup[] = [
  {
    title: 'Players',
    fields: [
      {
        name: 'aSide',
        label: 'Players a side',
        hint: 'On the pitch at once, the keeper too: 3 to 11.',
        isNumber: true,
        isNeeded: true,
        value: ({ aSide }) => number(aSide),
      },
      { name: 'hasKeeper', label: 'One of them keeps goal', isTicked: ({ hasKeeper }) => hasKeeper },
      {
        name: 'shapes',
        label: 'Shapes',
        hint: 'From back to front, without the keeper, such as 2-3-1, 3-2-1. The first is the one to begin with.',
        isNeeded: true,
        value: ({ shapes }) => shapes.map(textOfShape).join(', '),
      },
    ],
  },
  {
    title: 'Time',
    fields: [
      {
        name: 'periods',
        label: 'Periods',
        hint: 'Halves, thirds, quarters, or the short games of a day: 1 to 12.',
        isNumber: true,
        isNeeded: true,
        value: ({ periodSeconds }) => number(periodSeconds.length),
      },
      {
        name: 'minutes',
        label: 'Minutes of each period',
        hint: 'Such as 25. Where they differ, one for each with spaces between: 20 20 10.',
        isNeeded: true,
        value: ({ periodSeconds }) =>
          [...(new Set(periodSeconds).size === 1 ? periodSeconds.slice(0, 1) : periodSeconds)]
            .map(minutes)
            .join(' '),
      },
      {
        name: 'breakMinutes',
        label: 'Minutes between two periods',
        isNeeded: true,
        value: ({ breakSeconds }) => minutes(breakSeconds),
      },
      {
        name: 'isShortGames',
        label: 'Each period is a game of its own',
        hint: 'A day of many short games, against one or several clubs.',
        isTicked: ({ isShortGames }) => isShortGames,
      },
    ],
  },
  {
    title: 'Changes',
    fields: [
      {
        name: 'mostSubstitutions',
        label: 'How many players may come on in a match',
        hint: 'Empty: as many as one likes.',
        isNumber: true,
        value: ({ mostSubstitutions }) => number(mostSubstitutions),
      },
      {
        name: 'changesAtBreaksOnly',
        label: 'Changes between periods only',
        isTicked: ({ changesAtBreaksOnly }) => changesAtBreaksOnly,
      },
      {
        name: 'mayReturn',
        label: 'Whoever came off may come on again',
        isTicked: ({ mayReturn }) => mayReturn,
      },
    ],
  },
  {
    title: 'Least time',
    note: 'What everyone is promised of each match. Where both are empty, the club’s fair-play policy says. Where both are written, the more counts.',
    fields: [
      {
        name: 'leastShare',
        label: 'Part of the time there, in per cent',
        hint: '50 is half of the match.',
        value: ({ leastTime }) =>
          leastTime.share === null ? '' : String(Math.round(leastTime.share * 1000) / 10),
      },
      {
        name: 'leastPeriods',
        label: 'Whole periods, for whoever is there throughout',
        hint: 'Such as 3, where there are four.',
        isNumber: true,
        value: ({ leastTime }) => number(leastTime.periods),
      },
      {
        name: 'wherePossible',
        label: 'Where it is possible',
        hint: 'With too many players for it, as much of it as everybody can have.',
        isTicked: ({ leastTime }) => leastTime.wherePossible,
      },
    ],
  },
  {
    title: 'Limits',
    note: 'Empty: no limit.',
    fields: [
      {
        name: 'mostKeeperPeriods',
        label: 'Periods in goal for one player, at most',
        isNumber: true,
        value: ({ mostKeeperPeriods }) => number(mostKeeperPeriods),
      },
      {
        name: 'mostMinutesADay',
        label: 'Minutes of one player in a day, at most',
        hint: 'All matches of the day together. What is right for an age is for your body and your doctors to say.',
        value: ({ mostSecondsADay }) => minutes(mostSecondsADay),
      },
      {
        name: 'mostPlayers',
        label: 'Players on the list of a match, at most',
        isNumber: true,
        value: ({ mostPlayers }) => number(mostPlayers),
      },
      {
        name: 'fewestPlayers',
        label: 'A match is not begun with fewer than',
        isNumber: true,
        value: ({ fewestPlayers }) => number(fewestPlayers),
      },
      {
        name: 'agesFrom',
        label: 'For squads from under',
        hint: '9 for the under-nines.',
        isNumber: true,
        value: ({ ages }) => number(ages?.[0]),
      },
      { name: 'agesTo', label: 'to under', isNumber: true, value: ({ ages }) => number(ages?.[1]) },
    ],
  },
]

export const nameField: TextField = {
  name: 'name',
  label: 'Name',
  isNeeded: true,
  value: (format) => format.name,
}

/** Who says so: not asked of a format that was taken over, which keeps what it came with. */
export const sourceFields: readonly TextField[] = [
  {
    name: 'sourceBody',
    label: 'Who says so',
    hint: 'Your league or association. Empty: the club itself.',
    value: ({ source }) => source?.body ?? '',
  },
  { name: 'sourceSeason', label: 'For which season', value: ({ source }) => source?.season ?? '' },
  { name: 'sourceReadAt', label: 'Where it can be read', value: ({ source }) => source?.readAt ?? '' },
]

export const noteLabel = 'Note'

/** The field for whoever comes late, during a period (from 1). */
export function lateField(arrivesIn: number): TextField {
  return {
    name: `late-${arrivesIn}`,
    label: `Whole periods for whoever comes during period ${arrivesIn}`,
    isNumber: true,
    value: ({ leastTime }) =>
      number(leastTime.late.find((late) => late.arrivesIn === arrivesIn)?.periods ?? null),
  }
}

/** Labels by the name of the field, for what is said of it. */
export const formatPlaces: Readonly<Record<string, string>> = Object.fromEntries(
  [
    nameField,
    ...fieldGroups.flatMap(({ fields }) => fields),
    ...sourceFields,
    ...Array.from({ length: 12 }, (_, index) => lateField(index + 1)),
    { name: 'note', label: noteLabel },
  ].map(({ name, label }) => [name, label]),
)
