import type { AheadRequest, DaySpan } from '#ahead/request'
import { type PlanSettings, planSettingsOf } from '#exchange/plan-request/plan-request'
import { type PlanRequestJson, planRequestFormat } from '#exchange/plan-request/plan-request-shape'
import { withoutGone } from '#exchange/plan-request/without-gone'

/**
 * A request for the weeks ahead as JSON, everything said: `readPlanRequest` reads the same back, but for themes and
 * designs that are gone. Players are in it by id, never by name.
 */
export function writePlanRequest(asked: AheadRequest, settings: Partial<PlanSettings> = {}): PlanRequestJson {
  const request = withoutGone(asked)
  return {
    format: planRequestFormat,
    term: spanJson(request.term),
    policy: { ...request.policy },
    practices: request.practices.map(({ id, day, lengthSeconds, ground, held }) => ({
      id,
      date: day,
      lengthSeconds,
      ground: ground && { lengthM: ground.lengthM, widthM: ground.widthM },
      held: held && { theme: held.themeId, design: held.designId },
    })),
    closed: request.closed.map(spanJson),
    themes: themesJson(request),
    blocks: request.blocks.map(({ themeId, firstWeek, lastWeek }) => ({
      theme: themeId,
      firstWeek,
      lastWeek,
    })),
    designs: request.designs.map(designJson),
    met: request.met.map(({ day, themeIds, designId }) => ({
      date: day,
      themes: [...themeIds],
      design: designId,
    })),
    players: request.players.map(playerJson),
    designRest: request.designRest,
    gentle: { ...request.gentle },
    ...planSettingsOf(settings),
  }
}

function spanJson({ firstDay, lastDay }: DaySpan): PlanRequestJson['term'] {
  return { from: firstDay, to: lastDay }
}

/** Only themes of the programme say more than where they stand. */
function themesJson({ themes, programme }: AheadRequest): PlanRequestJson['themes'] {
  const rules = new Map(programme.map((rule) => [rule.themeId, rule]))
  return themes.map(({ id, name, parentId }) => {
    const rule = rules.get(id)
    const place = { id, name, parent: parentId }
    return rule
      ? {
          ...place,
          share: rule.wishedShare,
          firstWeek: rule.firstWeek,
          lastWeek: rule.lastWeek,
          after: rule.afterThemeId,
          leastWeeksBetween: rule.leastWeeksBetween,
          mostWeeksBetween: rule.mostWeeksBetween,
        }
      : place
  })
}

function designJson({
  id,
  name,
  themeIds,
  lengthM,
  widthM,
  rounds,
}: AheadRequest['designs'][number]): PlanRequestJson['designs'][number] {
  return {
    id,
    name,
    themes: [...themeIds],
    lengthM,
    widthM,
    rounds: rounds.map(({ turnCount, turnSeconds, gapSeconds, stations, isFreeGame }) => ({
      turnCount,
      turnSeconds,
      gapSeconds,
      stations: stations.map(({ attack, defend, keep }) => ({ attack, defend, keep })),
      freeGame: isFreeGame ?? false,
    })),
  }
}

function playerJson(player: AheadRequest['players'][number]): PlanRequestJson['players'][number] {
  const { id, keeps, came, held, away, gap, fair, playedSeconds, themeSeconds } = player
  return {
    id,
    keeps,
    came,
    held,
    away: away.map(spanJson),
    gap: { ...gap },
    fair: { ...fair },
    playedSeconds,
    themeSeconds: Object.fromEntries(themeSeconds),
  }
}
