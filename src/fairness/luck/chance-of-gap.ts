import {
  type Draw,
  type DrawnBlock,
  goalTurns,
  keepChance,
  type LuckRole,
  luckRoles,
  openPlaces,
} from '#fairness/luck/draw'
import { noise } from '#fairness/noise'

/** Chances by number of turns, from 0. */
type Chances = Float64Array

/**
 * How often a fair draw puts a player at least so far from what it gives on average in a role, either way: exact. Who
 * keeps goal is drawn block by block, every other place turn by turn, so the chances of the sum are folded together.
 */
export function chanceOfGap(
  draw: Draw,
  { player, role }: { readonly player: number; readonly role: LuckRole },
): number {
  const column = luckRoles.indexOf(role)
  let all: Chances = Float64Array.of(1)
  let had = 0
  for (const block of draw.blocks) {
    if (!block.turns.some(({ players }) => players.includes(player))) continue
    for (const { players, places } of block.turns) {
      const at = players.indexOf(player)
      if (at >= 0) had += places[at]?.[column] ?? 0
    }
    all = together(all, chancesOfBlock(block, { player, column }))
  }
  const mean = all.reduce((sum, chance, turns) => sum + chance * turns, 0)
  const off = Math.abs(had - mean) - noise
  const far = all.reduce((sum, chance, turns) => sum + (Math.abs(turns - mean) >= off ? chance : 0), 0)
  return Math.min(1, far)
}

function chancesOfBlock(block: DrawnBlock, { player, column }: { player: number; column: number }): Chances {
  const goal = keepChance(block, player)
  const isKeep = luckRoles[column] === 'keep'
  let open: Chances = Float64Array.of(1)
  let kept = 0
  for (const turn of block.turns) {
    if (!turn.players.includes(player)) continue
    if (isKeep) kept += goalTurns(turn)
    else if (goal < 1)
      open = together(open, chancesOfPlaces(openPlaces(block, turn).map((place) => place[column] ?? 0)))
  }
  const mixed = new Float64Array(Math.max(open.length, kept + 1))
  open.forEach((chance, turns) => {
    mixed[turns] = (1 - goal) * chance
  })
  mixed[kept] = (mixed[kept] ?? 0) + goal
  return mixed
}

function chancesOfPlaces(turns: readonly number[]): Chances {
  const chances = new Float64Array(Math.max(0, ...turns) + 1)
  for (const count of turns) chances[count] = (chances[count] ?? 0) + 1 / turns.length
  return chances
}

/** Plain loops: a season of a squad is some ten million steps. */
function together(a: Chances, b: Chances): Chances {
  const sum = new Float64Array(a.length + b.length - 1)
  for (let y = 0; y < b.length; y++) {
    const other = b[y] as number
    if (other === 0) continue
    for (let x = 0; x < a.length; x++) sum[x + y] = (sum[x + y] as number) + (a[x] as number) * other
  }
  return sum
}
