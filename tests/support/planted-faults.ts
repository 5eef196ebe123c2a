import { smallSeason } from './small-season'

type Season = ReturnType<typeof smallSeason>

/** A fault to plant in the small season: which refusal it must bring, at which path, in which words. */
export type PlantedFault = {
  readonly refusal: string
  /** Changes the season; whatever it returns takes the season's place. */
  readonly plant: (season: Season) => unknown
  readonly path: string
  readonly says: RegExp
}

// Written through this, a fault can put a value where its type forbids it.
const loose = (value: object) => value as { [key: string]: unknown }

const practice = (season: Season) => season.practices[0] as Season['practices'][number]
const match = (season: Season) => season.matches[0] as Season['matches'][number]
const turn = (season: Season, index: number) =>
  practice(season).turns[index] as Season['practices'][number]['turns'][number]
const spell = (season: Season, index: number) =>
  match(season).spells[index] as Season['matches'][number]['spells'][number]

const seats: readonly PlantedFault[] = [
  {
    refusal: 'a player in two seats of a turn',
    plant: (s) => turn(s, 1).stations.push({ defend: ['p1'] }),
    path: 'practices[0].turns[1].stations[2].defend[0]',
    says: /"p1" has a second seat in this turn; one seat/,
  },
  {
    refusal: 'a player twice in one list of seats',
    plant: (s) => turn(s, 0).stations[0]?.attack?.push('p1'),
    path: 'practices[0].turns[0].stations[0].attack[2]',
    says: /second seat/,
  },
  {
    refusal: 'a player seated while away',
    plant: (s) => turn(s, 0).stations.push({ keep: ['p4'] }),
    path: 'practices[0].turns[0].stations[1].keep[0]',
    says: /"p4" has a seat but is not there from 300 to 345; a register line over all of the turn/,
  },
  {
    refusal: 'a player seated while there for a part of the turn',
    plant: (s) => Object.assign(practice(s).register[3] as object, { from: 301 }),
    path: 'practices[0].turns[0].stations[0].defend[0]',
    says: /"p3" has a seat but is not there/,
  },
  {
    refusal: 'a player with a gap inside the turn',
    plant: (s) =>
      practice(s).register.splice(
        0,
        1,
        { player: 'p1', from: 0, to: 320 },
        { player: 'p1', from: 321, to: 3600 },
      ),
    path: 'practices[0].turns[0].stations[0].attack[0]',
    says: /"p1" has a seat but is not there/,
  },
  {
    refusal: 'a spell while not there for all of it',
    plant: (s) => Object.assign(spell(s, 2), { start: 599 }),
    path: 'matches[0].spells[2]',
    says: /goes from 599 to 1500, but "p4" is not there for all of it/,
  },
]

const ids: readonly PlantedFault[] = [
  {
    refusal: 'an unknown player in a register',
    plant: (s) => practice(s).register.push({ player: 'p9', from: 0, to: 10 }),
    path: 'practices[0].register[4].player',
    says: /"p9" is not an id of players; one that is listed there/,
  },
  {
    refusal: 'an unknown player in a seat',
    plant: (s) => turn(s, 1).stations.push({ attack: ['constructor'] }),
    path: 'practices[0].turns[1].stations[2].attack[0]',
    says: /"constructor" is not an id of players/,
  },
  {
    refusal: 'an unknown player in the register of a match',
    plant: (s) => match(s).register.push({ player: '__proto__', from: 0, to: 10 }),
    path: 'matches[0].register[3].player',
    says: /"__proto__" is not an id of players/,
  },
  {
    refusal: 'an unknown player in a spell',
    plant: (s) => Object.assign(spell(s, 0), { player: 'P1' }),
    path: 'matches[0].spells[0].player',
    says: /"P1" is not an id of players/,
  },
  {
    refusal: 'an unknown parent of a theme',
    plant: (s) => s.themes?.push({ id: 't3', parent: 'unlisted' }),
    path: 'themes[2].parent',
    says: /"unlisted" is not an id of themes/,
  },
  {
    refusal: 'a doubled player',
    plant: (s) => s.players.push({ id: 'p1' }),
    path: 'players[4].id',
    says: /"p1" is used twice; an id of its own for each player/,
  },
  {
    refusal: 'a doubled theme',
    plant: (s) => s.themes?.push({ id: 't1', parent: null }),
    path: 'themes[2].id',
    says: /"t1" is used twice/,
  },
  {
    refusal: 'a doubled practice',
    plant: (s) => s.practices.push({ id: 's1', date: '2026-09-08', register: [], turns: [] }),
    path: 'practices[2].id',
    says: /"s1" is used twice/,
  },
  {
    refusal: 'a match with the id of a practice',
    plant: (s) => Object.assign(match(s), { id: 's2' }),
    path: 'matches[0].id',
    says: /"s2" is used twice/,
  },
  {
    refusal: 'a doubled match',
    plant: (s) => s.matches.push({ ...match(s) }),
    path: 'matches[1].id',
    says: /"m1" is used twice/,
  },
]

