import type { ViewerRole } from '#access/viewer'
import type { ChanceWord } from '#ahead/chance/chance-word'
import type { Role, Situation } from '#exposure/column'
import type { Attendance } from '#fairness/account'
import type { Line } from '#match/match'
import type { RegisterState } from '#squad/register'
import type { Written } from '#squad/written'
import { counted } from '#ui/plural'

type Kind = 'practice' | 'match'

/** The words of the pages, one per idea. Code and command keep the names of the trade; pages say these. */
export const words = {
  role: {
    attack: 'Attack',
    defend: 'Defence',
    keep: 'Goal',
    rest: 'Waiting',
  } satisfies Record<Role, string>,
  doing: {
    attack: 'attacking',
    defend: 'defending',
    keep: 'in goal',
    rest: 'waiting',
  } satisfies Record<Role, string>,
  roleLetter: { attack: 'A', defend: 'D', keep: 'K', rest: 'W' } satisfies Record<Role, string>,
  situation: {
    outnumbering: 'more of us',
    level: 'even',
    outnumbered: 'fewer of us',
  } satisfies Record<Situation, string>,
  line: { keeper: 'keeper', back: 'back', middle: 'middle', forward: 'forward' } satisfies Record<
    Line,
    string
  >,
  kind: { practice: 'Practice', match: 'Match' } satisfies Record<Kind, string>,
  kinds: { practice: 'Practices', match: 'Matches' } satisfies Record<Kind, string>,
  written: {
    tapped: 'tapped as it went',
    roundByRound: 'round by round',
    asPlanned: 'as planned',
    typedLater: 'typed in later',
    notWritten: 'not written down',
  } satisfies Record<Written, string>,
  register: {
    here: 'here',
    notPlaying: 'here, not playing',
    out: 'out for today',
  } satisfies Record<RegisterState, string>,
  attendance: {
    here: 'here',
    late: 'came late',
    left: 'left early',
    notPlaying: 'here, not playing',
    out: 'out for today',
    away: 'away',
  } satisfies Record<Attendance, string>,
  cause: { missed: 'missed', goalDuty: 'goal duty', whileHere: 'while here' },
  area: { one: 'area', many: 'areas' },
  correct: 'correct',
  luck: 'Luck or habit',
  chance: { likely: 'likely', even: 'even chance', unlikely: 'unlikely' } satisfies Record<
    ChanceWord,
    string
  >,
  plan: { make: 'Plan it', look: 'The plan' },
  lineUp: { make: 'Plan the line-up', look: 'The line-up' },
  sameTurn: 'same turn, places changed',
  themeMissed: { away: 'wasn’t there', noTurn: 'didn’t get a turn' },
  passed: 'was offered, passed',
  guests: 'Guests',
  notEnoughWritten: 'Not enough written down to say.',
  turns: (count: number) => counted(count, 'turn'),
  sessions: (count: number) => counted(count, 'session'),
  practices: (count: number) => counted(count, 'practice'),
  matches: (count: number) => counted(count, 'match', 'matches'),
  viewerRole: {
    administrator: 'administrator',
    headCoach: 'head coach',
    coach: 'coach',
    helper: 'helper',
    guardian: 'parent or guardian',
  } satisfies Record<ViewerRole, string>,
  tab: {
    today: 'Today',
    book: 'Season book',
    sessions: 'Practices and matches',
    themes: 'Themes',
    ahead: 'Weeks ahead',
    flags: 'Flags',
    families: 'Families',
    review: 'Review',
    policy: 'Policy',
    files: 'Files',
    club: 'Club',
  },
} as const

/** What a role is called where it was played: nobody waits in a match, they are off. */
export function roleWord(role: Role, kind: Kind): string {
  return kind === 'match' && role === 'rest' ? 'Off' : words.role[role]
}
