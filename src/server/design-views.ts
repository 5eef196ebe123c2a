import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import type { Day } from '#common/time'
import { getDesign, listEveryDesign } from '#data/designs'
import { inClub } from '#data/in-club'
import { listSessions } from '#data/sessions'
import { listThemes, type StoredTheme } from '#data/themes'
import { areaPerChildOver } from '#practice/area-per-child'
import { areaVerdict } from '#practice/area-sentence'
import type { Cast } from '#practice/cast-faults'
import { type Caution, designCautions } from '#practice/design-cautions'
import { designSeconds } from '#practice/design-effects'
import type { DesignSheet } from '#practice/design-sheet'
import { type ChildrenNeeded, childrenNeeded } from '#practice/design-stretch'
import { kindOfRound, type RoundKind } from '#practice/round-kind'
import { roundsThatRise } from '#practice/round-places'
import { loadCast } from '#server/design-cast'
import {
  childrenOf,
  type DesignFilter,
  type DesignQuery,
  designFilterOf,
  isAskedFor,
} from '#server/design-filter'
import { designVersion } from '#server/design-version'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { publishedGuidance } from '#server/published'
import { loadSquadSeason } from '#server/squad-season'
import type { Squad, SquadId } from '#squad/squad'
import { themeLines } from '#themes/theme-lines'

type At = { readonly squadId: SquadId; readonly now?: Date }

/** A theme to choose, with the steps it stands under others. */
export type ThemeChoice = { readonly id: string; readonly name: string; readonly depth: number }

export type ListedDesign = {
  readonly id: string
  readonly name: string
  readonly themeName: string | null
  readonly needed: ChildrenNeeded | null
  /** Kinds of its rounds in their order, each once. */
  readonly kinds: readonly RoundKind[]
  readonly rounds: number
  readonly lengthSeconds: number
}

export type DesignList = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly cast: Cast
  readonly themes: readonly ThemeChoice[]
  readonly filter: DesignFilter
  /** By name, as asked for. */
  readonly designs: readonly ListedDesign[]
  /** Before any filter but whether they are put away. */
  readonly of: number
  readonly putAway: number
  readonly mayChange: boolean
}

/** The club's library. @throws AppError `notAllowed` or `notFound`. */
export async function loadDesigns(
  viewer: Viewer,
  at: At & { readonly query: DesignQuery },
): Promise<DesignList> {
  return inClub(viewer.clubId, async (tx) => {
    const { squad, today } = await loadSquadSeason(tx, viewer, at)
    const themes = await listThemes(tx)
    const filter = designFilterOf(at.query, themes)
    const every = await listEveryDesign(tx)
    const { isPutAway } = filter
    return {
      frame: await loadFrame(tx, viewer, squad.id),
      squad,
      cast: await loadCast(tx, { squad, today }),
      themes: themeChoices(themes),
      filter,
      designs: every
        .filter((sheet) => isAskedFor(sheet, filter, themes))
        .map((sheet) => listed(sheet, themes)),
      of: every.filter((sheet) => sheet.isPutAway === isPutAway).length,
      putAway: every.filter((sheet) => sheet.isPutAway).length,
      mayChange: may(viewer, 'changeDesign', { kind: 'squad', squadId: squad.id }),
    }
  })
}

function listed(sheet: DesignSheet, themes: readonly StoredTheme[]): ListedDesign {
  return {
    id: sheet.id,
    name: sheet.name,
    themeName: themes.find(({ id }) => id === sheet.themeId)?.name ?? null,
    needed: childrenNeeded(sheet),
    kinds: [...new Set(sheet.rounds.map(kindOfRound))],
    rounds: sheet.rounds.length,
    lengthSeconds: designSeconds(sheet.rounds).whole,
  }
}

function themeChoices(themes: readonly StoredTheme[]): readonly ThemeChoice[] {
  return themeLines(themes).map(({ theme, depth }) => ({ id: theme.id, name: theme.name, depth }))
}

export type DesignPage = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly sheet: DesignSheet
  readonly themeName: string | null
  readonly copiedFrom: { readonly id: string; readonly name: string } | null
  readonly cast: Cast
  /** How many children the page reckons for: what was asked for, else the squad. */
  readonly turnout: number
  readonly needed: ChildrenNeeded | null
  /** The space against published youth pitches; null: no round has places. */
  readonly spaceSentence: string | null
  readonly cautions: readonly Caution[]
  /** Days of this squad's practices by it, the latest first. */
  readonly usedOn: readonly Day[]
  readonly mayChange: boolean
}

/** One design for one squad. @throws AppError `notAllowed` or `notFound`. */
export async function loadDesign(
  viewer: Viewer,
  at: At & { readonly designId: string; readonly query: DesignQuery },
): Promise<DesignPage> {
  return inClub(viewer.clubId, async (tx) => {
    const { squad, season, today } = await loadSquadSeason(tx, viewer, at)
    const sheet = await getDesign(tx, at.designId)
    const themes = await listThemes(tx)
    const cast = await loadCast(tx, { squad, today })
    const days = { from: season.firstDay, to: season.lastDay }
    const sessions = await listSessions(tx, { squadId: squad.id, ...days, withCancelled: false })
    const copiedFrom = sheet.copiedFromId ? await getDesign(tx, sheet.copiedFromId) : null
    const needed = childrenNeeded(sheet)
    const area = areaPerChildOver(sheet, roundsThatRise(sheet.rounds))
    const held = { age: squad.ageLimit, guidance: publishedGuidance }
    return {
      frame: await loadFrame(tx, viewer, squad.id),
      squad,
      sheet,
      themeName: themes.find(({ id }) => id === sheet.themeId)?.name ?? null,
      copiedFrom: copiedFrom && { id: copiedFrom.id, name: copiedFrom.name },
      cast,
      turnout: childrenOf(at.query.children) ?? (cast.children >= 2 ? cast.children : (needed?.best ?? 2)),
      needed,
      spaceSentence:
        area && areaVerdict(area, { age: squad.ageLimit, pitches: publishedGuidance.pitches }).sentence,
      cautions: designCautions(sheet, held),
      usedOn: sessions
        .filter(
          ({ designId, day, written }) =>
            designId === sheet.id && (day < today || (day === today && written !== 'notWritten')),
        )
        .map(({ day }) => day)
        .reverse(),
      mayChange: may(viewer, 'changeDesign', { kind: 'squad', squadId: squad.id }),
    }
  })
}

export type DesignFormPage = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly cast: Cast
  readonly themes: readonly ThemeChoice[]
  /** Null: a new one. */
  readonly edited: { readonly sheet: DesignSheet; readonly version: string } | null
}

/** What the form of a design needs. @throws AppError `notAllowed` or `notFound`. */
export async function loadDesignForm(
  viewer: Viewer,
  at: At & { readonly designId: string | null },
): Promise<DesignFormPage> {
  return inClub(viewer.clubId, async (tx) => {
    const { squad, today } = await loadSquadSeason(tx, viewer, at)
    demand(viewer, 'changeDesign', { kind: 'squad', squadId: squad.id })
    const sheet = at.designId === null ? null : await getDesign(tx, at.designId)
    return {
      frame: await loadFrame(tx, viewer, squad.id),
      squad,
      cast: await loadCast(tx, { squad, today }),
      themes: themeChoices(await listThemes(tx)),
      edited: sheet && { sheet, version: designVersion(sheet) },
    }
  })
}