const days: readonly PlantedFault[] = [
  '2026-02-29',
  '2026-13-01',
  '2026-04-31',
  '2026-9-01',
  '01.09.2026',
  '',
  '0000-01-01',
].map((date) => ({
  refusal: `${JSON.stringify(date)} is not in the calendar`,
  plant: (s) => Object.assign(practice(s), { date }),
  path: 'practices[0].date',
  says: /a day of the calendar as YYYY-MM-DD would be right/,
}))

const times: readonly PlantedFault[] = [
  {
    refusal: 'a day of a match that is not in the calendar',
    plant: (s) => Object.assign(match(s), { date: '2100-02-29' }),
    path: 'matches[0].date',
    says: /"2100-02-29"; a day of the calendar/,
  },
  {
    refusal: 'turns that overlap',
    plant: (s) => Object.assign(turn(s, 1), { start: 344 }),
    path: 'practices[0].turns[1]',
    says: /starts at 344, before an earlier turn ends at 345; turns in order of time/,
  },
  {
    refusal: 'turns out of order',
    plant: (s) => practice(s).turns.reverse(),
    path: 'practices[0].turns[1]',
    says: /starts at 360, before an earlier turn ends at 465/,
  },
  {
    refusal: 'periods that overlap',
    plant: (s) => match(s).periods.push({ start: 3000, end: 3600 }),
    path: 'matches[0].periods[2]',
    says: /starts at 3000, before an earlier period ends at 3300/,
  },
  {
    refusal: 'periods out of order',
    plant: (s) => match(s).periods.reverse(),
    path: 'matches[0].periods[1]',
    says: /starts at 0, before an earlier period ends at 3300/,
  },
  {
    refusal: 'a turn of no length',
    plant: (s) => Object.assign(turn(s, 2), { end: 405 }),
    path: 'practices[0].turns[2]',
    says: /goes from 405 to 405; an "end" after its "start"/,
  },
  {
    refusal: 'a turn backwards',
    plant: (s) => Object.assign(turn(s, 2), { start: 500, end: 465 }),
    path: 'practices[0].turns[2]',
    says: /goes from 500 to 465/,
  },
  {
    refusal: 'a period of no length',
    plant: (s) => match(s).periods.push({ start: 3300, end: 3300 }),
    path: 'matches[0].periods[2]',
    says: /goes from 3300 to 3300/,
  },
  {
    refusal: 'a period backwards',
    plant: (s) => match(s).periods.push({ start: 3400, end: 3350 }),
    path: 'matches[0].periods[2]',
    says: /goes from 3400 to 3350/,
  },
  {
    refusal: 'a spell of no length',
    plant: (s) => match(s).spells.push({ player: 'p4', line: 'back', start: 1800, end: 1800 }),
    path: 'matches[0].spells[4]',
    says: /goes from 1800 to 1800/,
  },
  {
    refusal: 'a spell backwards',
    plant: (s) => Object.assign(spell(s, 3), { start: 3300, end: 1800 }),
    path: 'matches[0].spells[3]',
    says: /goes from 3300 to 1800/,
  },
  {
    refusal: 'a register line of no length',
    plant: (s) => practice(s).register.push({ player: 'p4', from: 7, to: 7 }),
    path: 'practices[0].register[4]',
    says: /goes from 7 to 7; a "to" after its "from"/,
  },
  {
    refusal: 'a register line backwards',
    plant: (s) => match(s).register.push({ player: 'p2', from: 10, to: 5 }),
    path: 'matches[0].register[3]',
    says: /goes from 10 to 5/,
  },
  {
    refusal: 'overlapping register lines of one player',
    plant: (s) => Object.assign(practice(s).register[2] as object, { from: 1799 }),
    path: 'practices[0].register[2]',
    says: /"p2" is there from 1799 to 3600 and, in register\[1\], from 0 to 1800/,
  },
  {
    refusal: 'one register line twice',
    plant: (s) => match(s).register.push({ player: 'p1', from: 0, to: 3300 }),
    path: 'matches[0].register[3]',
    says: /lines of one player that do not overlap/,
  },
  {
    refusal: 'overlapping spells of one player',
    plant: (s) => match(s).spells.push({ player: 'p3', line: 'back', start: 899, end: 1000 }),
    path: 'matches[0].spells[4]',
    says: /"p3" is already in spells\[1\] then/,
  },
  {
    refusal: 'a spell that runs over a break',
    plant: (s) => Object.assign(spell(s, 2), { end: 1900 }),
    path: 'matches[0].spells[2]',
    says: /goes from 900 to 1900, which no period holds; a spell inside one period/,
  },
  {
    refusal: 'a spell over two periods that touch',
    plant: (s) => {
      match(s).periods = [
        { start: 0, end: 1200 },
        { start: 1200, end: 3300 },
      ]
      match(s).spells = [{ player: 'p1', line: 'back', start: 1100, end: 1300 }]
    },
    path: 'matches[0].spells[0]',
    says: /which no period holds/,
  },
  {
    refusal: 'a turn after the end of the practice',
    plant: (s) => Object.assign(practice(s), { lengthSeconds: 464 }),
    path: 'practices[0].turns[2]',
    says: /ends at 465, after the practice does; an end of 464 at most/,
  },
]

