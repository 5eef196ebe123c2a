import fc from 'fast-check'
import { expect, it, vi } from 'vitest'
import { listClosedDays, recordClosedDays } from '#data/closed-days'
import { recordDesigns } from '#data/designs'
import { setGroundSize } from '#data/ground-sizes'
import { newId } from '#data/ids'
import { listAway, recordAway } from '#data/player-away'
import { saveProgramme } from '#data/themes'
import {
  changeProgrammeBlocks,
  changeProgrammeRules,
  changeThemeFocus,
  takeProgramme,
} from '#server/theme-actions'
import {
  addAway,
  addClosedDays,
  addClubClosedDays,
  enterWeekly,
  removeAway,
  removeClosedDays,
  removeClubClosedDays,
  removeGround,
  setGround,
} from '#server/weeks-actions'
import { aSheet } from '../support/design-builder'
import { spoilForm, spoilings } from '../support/spoil-form'
import { accepted, type Door, isRefused, sent, whatStands } from '../support/spoiled-door'
import { aClubForWriting, askAs, idle } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
const day = '2026-11-03'
const year = { from: '2026-10-01', to: '2027-07-31' }
const ofSquad = () => ({ squadId: at.club.squadId })
const ofTerm = () => ({ ...ofSquad(), termId: at.club.termIds[0] })
const ofPlayer = () => ({ ...ofSquad(), playerId: at.club.playerIds[0] ?? '' })

/** A week's practice on a new day each time, as it would be shown. */
let week = 0
function weekly() {
  week += 1
  const shown = new Date(Date.parse('2026-10-06T00:00:00Z') + 7 * week * 86_400_000)
    .toISOString()
    .slice(0, 10)
  const days = { firstDay: shown, lastDay: shown, days: shown }
  return { ...ofSquad(), weekday: '2', startsAt: '17:00', place: 'Field', lengthMinutes: '60', ...days }
}

async function closedId(squadId: string | null) {
  const span = { id: newId(), squadId, firstDay: day, lastDay: day, name: newId() }
  await at.club.run((tx) => recordClosedDays(tx, span))
  return span.id
}

/** Days of its own each time: the same twice are refused. */
let span = 0
function aSpan() {
  span += 1
  const firstDay = new Date(Date.parse('2026-11-01T00:00:00Z') + span * 86_400_000).toISOString().slice(0, 10)
  return { firstDay, lastDay: '', name: 'Fair' }
}

async function awayId() {
  const own = { id: newId(), ...ofPlayer(), firstDay: day, lastDay: day }
  await at.club.run((tx) => recordAway(tx, own))
  return own.id
}

async function aGround() {
  await at.club.run((tx) => setGroundSize(tx, { place: 'Field', lengthM: 60, widthM: 40 }))
  return { ...ofSquad(), place: 'Field' }
}

async function rules() {
  const [top, below] = at.club.themeIds
  const programme = [top, below].map((themeId) => ({ themeId, wishedShare: 0.4 }))
  await at.club.run((tx) =>
    saveProgramme(tx, { squadId: at.club.squadId, termId: at.club.termIds[0], programme }),
  )
  return {
    ...ofTerm(),
    [`first-${below}`]: '2',
    [`last-${below}`]: '',
    [`most-${below}`]: '4',
    [`after-${below}`]: top,
  }
}

async function focus() {
  const design = aSheet({ id: newId(), name: newId(), themeId: null })
  await at.club.run((tx) => recordDesigns(tx, [design]))
  return {
    ...ofSquad(),
    themeId: at.club.themeIds[1],
    roles: ['attack'],
    situations: [],
    designIds: [design.id],
  }
}

const blocks = () => ({
  ...ofTerm(),
  'blockTheme-0': at.club.themeIds[0],
  'blockFirst-0': '2',
  'blockLast-0': '3',
})

/** Every door of the weeks ahead's data, with a form that it takes. */
const doors: readonly (readonly [Door, 'coach' | 'headCoach', () => Promise<object> | object])[] = [
  [enterWeekly, 'coach', weekly],
  [addClosedDays, 'coach', () => ({ ...ofSquad(), ...aSpan() })],
  [removeClosedDays, 'coach', async () => ({ ...ofSquad(), closedId: await closedId(at.club.squadId) })],
  [addClubClosedDays, 'headCoach', aSpan],
  [removeClubClosedDays, 'headCoach', async () => ({ closedId: await closedId(null) })],
  [setGround, 'coach', () => ({ ...ofSquad(), place: 'Field', lengthM: '60', widthM: '32,5' })],
  [removeGround, 'coach', aGround],
  [addAway, 'coach', () => ({ ...ofPlayer(), ...aSpan() })],
  [removeAway, 'coach', async () => ({ ...ofPlayer(), awayId: await awayId() })],
  [changeProgrammeRules, 'coach', rules],
  [changeProgrammeBlocks, 'coach', blocks],
  [takeProgramme, 'coach', () => ({ ...ofTerm(), from: 'ours asATeam' })],
  [changeThemeFocus, 'coach', focus],
]

it('whatever is sent to a door of the weeks ahead is taken whole, or refused in words and leaves no trace', async () => {
  for (const [door, asker, valid] of doors) {
    askAs(at.club, asker)
    expect(isRefused(await door(idle, sent(await valid(), 'json')).catch(accepted))).toBe(false)
    const way = fc.constantFrom('json' as const, 'fields' as const)
    await fc.assert(
      fc.asyncProperty(spoilings, way, async (places, as) => {
        const form = sent(spoilForm(await valid(), places), as)
        const stood = await whatStands(at.club.club.id)
        const answer = await door(idle, form).catch(accepted)
        expect(JSON.stringify(answer)).not.toMatch(/Something went wrong|could not be looked at/)
        if (isRefused(answer)) expect(await whatStands(at.club.club.id)).toBe(stood)
      }),
      { numRuns: 5 },
    )
  }
  // Something was taken on the way.
  const left = await at.club.run(async (tx) => [
    await listClosedDays(tx, ofSquad()),
    await listAway(tx, { playerIds: at.club.playerIds, ...year }),
  ])
  for (const rows of left) expect(rows.length).toBeGreaterThan(0)
}, 120_000)
