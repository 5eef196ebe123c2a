import type { AheadRequest } from '#ahead/request'
import type { DesignId } from '#practice/design'
import type { ThemeId } from '#themes/theme'

/** A request in which nothing names a theme or a design that is gone: it counts for nothing, and the file would not be read. */
export function withoutGone(request: AheadRequest): AheadRequest {
  const themes = new Set(request.themes.map(({ id }) => id))
  const designs = new Set(request.designs.map(({ id }) => id))
  const isThere = (id: ThemeId) => themes.has(id)
  const designLeft = (id: DesignId | null) => (id !== null && designs.has(id) ? id : null)
  return {
    ...request,
    practices: request.practices.map(({ held, ...own }) => ({
      ...own,
      held: held && isThere(held.themeId) ? { ...held, designId: designLeft(held.designId) } : null,
    })),
    programme: request.programme
      .filter(({ themeId }) => isThere(themeId))
      .map(({ afterThemeId, ...own }) => ({
        ...own,
        afterThemeId: afterThemeId !== null && isThere(afterThemeId) ? afterThemeId : null,
      })),
    blocks: request.blocks.filter(({ themeId }) => isThere(themeId)),
    designs: request.designs.map((own) => ({ ...own, themeIds: own.themeIds.filter(isThere) })),
    met: request.met.map((own) => ({
      ...own,
      themeIds: own.themeIds.filter(isThere),
      designId: designLeft(own.designId),
    })),
    players: request.players.map((own) => ({
      ...own,
      themeSeconds: new Map([...own.themeSeconds].filter(([id]) => isThere(id))),
    })),
  }
}