const numbers: readonly PlantedFault[] = [
  ...[-1, 1.5, 2 ** 53].map((value) => ({
    refusal: `${value} seconds in a register`,
    plant: (s: Season) => Object.assign(practice(s).register[0] as object, { to: value }),
    path: 'practices[0].register[0].to',
    says: new RegExp(`is ${value}; a whole number of seconds, 0 or more`),
  })),
  {
    refusal: 'fractional seconds in a turn',
    plant: (s) => Object.assign(turn(s, 0), { start: 300.5 }),
    path: 'practices[0].turns[0].start',
    says: /is 300.5; a whole number/,
  },
  {
    refusal: 'negative seconds in a turn',
    plant: (s) => Object.assign(turn(s, 0), { start: -300 }),
    path: 'practices[0].turns[0].start',
    says: /is -300; a whole number/,
  },
  {
    refusal: 'fractional seconds in a period',
    plant: (s) => Object.assign(match(s).periods[1] as object, { end: 3300.25 }),
    path: 'matches[0].periods[1].end',
    says: /is 3300.25/,
  },
  {
    refusal: 'fractional seconds in a spell',
    plant: (s) => Object.assign(spell(s, 1), { end: 899.9 }),
    path: 'matches[0].spells[1].end',
    says: /is 899.9/,
  },
  {
    refusal: 'a negative length',
    plant: (s) => Object.assign(s.practices[1] as object, { lengthSeconds: -1 }),
    path: 'practices[1].lengthSeconds',
    says: /is -1/,
  },
  {
    refusal: 'fractional tolerance',
    plant: (s) => Object.assign(s, { policy: { toleranceSeconds: 0.5 } }),
    path: 'policy.toleranceSeconds',
    says: /is 0.5; a whole number of seconds, 0 or more/,
  },
  {
    refusal: 'negative tolerance',
    plant: (s) => Object.assign(s, { policy: { toleranceSeconds: -600 } }),
    path: 'policy.toleranceSeconds',
    says: /is -600/,
  },
  {
    refusal: 'a tolerance share above one',
    plant: (s) => Object.assign(s, { policy: { toleranceShare: 15 } }),
    path: 'policy.toleranceShare',
    says: /is 15; a share from 0 to 1/,
  },
  {
    refusal: 'a tolerance share below zero',
    plant: (s) => Object.assign(s, { policy: { toleranceShare: -0.1 } }),
    path: 'policy.toleranceShare',
    says: /is -0.1; a share from 0 to 1/,
  },
  {
    refusal: 'a middle share above one',
    plant: (s) => Object.assign(s, { policy: { middleAttackShare: 1.01 } }),
    path: 'policy.middleAttackShare',
    says: /is 1.01; a share from 0 to 1/,
  },
]

