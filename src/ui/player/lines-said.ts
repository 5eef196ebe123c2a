import { andList } from '#common/and-list'
import { fieldLines, type LineWish, type LineWishes } from '#match/format/line-wish'
import { words } from '#ui/words'

const said: Readonly<Record<Exclude<LineWish, 'open'>, string>> = {
  likes: 'In matches likes to play',
  learning: 'In matches is learning',
  notYet: 'In matches not yet',
}

/** What stands of a player's lines, a sentence for each answer that was given. */
export function linesSaid(wishes: LineWishes): readonly string[] {
  return (['likes', 'learning', 'notYet'] as const).flatMap((wish) => {
    const lines = fieldLines.filter((line) => wishes[line] === wish).map((line) => words.line[line])
    return lines.length > 0 ? [`${said[wish]} ${andList(lines)}.`] : []
  })
}
