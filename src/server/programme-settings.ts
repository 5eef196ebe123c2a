import 'server-only'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { laterDay } from '#common/later-day'
import type { Day } from '#common/time'
import { isoWeeksBetween, mondayOf } from '#common/weeks'
import { listDesigns } from '#data/designs'
import type { ClubTx } from '#data/in-club'
import { listProgrammeBlocks } from '#data/programme-blocks'
import { listProgrammeRules } from '#data/programme-rules'
import { listSeasons } from '#data/seasons'
import type { SquadTerm } from '#data/squad-term'
import { listSquads } from '#data/squads'
import { listThemeDesigns, type ThemeDesign } from '#data/theme-designs'
import { listTermsWithProgramme } from '#data/themes'
import type { DesignSheet } from '#practice/design-sheet'
import type { Squad, Term } from '#squad/squad'
import { ourProgrammeFor, ourProgrammes } from '#themes/our-programmes'
import type { ProgrammeBlock, ProgrammeRule } from '#themes/programme-rule'

/** What coaches set of a programme beside its parts, as it stands. */
export type ProgrammeSettings = {
  /** The programme's themes with when they may come. */
  readonly rules: readonly ProgrammeRule[]
  readonly blocks: readonly ProgrammeBlock[]
  /** Of the term, from 1: its first day in the term. */
  readonly weekDays: readonly Day[]
  /** What can be chosen, by name. */
  readonly designs: readonly Pick<DesignSheet, 'id' | 'name' | 'themeId' | 'rounds'>[]
  readonly serving: readonly ThemeDesign[]
  /** Where a programme can be taken from. */
  readonly sources: readonly ProgrammeSource[]
}

/** `why`: what a programme of ours is like. */
export type ProgrammeSource = { readonly value: string; readonly label: string; readonly why?: string }

/** Access has been asked for the squad; of others only those that are the viewer's to see. */
export async function loadProgrammeSettings(
  tx: ClubTx,
  viewer: Viewer,
  { squad, term }: { readonly squad: Squad; readonly term: Term },
): Promise<ProgrammeSettings> {
  const at = { squadId: squad.id, termId: term.id }
  return {
    rules: await listProgrammeRules(tx, at),
    blocks: await listProgrammeBlocks(tx, at),
    weekDays: isoWeeksBetween(term).map((week) => laterDay(mondayOf(week), term.firstDay)),
    designs: (await listDesigns(tx)).map(({ id, name, themeId, rounds }) => ({ id, name, themeId, rounds })),
    serving: await listThemeDesigns(tx),
    sources: [...oursFor(squad), ...(await listOthers(tx, viewer, { squad, term }))],
  }
}

/** That of the squad's age first. */
function oursFor({ ageLimit }: Squad): readonly ProgrammeSource[] {
  const first = ourProgrammeFor(ageLimit)
  return ourProgrammes
    .toSorted((one, other) => Number(other === first) - Number(one === first))
    .map(({ key, name, why }) => ({ value: `ours ${key}`, label: `To begin with: ${name}`, why }))
}

async function listOthers(
  tx: ClubTx,
  viewer: Viewer,
  { squad, term }: { readonly squad: Squad; readonly term: Term },
): Promise<readonly ProgrammeSource[]> {
  const squads = (await listSquads(tx)).filter(({ id }) =>
    may(viewer, 'seeSquad', { kind: 'squad', squadId: id }),
  )
  const held = await listTermsWithProgramme(
    tx,
    squads.map(({ id }) => id),
  )
  const isSource = (at: SquadTerm) =>
    held.some(({ squadId, termId }) => squadId === at.squadId && termId === at.termId) &&
    !(at.squadId === squad.id && at.termId === term.id)
  return (await listSeasons(tx)).toReversed().flatMap((season) =>
    season.terms.toReversed().flatMap((own) =>
      squads
        .filter(({ id }) => isSource({ squadId: id, termId: own.id }))
        .map(({ id, name }) => ({
          value: `${id} ${own.id}`,
          label: `${name}, ${own.name} ${season.name}`,
        })),
    ),
  )
}
