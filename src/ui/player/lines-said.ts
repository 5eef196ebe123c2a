import { andList } from '#common/and-list'
import { fieldLines, type LineWish, type LineWishes } from '#match/format/line-wish'
import { words } from '#ui/words'

const said: Readonly<Record<Exclude<LineWish, 'open'>, string>> = {
  likes: 'likes',
  learning: 'is learning',
  notYet: 'not yet',
}

/** "Lines in matches: likes forward; is learning middle; not yet back." Null where nothing was said. */
export function linesSaid(wishes: LineWishes): string | null {
  const parts = (['likes', 'learning', 'notYet'] as const).flatMap((wish) => {
    const lines = fieldLines.filter((line) => wishes[line] === wish).map((line) => words.line[line])
    return lines.length > 0 ? [`${said[wish]} ${andList(lines)}`] : []
  })
  return parts.length > 0 ? `Lines in matches: ${parts.join('; ')}.` : null
}