const shapes: readonly PlantedFault[] = [
  ...['[]', '7', 'null', '"log"'].map((text) => ({
    refusal: `${text} in place of a log`,
    plant: () => JSON.parse(text),
    path: '$',
    says: /; an object would be right/,
  })),
  {
    refusal: 'another format',
    plant: (s) => Object.assign(s, { format: 'turnbook/season-log@2' }),
    path: 'format',
    says: /is "turnbook\/season-log@2"; "turnbook\/season-log@1" would be right/,
  },
  {
    refusal: 'no format',
    plant: (s) => delete loose(s).format,
    path: 'format',
    says: /is missing; "turnbook\/season-log@1" would be right/,
  },
  ...[
    ['players', (s: Season) => delete loose(s).players, 'a list'],
    ['themes[0].parent', (s: Season) => delete loose(s.themes?.[0] ?? {}).parent, 'text'],
    ['practices[0].id', (s: Season) => delete loose(practice(s)).id, 'text'],
    ['practices[0].date', (s: Season) => delete loose(practice(s)).date, 'text'],
    ['practices[0].register', (s: Season) => delete loose(practice(s)).register, 'a list'],
    ['practices[0].turns', (s: Season) => delete loose(practice(s)).turns, 'a list'],
    ['practices[0].turns[2].stations', (s: Season) => delete loose(turn(s, 2)).stations, 'a list'],
    ['practices[0].turns[2].end', (s: Season) => delete loose(turn(s, 2)).end, 'a number'],
    ['matches[0].periods', (s: Season) => delete loose(match(s)).periods, 'a list'],
    ['matches[0].spells', (s: Season) => delete loose(match(s)).spells, 'a list'],
    ['matches[0].spells[0].line', (s: Season) => delete loose(spell(s, 0)).line, 'one of "keeper"'],
  ].map(([path, plant, right]) => ({
    refusal: `${path} is missing`,
    plant: plant as (season: Season) => unknown,
    path: path as string,
    says: new RegExp(`is missing; .*${String(right).replace('one of ', '')}.* would be right`),
  })),
  ...[
    ['surprise', (s: Season) => s],
    ['policy.surprise', (s: Season) => s.policy],
    ['players[1].surprise', (s: Season) => s.players[1]],
    ['themes[0].surprise', (s: Season) => s.themes?.[0]],
    ['practices[0].surprise', (s: Season) => practice(s)],
    ['practices[0].register[0].surprise', (s: Season) => practice(s).register[0]],
    ['practices[0].turns[2].surprise', (s: Season) => turn(s, 2)],
    ['practices[0].turns[0].stations[0].surprise', (s: Season) => turn(s, 0).stations[0]],
    ['matches[0].surprise', (s: Season) => match(s)],
    ['matches[0].periods[1].surprise', (s: Season) => match(s).periods[1]],
    ['matches[0].register[0].surprise', (s: Season) => match(s).register[0]],
    ['matches[0].spells[0].surprise', (s: Season) => spell(s, 0)],
  ].map(([path, where]) => ({
    refusal: `an unknown key ${path}`,
    plant: (s: Season) => Object.assign((where as (season: Season) => object)(s), { surprise: 1 }),
    path: path as string,
    says: /is not a key of this format; leave it out/,
  })),
  {
    refusal: 'an unknown key called __proto__',
    plant: (s) => Object.defineProperty(practice(s), '__proto__', { value: 1, enumerable: true }),
    path: 'practices[0].__proto__',
    says: /is not a key of this format/,
  },
  {
    refusal: 'a line of another name',
    plant: (s) => Object.assign(spell(s, 0), { line: 'goalkeeper' }),
    path: 'matches[0].spells[0].line',
    says: /is "goalkeeper"; "keeper" or "back" or "middle" or "forward" would be right/,
  },
  {
    refusal: 'seconds written as text',
    plant: (s) => Object.assign(turn(s, 0), { start: '300' }),
    path: 'practices[0].turns[0].start',
    says: /is "300"; a number would be right/,
  },
  {
    refusal: 'a number in place of a player',
    plant: (s) => Object.assign(turn(s, 0).stations[0] as object, { attack: ['p1', 2] }),
    path: 'practices[0].turns[0].stations[0].attack[1]',
    says: /is 2; text would be right/,
  },
  {
    refusal: 'null in place of a theme',
    plant: (s) => Object.assign(turn(s, 2), { theme: null }),
    path: 'practices[0].turns[2].theme',
    says: /is null; text would be right/,
  },
  {
    refusal: 'a word in place of keeps',
    plant: (s) => Object.assign(s.players[1] as object, { keeps: 'no' }),
    path: 'players[1].keeps',
    says: /is "no"; true or false would be right/,
  },
  {
    refusal: 'an object in place of a list',
    plant: (s) => Object.assign(s, { matches: {} }),
    path: 'matches',
    says: /is an object; a list would be right/,
  },
]

/** Every refusal that the format knows, once or more. Each leaves the rest of the season in order. */
export const plantedFaults: readonly PlantedFault[] = [
  ...seats,
  ...ids,
  ...days,
  ...times,
  ...numbers,
  ...shapes,
]

/** The small season with the fault in it, as text. */
export function plantedText(fault: PlantedFault): string {
  const season = smallSeason()
  const planted = fault.plant(season)
  return JSON.stringify(fault.path === '$' ? planted : season)
}
